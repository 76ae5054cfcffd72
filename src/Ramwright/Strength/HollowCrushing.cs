using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A rectangular hollow section pressed on one face.</summary>
/// <remarks>
/// Rules for a hollow brace standing square on a hollow chord: a foot narrower than the face dents it, one as wide presses on the side
/// walls; in between straight. The pressed face is taken as used to its yield by bending (n = 1).
/// </remarks>
public static class HollowCrushing
{
    /// <summary>T joints of rectangular hollow sections.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "7.5.2, table 7.11, T joint, with 7.5.2.1", Standing.FromMemory);

    /// <summary>Resistance, N, γ_M5 = 1.</summary>
    /// <param name="s">The section; its face of width b is pressed.</param>
    /// <param name="along">Length of the foot along it, m.</param>
    /// <param name="across">Width of the foot across it, m; no more than the face counts.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Resistance(RectangularHollow s, double along, double across, double fy, Working? w = null)
    {
        const double E = 210e9;
        double beta = Math.Clamp(Check.NotNegative(across) / s.B, 0.1, 1), t = s.T, l = Check.NotNegative(along);
        double kn = Math.Min(1, Math.Max(0, 1.3 - 0.4 / beta)), at = Math.Min(beta, 0.85);
        double face = kn * Check.Positive(fy) * t * t / (1 - at) * (2 * l / s.B + 4 * Math.Sqrt(1 - at));
        double lambda = 3.46 * (s.H / t - 2) / (Math.PI * Math.Sqrt(E / fy)), chi = ColumnBuckling.Chi(lambda, BucklingCurve.A);
        double walls = kn * chi * fy * t * (2 * l + 10 * t), part = Math.Max(0, (beta - 0.85) / 0.15), R = face + part * (walls - face);
        if (w is not null)
        {
            Given k = ("k_n", kn, Dimension.Number), f = ("f_y", fy, Dimension.Stress), T = ("t", t, Dimension.Length), L = ("l", l, Dimension.Length);
            w.Step("β", "width of the foot over the face; between 0.1 and 1", "min(1, max(0.1, b_1 / b))", beta, Dimension.Number, Source,
                ("b_1", across, Dimension.Length), ("b", s.B, Dimension.Length));
            w.Step("k_n", "for the bending stress in the face", "min(1, max(0, 1.3 - 0.4 / β))", kn, Dimension.Number, Source, ("β", beta, Dimension.Number));
            w.Step("F_1", "denting of the face", "k_n f_y t² / (1 - β_1) · (2 l / b + 4 √(1 - β_1))", face, Dimension.Force, Source,
                k, f, T, L, ("b", s.B, Dimension.Length), ("β_1", at, Dimension.Number));
            w.Step("λ", "slenderness of a side wall", "3.46 (h / t - 2) / (π √(E / f_y))", lambda, Dimension.Number, Source,
                ("h", s.H, Dimension.Length), T, ("E", E, Dimension.Stress), f);
            w.Take("χ", "its reduction, curve a", chi, Dimension.Number, ColumnBuckling.CurveSource);
            w.Step("F_2", "crushing of the side walls", "k_n χ f_y t (2 l + 10 t)", walls, Dimension.Force, Source, k, ("χ", chi, Dimension.Number), f, T, L);
            w.Step("F_R", "resistance, straight between β 0.85 and 1", "F_1 + max(0, (β - 0.85) / 0.15) (F_2 - F_1)", R, Dimension.Force, Source,
                ("F_1", face, Dimension.Force), ("F_2", walls, Dimension.Force), ("β", beta, Dimension.Number));
        }

        return R;
    }
}
