using System.Globalization;

namespace Ramwright.Quantities;

/// <summary>Writes SI values in the units a person reads.</summary>
/// <remarks>What is written can be read again by <see cref="QuantityText"/>.</remarks>
public static class Readout
{
    /// <summary>The unit in which a dimension is shown.</summary>
    public static Unit UnitFor(Dimension dimension, UnitSystem system) => Find(dimension, Scale(dimension, system).Usual);

    /// <summary>A value with its unit: <c>32 mm</c>, <c>1.26 in</c>.</summary>
    /// <param name="si">The SI value; must be finite.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="system">Which units.</param>
    /// <param name="digits">Significant digits, 1 to 17.</param>
    /// <returns>In the usual unit, or a smaller or larger one where the value would read badly in it: N below 0.1 kN.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not finite, or digits out of range.</exception>
    public static string Text(double si, Dimension dimension, UnitSystem system = UnitSystem.Metric, int digits = 3)
    {
        UnitScale scale = Scale(dimension, system);
        double size = Math.Abs(si);
        if (size < scale.ZeroBelow)
            (si, size) = (0, 0);
        string symbol = size < scale.SmallBelow && size > 0 ? scale.Small! : size >= scale.LargeFrom ? scale.Large! : scale.Usual;
        return Text(si, Find(dimension, symbol), digits);
    }

    /// <summary>A value in a unit of the person's own choosing.</summary>
    /// <param name="si">The SI value; must be finite.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="digits">Significant digits, 1 to 17.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not finite, or digits out of range.</exception>
    public static string Text(double si, Unit unit, int digits = 3)
    {
        ArgumentNullException.ThrowIfNull(unit);
        string number = Number(unit.FromSi(si), digits);
        return unit.Symbol.Length == 0 ? number : unit.Symbol == "°" ? number + "°" : $"{number} {unit.Symbol}";
    }

