using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>
/// Kinematic viscosity over temperature by the straight line of ASTM D341: <c>lg lg(ν + 0.7) = A − B lg T</c>, ν in mm²/s, T absolute.
/// </summary>
/// <param name="A">Intercept.</param>
/// <param name="B">Slope; above zero for an oil that thins as it warms.</param>
public readonly record struct OilViscosity(double A, double B)
{
    /// <summary>The equation.</summary>
    public static readonly Citation Source = new("ASTM D341", "viscosity-temperature equation with the constant 0.7, ν of 2 mm²/s and more");

    /// <summary>0 °C in kelvin.</summary>
    public const double ZeroCelsius = 273.15;

    /// <summary>Least viscosity for which the constant 0.7 holds, m²/s.</summary>
    public const double Thinnest = 2e-6;

    /// <summary>The line through two known points.</summary>
    /// <param name="nu1">Viscosity at the first temperature, m²/s, at least <see cref="Thinnest"/>.</param>
    /// <param name="T1">First absolute temperature, K, above zero.</param>
    /// <param name="nu2">Viscosity at the second temperature, m²/s.</param>
    /// <param name="T2">Second absolute temperature, K, other than the first.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or an oil that does not thin as it warms.</exception>
    public static OilViscosity Through(double nu1, double T1, double nu2, double T2)
    {
        Check.AtLeast(nu1, Thinnest);
        Check.AtLeast(nu2, Thinnest);
        Check.Positive(T1);
        Check.Positive(T2);
        double W1 = LogLog(nu1), W2 = LogLog(nu2);
        double B = (W1 - W2) / (Math.Log10(T2) - Math.Log10(T1));
        Check.Positive(B, nameof(B));
        return new OilViscosity(W1 + B * Math.Log10(T1), B);
    }

    /// <summary>Viscosity at an absolute temperature.</summary>
    /// <param name="T">Temperature, K, above zero.</param>
    /// <returns>m²/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature that is not above zero, or so cold that the oil is solid.</exception>
    public double At(double T)
    {
        Check.Positive(T);
        double nu = (Math.Pow(10, Math.Pow(10, A - B * Math.Log10(T))) - 0.7) / 1e6;
        if (!(nu > 0 && double.IsFinite(nu)))
            Check.Refuse(nameof(T), T, "a temperature at which this oil flows");
        return nu;
    }

    /// <summary>Viscosity of an oil at its temperature.</summary>
    /// <param name="oil">The oil, with its viscosities at 40 and 100 °C.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m²/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range; a temperature outside −40 to 150 °C.</exception>
    public static double Of(RigOil oil, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(oil);
        double t = oil.Temperature, nu_40 = oil.Grade.Nu40, nu_100 = oil.Grade.Nu100;
        if (!(t is >= -40 and <= 150))
            Check.Refuse("Temperature", t, "between −40 and 150 °C");
        OilViscosity line = Through(nu_40, 40 + ZeroCelsius, nu_100, 100 + ZeroCelsius);
        double nu = line.At(t + ZeroCelsius);
        if (w is not null)
        {
            double W_40 = LogLog(nu_40), W_100 = LogLog(nu_100);
            w.Step("W_40", "lg lg(ν + 0.7) at 40 °C", "log10(log10(ν_40 · 1000000 + 0.7))", W_40, Dimension.Number, Source,
                ("ν_40", nu_40, Dimension.KinematicViscosity));
            w.Step("W_100", "lg lg(ν + 0.7) at 100 °C", "log10(log10(ν_100 · 1000000 + 0.7))", W_100, Dimension.Number, Source,
                ("ν_100", nu_100, Dimension.KinematicViscosity));
            w.Step("B", "slope of the viscosity line", "(W_40 − W_100)/log10(373.15/313.15)", line.B, Dimension.Number, Source,
                ("W_40", W_40, Dimension.Number), ("W_100", W_100, Dimension.Number));
            w.Step("A", "height of the viscosity line", "W_40 + B log10(313.15)", line.A, Dimension.Number, Source,
                ("W_40", W_40, Dimension.Number), ("B", line.B, Dimension.Number));
            w.Step("ν", "viscosity of the oil", "(10^(10^(A − B log10(t + 273.15))) − 0.7)/1000000", nu, Dimension.KinematicViscosity, Source,
                ("A", line.A, Dimension.Number), ("B", line.B, Dimension.Number), ("t", t, Dimension.Temperature));
        }

        return nu;
    }

    private static double LogLog(double nu) => Math.Log10(Math.Log10(nu * 1e6 + 0.7));
}
