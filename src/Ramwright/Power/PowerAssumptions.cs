using Ramwright.Presses;

namespace Ramwright.Power;

/// <summary>
/// What this room takes for granted where nothing is said, named by the key of the press file that would say otherwise. Only what
/// is not one number stands here, or hangs on which limit governs; the rest is settled with the press.
/// </summary>
internal static class PowerAssumptions
{
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

    public static IReadOnlyList<Assumed> Of(RigPump pump, PressureLimits limits, PumpCurve curve)
    {
        var all = new List<Assumed>(4);
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
        return all;
    }
}
