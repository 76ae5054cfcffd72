using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A group of fillet welds, EN 1993-1-8.</summary>
/// <remarks>
/// f_u is the tensile strength of the weaker part joined. Editions differ: EN 1993-1-1:2005 lets S275 count 430 and S355 510 MPa, EN 10025-2
/// guarantees 410 and 470 MPa. The caller's steel table decides; the lower figure is on the safe side. The filler must be at least as
/// strong as the parts. Valid for throats of 3 mm and more, sound welds with full fusion to the root.
/// </remarks>
public static class FilletWeld
{
    /// <summary>Directional method.</summary>
    public static readonly Citation DirectionalSource = new("EN 1993-1-8:2005", "4.5.3.2, eq. 4.1");

    /// <summary>Simplified method.</summary>
    public static readonly Citation SimplifiedSource = new("EN 1993-1-8:2005", "4.5.3.3, eq. 4.2 to 4.4");

    /// <summary>Long lap joints.</summary>
    public static readonly Citation LongSource = new("EN 1993-1-8:2005", "4.11, eq. 4.9");

    private static readonly Citation Statics = Citation.Mechanics("force and moment on a group of lines");

    /// <summary>Least length of a run that may carry load, m: 30 mm or 6 throats; EN 1993-1-8:2005, 4.5.1(2).</summary>
    /// <param name="a">Throat, m.</param>
    public static double LeastLength(double a) => Math.Max(30e-3, 6 * Check.Positive(a));

    /// <summary>Share of the directional resistance used by stresses on the throat, γ_M2 = 1.</summary>
    /// <param name="sigmaT">σ⊥, square to the throat, Pa.</param>
    /// <param name="tauT">τ⊥, in the throat, square to the weld, Pa.</param>
    /// <param name="tauL">τ∥, along the weld, Pa.</param>
    /// <param name="fu">Tensile strength of the weaker part, Pa.</param>
    /// <param name="betaW">Correlation factor β_w.</param>
    public static double Use(double sigmaT, double tauT, double tauL, double fu, double betaW) =>
        Math.Max(Math.Sqrt(sigmaT * sigmaT + 3 * (tauT * tauT + tauL * tauL)) * betaW / fu, Math.Abs(sigmaT) / (0.9 * fu));

    /// <summary>Design shear strength f_vw.d of the simplified method, Pa.</summary>
    /// <param name="fu">Tensile strength of the weaker part, Pa.</param>
    /// <param name="betaW">Correlation factor.</param>
    /// <param name="gammaM2">γ_M2.</param>
    public static double ShearStrength(double fu, double betaW, double gammaM2) =>
        Check.Positive(fu) / (Math.Sqrt(3) * Check.Positive(betaW) * Check.AtLeast(gammaM2, 1));

    /// <summary>Throat of a double fillet, over the plate's thickness, that carries the plate's yield load square to it.</summary>
    /// <param name="fy">Yield strength of the plate, Pa.</param>
    /// <param name="fu">Tensile strength of the weaker part, Pa.</param>
    /// <param name="betaW">Correlation factor.</param>
    /// <param name="factors">Factors; γ_M0 and γ_M2 are used.</param>
    public static double FullStrengthThroat(double fy, double fu, double betaW, PartialFactors factors)
    {
        // Square to the weld the force F/2 a leg puts σ⊥ = τ⊥ = F/(2√2 a) on each throat, so √(σ⊥² + 3 τ⊥²) = F/(√2 a).
        double byMises = Check.Positive(betaW) * factors.M2 * fy / (Math.Sqrt(2) * Check.Positive(fu) * factors.M0);
        double byNormal = factors.M2 * fy / (2 * Math.Sqrt(2) * 0.9 * fu * factors.M0);
        return Math.Max(byMises, byNormal);
    }

    /// <summary>Reduction β_Lw of a lap joint longer than 150 throats; 1 when shorter.</summary>
    /// <param name="Lj">Length of the lap in the direction of the force, m.</param>
    /// <param name="a">Throat, m.</param>
    public static double LongLap(double Lj, double a) => Math.Min(1, 1.2 - 0.2 * Check.Positive(Lj) / (150 * Check.Positive(a)));

