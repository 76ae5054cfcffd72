using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>How much oil gives under pressure.</summary>
public static class BulkModulus
{
    /// <summary>Mineral oil free of air, Pa: a middle value of 1.4 to 1.8 GPa.</summary>
    public const double MineralOil = 1.5e9;

    /// <summary>Where the usual value comes from.</summary>
    public static readonly Citation Source = Citation.Practice("bulk modulus of mineral oil 1.4 to 1.8 GPa, about 0.5 % in volume for 1000 psi");

    /// <summary>Bulk modulus of oil with air in it.</summary>
    /// <param name="K">Of the oil alone, Pa, above zero.</param>
    /// <param name="x">Share of air by volume at the atmosphere, 0 or more, below 1.</param>
    /// <param name="p">Pressure, Pa absolute, above zero.</param>
    /// <param name="n">Polytropic exponent of the air, above zero: 1.4 for a quick change.</param>
    /// <returns>Pa, never above <paramref name="K"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>K_e = (1 − x + c)/((1 − x)/K + c/(n p)), c = x (p_atm/p)^(1/n): oil and air side by side.</remarks>
    public static double WithAir(double K, double x, double p, double n = 1.4)
    {
        Check.Positive(K);
        Check.Loss(x);
        Check.Positive(p);
        Check.Positive(n);
        double c = x * Math.Pow(Atmosphere.Pressure / p, 1 / n);
        return Math.Min(K, (1 - x + c) / ((1 - x) / K + c / (n * p)));
    }

    /// <summary>Volume by which oil is pressed together, and comes back when it is let go.</summary>
    /// <param name="V">Oil, m³, 0 or more.</param>
    /// <param name="p">Pressure, Pa, 0 or more.</param>
    /// <param name="K">Bulk modulus, Pa, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Compression(double V, double p, double K = MineralOil, Working? w = null)
    {
        Check.NotNegative(V);
        Check.NotNegative(p);
        Check.Positive(K);
        double dV = V * p / K;
        w?.Step("ΔV", "oil that comes back when it is let go", "V p/K", dV, Dimension.Volume, Source,
            ("V", V, Dimension.Volume), ("p", p, Dimension.Pressure), ("K", K, Dimension.Stress));
        return dV;
    }

    /// <summary>Volume by which oil grows as it warms.</summary>
    /// <param name="V">Oil, m³, 0 or more.</param>
    /// <param name="dT">Rise, K.</param>
    /// <param name="beta">Expansion by volume, 1/K, above zero; about 7·10⁻⁴ for mineral oil.</param>
    /// <returns>m³; negative for a fall.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double ThermalGrowth(double V, double dT, double beta = 7e-4)
    {
        Check.NotNegative(V);
        Check.AtLeast(dT, double.MinValue);
        Check.Positive(beta);
        return V * beta * dT;
    }
}
