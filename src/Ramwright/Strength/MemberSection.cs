using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A member's cross-section under everything that acts on it at one station.</summary>
/// <remarks>
/// A press must not take a permanent set, so a section <b>gives</b> where its worst edge first yields
/// (<see cref="Yield"/>); the plastic reserve beyond that is written into the working and never counted on.
/// Residual stress, local bearing and the peaks beside holes are not in it.
/// </remarks>
public static class MemberSection
{
    /// <summary>First yield: von Mises at the worst edge, elastic section.</summary>
    public static readonly Citation YieldSource = new("EN 1993-1-1:2005", "6.2.1(5), eq. 6.1");

    /// <summary>Plastic section, linear sum, weakened by shear above half the shear resistance.</summary>
    public static readonly Citation PlasticSource = new("EN 1993-1-1:2005", "6.2.1(7), eq. 6.2, and 6.2.8, eq. 6.29");

    private static readonly Citation Statics = Citation.Mechanics("stress of a straight beam");

    /// <summary>Ram force at which the worst edge of the section first yields.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="s">The section.</param>
    /// <param name="fy">Yield strength, Pa, above zero.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="sectionClass">Class of the section at this station; class 4 is refused.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing acts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Class 4, a strength or property not above zero, an action not finite.</exception>
    /// <remarks>
    /// Conservative in two ways: the direct stress is taken at the four corners of the box around the section (exact for flats,
    /// boxes and I; up to 1.41 times too high for a round bar bent both ways at once), and the mean shear stress V/A_v with the
    /// torsion stress is taken to act there too, though at the very edge shear from V vanishes. The peak of shear
    /// in the middle of a section (1.5 V/A in a flat) is not looked for; EN 1993-1-1, 6.2.6(2) works with the mean as well.
    /// </remarks>
    public static Limit? Yield(
        Actions a, SectionProperties s, double fy, PartialFactors factors,
        SectionClass sectionClass = SectionClass.Three, Working? w = null)
    {
        Acting.Finite(a);
        Check.Positive(fy);
        if (sectionClass == SectionClass.Four)
        {
            throw new ArgumentOutOfRangeException(nameof(sectionClass), sectionClass,
                "a class 4 section buckles locally before it yields; choose thicker plates");
        }

        double tau = MeanShear(a, s);
        (double sigma, double y, double z) = WorstEdge(a, s);
        double sigmaV = Math.Sqrt(sigma * sigma + 3 * tau * tau);
        double u = sigmaV / fy;
        if (w is not null && u > 1 / Limit.Farthest)
        {
            EdgeStep(a, s, sigma, y, z, w);
            ShearStep(a, s, tau, w);
            w.Step("σ_v", "von Mises stress, per newton", "√(σ² + 3 τ²)", sigmaV, Dimension.Stress, YieldSource,
                ("σ", sigma, Dimension.Stress), ("τ", tau, Dimension.Stress));
            w.Step("u", "share of the yield strength used by one newton", "σ_v / f_y", u, Dimension.Number, YieldSource,
                ("σ_v", sigmaV, Dimension.Stress), ("f_y", fy, Dimension.Stress));
        }

        Limit? limit = Limit.FromUse(u, factors.M0, factors.Load, w);
        if (w is not null && limit is not null && sectionClass <= SectionClass.Two &&
            Plastic(a, s, fy, factors) is { } plastic)
        {
            w.Note($"The whole section would be plastic at {plastic.GivesAt / limit.Value.GivesAt:0.00} times this ram force; " +
                "that reserve bends the press for good and is not counted.");
        }

        return limit;
    }

