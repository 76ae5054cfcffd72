using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A rectangular hollow section pressed on one face.</summary>
/// <remarks>
/// Rules for a hollow brace standing square on a hollow chord: a foot narrower than the face dents it, one as wide presses on the side
/// walls; in between straight. A foot under a quarter of the face lies outside the rules: what a quarter carries is cut down in
/// proportion, as far as a tenth, below which it is less than the yield lines round a point carry (4 π m_p = π f_y t²).
/// </remarks>
public static class HollowCrushing
{
    /// <summary>T joints of rectangular hollow sections.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "7.5.2, table 7.11, T joint, with 7.5.2.1", Standing.FromMemory);

    private const double Narrowest = 0.25;

    /// <summary>Resistance where the face is not bent, N, γ_M5 = 1, k_n = 1.</summary>
    /// <param name="s">The section; its face of width b is pressed.</param>
    /// <param name="along">Length of the foot along it, m.</param>
    /// <param name="across">Width of the foot across it, m; no more than the face counts.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Resistance(RectangularHollow s, double along, double across, double fy, Working? w = null)
    {
        const double E = 210e9;
        double beta = Beta(s, across), t = s.T, l = Check.NotNegative(along), at = Math.Clamp(beta, Narrowest, 0.85);
        double face = Math.Min(1, beta / Narrowest) * Check.Positive(fy) * t * t / (1 - at) * (2 * l / s.B + 4 * Math.Sqrt(1 - at));
        double lambda = 3.46 * (s.H / t - 2) / (Math.PI * Math.Sqrt(E / fy)), chi = ColumnBuckling.Chi(lambda, BucklingCurve.A);
        double walls = chi * fy * t * (2 * l + 10 * t), part = Math.Max(0, (beta - 0.85) / 0.15), R = face + part * (walls - face);
        if (w is not null)
        {
            Given f = ("f_y", fy, Dimension.Stress), T = ("t", t, Dimension.Length), L = ("l", l, Dimension.Length), b = ("β", beta, Dimension.Number);
            w.Step("β", "width of the foot over the face; between 0.1 and 1", "min(1, max(0.1, b_1 / b))", beta, Dimension.Number, Source,
                ("b_1", across, Dimension.Length), ("b", s.B, Dimension.Length));
            w.Step("F_1", "denting of the face that is not bent", "min(1, β / 0.25) f_y t² / (1 - β_1) · (2 l / b + 4 √(1 - β_1))", face, Dimension.Force, Source,
                b, f, T, L, ("b", s.B, Dimension.Length), ("β_1", at, Dimension.Number));
            w.Step("λ", "slenderness of a side wall", "3.46 (h / t - 2) / (π √(E / f_y))", lambda, Dimension.Number, Source,
                ("h", s.H, Dimension.Length), T, ("E", E, Dimension.Stress), f);
            w.Take("χ", "its reduction, curve a", chi, Dimension.Number, ColumnBuckling.CurveSource);
            w.Step("F_2", "crushing of the side walls", "χ f_y t (2 l + 10 t)", walls, Dimension.Force, Source, ("χ", chi, Dimension.Number), f, T, L);
            w.Step("F_R", "resistance, straight between β 0.85 and 1", "F_1 + max(0, (β - 0.85) / 0.15) (F_2 - F_1)", R, Dimension.Force, Source,
                ("F_1", face, Dimension.Force), ("F_2", walls, Dimension.Force), b);
        }

        return R;
    }

    /// <summary>Ram force at which the face dents or the walls crush, bent as they are.</summary>
    /// <param name="s">The section; its face of width b is pressed.</param>
    /// <param name="along">Length of the foot along it, m.</param>
    /// <param name="across">Width of the foot across it, m; no more than the face counts.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="share">Force on the face per newton at the ram, either sign.</param>
    /// <param name="eta1">Share of the yield strength that bending and push use there per newton.</param>
    /// <param name="factors">Factors; γ_M1 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <remarks>The rule's k_n = 1.3 − 0.4 n / β, at most 1, falls with the ram force F itself, as n = η₁ F; solved for F.</remarks>
    public static Limit? Crushes(
        RectangularHollow s, double along, double across, double fy, double share, double eta1, PartialFactors factors, Working? w = null)
    {
        double beta = Math.Max(Narrowest, Beta(s, across)), f = Math.Abs(Check.Finite(share)), R = Resistance(s, along, across, fy, w);
        double eta2 = f / R, u = Math.Max(eta2, (eta2 + 0.4 * Check.NotNegative(eta1) / beta) / 1.3);
        w?.Step("η_2", "share of the resistance used by one newton", "f / F_R", eta2, Dimension.Number, Source, ("f", f, Dimension.Force), ("F_R", R, Dimension.Force));
        w?.Step("u", "the same with the bending there: k_n = 1.3 − 0.4 n / β, at most 1", "max(η_2, (η_2 + 0.4 η_1 / β_n) / 1.3)", u, Dimension.Number, Source,
            ("η_2", eta2, Dimension.Number), ("η_1", eta1, Dimension.Number), ("β_n", beta, Dimension.Number));
        return Limit.FromUse(u, factors.M1, factors.Load, w);
    }

    private static double Beta(RectangularHollow s, double across) => Math.Clamp(Check.NotNegative(across) / s.B, 0.1, 1);
}
