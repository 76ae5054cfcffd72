using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>How often a detail stands a stress range, and which range it stands so often: EN 1993-1-9, characteristic values.</summary>
/// <remarks>
/// Direct stress: slope 3 to 5 million cycles, slope 5 to 100 million, nothing below the cut-off. Shear: slope 5 to 100 million, then the cut-off.
/// The second slope is that of ranges that vary; work of one force only would have no damage already below the value at 5 million, which is not
/// made use of. The standard draws its curves from 10 000 cycles on; for fewer, the range of 10 000 is allowed and no more.
/// A number of cycles below 10 000 is read off the first slope drawn on. Dry air, ordinary temperature, no corrosion: rust that is left to grow lowers all of this.
/// </remarks>
public static class FatigueCurve
{
    /// <summary>The curves.</summary>
    public static readonly Citation Source = new("EN 1993-1-9:2005", "7.1(2) and (3), figures 7.1 and 7.2");

    /// <summary>Greatest stress range.</summary>
    public static readonly Citation CapSource = new("EN 1993-1-9:2005", "8(1), eq. 8.1", Standing.FromMemory);

    /// <summary>Fewest cycles that the curves are drawn for.</summary>
    public const double Fewest = 1e4;
    private const double AtCategory = 2e6, AtLimit = 5e6, AtCutOff = 1e8;

    /// <summary>Whether the slope at so many cycles is 3; else it is 5.</summary>
    internal static bool IsSteep(DetailCategory detail, double N) => !detail.Shear && N <= AtLimit;

    /// <summary>The stress range that a detail stands N times, Pa.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="N">Cycles, above zero.</param>
    /// <param name="ks">k_s for size, above 0, at most 1.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Range(DetailCategory detail, double N, double ks = 1, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(detail);
        double n = Math.Max(Check.Positive(N), Fewest), C = Check.Efficiency(ks) * detail.Strength;
        string s = Letter(detail);
        ShowCategory(detail, ks, w);
        if (N < Fewest)
            w?.Note("The curves begin at 10 000 cycles; for fewer no more is allowed than there.");
        if (detail.Shear)
        {
            double tau = n <= AtCutOff ? C * Math.Pow(AtCategory / n, 1 / 5.0) : CutOff(detail, ks);
            ShowRange(tau, n <= AtCutOff ? $"k_s {s}_C (2000000 / n)^(1 / 5)" : $"(2 / 100)^(1 / 5) k_s {s}_C", ($"{s}_C", detail.Strength, Dimension.Stress), ("k_s", ks, Dimension.Number));
            return tau;
        }

        if (n <= AtLimit)
        {
            double steep = C * Math.Cbrt(AtCategory / n);
            ShowRange(steep, $"k_s {s}_C ∛(2000000 / n)", ($"{s}_C", detail.Strength, Dimension.Stress), ("k_s", ks, Dimension.Number));
            return steep;
        }

        double D = FatigueLimit(detail, ks, w);
        double sigma = n <= AtCutOff ? D * Math.Pow(AtLimit / n, 1 / 5.0) : CutOff(detail, ks);
        ShowRange(sigma, n <= AtCutOff ? $"{s}_D (5000000 / n)^(1 / 5)" : $"(5 / 100)^(1 / 5) {s}_D", ($"{s}_D", D, Dimension.Stress));
        return sigma;

        void ShowRange(double range, string text, params ReadOnlySpan<Given> givens)
        {
            if (w is null)
                return;
            Given[] all = n <= AtCutOff ? [.. givens, ("n", n, Dimension.Count)] : [.. givens];
            w.Step(s + "_N", "stress range that it stands so often", text, range, Dimension.Stress, Source, all);
        }
    }

    /// <summary>How often a detail stands a stress range; null where it stands it without end.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="range">Stress range, factors included, Pa, 0 or more.</param>
    /// <param name="ks">k_s for size, above 0, at most 1.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double? Life(DetailCategory detail, double range, double ks = 1, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(detail);
        Check.NotNegative(range);
        if (range < CutOff(detail, Check.Efficiency(ks)))
        {
            w?.Note("The range lies below the cut-off: it does no damage.");
            return null;
        }

        string s = Letter(detail);
        ShowCategory(detail, ks, w);
        double C = ks * detail.Strength, N;
        if (detail.Shear)
        {
            N = AtCategory * Math.Pow(C / range, 5);
            w?.Step("N", "cycles that it stands", $"2000000 (k_s {s}_C / {s})^5", N, Dimension.Count, Source,
                ("k_s", ks, Dimension.Number), ($"{s}_C", detail.Strength, Dimension.Stress), (s, range, Dimension.Stress));
            return N;
        }

        if (range >= FatigueLimit(detail, ks))
        {
            N = AtCategory * Cube(C / range);
            w?.Step("N", "cycles that it stands", $"2000000 (k_s {s}_C / {s})³", N, Dimension.Count, Source,
                ("k_s", ks, Dimension.Number), ($"{s}_C", detail.Strength, Dimension.Stress), (s, range, Dimension.Stress));
            return N;
        }

        double D = FatigueLimit(detail, ks, w);
        N = AtLimit * Math.Pow(D / range, 5);
        w?.Step("N", "cycles that it stands", $"5000000 ({s}_D / {s})^5", N, Dimension.Count, Source,
            ($"{s}_D", D, Dimension.Stress), (s, range, Dimension.Stress));
        return N;
    }

    /// <summary>Fatigue limit Δσ_D at 5 million cycles of one range, Pa; direct stress only.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="ks">k_s for size.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentException">A detail in shear: its curve has no such point.</exception>
    public static double FatigueLimit(DetailCategory detail, double ks = 1, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(detail);
        if (detail.Shear)
            throw new ArgumentException("the curve of shear has no limit above its cut-off", nameof(detail));
        double D = Math.Cbrt(AtCategory / AtLimit) * Check.Efficiency(ks) * detail.Strength;
        w?.Step("Δσ_D", "fatigue limit at 5 million cycles", "∛(2 / 5) k_s Δσ_C", D, Dimension.Stress, Source,
            ("k_s", ks, Dimension.Number), ("Δσ_C", detail.Strength, Dimension.Stress));
        return D;
    }

    /// <summary>Cut-off Δσ_L or Δτ_L at 100 million cycles, Pa: what lies below does no damage.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="ks">k_s for size.</param>
    public static double CutOff(DetailCategory detail, double ks = 1)
    {
        ArgumentNullException.ThrowIfNull(detail);
        return detail.Shear
            ? Math.Pow(AtCategory / AtCutOff, 1 / 5.0) * Check.Efficiency(ks) * detail.Strength
            : Math.Pow(AtLimit / AtCutOff, 1 / 5.0) * FatigueLimit(detail, ks);
    }

    /// <summary>The greatest stress range that may be judged at all, Pa: 1.5 f_y, in shear 1.5 f_y/√3.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="fy">Yield strength, Pa, above zero.</param>
    public static double Cap(DetailCategory detail, double fy)
    {
        ArgumentNullException.ThrowIfNull(detail);
        return 1.5 * Check.Positive(fy) / (detail.Shear ? Math.Sqrt(3) : 1);
    }

    internal static string Letter(DetailCategory detail) => detail.Shear ? "Δτ" : "Δσ";

    private static void ShowCategory(DetailCategory detail, double ks, Working? w)
    {
        w?.Take(Letter(detail) + "_C", detail.What, detail.Strength, Dimension.Stress, detail.Source);
        if (ks < 1)
            w?.Take("k_s", "for its size", ks, Dimension.Number, detail.SizeSource);
    }

    private static double Cube(double x) => x * x * x;
}
