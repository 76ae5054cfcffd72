using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>Bringing the steel round a weld to its preheat with a torch.</summary>
/// <param name="Mass">Steel that is heated by the time it is reached, kg.</param>
/// <param name="Heat">Heat that the steel takes, J.</param>
/// <param name="Lost">Heat that the hot faces lose to the air meanwhile, J.</param>
/// <param name="Fuel">Heat of the gas burnt, J.</param>
/// <param name="Time">s.</param>
public sealed record HeatUp(double Mass, double Heat, double Lost, double Fuel, double Time)
{
    /// <summary>Heat kept by a mass.</summary>
    public static readonly Citation Balance = Citation.Mechanics("balance of heat; the warm zone spreads by 2 √(a t/π) on each way out, from the half-space with a fixed face temperature");
    /// <summary>Share of a torch's heat that reaches the steel.</summary>
    public static readonly Citation TorchPractice = Citation.Practice("a third or so of a torch's heat enters the steel");

    /// <summary>Specific heat of steel near room temperature, J/(kg K).</summary>
    public const double SpecificHeat = 490;
    /// <summary>Conductivity of steel, W/(m K).</summary>
    public const double Conductivity = 50;
    /// <summary>Share of the torch's heat that enters the steel.</summary>
    public const double TorchShare = 0.30;
    /// <summary>Still air on warm faces, W/(m² K).</summary>
    public const double StillAir = 6;
    /// <summary>Emissivity of mill scale.</summary>
    public const double Emissivity = 0.7;
    /// <summary>Stefan-Boltzmann constant, W/(m² K⁴).</summary>
    private const double Sigma = 5.670374e-8;

    private const double Diffusivity = Conductivity / (SpecificHeat * Steel.Density);

    /// <summary>Heat of a mass, J: m c ΔT.</summary>
    /// <param name="m">kg.</param>
    /// <param name="rise">K.</param>
    /// <param name="w">Where to write it down.</param>
    public static double HeatOf(double m, double rise, Working? w = null)
    {
        double E = Check.Positive(m) * SpecificHeat * Check.NotNegative(rise);
        w?.Step("E", "heat that the steel takes; c in J/(kg K)", "m c ΔT", E, Dimension.Energy, Balance,
            ("m", m, Dimension.Mass), ("c", SpecificHeat, Dimension.Number), ("ΔT", rise, Dimension.Number));
        return E;
    }

    /// <summary>Loss from hot faces, W/m²: still air and radiation.</summary>
    /// <param name="T">Of the steel, °C.</param>
    /// <param name="T0">Of the room, °C.</param>
    public static double LossOf(double T, double T0)
    {
        double K = T + 273.15, K0 = T0 + 273.15;
        return StillAir * (T - T0) + Emissivity * Sigma * (Math.Pow(K, 4) - Math.Pow(K0, 4));
    }

    /// <summary>Heats the steel round a weld.</summary>
    /// <param name="zone">Length that must be warm on each way out from the weld, m.</param>
    /// <param name="ways">Cross-section of each way out by which heat leaves, m².</param>
    /// <param name="perimeters">Outline of each of those, m: where air takes heat.</param>
    /// <param name="T">Preheat, °C.</param>
    /// <param name="T0">Steel before, °C.</param>
    /// <param name="torch">Heat of the torch, W.</param>
    /// <returns>Null where this torch never gets it there.</returns>
    public static HeatUp? Of(double zone, IReadOnlyList<double> ways, IReadOnlyList<double> perimeters, double T, double T0, double torch)
    {
        ArgumentNullException.ThrowIfNull(ways);
        ArgumentNullException.ThrowIfNull(perimeters);
        double section = ways.Sum(), faces = perimeters.Sum() * Check.Positive(zone), rise = T - T0;
        if (rise <= 0 || section <= 0)
            return new HeatUp(0, 0, 0, 0, 0);
        // faces warm up evenly on the way: their mean loss is that at half the rise
        double into = TorchShare * Check.Positive(torch) - faces * LossOf(T0 + rise / 2, T0);
        if (into <= 0)
            return null;
        // τ into = ρ c ΔT A (zone + 2 √(a τ/π)): quadratic in √τ
        double store = Steel.Density * SpecificHeat * rise * section;
        double b = store * 2 * Math.Sqrt(Diffusivity / Math.PI), root = (b + Math.Sqrt(b * b + 4 * into * store * zone)) / (2 * into), time = root * root;
        double mass = Steel.Density * section * (zone + 2 * Math.Sqrt(Diffusivity * time / Math.PI));
        return new HeatUp(mass, HeatOf(mass, rise), faces * LossOf(T0 + rise / 2, T0) * time, torch * time, time);
    }

    /// <summary>Distance from the weld at which the temperature is taken, m; EN ISO 13916: four thicknesses up to 50 mm, 75 mm for plate above 50 mm.</summary>
    /// <param name="t">Thickness, m.</param>
    public static double MeasureAt(double t) => Check.Positive(t) > 0.050 ? 0.075 : Math.Min(4 * t, 0.050);

    /// <summary>Wait after heating before the temperature is taken, s: two minutes for each 25 mm of thickness; EN ISO 13916, from memory.</summary>
    /// <param name="t">Thickness, m.</param>
    public static double WaitFor(double t) => 120 * Check.Positive(t) / 0.025;
}
