using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>What a fall of shut-in pressure means: oil lost, how far the ram would sink, and how much of the fall is mere cooling. SI.</summary>
/// <param name="From">The reading.</param>
/// <param name="Fall">Fall of pressure, Pa.</param>
/// <param name="ByCooling">How much of it the oil's cooling explains, Pa; null where its temperature was not read.</param>
/// <param name="UCooling">Standard uncertainty of that, by the thermometer, Pa.</param>
/// <param name="Lost">Oil lost, m³: what the rest of the fall stands for.</param>
/// <param name="Rate">The same a second, m³/s.</param>
/// <param name="Drift">How far the ram would sink by it, m, if all of it passes the piston.</param>
public sealed record LeakDown(Reading From, double Fall, double? ByCooling, double UCooling, double Lost, double Rate, double Drift)
{
    /// <summary>Bulk modulus of oil in a working cylinder with hoses, Pa: a little less than of the oil alone.</summary>
    public const double K = 1.2e9;

    /// <summary>Expansion of mineral oil, 1/K.</summary>
    public const double Oil = 7e-4;

    /// <summary>Expansion by volume of the steel around it, 1/K.</summary>
    public const double Steel = 3.6e-5;

    /// <summary>Where the oil's figures come from.</summary>
    public static readonly Citation Source = Citation.Practice("bulk modulus of oil in a cylinder with hoses about 1.2 GPa, expansion 0.0007 a kelvin");

    /// <summary>Whether the fall is no more than cooling may explain, with what the thermometer may be off.</summary>
    public bool MayBeCooling => ByCooling is { } by && Fall <= by + 2 * UCooling;

    /// <summary>The leak-downs of a log.</summary>
    /// <param name="check">The press.</param>
    /// <param name="book">Its readings.</param>
    public static IReadOnlyList<LeakDown> Of(PressCheck check, ReadingBook book)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(book);
        double A = check.Power.Areas.Push, stroke = A * check.Rig.Cylinder.Stroke;
        double u = book.For(ReadingKind.OilTemperature).Error.U;
        return [.. book.Of(ReadingKind.LeakDown).Where(r => r.Over is > 0).Select(r => One(r, A, r.Volume ?? stroke, u))];
    }

    private static LeakDown One(Reading r, double A, double V, double uTemperature)
    {
        double? cooling = r is { Oil: { } before, OilAfter: { } after } ? FallByCooling(before - after) : null;
        double lost = OilLost(V, Math.Max(0, r.Value - Math.Max(0, cooling ?? 0)));
        // the thermometer's own error falls out of the difference; its step does not
        return new LeakDown(r, r.Value, cooling, cooling is null ? 0 : FallByCooling(Math.Sqrt(2) * uTemperature / 4), lost, lost / r.Over!.Value, lost / A);
    }

    /// <summary>Oil that a fall of pressure stands for.</summary>
    /// <param name="V">Trapped oil, m³.</param>
    /// <param name="dp">Fall, Pa.</param>
    /// <param name="w">Where to show the working.</param>
    public static double OilLost(double V, double dp, Working? w = null)
    {
        double lost = Check.Positive(V) * Check.NotNegative(dp) / K;
        w?.Step("V_l", "oil lost", "V Δp / K", lost, Dimension.Volume, Source, ("V", V, Dimension.Volume), ("Δp", dp, Dimension.Pressure), ("K", K, Dimension.Stress));
        return lost;
    }

    /// <summary>Fall of pressure by cooling alone, the cylinder shut.</summary>
    /// <param name="dT">Cooler by, K.</param>
    /// <param name="w">Where to show the working.</param>
    public static double FallByCooling(double dT, Working? w = null)
    {
        double fall = K * (Oil - Steel) * Check.Finite(dT);
        w?.Step("Δp_T", "fall by cooling alone", "K (β − β_s) ΔT", fall, Dimension.Pressure, Source,
            ("K", K, Dimension.Stress), ("β", Oil, Dimension.Number), ("β_s", Steel, Dimension.Number), ("ΔT", dT, Dimension.Temperature));
        return fall;
    }
}
