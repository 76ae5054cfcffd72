using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Side forces between the ram and the two places that guide it: the gland and the piston.</summary>
/// <remarks>
/// A rod held at piston and gland sticks out like a flagpole: what pushes its end sideways is turned into a couple over the short distance
/// between the two, and so comes back many times greater. Pressure is taken as even over the projected area, as makers of guide rings rate them.
/// </remarks>
public static class RamGuides
{
    /// <summary>Side forces.</summary>
    public static readonly Citation Statics = Citation.Mechanics("statics of a ram held at gland and piston");
    /// <summary>Pressure over the projected area, and the factor 2 on it.</summary>
    public static readonly Citation PressureSource = new("SKF, hydraulic seals: guide rings", "design and calculation model, calculating the guide width");

    private static readonly Citation Phenolic = new("SKF, hydraulic seals: guide rings", "table 1, PF at 80 °C");
    private static readonly Citation SealMaker = new("ANK Seals, guide and back-up rings", "load bearing capacity");
    private static readonly Citation Boundary = new("Shigley's Mechanical Engineering Design, 9th ed.", "12-15, boundary-lubricated bearings", Standing.FromMemory);

    /// <summary>Factor on the pressure a guide ring is rated for.</summary>
    public const double UsualFactor = 2;

    /// <summary>Pressure a guide is rated for, Pa, and who says so.</summary>
    public static (double Pressure, Citation Source) Rated(GuideRing ring) => ring switch
    {
        GuideRing.Phenolic => (30e6, Phenolic),
        GuideRing.Ptfe => (15e6, SealMaker),
        GuideRing.Acetal => (25e6, SealMaker),
        GuideRing.Bronze => (31e6, Boundary),
        _ => throw new ArgumentOutOfRangeException(nameof(ring), ring, "no such guide ring"),
    };

    /// <summary>Side force at the gland of a ram whose end is free.</summary>
    /// <param name="H">Side push at the ram's face per newton, either sign.</param>
    /// <param name="M">Tilting moment at the ram's face per newton, m, either sign.</param>
    /// <param name="L">From the gland to the ram's face, m.</param>
    /// <param name="b">Between gland and piston, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double AtGland(double H, double M, double L, double b, Working? w = null)
    {
        Check.NotNegative(L);
        double R = Math.Abs(Check.Finite(H)) * (1 + L / Check.Positive(b)) + Math.Abs(Check.Finite(M)) / b;
        w?.Step("R_g", "side force at the gland, per newton", "abs(H) (1 + L / b) + abs(M) / b", R, Dimension.Force, Statics,
            ("H", H, Dimension.Force), ("L", L, Dimension.Length), ("b", b, Dimension.Length), ("M", M, Dimension.Moment));
        return R;
    }

    /// <summary>Side force at the piston of a ram whose end is free.</summary>
    /// <inheritdoc cref="AtGland"/>
    public static double AtPiston(double H, double M, double L, double b, Working? w = null)
    {
        Check.NotNegative(L);
        double R = Math.Abs(Check.Finite(H)) * L / Check.Positive(b) + Math.Abs(Check.Finite(M)) / b;
        w?.Step("R_p", "side force at the piston, per newton", "abs(H) L / b + abs(M) / b", R, Dimension.Force, Statics,
            ("H", H, Dimension.Force), ("L", L, Dimension.Length), ("b", b, Dimension.Length), ("M", M, Dimension.Moment));
        return R;
    }

    /// <summary>Side force at the gland of a ram whose end is held sideways; the play of the rings lets the rod tilt in the gland.</summary>
    /// <param name="M">Tilting moment at the ram's face per newton, m, either sign.</param>
    /// <param name="L">From the gland to the guide at the ram's end, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double AtGlandHeld(double M, double L, Working? w = null)
    {
        double R = Math.Abs(Check.Finite(M)) / Check.Positive(L);
        w?.Step("R_g", "side force at gland and guide, per newton", "abs(M) / L", R, Dimension.Force, Statics,
            ("M", M, Dimension.Moment), ("L", L, Dimension.Length));
        return R;
    }

    /// <summary>Ram force at which a guide is pressed beyond what it is rated for; beyond it wears fast and lets metal touch metal.</summary>
    /// <param name="share">Side force per newton at the ram.</param>
    /// <param name="d">Diameter that slides in it, m.</param>
    /// <param name="l">Length of the guide, m.</param>
    /// <param name="p">Rated pressure, Pa.</param>
    /// <param name="factor">Factor on it, at least 1. It stands alone; the load factor is not put on top.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Presses(double share, double d, double l, double p, double factor = UsualFactor, Working? w = null)
    {
        Check.AtLeast(factor, 1);
        double f = Math.Abs(Check.Finite(share)), u = f / (Check.Positive(d) * Check.Positive(l) * Check.Positive(p));
        w?.Step("u", "share of the rated pressure used by one newton", "R / (d l p)", u, Dimension.Number, PressureSource,
            ("R", f, Dimension.Force), ("d", d, Dimension.Length), ("l", l, Dimension.Length), ("p", p, Dimension.Pressure));
        return Limit.FromUse(u, 1, factor, w);
    }
}
