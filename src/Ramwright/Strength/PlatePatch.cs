using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Flat plates that carry a force on a small round patch in the middle: a bolster, a bearing plate.</summary>
/// <remarks>Elastic thin plates, ν = 0.3, small deflection (up to half the thickness), thickness at most a quarter of the span or so.</remarks>
public static class PlatePatch
{
    /// <summary>Rectangular plates.</summary>
    public static readonly Citation RectangleSource = new("Roark's Formulas for Stress and Strain, 7th ed.", "table 11.4");
    /// <summary>Round plates.</summary>
    public static readonly Citation RoundSource = new("Roark's Formulas for Stress and Strain, 7th ed.", "table 11.2", Standing.FromMemory);

    private static readonly double[] Ratios = [1.0, 1.2, 1.4, 1.6, 1.8, 2.0, double.PositiveInfinity];
    private static readonly double[] SupportedBeta = [0.435, 0.650, 0.789, 0.875, 0.927, 0.958, 1.000];
    private static readonly double[] SupportedAlpha = [0.1267, 0.1478, 0.1621, 0.1715, 0.1770, 0.1805, 0.1851];
    private static readonly double[] FixedAlpha = [0.0611, 0.0706, 0.0754, 0.0777, 0.0786, 0.0788, 0.0791];
    private static readonly double[] FixedCentre = [-0.238, -0.078, 0.011, 0.053, 0.068, 0.067, 0.067];
    private static readonly double[] FixedEdge = [0.7542, 0.8940, 0.9624, 0.9906, 1.000, 1.004, 1.008];

    /// <summary>β and α of a rectangle a ≥ b with all edges supported.</summary>
    /// <param name="ratio">a/b, 1 or more; infinity is a strip.</param>
    public static (double Beta, double Alpha) Supported(double ratio) => (At(SupportedBeta, ratio), At(SupportedAlpha, ratio));

    /// <summary>β₁ of the middle, β₂ of the long edge and α of a rectangle with all edges fixed.</summary>
    /// <param name="ratio">a/b, 1 or more; infinity is a strip.</param>
    public static (double Centre, double Edge, double Alpha) Fixed(double ratio) =>
        (At(FixedCentre, ratio), At(FixedEdge, ratio), At(FixedAlpha, ratio));

    /// <summary>Radius that a small patch counts with, m: a plate spreads a point over its thickness.</summary>
    /// <param name="r0">Radius of the patch, m.</param>
    /// <param name="t">Thickness, m.</param>
    public static double PatchRadius(double r0, double t) =>
        Check.NotNegative(r0) >= 0.5 * Check.Positive(t) ? r0 : Math.Sqrt(1.6 * r0 * r0 + t * t) - 0.675 * t;

