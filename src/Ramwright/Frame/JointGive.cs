using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>How much the joint between an arm and a column turns: the spring to put at the arm's end, at the column's face.</summary>
/// <remarks>
/// In the frame the arm starts at the column's face and the column at the arm's edges, joined to the node by rigid arms; this spring between the arm
/// and its rigid arm is then what the joint gives. Rigid joints understate the opening of an open-front press by about a third, centre lines
/// overstate it by about a half. Static, elastic, sound welds with no play; initial stiffness, good up to two thirds of the joint's strength. A column without
/// stiffeners, bent about its strong axis, one arm on one side (β = 1). Against plane-stress models of fourteen open-front frames (arms 0.5 to 1.5 column depths
/// deep) the opening of the dies came out within 10 %, except a bar half as deep as its column, through a slot: 19 % too much. Give of the flanges across
/// the column, seen only in three dimensions, is not in those models. Treat the spring itself as good to ±30 %.
/// </remarks>
public static class JointGive
{
    /// <summary>Components and how they add.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "6.3.1, eq. 6.27, and table 6.11", Standing.FromMemory);

    /// <summary>Flat bar on a column's face: k = 0.21 t_w h/z, fitted.</summary>
    public static readonly Citation FlatSource = Citation.Practice("fitted to plane-stress models of a flat bar on the face of an H column");

    /// <summary>Bar held between the flanges of a slotted column.</summary>
    public static readonly Citation SlotSource = Citation.Mechanics("bar on two flanges: bending and shear of the length between them");

    /// <summary>How a fillet gives in shear.</summary>
    public static readonly Citation BeddingSource = Citation.Practice("a fillet gives about a quarter of E per length and slip");

    /// <summary>Part of E t_w h z that a web under a flat bar keeps: shear of the panel and its pressing and pulling together.</summary>
    public const double FacePanel = 0.21;

    /// <summary>Stiffness of a fillet in shear, over E times its length.</summary>
    public const double Bedding = 0.25;

    /// <summary>An I or H beam as an arm, its flanges welded to the column's flange.</summary>
    /// <param name="column">The column.</param>
    /// <param name="h">Depth of the arm, m.</param>
    /// <param name="tf">Its flange, m.</param>
    /// <param name="a">Throat of the weld of its flanges, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N·m/rad at the column's face.</returns>
    /// <remarks>Components: k₁ web panel in shear, k₂ web under the pressed flange, k₃ web under the pulled flange.</remarks>
    public static double ProfileOnFace(JointColumn column, double h, double tf, double a, double E = 210e9, Working? w = null)
    {
        double z = Check.Positive(Check.Positive(h) - Check.Positive(tf), "lever arm");
        double bearing = tf + 2 * Math.Sqrt(2) * Check.NotNegative(a);
        Check.Positive(E);
        double beff = bearing + 5 * (column.Flange + column.Root), dc = column.StraightWeb;
        double k1 = 0.38 * column.ShearArea / z, k2 = 0.7 * beff * column.Web / dc;
        double S = E * z * z / (1 / k1 + 2 / k2);
        if (w is not null)
        {
            Given Z = ("z", z, Dimension.Length);
            w.Step("z", "lever arm", "h - t_f", z, Dimension.Length, Source, ("h", h, Dimension.Length), ("t_f", tf, Dimension.Length));
            w.Step("b_s", "length pressed at the flange's face", "t_f + 2 √(2) a", bearing, Dimension.Length, Source,
                ("t_f", tf, Dimension.Length), ("a", a, Dimension.Length));
            w.Step("k_1", "web panel in shear, β = 1", "0.38 A_vc / z", k1, Dimension.Length, Source, ("A_vc", column.ShearArea, Dimension.Area), Z);
            w.Step("b_eff", "length of web that takes part", "b_s + 5 (t_fc + r_c)", beff, Dimension.Length, Source,
                ("b_s", bearing, Dimension.Length), ("t_fc", column.Flange, Dimension.Length), ("r_c", column.Root, Dimension.Length));
            w.Step("k_2", "web pressed, and the same web pulled", "0.7 b_eff t_wc / d_c", k2, Dimension.Length, Source,
                ("b_eff", beff, Dimension.Length), ("t_wc", column.Web, Dimension.Length), ("d_c", dc, Dimension.Length));
            w.Step("S_j", "stiffness of the joint against turning", "E z² / (1 / k_1 + 2 / k_2)", S, Dimension.RotationalStiffness, Source,
                ("E", E, Dimension.Stress), Z, ("k_1", k1, Dimension.Length), ("k_2", k2, Dimension.Length));
        }

        return S;
    }

