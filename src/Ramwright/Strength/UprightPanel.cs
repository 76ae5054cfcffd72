using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>The end of a beam that is welded to the face of an upright or column.</summary>
/// <param name="Lever">Between the middles of its flanges z, m; two thirds of the depth of a bar.</param>
/// <param name="Bearing">Length on which one flange, or half a bar, presses with its welds, m.</param>
/// <param name="Spread">How far the upright's flange and root spread it, in (t_f + r): 5 between flanges, 2.5 beside a free end or a half that pulls the other way.</param>
/// <param name="Flange">Thickness of its flange, m; null of a bar.</param>
/// <param name="Width">Width of its flange, m.</param>
/// <param name="Fy">Its yield strength, Pa.</param>
public sealed record BeamEnd(double Lever, double Bearing, double Spread, double? Flange, double Width, double Fy)
{
    /// <summary>z, m.</summary>
    public double Lever { get; init; } = Check.Positive(Lever);
    /// <summary>Length that presses, m.</summary>
    public double Bearing { get; init; } = Check.Positive(Bearing);
    /// <summary>Spread, in (t_f + r).</summary>
    public double Spread { get; init; } = Check.Positive(Spread);
    /// <summary>Yield strength, Pa.</summary>
    public double Fy { get; init; } = Check.Positive(Fy);
}

/// <summary>Plates welded in between an upright's flanges, on both sides of its web, in line with a beam's flanges. They leave the panel's shear as it is.</summary>
/// <param name="Column">The upright as a web between flanges.</param>
/// <param name="T">Thickness of each plate, m.</param>
/// <param name="Outstand">Width of each plate from the web, less the corner cut off for the root, m.</param>
public sealed record PanelStiffener(PressedBeam Column, double T, double Outstand)
{
    /// <summary>Thickness, m.</summary>
    public double T { get; init; } = Check.Positive(T);
    /// <summary>Width, m.</summary>
    public double Outstand { get; init; } = Check.Positive(Outstand);
}

/// <summary>The web and flange of an upright where a beam's flanges push and pull on it.</summary>
/// <remarks>
/// EN 1993-1-8 components of a welded joint, one beam on one side (β = 1): the panel in shear, the web pushed, the web pulled, the flange
/// bent. k_wc is taken as 1: in a press the upright is pulled.
/// </remarks>
public static class UprightPanel
{
    /// <summary>Components.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "6.2.6.1 to 6.2.6.4 and 4.10", Standing.FromMemory);

    /// <summary>Plates thinner than the beam's flange.</summary>
    public static readonly Citation StiffenerSource = Citation.Mechanics("sum of what flange and plates carry alone; no less can be carried");

    private const double E = 210e9;

    /// <summary>Shear resistance of the panel, N.</summary>
    public static double Shear(JointColumn c, double fy, Working? w = null)
    {
        double V = 0.9 * Check.Positive(fy) * c.ShearArea / Math.Sqrt(3);
        w?.Step("V_wp", "panel of the web in shear", "0.9 f_y A_vc / √(3)", V, Dimension.Force, Source,
            ("f_y", fy, Dimension.Stress), ("A_vc", c.ShearArea, Dimension.Area));
        return V;
    }

    /// <summary>Resistance of the web against one flange pushing or pulling, N, without stiffeners: the push governs.</summary>
    public static double Web(JointColumn c, BeamEnd end, double fy, Working? w = null)
    {
        double b = end.Bearing + end.Spread * (c.Flange + c.Root);
        double omega = 1 / Math.Sqrt(1 + 1.3 * Math.Pow(b * c.Web / c.ShearArea, 2));
        double lambda = 0.932 * Math.Sqrt(b * c.StraightWeb * Check.Positive(fy) / (E * c.Web * c.Web));
        double rho = lambda <= 0.72 ? 1 : (lambda - 0.2) / (lambda * lambda), R = omega * rho * b * c.Web * fy;
        if (w is not null)
        {
            w.Step("b_eff", "length of web that takes part", "b_s + s (t_fc + r_c)", b, Dimension.Length, Source,
                ("b_s", end.Bearing, Dimension.Length), ("s", end.Spread, Dimension.Number), ("t_fc", c.Flange, Dimension.Length), ("r_c", c.Root, Dimension.Length));
            Given be = ("b_eff", b, Dimension.Length), tw = ("t_wc", c.Web, Dimension.Length), f = ("f_y", fy, Dimension.Stress);
            w.Step("ω", "for the shear in the panel", "1 / √(1 + 1.3 (b_eff t_wc / A_vc)²)", omega, Dimension.Number, Source, be, tw, ("A_vc", c.ShearArea, Dimension.Area));
            w.Step("λ_p", "slenderness of the web", "0.932 √(b_eff d_wc f_y / (E t_wc²))", lambda, Dimension.Number, Source,
                be, ("d_wc", c.StraightWeb, Dimension.Length), f, ("E", E, Dimension.Stress), tw);
            if (lambda <= 0.72)
                w.Take("ρ", "for its buckling: none, λ̄_p is at most 0.72", 1, Dimension.Number, Source);
            else
                w.Step("ρ", "for its buckling", "(λ_p - 0.2) / λ_p²", rho, Dimension.Number, Source, ("λ_p", lambda, Dimension.Number));
            w.Step("F_wc", "web under one flange", "ω ρ b_eff t_wc f_y", R, Dimension.Force, Source,
                ("ω", omega, Dimension.Number), ("ρ", rho, Dimension.Number), be, tw, f);
        }

        return R;
    }

