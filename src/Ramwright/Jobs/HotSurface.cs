using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What a hot surface loses to a still workshop: radiation and convection. Temperatures in °C.</summary>
/// <param name="Emissivity">Share of a black body's radiation, above 0, at most 1.</param>
/// <param name="Convection">Heat passed to still air, W/(m²·K), 0 or more.</param>
/// <param name="Surroundings">Temperature of the workshop, °C.</param>
public sealed record HotSurface(
    double Emissivity = HotSurface.ScaledSteel, double Convection = HotSurface.StillAir, double Surroundings = 20)
{
    /// <summary>Emissivity of scaled steel; 0.75 to 0.9 is seen.</summary>
    public const double ScaledSteel = 0.8;

    /// <summary>Convection in still air, W/(m²·K).</summary>
    public const double StillAir = 10;

    /// <summary>Stefan and Boltzmann's constant, W/(m²·K⁴).</summary>
    public const double sigma = 5.670374e-8;

    /// <summary>0 °C in K.</summary>
    public const double Ice = 273.15;

    /// <summary>Radiation.</summary>
    public static readonly Citation Radiation = new("Stefan-Boltzmann law", "grey body in wide surroundings");

    /// <summary>The values taken where nothing is known of the surface.</summary>
    public static readonly Citation Usual = Citation.Practice("scaled steel radiates 0.75 to 0.9 of a black body, still air takes about 10 W/(m²·K)");

    /// <summary>Scaled steel in a still workshop: what is taken where nothing is known.</summary>
    public static readonly HotSurface InTheWorkshop = new();

    /// <summary>Share of a black body's radiation.</summary>
    public double Emissivity { get; init; } = Check.Efficiency(Emissivity);

    /// <summary>Heat passed to still air, W/(m²·K).</summary>
    public double Convection { get; init; } = Check.NotNegative(Convection);

    /// <summary>Temperature of the workshop, °C.</summary>
    public double Surroundings { get; init; } = Check.Above(Surroundings, -Ice);

    /// <summary>Heat lost by each square metre.</summary>
    /// <param name="T">Temperature of the surface, °C.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>W/m²; negative where the surroundings are hotter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature below absolute zero.</exception>
    public double Loses(double T, Working? w = null)
    {
        Check.Above(T, -Ice);
        double q = Flux(T);
        w?.Step("q", "heat lost to the air by each square metre", "ε σ ((T + T_0)^4 − (T_a + T_0)^4) + h_a (T − T_a)", q, Dimension.Number, Radiation,
            ("ε", Emissivity, Dimension.Number), ("σ", sigma, Dimension.Number), ("T", T, Dimension.Number), ("T_0", Ice, Dimension.Number),
            ("T_a", Surroundings, Dimension.Number), ("h_a", Convection, Dimension.Number));
        return q;
    }

    /// <summary>Radiation alone, W/m².</summary>
    internal double Radiates(double T)
    {
        double K = T + Ice, K2 = K * K, A = Surroundings + Ice, A2 = A * A;
        return Emissivity * sigma * (K2 * K2 - A2 * A2);
    }

    /// <summary><see cref="Loses"/> with no check.</summary>
    internal double Flux(double T) => Radiates(T) + Convection * (T - Surroundings);

    /// <summary>How much more is lost for each kelvin, W/(m²·K).</summary>
    internal double Slope(double T)
    {
        double K = T + Ice;
        return 4 * Emissivity * sigma * K * K * K + Convection;
    }
}
