using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A ring-shaped plate, held up at its outer edge and pressed along a circle: a washer over a wide hole, the top of a pulling chair.</summary>
/// <remarks>Elastic thin plate; the hole's edge is free. Held up at a few points (legs) instead of all round it is stressed more than this says.</remarks>
public static class AnnularPlate
{
    /// <summary>Line load on a ring plate, outer edge supported, inner edge free.</summary>
    public static readonly Citation Source = new("Roark's Formulas for Stress and Strain, 7th ed.", "table 11.2, case 1a", Standing.FromMemory);

    /// <summary>Poisson's ratio of steel.</summary>
    public const double Nu = 0.3;

    /// <summary>Greatest moment per length, around the hole's edge, N·m/m.</summary>
    /// <param name="F">Force, N.</param>
    /// <param name="a">Radius of the support, m.</param>
    /// <param name="b">Radius of the hole, m, above zero.</param>
    /// <param name="r0">Radius of the circle that presses, m, between both.</param>
    /// <param name="w">Where to write it down.</param>
    public static double MomentAtHole(double F, double a, double b, double r0, Working? w = null)
    {
        Check.Finite(F);
        Check.Positive(b);
        if (!(a > b && double.IsFinite(a)))
            throw new ArgumentOutOfRangeException(nameof(a), a, "the support must lie outside the hole");
        if (!(r0 >= b && r0 <= a))
            throw new ArgumentOutOfRangeException(nameof(r0), r0, "must lie between hole and support");
        double x = r0 / a, L9 = x * ((1 + Nu) / 2 * Math.Log(a / r0) + (1 - Nu) / 4 * (1 - x * x));
        double line = F / (2 * Math.PI * r0), M = 2 * line * a * a * a * L9 / (a * a - b * b);
        w?.Step("L_9", "loading constant of a line load", "r_0 / a · ((1 + ν) / 2 · ln(a / r_0) + (1 - ν) / 4 · (1 - (r_0 / a)²))", L9, Dimension.Number, Source,
            ("r_0", r0, Dimension.Length), ("a", a, Dimension.Length), ("ν", Nu, Dimension.Number));
        w?.Step("w_0", "load per length of the circle", "F / (2 π r_0)", line, Dimension.ForcePerLength, Source,
            ("F", F, Dimension.Force), ("r_0", r0, Dimension.Length));
        w?.Step("M_t", "moment around the hole's edge, per length", "2 w_0 a³ L_9 / (a² - b²)", M, Dimension.Force, Source,
            ("w_0", line, Dimension.ForcePerLength), ("a", a, Dimension.Length), ("L_9", L9, Dimension.Number), ("b", b, Dimension.Length));
        return M;
    }

    /// <summary>Ram force at which the plate yields at its hole.</summary>
    /// <param name="share">Force on the circle per newton at the ram, either sign.</param>
    /// <param name="a">Radius of the support, m.</param>
    /// <param name="b">Radius of the hole, m.</param>
    /// <param name="r0">Radius of the circle that presses, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where the force stands right over the support.</returns>
    public static Limit? Yields(
        double share, double a, double b, double r0, double t, double fy, PartialFactors factors, Working? w = null)
    {
        double M = MomentAtHole(Math.Abs(Check.Finite(share)), a, b, r0, w);
        double sigma = 6 * M / (Check.Positive(t) * t), u = sigma / Check.Positive(fy);
        w?.Step("σ", "bending stress at the hole", "6 M_t / t²", sigma, Dimension.Stress, Source,
            ("M_t", M, Dimension.Force), ("t", t, Dimension.Length));
        w?.Step("u", "share of the yield strength used by one newton", "σ / f_y", u, Dimension.Number, Source,
            ("σ", sigma, Dimension.Stress), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
