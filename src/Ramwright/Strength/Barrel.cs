using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Stresses in the wall of a thick tube.</summary>
/// <param name="Hoop">Around, Pa.</param>
/// <param name="Radial">Through the wall, Pa.</param>
/// <param name="Axial">Along, Pa.</param>
public readonly record struct WallStress(double Hoop, double Radial, double Axial)
{
    /// <summary>Von Mises, Pa.</summary>
    public double VonMises => Math.Sqrt(
        ((Hoop - Radial) * (Hoop - Radial) + (Radial - Axial) * (Radial - Axial) + (Axial - Hoop) * (Axial - Hoop)) / 2);

    /// <summary>Tresca: greatest less least, Pa.</summary>
    public double Tresca => Math.Max(Hoop, Math.Max(Radial, Axial)) - Math.Min(Hoop, Math.Min(Radial, Axial));
}

/// <summary>A cylinder's barrel under oil pressure: a thick tube with closed ends.</summary>
/// <remarks>
/// Plain wall only: ports, threads, welds and end caps are weaker and are not in it. Never weld on a cylinder's barrel. Test with oil, never with
/// air or gas.
/// </remarks>
public static class Barrel
{
    /// <summary>Lamé's equations.</summary>
    public static readonly Citation LameSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "3-14, eq. 3-49 to 3-52");

    /// <summary>Half the yield strength at rated load.</summary>
    public static readonly Citation HalfYieldSource = new("ASME B30.1-2015", "1-2.1.2(c)");

    /// <summary>The usual factor on yield at the bore: ASME B30.1 keeps a jack at half its yield strength.</summary>
    public const double UsualFactor = 2;

    /// <summary>Stresses at a radius, ends closed.</summary>
    /// <param name="ri">Inner radius, m.</param>
    /// <param name="ro">Outer radius, m, more than the inner.</param>
    /// <param name="pi">Pressure inside, Pa.</param>
    /// <param name="po">Pressure outside, Pa.</param>
    /// <param name="r">Where, m, from inner to outer radius.</param>
    public static WallStress Lame(double ri, double ro, double pi, double po, double r)
    {
        CheckWall(ri, ro);
        Check.NotNegative(pi);
        Check.NotNegative(po);
        if (!(r >= ri && r <= ro))
            throw new ArgumentOutOfRangeException(nameof(r), r, "must lie in the wall");
        double d = ro * ro - ri * ri;
        double axial = (pi * ri * ri - po * ro * ro) / d;
        double fall = (pi - po) * ri * ri * ro * ro / (d * r * r);
        return new WallStress(axial + fall, axial - fall, axial);
    }

    /// <summary>How much the bore grows in diameter, m; ends closed.</summary>
    /// <param name="bore">Bore, m.</param>
    /// <param name="outer">Outside diameter, m.</param>
    /// <param name="p">Pressure inside, Pa.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="nu">Poisson's ratio.</param>
    public static double BoreGrowth(double bore, double outer, double p, double E = 210e9, double nu = 0.3)
    {
        WallStress s = Lame(bore / 2, outer / 2, p, 0, bore / 2);
        return bore * (s.Hoop - nu * (s.Radial + s.Axial)) / Check.Positive(E);
    }

    /// <summary>Pressure at which the bore begins to yield (von Mises, closed ends), Pa.</summary>
    /// <param name="bore">Bore, m.</param>
    /// <param name="outer">Outside diameter, m.</param>
    /// <param name="Sy">Yield strength, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double YieldPressure(double bore, double outer, double Sy, Working? w = null)
    {
        CheckWall(bore, outer);
        double p = Check.Positive(Sy) * (outer * outer - bore * bore) / (Math.Sqrt(3) * outer * outer);
        w?.Step("p_y", "pressure at which the bore begins to yield", "S_y (D_o² - D_i²) / (√(3) D_o²)", p, Dimension.Pressure, LameSource,
            ("S_y", Sy, Dimension.Stress), ("D_o", outer, Dimension.Length), ("D_i", bore, Dimension.Length));
        return p;
    }

    /// <summary>Ram force at which the bore begins to yield.</summary>
    /// <param name="perNewton">Pressure in the barrel per newton at the ram, Pa/N; zero or less does not apply.</param>
    /// <param name="bore">Bore, m.</param>
    /// <param name="outer">Outside diameter, m.</param>
    /// <param name="Sy">Yield strength, Pa.</param>
    /// <param name="factor">Factor on yield, at least 1. It stands alone; the load factor is not put on top.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Yields(
        double perNewton, double bore, double outer, double Sy, double factor = UsualFactor, Working? w = null)
    {
        Check.AtLeast(factor, 1);
        if (!(Check.Finite(perNewton) > 0))
            return null;
        double py = YieldPressure(bore, outer, Sy, w), u = perNewton / py;
        w?.Step("u", "share of the yield pressure used by one newton", "p / p_y", u, Dimension.Number, HalfYieldSource,
            ("p", perNewton, Dimension.Pressure), ("p_y", py, Dimension.Pressure));
        return Limit.FromUse(u, 1, factor, w);
    }

    private static void CheckWall(double inner, double outer)
    {
        Check.Positive(inner);
        Check.Positive(outer);
        if (!(outer > inner))
            throw new ArgumentOutOfRangeException(nameof(outer), outer, "must be more than the bore");
    }
}
