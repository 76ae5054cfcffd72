using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A deep bar bent about its strong axis that turns over sideways: lateral-torsional buckling.</summary>
/// <remarks>
/// EN 1993-1-1, 6.3.2.2, general case: λ̄_LT = √(W f_y / M_cr) and the curves of table 6.4, with the elastic modulus, since a
/// press must not take a permanent set. M_cr is stated as F_cr, the ram force at which a perfect bar would tip.
/// </remarks>
public static class Tipping
{
    /// <summary>Reduction for tipping.</summary>
    public static readonly Citation Source = new("EN 1993-1-1:2005", "6.3.2.1 and 6.3.2.2, eq. 6.55 and 6.56, tables 6.3 and 6.4");

    /// <summary>Critical moment between two ends that cannot turn over.</summary>
    public static readonly Citation CriticalSource = new("NCCI SN003b-EN-EU, Elastic critical moment for lateral torsional buckling", "eq. 1, tables 3.1 and 3.2");

    /// <summary>A bar held at its root, pushed at its tip.</summary>
    public static readonly Citation CantileverSource = new("Timoshenko and Gere, Theory of Elastic Stability, 2nd ed.", "6.3, narrow cantilever under an end load");

    private static readonly Citation Height = Citation.Mechanics("energy: the two ways of tipping, taken together, tip no earlier than this");

    /// <summary>C₁ of a force at the middle, ends free to turn in the plane of bending.</summary>
    public const double C1Middle = 1.348;
    /// <summary>C₂ of a force at the middle.</summary>
    public const double C2Middle = 0.630;

    private const double E = 210e9, G = E / 2.6;
    private static readonly double[] C1Ends = [2.55, 2.57, 2.33, 2.05, 1.77, 1.52, 1.31, 1.14, 1.00];

    /// <summary>Whether a section can tip: not solid rounds, round or square tubes, square boxes, nor anything bent about its weaker axis.</summary>
    /// <remarks>EN 1993-1-1, 6.3.2.1(1) and (2).</remarks>
    public static bool CanTip(Shape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return shape switch
        {
            Round or CircularHollow => false,
            Drilled d => CanTip(d.Of),
            _ => shape.Properties.Iy > shape.Properties.Iz * (1 + 1e-9),
        };
    }

    /// <summary>Curve of table 6.4: rolled I by depth over width, everything else d.</summary>
    public static BucklingCurve Curve(Shape shape) => shape switch
    {
        ISection i => i.H / i.B <= 2 ? BucklingCurve.A : BucklingCurve.B,
        Drilled d => Curve(d.Of),
        _ => BucklingCurve.D,
    };

    /// <summary>A T with its stem pushed tips earlier than its stiffness says: AISC 360-16, F9.2, B = −2.3 (d/L) √(I_y/J).</summary>
    public static readonly Citation TeeSource = new("AISC 360-16", "F9.2, eq. F9-10 and F9-12", Standing.FromMemory);

    /// <summary>
    /// What the lopsidedness of a section counts as, in C₂ z_g, m: for a T, whichever way it is bent, 2.3 d √(G/E) / π; 0 for others.
    /// </summary>
    public static double Lopsided(Shape shape) => shape is Tee t ? 2.3 * t.H * Math.Sqrt(G / E) / Math.PI : 0;

