using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>What the oil's pressure is limited to when the press is in use: as the file says, or lower where the press is not safe to that.</summary>
/// <param name="Said">The relief valve's setting in the file, Pa; null where there is none.</param>
/// <param name="Safe">The pressure at which, nothing lost, the first part that can break is at what it is safe to, Pa.</param>
/// <param name="IsSafe">Whether the press holds what the pump, limited as the file says, can give.</param>
public sealed record SettingInUse(double? Said, double Safe, bool IsSafe)
{
    /// <summary>The setting of a press.</summary>
    /// <param name="check">The press.</param>
    public static SettingInUse Of(PressCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        double safe = Math.Max(0, check.Ladder.ThrustBorne / check.Power.Areas.Force);
        double? said = check.Rig.Pump.Relief;
        return new SettingInUse(said, safe, check.AgainstMostPossible == Verdict.Holds || said <= safe * (1 + 1e-9));
    }

    /// <summary>The setting in words: <c>3000 psi</c>, or <c>at or below 1060 psi</c> where the file's is more than the press is safe to.</summary>
    /// <param name="said">What the file says of what limits it, Pa: oil, or the air before a pump.</param>
    /// <param name="ratio">Oil pressure over that pressure; 1 for oil.</param>
    /// <param name="units">The reader's units.</param>
    public string Text(double said, double ratio, UnitSystem units) =>
        IsSafe ? Readout.Text(said, Dimension.Pressure, units) : "at or below " + Below(Safe / ratio, units);

    /// <summary>A pressure that must not be passed, rounded down to three figures in the reader's own unit.</summary>
    /// <param name="pressure">Pa.</param>
    /// <param name="units">The reader's units.</param>
    public static string Below(double pressure, UnitSystem units)
    {
        Unit unit = Readout.UnitFor(Dimension.Pressure, units);
        double value = Math.Max(0, unit.FromSi(pressure));
        if (value > 0 && double.IsFinite(value))
        {
            double step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
            value = Math.Floor(value / step + 1e-9) * step;
        }

        return Readout.Text(unit.ToSi(value), unit);
    }
}
