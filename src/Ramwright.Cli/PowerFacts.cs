using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Quantities;

namespace Ramwright.Cli;

/// <summary>What the power side asks of tank, motor, compressor, lines and person, a line each.</summary>
internal static class PowerFacts
{
    /// <summary>Oil in a line is talked about in metres or feet a second, not in the millimetres of a ram.</summary>
    private static string OilSpeed(double metresPerSecond, UnitSystem units) =>
        Units.TryFind(units == UnitSystem.Imperial ? "ft/s" : "m/s", Dimension.Speed, out Unit? unit)
            ? Readout.Text(metresPerSecond, unit, 3)
            : Readout.Text(metresPerSecond, Dimension.Speed, units);

    public static IEnumerable<(string What, string Value, string Remark)> Of(PressCheck check, UnitSystem units)
    {
        PowerReport power = check.Power;
        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);

        yield return ("oil a stroke", Show(power.Oil.FromTank, Dimension.Volume),
            (power.Oil.Enough ? $"out of the {Show(power.Oil.Usable, Dimension.Volume)} that the tank can give" : $"but the tank gives only {Show(power.Oil.Usable, Dimension.Volume)}")
            + (power.Oil.FromTank < power.Oil.Stroke * (1 - 1e-9) ? $": {Show(power.Oil.Stroke, Dimension.Volume)} into the bore side less {Show(power.Oil.Stroke - power.Oil.FromTank, Dimension.Volume)} back from the rod side" : ""));
        yield return ("oil gives", Show(power.Decompression, Dimension.Volume),
            $"at the true force: {Show(power.LettingOff.LostTravel, Dimension.Length)} of ram travel lost");
        foreach (HeatCase heat in power.Heat)
        {
            yield return ("heat in oil", Show(heat.Power, Dimension.Power),
                heat.Where + (heat.ToWarm is { } t
                    ? $": {Show(OilHeat.Warmest, Dimension.Temperature)} after {Math.Ceiling(t / 60):0} min"
                    : $": settles at {Show(heat.SettlesAt, Dimension.Temperature)}"));
        }

        foreach (MotorLoad load in power.Motor)
            yield return ("motor power", Show(load.Power, Dimension.Power), $"{load.Share * 100:0} % of the motor; {load.Where}");
        if (power.Hand is { } hand)
        {
            yield return ("handle strokes", $"{hand.ApproachStrokes} + {(hand.PressingStrokes is { } n ? $"{n}" : "no end")}", "approach + under load");
            if (hand.HandleForce is { } push)
                yield return ("handle push", Show(push, Dimension.Force), "at the true force");
        }

        if (power.Air is { } air)
        {
            yield return ("air, running", Show(air.Demand, Dimension.FreeAir), air.Delivered is { } q ? $"free air; the compressor gives {Show(q, Dimension.FreeAir)}" : "free air");
            if (air.RunningShare is { } share && share < 1)
                yield return ("may run", $"{share * 100:0} % of the time", "for good, at no load");
            yield return ("receiver lasts", Show(air.ToCutIn, Dimension.Time), "from full to cut-in, at no load");
            if (air.ToLoseWanted is { } lose && lose > 0)
                yield return ("wanted lost", Show(lose, Dimension.Time), "until the air is too low for the wanted force");
        }

        foreach (LineCheck line in power.Lines)
        {
            string bend = line.Line.LeastBend is { } least ? $"; bend it no tighter than {Show(least, Dimension.Length)}" : "";
            yield return (line.Line.Name, OilSpeed(line.Velocity, units), $"oil speed; loses {Show(line.Loss, Dimension.Pressure)}{bend}");
        }

        if (check.Gauge is { } gauge)
        {
            yield return ("gauge", $"± {Show(gauge.Error, Dimension.Pressure)}",
                $"{gauge.ErrorOfReading * 100:0.#} % at the true force, at {gauge.Share * 100:0} % of its range");
        }
    }
}