    /// <summary>Ram force at which the worst end of any weld of the group breaks, directional method.</summary>
    /// <param name="group">The welds.</param>
    /// <param name="force">Force per newton at the ram, N.</param>
    /// <param name="moment">Moment per newton at the ram, N·m.</param>
    /// <param name="at">Where both act, m.</param>
    /// <param name="fu">Tensile strength of the weaker part, Pa.</param>
    /// <param name="betaW">Correlation factor β_w of its steel.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing acts.</returns>
    /// <exception cref="ArgumentException">The group cannot hold the moment: see <see cref="WeldGroup.Turn"/>.</exception>
    public static Limit? Directional(
        WeldGroup group, Vector force, Vector moment, Vector at, double fu, double betaW, PartialFactors factors, Working? w = null)
    {
        Check.Positive(fu);
        Check.Positive(betaW);
        (WeldSegment segment, Vector point, Vector theta, double u) = Worst(group, force, moment, at, (s, weld) =>
        {
            (double sigmaT, double tauT, double tauL) = Resolve(s, weld);
            return Use(sigmaT, tauT, tauL, fu, betaW);
        });
        if (w is not null && u > 1 / Limit.Farthest)
        {
            Vector s = ShowStress(group, force, moment, at, point, theta, w);
            (double sigmaT, double tauT, double tauL) = Resolve(s, segment);
            Vector n = segment.Normal, t = segment.Along, b = t.Cross(n);
            Component("σ_n", "square to the throat", s, n, sigmaT, "n", w);
            Component("τ_n", "in the throat, square to the weld", s, b, tauT, "b", w);
            Component("τ_l", "along the weld", s, t, tauL, "t", w);
            double mises = Math.Sqrt(sigmaT * sigmaT + 3 * (tauT * tauT + tauL * tauL));
            w.Step("σ_v", "stress compared with f_u / β_w", "√(σ_n² + 3 (τ_n² + τ_l²))", mises, Dimension.Stress, DirectionalSource,
                ("σ_n", sigmaT, Dimension.Stress), ("τ_n", tauT, Dimension.Stress), ("τ_l", tauL, Dimension.Stress));
            w.Step("u", "share of the resistance used by one newton", "max(σ_v β_w / f_u, abs(σ_n) / (0.9 f_u))", u, Dimension.Number, DirectionalSource,
                ("σ_v", mises, Dimension.Stress), ("β_w", betaW, Dimension.Number), ("f_u", fu, Dimension.Stress), ("σ_n", sigmaT, Dimension.Stress));
        }

        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }

    /// <summary>Ram force at which the worst end of any weld breaks, simplified method: the direction of the stress is not looked at.</summary>
    /// <inheritdoc cref="Directional"/>
    public static Limit? Simplified(
        WeldGroup group, Vector force, Vector moment, Vector at, double fu, double betaW, PartialFactors factors, Working? w = null)
    {
        double fvw = ShearStrength(fu, betaW, 1);
        (_, Vector point, Vector theta, double u) = Worst(group, force, moment, at, (s, _) => s.Length / fvw);
        if (w is not null && u > 1 / Limit.Farthest)
        {
            Vector s = ShowStress(group, force, moment, at, point, theta, w);
            w.Step("f_vw", "shear strength of the weld, γ_M2 = 1", "f_u / (√(3) β_w)", fvw, Dimension.Stress, SimplifiedSource,
                ("f_u", fu, Dimension.Stress), ("β_w", betaW, Dimension.Number));
            w.Step("u", "share of the resistance used by one newton", "√(s_x² + s_y² + s_z²) / f_vw", u, Dimension.Number, SimplifiedSource,
                ("s_x", s.X, Dimension.Stress), ("s_y", s.Y, Dimension.Stress), ("s_z", s.Z, Dimension.Stress), ("f_vw", fvw, Dimension.Stress));
        }

        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }

    /// <summary>Stress per throat area on the throat plane of a weld: square to it, in it across, in it along.</summary>
    internal static (double SigmaT, double TauT, double TauL) Resolve(Vector s, WeldSegment weld) =>
        (s.Dot(weld.Normal), s.Dot(weld.Along.Cross(weld.Normal)), s.Dot(weld.Along));

    /// <summary>The end of a weld that uses up most. The stress runs linearly along a weld, so a convex measure is greatest at an end.</summary>
    internal static (WeldSegment Segment, Vector Point, Vector Theta, double Use) Worst(
        WeldGroup group, Vector force, Vector moment, Vector at, Func<Vector, WeldSegment, double> use)
    {
        Acting.Finite(force);
        Acting.Finite(moment);
        Acting.Finite(at);
        Vector theta = group.Turn(group.MomentAtCentroid(force, moment, at), force);
        (WeldSegment, Vector, Vector, double) worst = (group.Segments[0], group.Segments[0].From, theta, 0);
        foreach (WeldSegment weld in group.Segments)
        {
            foreach (Vector point in (ReadOnlySpan<Vector>)[weld.From, weld.To])
            {
                double u = use(force / group.Area + theta.Cross(point - group.Centroid), weld);
                if (u > worst.Item4)
                    worst = (weld, point, theta, u);
            }
        }

        return worst;
    }

