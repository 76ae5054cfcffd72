using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>
/// How much the place gives where one member ends on another: springs for the ends of the beams that stand for them. In the frame a member's beam ends at the
/// other's face and the rest is rigid; these springs put back what the rest gives.
/// </summary>
/// <remarks>
/// One member runs on through the joint, the other ends on it. The panel where they cross is sheared; the end of the one is bedded on the edge of the other; and
/// the force of the one that runs on, and the shear of a beam that lies over, die away along the joint instead of stopping at its face. Static, elastic, sound
/// welds without play, no stiffeners. How far frames with these springs agree with solid models is set down in docs/solids.md.
/// </remarks>
public static class JointGive
{
    /// <summary>Shear of the panel.</summary>
    public static readonly Citation PanelSource = Citation.Mechanics("a panel z_b × z_c × t in even shear, its turning shared by the two members");

    /// <summary>A bar's end on the edge of another.</summary>
    public static readonly Citation EdgeSource =
        new("W. J. O'Donnell, The additional deflection of a cantilever due to the elasticity of the support, J. Appl. Mech. 27 (1960)", "turning under a moment, plane stress", Standing.FromMemory);

    /// <summary>An end on a flange that lies on its web.</summary>
    public static readonly Citation BedSource = new("M. Hetényi, Beams on Elastic Foundation (1946)", "infinite and half-infinite beam", Standing.FromMemory);

    /// <summary>Bar held between the flanges of a slotted column.</summary>
    public static readonly Citation SlotSource = Citation.Mechanics("bar on two flanges: bending and shear of the length between them");

    /// <summary>How a flange gives along a bar that passes through it.</summary>
    public static readonly Citation BeddingSource = Citation.Practice("each half of the flange held along the slot; fitted to solid models of slotted columns");

    /// <summary>How force and shear die away along a joint.</summary>
    public static readonly Citation FadingSource = Citation.Mechanics("force handed over evenly along the joint; shear falling with the square of the way");

    /// <summary>Turning of a bar's end bedded on a long edge: θ = 16.67 M/(π E t h²).</summary>
    public const double Edge = Math.PI / 16.67;

    /// <summary>Stiffness of one flange along a bar that passes through it, over E t_f.</summary>
    public const double Bedding = 3.4;

    /// <summary>Share of half the joint's depth over which a force, handed over evenly, still stretches: its mean from face to middle.</summary>
    public const double Stretching = 0.75;

    /// <summary>
    /// Share of half the joint's depth over which the shear of a beam over an upright still bends it out of line: the upright pulls hardest at its inner edge, so the
    /// shear falls as (1 − s)², 7/12 on the mean, of which 1/4 is in the turning of the panel already.
    /// </summary>
    public const double ShearingOver = 1.0 / 3;

    /// <summary>The same for a beam lapped on the upright, where the shear falls evenly: 3/4 less the same 1/4.</summary>
    public const double ShearingLapped = 0.5;

    /// <summary>The panel's shear, as the spring at the end of either member: the strain is (M_b + M_c)/2 over G t z_b z_c.</summary>
    /// <param name="t">Thickness of the panel, m.</param>
    /// <param name="zb">Its depth along the member that runs on: between the flanges of the one that ends, m.</param>
    /// <param name="zc">Its width: between the flanges of the one that runs on, m.</param>
    /// <param name="G">Shear modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N·m/rad.</returns>
    public static double Panel(double t, double zb, double zc, double G = 210e9 / 2.6, Working? w = null)
    {
        double S = 2 * Check.Positive(G) * Check.Positive(t) * Check.Positive(zb) * Check.Positive(zc);
        w?.Step("S_p", "panel in shear, for either member", "2 G t z_b z_c", S, Dimension.RotationalStiffness, PanelSource,
            ("G", G, Dimension.Stress), ("t", t, Dimension.Length), ("z_b", zb, Dimension.Length), ("z_c", zc, Dimension.Length));
        return S;
    }

    /// <summary>A bar's end on the edge of another bar.</summary>
    /// <param name="t">Thickness of the bar that runs on, m.</param>
    /// <param name="h">Depth of the bar that ends, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N·m/rad.</returns>
    public static double OnEdge(double t, double h, double E = 210e9, Working? w = null)
    {
        double S = Edge * Check.Positive(E) * Check.Positive(t) * Check.Positive(h) * h;
        w?.Step("S_e", "end bedded on the edge", "π E t h² / 16.67", S, Dimension.RotationalStiffness, EdgeSource,
            ("E", E, Dimension.Stress), ("t", t, Dimension.Length), ("h", h, Dimension.Length));
        return S;
    }

