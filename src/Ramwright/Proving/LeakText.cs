using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>A fall of shut-in pressure in a sentence.</summary>
public static class LeakText
{
    /// <summary>Writes it.</summary>
    /// <param name="leak">The fall.</param>
    /// <param name="units">Which units.</param>
    public static string Of(LeakDown leak, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(leak);
        string Pressure(double p) => Readout.Text(p, Dimension.Pressure, units, 2);
        string fell = $"The pressure fell {Pressure(leak.Fall)} in {Readout.Text(leak.From.Over!.Value, Dimension.Time, units, 3)}";
        string lost = $"{Readout.Text(leak.Rate, Dimension.Flow, units, 2)} lost, by which the ram would sink {Readout.Text(leak.Drift, Dimension.Length, units, 2)} in that time if it all passes the piston";
        return leak.ByCooling is not { } by
            ? $"{fell}: {lost}. The oil's temperature was not read: one degree colder alone is {Pressure(LeakDown.FallByCooling(1))}."
            : leak.MayBeCooling ? $"{fell}; cooling of the oil alone may explain it ({Pressure(by)})." : $"{fell}, {Pressure(Math.Max(0, by))} of it by cooling: {lost}.";
    }
}