    /// <summary>Greatest stress, Pa, and deflection, m, of a rectangle with all edges supported.</summary>
    /// <param name="F">Force, N.</param>
    /// <param name="a">Longer side, m.</param>
    /// <param name="b">Shorter side, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="r0">Radius of the patch, m, at most a quarter of the shorter side.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static (double Stress, double Deflection) RectangleSupported(
        double F, double a, double b, double t, double r0, double E = 210e9, Working? w = null)
    {
        CheckRectangle(a, b, t, r0);
        (double beta, double alpha) = Supported(a / b);
        double rp = PatchRadius(r0, t);
        double sigma = 3 * Check.Finite(F) / (2 * Math.PI * t * t) * (1.3 * Math.Log(2 * b / (Math.PI * rp)) + beta);
        double y = alpha * F * b * b / (Check.Positive(E) * t * t * t);
        w?.Take("β", "coefficient of stress by a/b", beta, Dimension.Number, RectangleSource);
        w?.Step("σ", "stress under the patch", "3 F / (2 π t²) · (1.3 ln(2 b / (π r_p)) + β)", sigma, Dimension.Stress, RectangleSource,
            ("F", F, Dimension.Force), ("t", t, Dimension.Length), ("b", b, Dimension.Length), ("r_p", rp, Dimension.Length), ("β", beta, Dimension.Number));
        w?.Step("y", "deflection", "α F b² / (E t³)", y, Dimension.Length, RectangleSource,
            ("α", alpha, Dimension.Number), ("F", F, Dimension.Force), ("b", b, Dimension.Length), ("E", E, Dimension.Stress), ("t", t, Dimension.Length));
        return (sigma, y);
    }

    /// <summary>Stress in the middle and at the long edge (compression on the loaded side), Pa, and deflection, m, with all edges fixed.</summary>
    /// <inheritdoc cref="RectangleSupported"/>
    public static (double Centre, double Edge, double Deflection) RectangleFixed(
        double F, double a, double b, double t, double r0, double E = 210e9)
    {
        CheckRectangle(a, b, t, r0);
        (double centre, double edge, double alpha) = Fixed(a / b);
        double rp = PatchRadius(r0, t);
        return (3 * Check.Finite(F) / (2 * Math.PI * t * t) * (1.3 * Math.Log(2 * b / (Math.PI * rp)) + centre),
            -edge * F / (t * t), alpha * F * b * b / (Check.Positive(E) * t * t * t));
    }

    /// <summary>Greatest stress, Pa, and deflection, m, of a round plate with its edge supported.</summary>
    /// <param name="F">Force, N.</param>
    /// <param name="a">Radius of the support, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="r0">Radius of the patch, m, below a.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    public static (double Stress, double Deflection) RoundSupported(double F, double a, double t, double r0, double E = 210e9)
    {
        CheckRound(a, r0);
        double k = 3 * Check.Finite(F) / (2 * Math.PI * Check.Positive(t) * t);
        return (k * (1.3 * Math.Log(a / PatchRadius(r0, t)) + 1), F * a * a * 3.3 / (16 * Math.PI * 1.3 * Rigidity(E, t)));
    }

    /// <summary>Stress in the middle, Pa, and deflection, m, of a round plate with its edge clamped.</summary>
    /// <inheritdoc cref="RoundSupported"/>
    public static (double Stress, double Deflection) RoundClamped(double F, double a, double t, double r0, double E = 210e9)
    {
        CheckRound(a, r0);
        double k = 3 * Check.Finite(F) / (2 * Math.PI * Check.Positive(t) * t);
        return (k * 1.3 * Math.Log(a / PatchRadius(r0, t)), F * a * a / (16 * Math.PI * Rigidity(E, t)));
    }

    /// <summary>Ram force at which a supported rectangle first yields under the patch.</summary>
    /// <param name="share">Force on the patch per newton at the ram.</param>
    /// <param name="a">Longer side, m.</param>
    /// <param name="b">Shorter side, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="r0">Radius of the patch, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Yields(
        double share, double a, double b, double t, double r0, double fy, PartialFactors factors, Working? w = null)
    {
        (double sigma, _) = RectangleSupported(Math.Abs(Check.Finite(share)), a, b, t, r0, w: w);
        double u = sigma / Check.Positive(fy);
        w?.Step("u", "share of the yield strength used by one newton", "σ / f_y", u, Dimension.Number, RectangleSource,
            ("σ", sigma, Dimension.Stress), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }

    private static double Rigidity(double E, double t) => Check.Positive(E) * t * t * t / (12 * 0.91);

    private static void CheckRectangle(double a, double b, double t, double r0)
    {
        Check.Positive(t);
        Check.Positive(b);
        if (!(a >= b && double.IsFinite(a)))
            throw new ArgumentOutOfRangeException(nameof(a), a, "must not be less than the shorter side");
        if (!(r0 >= 0 && r0 <= b / 4))
            throw new ArgumentOutOfRangeException(nameof(r0), r0, "must be at most a quarter of the shorter side");
    }

    private static void CheckRound(double a, double r0)
    {
        Check.Positive(a);
        if (!(r0 >= 0 && r0 < a))
            throw new ArgumentOutOfRangeException(nameof(r0), r0, "must be smaller than the plate");
    }

    // Straight lines between the printed ratios; from 2 to the strip straight in b/a.
    private static double At(double[] values, double ratio)
    {
        if (!(ratio >= 1 - 1e-12))
            throw new ArgumentOutOfRangeException(nameof(ratio), ratio, "must be 1 or more");
        if (ratio >= 2)
            return values[6] + (values[5] - values[6]) * 2 / ratio;
        int i = Math.Clamp((int)((ratio - 1) / 0.2), 0, 4);
        return values[i] + (values[i + 1] - values[i]) * (ratio - Ratios[i]) / 0.2;
    }
}