    /// <summary>Resistance of the upright's flange against one beam flange pulling at it, N; infinity of a bar in line with the web.</summary>
    public static double Flange(JointColumn c, BeamEnd end, double fy, Working? w = null)
    {
        if (end.Flange is not { } tfb)
            return double.PositiveInfinity;
        double k = Math.Min(1, c.Flange * Check.Positive(fy) / (Check.Positive(tfb) * end.Fy));
        double b = Math.Min(c.Web + 2 * c.Root + 7 * k * c.Flange, Check.Positive(end.Width)), R = b * tfb * end.Fy;
        w?.Step("k", "flange of the upright over flange of the beam", "min(1, t_fc f_y / (t_fb f_yb))", k, Dimension.Number, Source,
            ("t_fc", c.Flange, Dimension.Length), ("f_y", fy, Dimension.Stress), ("t_fb", tfb, Dimension.Length), ("f_yb", end.Fy, Dimension.Stress));
        w?.Step("b_f", "width of the beam's flange that pulls", "min(t_wc + 2 r_c + 7 k t_fc, b_b)", b, Dimension.Length, Source,
            ("t_wc", c.Web, Dimension.Length), ("r_c", c.Root, Dimension.Length), ("k", k, Dimension.Number), ("t_fc", c.Flange, Dimension.Length), ("b_b", end.Width, Dimension.Length));
        w?.Step("F_fc", "flange of the upright bent by it", "b_f t_fb f_yb", R, Dimension.Force, Source,
            ("b_f", b, Dimension.Length), ("t_fb", tfb, Dimension.Length), ("f_yb", end.Fy, Dimension.Stress));
        return R;
    }

    /// <summary>The same where plates stand behind the flange: they take what they can, up to the beam's whole flange.</summary>
    private static double StiffenedFlange(double flange, PanelStiffener plates, BeamEnd end, double fy, Working? w)
    {
        if (end.Flange is not { } tfb)
            return flange;
        double R = Math.Min(flange + 2 * plates.Outstand * plates.T * fy, Math.Max(flange, end.Width * tfb * end.Fy));
        w?.Step("F_fs", "flange of the upright with the plates behind it", "min(F_fc + 2 b_s t_s f_y, max(F_fc, b_b t_fb f_yb))", R, Dimension.Force, StiffenerSource,
            ("F_fc", flange, Dimension.Force), ("b_s", plates.Outstand, Dimension.Length), ("t_s", plates.T, Dimension.Length), ("f_y", fy, Dimension.Stress),
            ("b_b", end.Width, Dimension.Length), ("t_fb", tfb, Dimension.Length), ("f_yb", end.Fy, Dimension.Stress));
        return R;
    }

    /// <summary>Force of one flange of the beam per newton at the ram.</summary>
    /// <inheritdoc cref="Gives"/>
    public static double OfFlange(double N, double M, BeamEnd end, Working? w = null)
    {
        double F = Math.Abs(Check.Finite(M)) / end.Lever + Math.Abs(Check.Finite(N)) / 2;
        w?.Step("F_f", "force of one flange per newton", "abs(M) / z + abs(N) / 2", F, Dimension.Force, Source,
            ("M", M, Dimension.Moment), ("z", end.Lever, Dimension.Length), ("N", N, Dimension.Force));
        return F;
    }

    /// <summary>What web or flange carry under one flange of the beam without plates, the lesser, N, γ_M0 = 1.</summary>
    public static double Bare(JointColumn c, BeamEnd end, double fy, Working? w = null)
    {
        double web = Web(c, end, fy, w), flange = Flange(c, end, fy, w), R = Math.Min(web, flange);
        w?.Step("F_bare", "the lesser of web and flange without the plates", "min(F_wc, F_fc)", R, Dimension.Force, Source,
            ("F_wc", web, Dimension.Force), ("F_fc", flange, Dimension.Force));
        return R;
    }

    /// <summary>Ram force at which the upright gives way at the joint.</summary>
    /// <param name="N">Force along the beam per newton at the ram.</param>
    /// <param name="M">Moment at the upright's face per newton at the ram, N·m.</param>
    /// <param name="c">The upright.</param>
    /// <param name="end">The beam's end.</param>
    /// <param name="fy">Yield strength of the upright, Pa.</param>
    /// <param name="stiffener">Plates beside the web behind both flanges; as thick as these, the panel's shear alone counts. Null for none.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Gives(double N, double M, JointColumn c, BeamEnd end, double fy, PanelStiffener? stiffener, PartialFactors factors, Working? w = null)
    {
        double V = Shear(c, fy, w), u = Math.Abs(Check.Finite(M)) / end.Lever / V, F = OfFlange(N, M, end, w);
        if (stiffener is { } full && end.Flange is { } tfb && full.T >= tfb * (1 - 1e-9))
        {
            w?.Step("u", "share used by one newton", "abs(M) / (z V_wp)", u, Dimension.Number, Source,
                ("M", M, Dimension.Moment), ("z", end.Lever, Dimension.Length), ("V_wp", V, Dimension.Force));
            return Limit.FromUse(u, factors.M0, factors.Load, w);
        }

        double web = Web(c, end, fy, w), flange = Flange(c, end, fy, w);
        if (stiffener is { } plates)
        {
            web = StiffenedWeb.Resistance(plates.Column, plates.T, plates.Outstand, bothSides: true, web, w);
            flange = StiffenedFlange(flange, plates, end, fy, w);
        }

        double least = Math.Min(web, flange);
        u = Math.Max(u, F / least);
        w?.Step("u", "share used by one newton, the worst of them", "max(abs(M) / (z V_wp), F_f / F_R)", u, Dimension.Number, Source,
            ("M", M, Dimension.Moment), ("z", end.Lever, Dimension.Length), ("V_wp", V, Dimension.Force), ("F_f", F, Dimension.Force), ("F_R", least, Dimension.Force));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
