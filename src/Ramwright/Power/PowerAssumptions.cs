using Ramwright.Presses;

namespace Ramwright.Power;

/// <summary>What this room takes for granted where nothing is said. Those with a key of the press file name it.</summary>
internal static class PowerAssumptions
{
    private static readonly Assumed Bulk = new AssumedWord(
        "bulk modulus of the oil", "1.5 GPa", "a middle value for mineral oil free of air; the walls are taken as rigid");
    private static readonly Assumed Ends = new AssumedWord(
        "ends of the lines", "one entry and one exit each", "couplers, valves and elbows are not told and lose more");
    private static readonly Assumed Motor = new AssumedWord(
        "pump.relief", "2.5 times the motor's rated torque", "with no relief valve below it only the stopping motor ends the pressure; catalogues show 2 to 3");
    private static readonly Assumed Push = new AssumedWord(
        "pump.relief", "twice the rated push", "with no relief valve below it only the person ends the pressure");
    private static readonly Assumed Shape = new AssumedWord(
        "pump.full-flow", "35 % of the free flow at half the stall pressure", "the usual shape of makers' curves");
    private static readonly Assumed Demand = new AssumedWord(
        "pump.air-use", "the air the areas call for", "the least it can be: leaks and dead volume come on top");
    private static readonly Assumed Delivery = new AssumedWord(
        "pump.compressor.free-air", "60 % of the motor power as isentropic work", "usual for small piston compressors");
    private static readonly Assumed Part = new AssumedWord(
        "pressing part of the stroke", "the last 20 %", "nothing was said of the work");
    private static readonly Assumed Load = new AssumedWord(
        "force over the pressing part", "half of the true force", "nothing was said of the work");

    public static IReadOnlyList<Assumed> Of(
        RigPump pump, IReadOnlyList<RigLine> lines, PressStroke stroke, PressureLimits limits, PumpCurve curve)
    {
        var all = new List<Assumed>(8) { Bulk };
        if (lines.Count > 0)
            all.Add(Ends);
        if (limits.MostPossible.Kind == PressureLimitKind.MotorStop)
            all.Add(Motor);
        if (limits.MostPossible.Kind == PressureLimitKind.HandleHard)
            all.Add(Push);
        if (curve is AirPumpCurve { Fitted: false })
            all.Add(Shape);
        if (pump is RigAirPump { AirUse: null })
            all.Add(Demand);
        if (pump is RigAirPump { Compressor: { FreeAir: null, Motor: not null } })
            all.Add(Delivery);
        if (stroke.PressingPart is null)
            all.Add(Part);
        if (stroke.PressingForce is null)
            all.Add(Load);
        return all;
    }
}