    // to a tenth of a millimetre: what is nothing but for rounding is nothing
    private static Given Coordinate(double m) => Remark.Of(Math.Round(m, 4), Dimension.Length);

    internal static Vector ShowStress(
        WeldGroup group, Vector force, Vector moment, Vector at, Vector point, Vector theta, Working w)
    {
        Vector M = group.Times(theta), r = point - group.Centroid;
        Vector s = force / group.Area + theta.Cross(r);
        (double xx, double yy, double zz, double xy, double yz, double zx) = group.Tensor;
        w.Take("A_w", "area of all throats", group.Area, Dimension.Area, WeldGroup.Source);
        w.Note(new Remark("The worst place is an end of a weld, at ({0}, {1}, {2}). The turn θ of the group solves J θ = M about the centroid of the throats; the next three lines prove it.",
            Coordinate(point.X), Coordinate(point.Y), Coordinate(point.Z)));
        Vector acting = group.MomentAtCentroid(force, moment, at);
        w.Take("M_0", "length of the acting moment about the centroid, per newton", acting.Length, Dimension.Moment, Statics);
        w.Take("M_1", "length of the moment that θ answers to", M.Length, Dimension.Moment, Statics);
        Row("M_x", M.X, "J_xx θ_x + J_xy θ_y + J_zx θ_z", ("J_xx", xx), ("J_xy", xy), ("J_zx", zx));
        Row("M_y", M.Y, "J_xy θ_x + J_yy θ_y + J_yz θ_z", ("J_xy", xy), ("J_yy", yy), ("J_yz", yz));
        Row("M_z", M.Z, "J_zx θ_x + J_yz θ_y + J_zz θ_z", ("J_zx", zx), ("J_yz", yz), ("J_zz", zz));
        Stress("s_x", s.X, "F_x / A_w + θ_y r_z - θ_z r_y", ("F_x", force.X), ("θ_y", theta.Y), ("r_z", r.Z), ("θ_z", theta.Z), ("r_y", r.Y));
        Stress("s_y", s.Y, "F_y / A_w + θ_z r_x - θ_x r_z", ("F_y", force.Y), ("θ_z", theta.Z), ("r_x", r.X), ("θ_x", theta.X), ("r_z", r.Z));
        Stress("s_z", s.Z, "F_z / A_w + θ_x r_y - θ_y r_x", ("F_z", force.Z), ("θ_x", theta.X), ("r_y", r.Y), ("θ_y", theta.Y), ("r_x", r.X));
        return s;

        void Row(string symbol, double value, string text, (string, double) a, (string, double) b, (string, double) c) =>
            w.Step(symbol, "moment about the centroid, per newton", text, value, Dimension.Moment, Statics,
                (a.Item1, a.Item2, Dimension.SecondMoment), (b.Item1, b.Item2, Dimension.SecondMoment), (c.Item1, c.Item2, Dimension.SecondMoment),
                ("θ_x", theta.X, Dimension.Number), ("θ_y", theta.Y, Dimension.Number), ("θ_z", theta.Z, Dimension.Number));

        void Stress(string symbol, double value, string text,
            (string, double) f, (string, double) t1, (string, double) r1, (string, double) t2, (string, double) r2) =>
            w.Step(symbol, "force per throat area, per newton", text, value, Dimension.Stress, WeldGroup.Source,
                (f.Item1, f.Item2, Dimension.Force), ("A_w", group.Area, Dimension.Area),
                (t1.Item1, t1.Item2, Dimension.Number), (r1.Item1, r1.Item2, Dimension.Length),
                (t2.Item1, t2.Item2, Dimension.Number), (r2.Item1, r2.Item2, Dimension.Length));
    }

    internal static void Component(string symbol, string meaning, Vector s, Vector d, double value, string letter, Working w) =>
        w.Step(symbol, "stress " + meaning, $"s_x {letter}_x + s_y {letter}_y + s_z {letter}_z", value, Dimension.Stress, WeldSegment.FilletSource,
            ("s_x", s.X, Dimension.Stress), (letter + "_x", d.X, Dimension.Number),
            ("s_y", s.Y, Dimension.Stress), (letter + "_y", d.Y, Dimension.Number),
            ("s_z", s.Z, Dimension.Stress), (letter + "_z", d.Z, Dimension.Number));
}
