using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>The plate or washer under a nut.</summary>
public static class NutBearing
{
    /// <summary>Pressure that steel takes under a head or nut.</summary>
    public static readonly Citation Source = new("VDI 2230 part 1:2003", "table A9, permissible pressure under heads and nuts", Standing.FromMemory);
    private static readonly Citation Bending = Citation.Mechanics("bending of the washer beside the hole");

    /// <summary>Pressure at which steel is dented under a nut, over its yield strength: 490 of 235 MPa and 760 of 355 MPa, rounded down.</summary>
    /// <remarks>The steel all round holds it.</remarks>
    public const double Dented = 2;

    /// <summary>Ram force at which the nut or its washer sinks into the plate.</summary>
    /// <param name="share">Pull of the rod per newton at the ram, not below zero.</param>
    /// <param name="outside">Diameter that bears, m.</param>
    /// <param name="hole">Hole in the plate, m.</param>
    /// <param name="fy">Yield strength of the plate, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Dents(double share, double outside, double hole, double fy, PartialFactors factors, Working? w = null)
    {
        double A = Area(outside, hole), u = Check.NotNegative(share) / (Dented * A * Check.Positive(fy));
        w?.Step("A", "area that bears", "π (d_w² - d_h²) / 4", A, Dimension.Area, Source, ("d_w", outside, Dimension.Length), ("d_h", hole, Dimension.Length));
        w?.Step("u", "share of the pressure that dents the plate, used by one newton", "f / (2 A f_y)", u, Dimension.Number, Source,
            ("f", share, Dimension.Force), ("A", A, Dimension.Area), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }

    /// <summary>Area that bears, m².</summary>
    /// <param name="outside">Diameter that bears, m.</param>
    /// <param name="hole">Hole, m.</param>
    public static double Area(double outside, double hole) => Math.PI / 4 * Check.Positive(outside * outside - hole * hole, "area that bears");

    /// <summary>Ram force at which the nut or its washer is pulled through the plate.</summary>
    /// <param name="share">Pull of the rod per newton at the ram, not below zero.</param>
    /// <param name="dm">Mean width of nut or washer, m.</param>
    /// <param name="t">Thickness of the plate, m.</param>
    /// <param name="fu">Its tensile strength, Pa.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Punches(double share, double dm, double t, double fu, PartialFactors factors, Working? w = null)
    {
        double R = Bolt.Punching(dm, t, fu, w), u = Check.NotNegative(share) / R;
        w?.Step("u", "share of the resistance used by one newton", "f / B_pR", u, Dimension.Number, Bolt.Source, ("f", share, Dimension.Force), ("B_pR", R, Dimension.Force));
        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }

    /// <summary>Ram force at which a thick washer across the gap of a pair yields.</summary>
    /// <param name="share">Pull of the rod per newton at the ram, not below zero.</param>
    /// <param name="L">Between what holds it, m.</param>
    /// <param name="d">Diameter of the nut's face, m.</param>
    /// <param name="b">Width of the washer left beside the hole, m.</param>
    /// <param name="t">Its thickness, m.</param>
    /// <param name="fy">Its yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? WasherBends(double share, double L, double d, double b, double t, double fy, PartialFactors factors, Working? w = null)
    {
        double M = PlateOverGap.Moment(L, d, w), u = 6 * M * Check.NotNegative(share) / (Check.Positive(b) * Check.Positive(t) * t * Check.Positive(fy));
        w?.Step("u", "share of the yield strength used by one newton", "6 M_1 f / (b t² f_y)", u, Dimension.Number, Bending,
            ("M_1", M, Dimension.Moment), ("f", share, Dimension.Force), ("b", b, Dimension.Length), ("t", t, Dimension.Length), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