    /// <summary>A flat bar's end on the flange of a column, in line with its web.</summary>
    /// <param name="column">The column.</param>
    /// <param name="h">Depth of the bar, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N·m/rad.</returns>
    /// <remarks>
    /// The same bed as in <see cref="ProfileOnFace"/>, under a rigid end of length h with the flange running on to both sides:
    /// S = k (h³/12 + h²/2λ + h/λ² + 1/λ³).
    /// </remarks>
    public static double OnFlange(FlangeBed column, double h, double E = 210e9, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(column);
        double r = 1 / column.Decay, k = 2 * Check.Positive(E) * column.Web / column.ClearWeb;
        double S = Check.Positive(h) * h * h / 12 + h * h * r / 2 + h * r * r + r * r * r;
        S *= k;
        if (w is not null)
        {
            w.Step("k", "bed of the web, for each metre", "2 E t_w / d", k, Dimension.Stress, FadingSource,
                ("E", E, Dimension.Stress), ("t_w", column.Web, Dimension.Length), ("d", column.ClearWeb, Dimension.Length));
            w.Step("S_e", "end bedded on the flange", "k (h³ / 12 + h² r / 2 + h r² + r³)", S, Dimension.RotationalStiffness, BedSource,
                ("k", k, Dimension.Stress), ("h", h, Dimension.Length), ("r", r, Dimension.Length));
        }

        return S;
    }

    /// <summary>The end of an I, channel or box on the flange of another, its two flanges pressing and pulling the web behind.</summary>
    /// <param name="column">The flanged member that runs on.</param>
    /// <param name="h">Depth of the one that ends, m.</param>
    /// <param name="tf">Its flange, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N·m/rad.</returns>
    /// <remarks>
    /// The column's flange is a beam on the web as an elastic bed. The web hands each force over to the panel's shear evenly across its depth d, so that it is pressed over half of it:
    /// k = 2 E t_w/d for each metre. A line force on a long beam on that bed finds 2/λ of it; the flange that brings the force spreads it by its own thickness.
    /// </remarks>
    public static double ProfileOnFace(FlangeBed column, double h, double tf, double E = 210e9, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(column);
        double z = Check.Positive(Check.Positive(h) - Check.Positive(tf), "lever arm");
        double lambda = column.Decay, b = tf + 2 / lambda, k = 2 * column.Web * b / column.ClearWeb, S = Check.Positive(E) * z * z * k / 2;
        if (w is not null)
        {
            w.Step("z", "lever arm", "h - t_f", z, Dimension.Length, BedSource, ("h", h, Dimension.Length), ("t_f", tf, Dimension.Length));
            w.Step("b_eff", "length of web that takes part", "t_f + 2 / λ", b, Dimension.Length, BedSource,
                ("t_f", tf, Dimension.Length), ("λ", lambda, Dimension.Number));
            w.Step("k", "web pressed, and the same web pulled", "2 t_w b_eff / d", k, Dimension.Length, FadingSource,
                ("b_eff", b, Dimension.Length), ("t_w", column.Web, Dimension.Length), ("d", column.ClearWeb, Dimension.Length));
            w.Step("S_e", "ends of the flanges on the web", "E z² k / 2", S, Dimension.RotationalStiffness, BedSource,
                ("E", E, Dimension.Stress), ("z", z, Dimension.Length), ("k", k, Dimension.Length));
        }

        return S;
    }