    /// <summary>A number as people write it: no exponent between a billionth and 10¹⁵, no trailing zeros, never <c>-0</c>.</summary>
    /// <param name="value">Must be finite.</param>
    /// <param name="digits">Significant digits, 1 to 17.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not finite, or digits out of range.</exception>
    public static string Number(double value, int digits = 3)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "only a finite value can be shown");
        if (digits is < 1 or > 17)
            throw new ArgumentOutOfRangeException(nameof(digits), digits, "1 to 17");
        if (value == 0)
            return "0";

        // The runtime rounds; what is left is to move the point: 1.2346E+004 is 12346.
        string rounded = Math.Abs(value).ToString("E" + (digits - 1), CultureInfo.InvariantCulture);
        int e = rounded.IndexOf('E');
        int exponent = int.Parse(rounded.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        string figures = string.Concat(rounded.AsSpan(0, 1), rounded.AsSpan(Math.Min(2, e), e - Math.Min(2, e))).TrimEnd('0');
        string sign = value < 0 ? "-" : "";
        if (exponent is < -9 or > 15)
            return $"{sign}{figures[0]}{(figures.Length > 1 ? "." : "")}{figures.AsSpan(1)}e{exponent}";
        if (exponent < 0)
            return $"{sign}0.{new string('0', -exponent - 1)}{figures}";
        return figures.Length <= exponent + 1
            ? sign + figures.PadRight(exponent + 1, '0')
            : $"{sign}{figures.AsSpan(0, exponent + 1)}.{figures.AsSpan(exponent + 1)}";
    }

    /// <summary>A fraction as a tape shows it: <c>3/8</c>, <c>1-1/2</c>, <c>2</c>.</summary>
    /// <param name="count">How many parts; zero or more.</param>
    /// <param name="parts">Parts of one; a power of two.</param>
    public static string Fraction(int count, int parts)
    {
        (int whole, int over) = (count / parts, count % parts);
        while (over > 0 && over % 2 == 0)
            (over, parts) = (over / 2, parts / 2);
        string rest = over == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{over}/{parts}");
        return whole == 0 && over > 0 ? rest : over == 0 ? Number(whole, 6) : string.Create(CultureInfo.InvariantCulture, $"{whole}-{rest}");
    }

    private static Unit Find(Dimension dimension, string symbol)
    {
        foreach (Unit unit in Units.Of(dimension))
        {
            if (unit.Symbol == symbol)
                return unit;
        }
        throw new ArgumentOutOfRangeException(nameof(dimension), dimension, $"{symbol} is not one of its units");
    }

    /// <summary>The unit usually shown, and from which SI size on another reads better.</summary>
    /// <remarks>Below <c>ZeroBelow</c>, a thousandth of the finest that is read in the usual unit, it is nothing: what is left there is rounding.</remarks>
    private readonly record struct UnitScale(
        string Usual, string? Small = null, double SmallBelow = 0, string? Large = null, double LargeFrom = double.PositiveInfinity, double ZeroBelow = 0);

    private static UnitScale Scale(Dimension dimension, UnitSystem system) =>
        system == UnitSystem.Imperial ? Imperial(dimension) : Metric(dimension);

    private static UnitScale Metric(Dimension dimension) => dimension switch
    {
        Dimension.Number or Dimension.Count => new(""),
        Dimension.Ratio => new("%"),
        Dimension.Length => new("mm", "µm", 1e-5, "m", 20),
        Dimension.Area => new("cm2", "mm2", 1e-5, "m2", 1),
        Dimension.Volume => new("L", "mL", 1e-4, "m3", 10),
        Dimension.SectionModulus => new("cm3", "mm3", 1e-7),
        Dimension.SecondMoment => new("cm4", "mm4", 1e-9),
        Dimension.WarpingConstant => new("cm6", "mm6", 1e-13),
        Dimension.Angle => new("°", ZeroBelow: 1e-7),
        Dimension.Slope => new("mm/m", ZeroBelow: 1e-8),
        Dimension.Mass => new("kg", "g", 0.1, "t", 1e4),
        Dimension.MassPerLength => new("kg/m"),
        Dimension.Density => new("kg/m3"),
        Dimension.Time => new("s", "ms", 0.1, "h", 7200),
        Dimension.Speed => new("mm/s", null, 0, "m/s", 10),
        Dimension.Force => new("kN", "N", 100, "MN", 1e7),
        Dimension.ForcePerLength => new("N/mm", "N/m", 100, "kN/mm", 1e7),
        Dimension.Moment => new("kN·m", "N·m", 100),
        Dimension.Stiffness => new("kN/mm", "N/mm", 1e5),
        Dimension.RotationalStiffness => new("kN·m/rad", "N·m/rad", 100),
        Dimension.Pressure => new("bar", "mbar", 1e3),
        Dimension.Stress => new("MPa", "kPa", 1e4, "GPa", 1e10),
        Dimension.Flow => new("L/min", "mL/min", 1e-2 * 1e-3 / 60),
        Dimension.FreeAir => new("L/min", null, 0, "m3/min", 10.0 / 60),
        Dimension.Displacement => new("cm3/rev", null, 0, "L/rev", 1e-3),
        Dimension.Power => new("kW", "W", 100, "MW", 1e7),
        Dimension.Energy => new("J", null, 0, "kJ", 1e4),
        Dimension.Temperature => new("°C"),
        Dimension.RotationalSpeed => new("rpm"),
        Dimension.Cadence => new("/min"),
        Dimension.KinematicViscosity => new("cSt"),
        Dimension.DynamicViscosity => new("mPa·s"),
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "not a dimension"),
    };

    private static UnitScale Imperial(Dimension dimension) => dimension switch
    {
        Dimension.Length => new("in", "thou", 0.01 * Inch, "ft", 1000 * Inch),
        Dimension.Area => new("in2", null, 0, "ft2", 1440 * Inch * Inch),
        Dimension.Volume => new("US gal", "in3", 23.1 * Inch * Inch * Inch),
        Dimension.SectionModulus => new("in3"),
        Dimension.SecondMoment => new("in4"),
        Dimension.WarpingConstant => new("in6"),
        Dimension.Slope => new("in/ft", ZeroBelow: 1e-8),
        Dimension.Mass => new("lb"),
        Dimension.MassPerLength => new("lb/ft"),
        Dimension.Density => new("lb/ft3"),
        Dimension.Speed => new("in/s", null, 0, "ft/s", 1000 * Inch),
        Dimension.Force => new("US ton", "lbf", 0.1 * 2000 * Lbf),
        Dimension.ForcePerLength => new("lbf/in"),
        Dimension.Moment => new("lbf·ft", "lbf·in", Lbf * Inch),
        Dimension.Stiffness => new("lbf/in", null, 0, "kip/in", 1e5 * Lbf / Inch),
        Dimension.RotationalStiffness => new("lbf·ft/rad"),
        Dimension.Pressure => new("psi"),
        Dimension.Stress => new("ksi", "psi", 100 * Lbf / (Inch * Inch)),
        Dimension.Flow => new("US gpm", "in3/min", 23.1 * Inch * Inch * Inch / 60),
        Dimension.FreeAir => new("cfm"),
        Dimension.Displacement => new("in3/rev"),
        Dimension.Power => new("hp"),
        Dimension.Energy => new("ft·lbf", null, 0, "kWh", 1e6),
        Dimension.Temperature => new("°F"),
        _ => Metric(dimension),
    };

    private const double Inch = 0.0254, Lbf = 0.45359237 * 9.80665;
}
