using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Steel torn out of a plate beside bolts or a pin.</summary>
public static class TearOut
{
    /// <summary>Block tearing.</summary>
    public static readonly Citation BlockSource = new("EN 1993-1-8:2005", "3.10.2, eq. 3.9 and 3.10", Standing.FromMemory);
    /// <summary>One bolt tearing out through the edge.</summary>
    public static readonly Citation EdgeSource = new("AISC 360-16", "J3.10(a)", Standing.FromMemory);
    /// <summary>A plug sheared out along two planes.</summary>
    public static readonly Citation PlugSource = Citation.Mechanics("two planes at the shear yield strength f_y/√3");

    /// <summary>Ram force at which a block of plate tears out.</summary>
    /// <param name="share">Force on the block per newton at the ram, either sign.</param>
    /// <param name="Ant">Net area in tension, m².</param>
    /// <param name="Anv">Net area in shear, m².</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="fu">Tensile strength, Pa.</param>
    /// <param name="eccentric">Whether the force is not in line with the block: half of the tension area then counts.</param>
    /// <param name="factors">Factors; γ_M0, γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Block(
        double share, double Ant, double Anv, double fy, double fu, bool eccentric, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share));
        if (f < 1 / Limit.Farthest)
            return null;
        double gives = BlockResistance(Ant, Anv, fy, fu, eccentric, 1, 1) / f;
        double design = BlockResistance(Ant, Anv, fy, fu, eccentric, factors.M0, factors.M2) / f;
        double half = eccentric ? 0.5 : 1;
        w?.Step("F_gives", "ram force at which the block tears out", "(k A_nt f_u + A_nv f_y / √(3)) / f", gives, Dimension.Force, BlockSource,
            ("k", half, Dimension.Number), ("A_nt", Ant, Dimension.Area), ("f_u", fu, Dimension.Stress),
            ("A_nv", Anv, Dimension.Area), ("f_y", fy, Dimension.Stress), ("f", f, Dimension.Force));
        w?.Step("F_Rd", "the same with design resistances", "(k A_nt f_u / γ_M2 + A_nv f_y / (√(3) γ_M0)) / f", design, Dimension.Force, BlockSource,
            ("k", half, Dimension.Number), ("A_nt", Ant, Dimension.Area), ("f_u", fu, Dimension.Stress), ("γ_M2", factors.M2, Dimension.Number),
            ("A_nv", Anv, Dimension.Area), ("f_y", fy, Dimension.Stress), ("γ_M0", factors.M0, Dimension.Number), ("f", f, Dimension.Force));
        return Limit.FromForces(gives, design, factors.Load, w);
    }

    /// <summary>Resistance of a block, N.</summary>
    public static double BlockResistance(
        double Ant, double Anv, double fy, double fu, bool eccentric, double gammaM0, double gammaM2) =>
        (eccentric ? 0.5 : 1) * Check.NotNegative(Ant) * Check.Positive(fu) / Check.AtLeast(gammaM2, 1) +
        Check.Positive(Anv) * Check.Positive(fy) / (Math.Sqrt(3) * Check.AtLeast(gammaM0, 1));

    /// <summary>One bolt tearing out or crushing its hole, American: the lower of 1.2 l_c t F_u and 2.4 d t F_u, N, nominal.</summary>
    /// <param name="lc">Clear distance from hole to edge, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="d">Bolt, m.</param>
    /// <param name="Fu">Tensile strength, Pa.</param>
    public static double Edge(double lc, double t, double d, double Fu) =>
        Math.Min(1.2 * Check.Positive(lc), 2.4 * Check.Positive(d)) * Check.Positive(t) * Check.Positive(Fu);

    /// <summary>Ram force at which a plug is sheared out between a pin's hole and the edge or the next hole.</summary>
    /// <param name="share">Force of the pin per newton at the ram, either sign.</param>
    /// <param name="lc">Clear distance from hole to edge, m.</param>
    /// <param name="t">Thickness, all walls together, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? PlugOut(double share, double lc, double t, double fy, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share)), R = Plug(lc, t, fy), u = f / R;
        w?.Step("F_plug", "resistance of the plug", "2 l_c t f_y / √(3)", R, Dimension.Force, PlugSource,
            ("l_c", lc, Dimension.Length), ("t", t, Dimension.Length), ("f_y", fy, Dimension.Stress));
        w?.Step("u", "share of it used by one newton", "f / F_plug", u, Dimension.Number, PlugSource,
            ("f", f, Dimension.Force), ("F_plug", R, Dimension.Force));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }

    /// <summary>A plug sheared out between hole and edge along two planes, N, at the shear yield strength.</summary>
    /// <param name="lc">Clear distance from hole to edge, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    public static double Plug(double lc, double t, double fy) =>
        2 * Check.Positive(lc) * Check.Positive(t) * Check.Positive(fy) / Math.Sqrt(3);
}