    /// <summary>C₁ for end moments alone, straight between the printed values.</summary>
    /// <param name="psi">Smaller over greater end moment, −1 to 1; 1 is a moment that is the same all along.</param>
    public static double EndMoments(double psi)
    {
        if (!(psi is >= -1 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(psi), psi, "must lie between −1 and 1");
        double x = (psi + 1) * 4;
        int i = Math.Min((int)x, 7);
        return C1Ends[i] + (C1Ends[i + 1] - C1Ends[i]) * (x - i);
    }

    /// <summary>Elastic critical moment M_cr between two ends held against turning over, N·m.</summary>
    /// <param name="s">The section.</param>
    /// <param name="L">Length between them, m.</param>
    /// <param name="C1">For the run of the moment.</param>
    /// <param name="C2">For the height of the load.</param>
    /// <param name="zg">How far before the shear centre the load acts that pushes towards it, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Mcr(SectionProperties s, double L, double C1, double C2, double zg, Working? w = null)
    {
        double Ncr = Math.PI * Math.PI * E * Check.Positive(s.Iz) / (Check.Positive(L) * L), h = Check.NotNegative(C2) * Check.Finite(zg);
        double M = Check.Positive(C1) * Ncr * (Math.Sqrt(s.Iw / s.Iz + G * Check.Positive(s.It) / Ncr + h * h) - h);
        w?.Step("N_z", "Euler's force sideways", "π² E I_z / L²", Ncr, Dimension.Force, CriticalSource,
            ("E", E, Dimension.Stress), ("I_z", s.Iz, Dimension.SecondMoment), ("L", L, Dimension.Length));
        w?.Step("M_cr", "elastic critical moment", "C_1 N_z (√(I_w / I_z + G I_t / N_z + (C_2 z_g)²) - C_2 z_g)", M, Dimension.Moment, CriticalSource,
            ("C_1", C1, Dimension.Number), ("N_z", Ncr, Dimension.Force), ("I_w", s.Iw, Dimension.WarpingConstant), ("I_z", s.Iz, Dimension.SecondMoment),
            ("G", G, Dimension.Stress), ("I_t", s.It, Dimension.SecondMoment), ("C_2", C2, Dimension.Number), ("z_g", zg, Dimension.Length));
        return M;
    }

    /// <summary>Force at the tip of a bar held at its root at which it tips, N: a lower bound.</summary>
    /// <param name="s">The section.</param>
    /// <param name="L">From root to force, m.</param>
    /// <param name="zg">How far before the shear centre the force acts that pushes towards it, m, zero or more.</param>
    /// <param name="w">Where to write it down.</param>
    /// <remarks>
    /// With P₀ for a force at the centroid (warping left out) and P_t = G I_t/(z_g L) for turning alone, the energy of the bar is at
    /// least (P/P₀)² and P/P_t of itself, so it cannot tip before (P/P₀)² + P/P_t = 1. Warping of open sections stiffens P_t.
    /// </remarks>
    public static double TipForce(SectionProperties s, double L, double zg, Working? w = null)
    {
        double P0 = 4.013 * Math.Sqrt(E * Check.Positive(s.Iz) * G * Check.Positive(s.It)) / (Check.Positive(L) * L);
        w?.Step("P_0", "force that tips it when it acts at mid-depth", "4.013 √(E I_z G I_t) / L²", P0, Dimension.Force, CantileverSource,
            ("E", E, Dimension.Stress), ("I_z", s.Iz, Dimension.SecondMoment), ("G", G, Dimension.Stress), ("I_t", s.It, Dimension.SecondMoment), ("L", L, Dimension.Length));
        if (!(Check.NotNegative(zg) > 0))
            return P0;
        double It = WarpingTorsion.Cantilever(s, L), Pt = G * It / (zg * L), P = 2 / (1 / Pt + Math.Sqrt(1 / (Pt * Pt) + 4 / (P0 * P0)));
        w?.Take("I_tw", "torsion constant, warping counted", It, Dimension.SecondMoment, WarpingTorsion.Source);
        w?.Step("P_t", "force that would turn it over by twist alone", "G I_tw / (z_g L)", Pt, Dimension.Force, Height,
            ("G", G, Dimension.Stress), ("I_tw", It, Dimension.SecondMoment), ("z_g", zg, Dimension.Length), ("L", L, Dimension.Length));
        w?.Step("P_cr", "force that tips it", "2 / (1 / P_t + √(1 / P_t² + 4 / P_0²))", P, Dimension.Force, Height,
            ("P_t", Pt, Dimension.Force), ("P_0", P0, Dimension.Force));
        return P;
    }

    /// <summary>χ_LT.</summary>
    /// <param name="Fcr">Ram force at which a perfect bar would tip, N.</param>
    /// <param name="M">Greatest moment about y-y along the bar per newton at the ram, N·m.</param>
    /// <param name="Wely">Elastic modulus, m³.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="curve">Curve of table 6.4.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Reduction(double Fcr, double M, double Wely, double fy, BucklingCurve curve, Working? w = null)
    {
        double lambda = Math.Sqrt(Check.Positive(Wely) * Check.Positive(fy) / (Check.Positive(Fcr) * Check.Positive(M))), chi = ColumnBuckling.Chi(lambda, curve);
        if (w is null)
            return chi;
        w.Step("λ_LT", "slenderness λ̄_LT", "√(W_ely f_y / (F_cr M))", lambda, Dimension.Number, Source,
            ("W_ely", Wely, Dimension.SectionModulus), ("f_y", fy, Dimension.Stress), ("F_cr", Fcr, Dimension.Force), ("M", M, Dimension.Moment));
        if (lambda <= 0.2)
        {
            w.Take("χ_LT", "reduction for tipping: none, λ̄_LT is at most 0.2", 1, Dimension.Number, Source);
            return chi;
        }

        double alpha = ColumnBuckling.Alpha(curve), phi = 0.5 * (1 + alpha * (lambda - 0.2) + lambda * lambda);
        w.Step("Φ_LT", "helper of the reduction", "0.5 (1 + α (λ_LT - 0.2) + λ_LT²)", phi, Dimension.Number, Source,
            ("α", alpha, Dimension.Number), ("λ_LT", lambda, Dimension.Number));
        w.Step("χ_LT", $"reduction for tipping, curve {curve.ToString().ToLowerInvariant()}", "min(1, 1 / (Φ_LT + √(Φ_LT² - λ_LT²)))", chi, Dimension.Number, Source,
            ("Φ_LT", phi, Dimension.Number), ("λ_LT", lambda, Dimension.Number));
        return chi;
    }

    /// <summary>Ram force at which the bar tips, moments about both axes counted; a pull along it is not counted in its favour.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="s">The section.</param>
    /// <param name="chi">χ_LT.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M1 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit; null where the bar yields before it tips (χ_LT = 1) or nothing bends it.</returns>
    public static Limit? Tips(Actions a, SectionProperties s, double chi, double fy, PartialFactors factors, Working? w = null)
    {
        Acting.Finite(a);
        if (!(chi is > 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(chi), chi, "must be above 0 and at most 1");
        if (chi >= 1)
            return null;
        double u = Math.Abs(a.My) / (chi * Check.Positive(s.Wely) * Check.Positive(fy)) + Math.Abs(a.Mz) / (Check.Positive(s.Welz) * fy);
        w?.Step("u", "share of the resistance used by one newton", "abs(M_y) / (χ_LT W_ely f_y) + abs(M_z) / (W_elz f_y)", u, Dimension.Number, Source,
            ("M_y", a.My, Dimension.Moment), ("χ_LT", chi, Dimension.Number), ("W_ely", s.Wely, Dimension.SectionModulus), ("f_y", fy, Dimension.Stress),
            ("M_z", a.Mz, Dimension.Moment), ("W_elz", s.Welz, Dimension.SectionModulus));
        return Limit.FromUse(u, factors.M1, factors.Load, w);
    }
}