    /// <summary>A flat bar on edge passed through slots in both flanges of a column and welded all round at each: the bar between the flanges.</summary>
    /// <param name="z">Between the middles of the flanges, m.</param>
    /// <param name="h">Depth of the bar, m.</param>
    /// <param name="b">Thickness of the bar (all bars side by side), m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="nu">Poisson's ratio.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N·m/rad at the column's face.</returns>
    /// <remarks>
    /// The bar turns against two forces along the column, one in each flange. In the manner of the code, S = E z²/Σ(1/k): the bar bends between the flanges, S = 3EI/z,
    /// k = 3I/z³; the bar, not the web, is the panel in shear, S = G A_s z, k = G A_s/(E z). A web left standing and welded to the bar would stiffen it further and is not counted.
    /// </remarks>
    public static double ThroughSlot(double z, double h, double b, double E = 210e9, double nu = 0.3, Working? w = null)
    {
        Check.Positive(z);
        Check.Positive(h);
        Check.Positive(b);
        Check.Positive(E);
        Check.NotNegative(nu);
        double kb = b * h * h * h / (4 * z * z * z), ks = 5 * b * h / (12 * (1 + nu) * z);
        double S = E * z * z / (1 / kb + 1 / ks);
        if (w is not null)
        {
            Given Z = ("z", z, Dimension.Length), B = ("b", b, Dimension.Length), H = ("h", h, Dimension.Length);
            w.Step("k_b", "bar bending between the flanges", "b h³ / (4 z³)", kb, Dimension.Length, SlotSource, B, H, Z);
            w.Step("k_s", "bar as the panel in shear", "5 b h / (12 (1 + ν) z)", ks, Dimension.Length, SlotSource, B, H, Z, ("ν", nu, Dimension.Number));
            w.Step("S_j", "stiffness of the bar against turning", "E z² / (1 / k_b + 1 / k_s)", S, Dimension.RotationalStiffness, SlotSource,
                ("E", E, Dimension.Stress), Z, ("k_b", kb, Dimension.Length), ("k_s", ks, Dimension.Length));
        }

        return S;
    }

    /// <summary>How the flanges of a slotted column give along the bar: springs at the column's end, along it and against turning.</summary>
    /// <param name="tf">Flange of the column, m.</param>
    /// <param name="z">Between the middles of its flanges, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N/m and N·m/rad.</returns>
    public static (double Along, double Turning) SlotBedding(double tf, double z, double E = 210e9, Working? w = null)
    {
        double k = Bedding * Check.Positive(E) * Check.Positive(tf), along = 2 * k, S = k * Check.Positive(z) * z / 2;
        if (w is not null)
        {
            w.Step("k_e", "one flange along the bar", "3.4 E t_f", k, Dimension.Stiffness, BeddingSource, ("E", E, Dimension.Stress), ("t_f", tf, Dimension.Length));
            w.Step("k_N", "both flanges together", "2 k_e", along, Dimension.Stiffness, SlotSource, ("k_e", k, Dimension.Stiffness));
            w.Step("S_e", "one flange against the other", "k_e z² / 2", S, Dimension.RotationalStiffness, SlotSource,
                ("k_e", k, Dimension.Stiffness), ("z", z, Dimension.Length));
        }

        return (along, S);
    }

    /// <summary>The stretch of the member that carries the force on, from the joint's face to its middle.</summary>
    /// <param name="A">Area that carries it, m².</param>
    /// <param name="h">Depth of the joint along the force, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N/m.</returns>
    public static double Stretch(double A, double h, double E = 210e9, Working? w = null)
    {
        double k = Check.Positive(E) * Check.Positive(A) / (Stretching * Check.Positive(h) / 2);
        w?.Step("k_N", "stretch within the joint", "E A / (0.75 h / 2)", k, Dimension.Stiffness, FadingSource,
            ("E", E, Dimension.Stress), ("A", A, Dimension.Area), ("h", h, Dimension.Length));
        return k;
    }

    /// <summary>The shear of a beam that lies over an upright or is lapped on it, from the upright's inner face to its middle.</summary>
    /// <param name="As">Shear area of the beam, m².</param>
    /// <param name="h">Depth of the upright, m.</param>
    /// <param name="share"><see cref="ShearingOver"/> or <see cref="ShearingLapped"/>.</param>
    /// <param name="G">Shear modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N/m.</returns>
    public static double Shear(double As, double h, double share, double G = 210e9 / 2.6, Working? w = null)
    {
        double k = Check.Positive(G) * Check.Positive(As) / (Check.Positive(share) * Check.Positive(h) / 2);
        w?.Step("k_V", "shear within the joint", "G A_s / (s h / 2)", k, Dimension.Stiffness, FadingSource,
            ("G", G, Dimension.Stress), ("A_s", As, Dimension.Area), ("s", share, Dimension.Number), ("h", h, Dimension.Length));
        return k;
    }
}
