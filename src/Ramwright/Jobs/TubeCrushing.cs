using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Tube and box crushed: mean forces of folding, first peaks, flattening. σ₀ is the mean of yield and ultimate strength.</summary>
public static class TubeCrushing
{
    /// <summary>Box, folding in the way of least work.</summary>
    public static readonly Citation Wierzbicki = new("T. Wierzbicki, W. Abramowicz, J. Appl. Mech. 50 (1983) 727", "", Standing.FromMemory);
    /// <summary>Box and tube, effective crush length.</summary>
    public static readonly Citation AbramowiczJones = new("W. Abramowicz, N. Jones, Int. J. Impact Eng. 2 (1984) 179", "", Standing.FromMemory);
    /// <summary>Round tube.</summary>
    public static readonly Citation Alexander = new("J. M. Alexander, Q. J. Mech. Appl. Math. 13 (1960) 10", "", Standing.FromMemory);
    /// <summary>Tube flattened between plates.</summary>
    public static readonly Citation DeRuntz = new("J. A. DeRuntz, P. G. Hodge, J. Appl. Mech. 30 (1963) 391", "", Standing.FromMemory);
    /// <summary>Wall squashed, or folded about hinges.</summary>
    public static readonly Citation Statics = Citation.Mechanics("yield of the whole wall; plastic hinges");

    /// <summary>Fold moment of a wall over its length: σ₀ t²/4, N.</summary>
    public static double M_0(double σ_0, double t) => Check.Positive(σ_0) * Check.Positive(t) * t / 4;

    /// <summary>Box on its end, mean force: 38.12 M₀ (c/t)^(1/3), N.</summary>
    /// <param name="σ_0">Flow stress, Pa.</param>
    /// <param name="c">Mean width of a side, m.</param>
    /// <param name="t">Wall, m.</param>
    public static double BoxMean(double σ_0, double c, double t) => 38.12 * M_0(σ_0, t) * Math.Cbrt(Check.Positive(c) / t);

    /// <summary>Box on its end, mean force over the length that can be crushed: 52.22 M₀ (c/t)^(1/3), N: the one for a press.</summary>
    public static double BoxMeanSlow(double σ_0, double c, double t, Working? w = null)
    {
        double M = M_0(σ_0, t), P = 52.22 * M * Math.Cbrt(Check.Positive(c) / t);
        w?.Step("M_0", "fold moment of the wall a metre", "σ_0 t² / 4", M, Dimension.Force, AbramowiczJones, ("σ_0", σ_0, Dimension.Stress), ("t", t, Dimension.Length));
        w?.Step("P_m", "mean force of folding", "52.22 M_0 ∛(c / t)", P, Dimension.Force, AbramowiczJones, ("M_0", M, Dimension.Force), ("c", c, Dimension.Length), ("t", t, Dimension.Length));
        return P;
    }

    /// <summary>Box on its end, first peak: the whole wall yields, 4 c t σ₀, N.</summary>
    public static double BoxSquash(double σ_0, double c, double t, Working? w = null)
    {
        double P = 4 * Check.Positive(c) * Check.Positive(t) * Check.Positive(σ_0);
        w?.Step("P_s", "first peak, the whole wall yielding", "4 c t σ_0", P, Dimension.Force, Statics, ("c", c, Dimension.Length), ("t", t, Dimension.Length), ("σ_0", σ_0, Dimension.Stress));
        return P;
    }

    /// <summary>Round tube on its end, mean force after Alexander: 6 σ₀ t √(D t), N; D the mean diameter.</summary>
    public static double TubeMeanAlexander(double σ_0, double D, double t) => 6 * Check.Positive(σ_0) * Check.Positive(t) * Math.Sqrt(Check.Positive(D) * t);

    /// <summary>Round tube on its end, mean force: M₀ (20.79 √(D/t) + 11.90), N; D the mean diameter.</summary>
    public static double TubeMean(double σ_0, double D, double t, Working? w = null)
    {
        double M = M_0(σ_0, t), P = M * (20.79 * Math.Sqrt(Check.Positive(D) / t) + 11.90);
        w?.Step("M_0", "fold moment of the wall a metre", "σ_0 t² / 4", M, Dimension.Force, AbramowiczJones, ("σ_0", σ_0, Dimension.Stress), ("t", t, Dimension.Length));
        w?.Step("P_m", "mean force of folding", "M_0 (20.79 √(D / t) + 11.9)", P, Dimension.Force, AbramowiczJones, ("M_0", M, Dimension.Force), ("D", D, Dimension.Length), ("t", t, Dimension.Length));
        return P;
    }

    /// <summary>Round tube on its end, first peak: π D t σ₀, N.</summary>
    public static double TubeSquash(double σ_0, double D, double t, Working? w = null)
    {
        double P = Math.PI * Check.Positive(D) * Check.Positive(t) * Check.Positive(σ_0);
        w?.Step("P_s", "first peak, the whole wall yielding", "π D t σ_0", P, Dimension.Force, Statics, ("D", D, Dimension.Length), ("t", t, Dimension.Length), ("σ_0", σ_0, Dimension.Stress));
        return P;
    }

    /// <summary>Round tube lying between plates at the start: 8 M₀′ l/D, M₀′ = (2/√3) Y t²/4, N.</summary>
    /// <param name="Y">Yield strength, Pa.</param>
    /// <param name="D">Mean diameter, m.</param>
    /// <param name="t">Wall, m.</param>
    /// <param name="l">Length, m.</param>
    /// <param name="wide">Whether 2/√3 is counted, as for a length of several walls.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Flattening(double Y, double D, double t, double l, bool wide = true, Working? w = null)
    {
        double k = wide ? FlatDies.PlaneStrain : 1;
        double P = 8 * k * Check.Positive(Y) * Check.Positive(t) * t / 4 * Check.Positive(l) / Check.Positive(D);
        w?.Step("P_0", "force at the start", "8 k Y t² / 4 · l / D", P, Dimension.Force, DeRuntz,
            ("k", k, Dimension.Number), ("Y", Y, Dimension.Stress), ("t", t, Dimension.Length), ("l", l, Dimension.Length), ("D", D, Dimension.Length));
        return P;
    }

    /// <summary>Rise of that force with the closing: 1/√(1 − (δ/D)²).</summary>
    public static double FlatteningRise(double δOverD) => 1 / Math.Sqrt(1 - Check.Loss(δOverD) * δOverD);

    /// <summary>Box from the side, two webs each with three hinges: 8 M₀′ l/(H sin θ), N.</summary>
    /// <param name="Y">Yield strength, Pa.</param>
    /// <param name="H">Mean height of the webs, m.</param>
    /// <param name="t">Wall, m.</param>
    /// <param name="l">Length, m.</param>
    /// <param name="θ">Lean of the half web, rad, above 0, at most π/2.</param>
    public static double BoxSide(double Y, double H, double t, double l, double θ)
    {
        if (!(θ > 0 && θ <= Math.PI / 2))
            Check.Refuse(nameof(θ), θ, "above 0, at most π/2");
        return 8 * FlatDies.PlaneStrain * M_0(Y, t) * Check.Positive(l) / (Check.Positive(H) * Math.Sin(θ));
    }

    /// <summary>Its mean until it is flat: 4π M₀′ l/H, N.</summary>
    public static double BoxSideMean(double Y, double H, double t, double l) => 4 * Math.PI * FlatDies.PlaneStrain * M_0(Y, t) * Check.Positive(l) / Check.Positive(H);
}