    /// <summary>A flat bar on edge as an arm, its end welded all round to the column's flange in line with the web.</summary>
    /// <param name="column">The column.</param>
    /// <param name="h">Depth of the bar, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N·m/rad at the column's face.</returns>
    /// <remarks>
    /// One component: the web panel in shear over the arm's depth, softened by the web being pressed and pulled under the bar's edges; S = E z² k, k = 0.21 t_w h/z. The component
    /// method of EN 1993-1-8, carried over with z = 2h/3, gives 6 % to 66 % more opening than the same models. Depths of half to one and a half of the column's.
    /// </remarks>
    public static double FlatOnFace(JointColumn column, double h, double E = 210e9, Working? w = null)
    {
        CheckDepth(column, h);
        double z = column.BetweenFlanges, k = FacePanel * column.Web * h / z, S = Check.Positive(E) * z * z * k;
        if (w is not null)
        {
            ShowArm(column, FlatSource, w);
            w.Step("k_f", "web panel under the bar", "0.21 t_w h / z", k, Dimension.Length, FlatSource,
                ("t_w", column.Web, Dimension.Length), ("h", h, Dimension.Length), ("z", z, Dimension.Length));
            w.Step("S_j", "stiffness of the joint against turning", "E z² k_f", S, Dimension.RotationalStiffness, FlatSource,
                ("E", E, Dimension.Stress), ("z", z, Dimension.Length), ("k_f", k, Dimension.Length));
        }

        return S;
    }

    /// <summary>A flat bar on edge passed through slots in both flanges of the column and welded all round at each.</summary>
    /// <param name="column">The column.</param>
    /// <param name="h">Depth of the bar, m.</param>
    /// <param name="b">Thickness of the bar (all bars side by side), m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="nu">Poisson's ratio.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>N·m/rad at the column's face.</returns>
    /// <remarks>
    /// The bar turns against two forces along the column, one in each flange, z = h_c − t_fc apart. Components in the manner of the code, S = E z²/Σ(1/k):
    /// the bar bends between the flanges, S = 3EI/z, k = 3I/z³; the bar, not the web, is the panel in shear over the arm's depth, S = G A_s z, k = G A_s/(E z); each
    /// flange beds the bar through the fillets on its two long sides, k = 0.25 · 2h. A web left standing and welded to the bar would stiffen it further and is not counted. Depths of half to one and a half of the column's.
    /// </remarks>
    public static double ThroughSlot(
        JointColumn column, double h, double b, double E = 210e9, double nu = 0.3, Working? w = null)
    {
        CheckDepth(column, h);
        Check.Positive(b);
        Check.Positive(E);
        Check.NotNegative(nu);
        double z = column.BetweenFlanges;
        double kb = b * h * h * h / (4 * z * z * z), ks = 5 * b * h / (12 * (1 + nu) * z), ke = Bedding * 2 * h;
        double S = E * z * z / (1 / kb + 1 / ks + 2 / ke);
        if (w is not null)
        {
            Given Z = ("z", z, Dimension.Length), B = ("b", b, Dimension.Length), H = ("h", h, Dimension.Length);
            ShowArm(column, SlotSource, w);
            w.Step("k_b", "bar bending between the flanges", "b h³ / (4 z³)", kb, Dimension.Length, SlotSource, B, H, Z);
            w.Step("k_s", "bar as the panel in shear", "5 b h / (12 (1 + ν) z)", ks, Dimension.Length, SlotSource, B, H, Z, ("ν", nu, Dimension.Number));
            w.Step("k_e", "bedding of the bar in one flange", "0.25 · 2 h", ke, Dimension.Length, BeddingSource, H);
            w.Step("S_j", "stiffness of the joint against turning", "E z² / (1 / k_b + 1 / k_s + 2 / k_e)", S, Dimension.RotationalStiffness, SlotSource,
                ("E", E, Dimension.Stress), Z, ("k_b", kb, Dimension.Length), ("k_s", ks, Dimension.Length), ("k_e", ke, Dimension.Length));
        }

        return S;
    }

    private static void CheckDepth(JointColumn column, double h)
    {
        if (!(Check.Positive(h) / column.Depth is >= 0.5 and <= 1.5))
            throw new ArgumentOutOfRangeException(nameof(h), h, "must be half to one and a half of the column's depth");
    }

    private static void ShowArm(JointColumn column, Citation source, Working w) =>
        w.Step("z", "between the middles of the flanges", "h_c - t_fc", column.BetweenFlanges, Dimension.Length, source,
            ("h_c", column.Depth, Dimension.Length), ("t_fc", column.Flange, Dimension.Length));
}