    /// <summary>Ram force at which the whole section is plastic; sections of class 1 or 2 only.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="s">The section.</param>
    /// <param name="fy">Yield strength, Pa, above zero.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing acts.</returns>
    /// <remarks>
    /// With m the linear sum N/N_pl + M_y/M_pl,y + M_z/M_pl,z and v = V/V_pl, both per newton, the multiplier solves
    /// λm = 1 − ρ, ρ = (2λv − 1)² where λv exceeds 0.5: λ = (4v − m)/(4v²), else λ = 1/m. The weakening ρ is applied to the whole section, not only
    /// to its shear area, which is conservative. v adds the two shears and the torsion.
    /// </remarks>
    public static Limit? Plastic(Actions a, SectionProperties s, double fy, PartialFactors factors, Working? w = null)
    {
        Acting.Finite(a);
        Check.Positive(fy);
        double m = Math.Abs(a.N) / (s.A * fy) + Math.Abs(a.My) / (s.Wply * fy) + Math.Abs(a.Mz) / (s.Wplz * fy);
        double tau = MeanShear(a, s);
        double v = Math.Sqrt(3) * tau / fy;
        if (m < 1 / Limit.Farthest && v < 1 / Limit.Farthest)
            return null;

        bool weakened = m < 2 * v;
        double u = weakened ? 4 * v * v / (4 * v - m) : m;
        if (w is not null)
        {
            w.Step("m", "share of the plastic resistance used by one newton", "abs(N) / (A f_y) + abs(M_y) / (W_ply f_y) + abs(M_z) / (W_plz f_y)",
                m, Dimension.Number, PlasticSource,
                ("N", a.N, Dimension.Force), ("A", s.A, Dimension.Area), ("f_y", fy, Dimension.Stress),
                ("M_y", a.My, Dimension.Moment), ("W_ply", s.Wply, Dimension.SectionModulus),
                ("M_z", a.Mz, Dimension.Moment), ("W_plz", s.Wplz, Dimension.SectionModulus));
            ShearStep(a, s, tau, w);
            w.Step("v", "share of the shear resistance used by one newton", "√(3) τ / f_y", v, Dimension.Number, PlasticSource,
                ("τ", tau, Dimension.Stress), ("f_y", fy, Dimension.Stress));
            if (weakened)
            {
                w.Step("u", "share used, shear above half its resistance", "4 v² / (4 v - m)", u, Dimension.Number, PlasticSource,
                    ("v", v, Dimension.Number), ("m", m, Dimension.Number));
            }
            else
            {
                w.Step("u", "share used, shear below half its resistance", "m", u, Dimension.Number, PlasticSource,
                    ("m", m, Dimension.Number));
            }
        }

        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }

    private static double Direct(Actions a, SectionProperties s, double y, double z) =>
        a.N / Check.Positive(s.A) + a.My * z / Check.Positive(s.Iy) - a.Mz * y / Check.Positive(s.Iz);

    /// <summary>The corner of the box around the section with the greatest direct stress.</summary>
    internal static (double Sigma, double Y, double Z) WorstEdge(Actions a, SectionProperties s)
    {
        (double Sigma, double Y, double Z) worst = default;
        foreach (double z in (ReadOnlySpan<double>)[s.Top, -s.Bottom])
        {
            foreach (double y in (ReadOnlySpan<double>)[s.Right, -s.Left])
            {
                double at = Direct(a, s, y, z);
                if (Math.Abs(at) > Math.Abs(worst.Sigma))
                    worst = (at, y, z);
            }
        }

        return worst;
    }

    internal static void EdgeStep(Actions a, SectionProperties s, double sigma, double y, double z, Working w, string symbol = "σ") =>
        w.Step(symbol, "direct stress at the worst edge, per newton", "N / A + M_y z / I_y - M_z y / I_z", sigma,
            Dimension.Stress, Statics,
            ("N", a.N, Dimension.Force), ("A", s.A, Dimension.Area),
            ("M_y", a.My, Dimension.Moment), ("z", z, Dimension.Length), ("I_y", s.Iy, Dimension.SecondMoment),
            ("M_z", a.Mz, Dimension.Moment), ("y", y, Dimension.Length), ("I_z", s.Iz, Dimension.SecondMoment));

    internal static double MeanShear(Actions a, SectionProperties s) =>
        Math.Abs(a.Vy) / Check.Positive(s.Avy) + Math.Abs(a.Vz) / Check.Positive(s.Avz) + Math.Abs(a.T) / Check.Positive(s.Wt);

    internal static void ShearStep(Actions a, SectionProperties s, double tau, Working w, string symbol = "τ") =>
        w.Step(symbol, "mean shear stress and torsion together, per newton", "abs(V_y) / A_vy + abs(V_z) / A_vz + abs(T) / W_t", tau,
            Dimension.Stress, Statics,
            ("V_y", a.Vy, Dimension.Force), ("A_vy", s.Avy, Dimension.Area),
            ("V_z", a.Vz, Dimension.Force), ("A_vz", s.Avz, Dimension.Area),
            ("T", a.T, Dimension.Moment), ("W_t", s.Wt, Dimension.SectionModulus));
}
