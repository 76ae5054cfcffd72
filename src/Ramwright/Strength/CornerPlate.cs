using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A flat plate on four rods at its corners, pushed in the middle: what the cut from side to side carries.</summary>
/// <remarks>
/// Statics alone: a cut through the middle carries the moment of the two rods on one side of it, less what the spread load takes
/// back, whatever way the plate bends. It is taken as evenly spread along the cut, which thick plates come near and thin ones do
/// not; the hole in the middle is taken off. The other way across is the plate as a beam between the rods.
/// </remarks>
public static class CornerPlate
{
    /// <summary>Moment of the cut.</summary>
    public static readonly Citation Source = Citation.Mechanics("statics of a plate on four rods: the cut through its middle");

    /// <summary>Ram force at which the cut first yields.</summary>
    /// <param name="share">Force on the plate per newton at the ram; either sign.</param>
    /// <param name="span">Between the rods, square to the cut, m.</param>
    /// <param name="spread">Width of the load the same way, m, less than the span; 0 for a point.</param>
    /// <param name="length">Length of the cut, m.</param>
    /// <param name="hole">Hole in the middle, m; less than the cut's length.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Yields(
        double share, double span, double spread, double length, double hole, double t, double fy, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share));
        double lever = Check.Positive(Check.Positive(span) - Check.NotNegative(spread) / 2, "span less half the spread");
        double b = Check.Positive(Check.Positive(length) - Check.NotNegative(hole), "length of the cut beside the hole");
        double M = f * lever / 4, W = b * Check.Positive(t) * t / 6, u = M / (W * Check.Positive(fy));
        w?.Step("M", "moment in the cut, per newton", "f (s - c / 2) / 4", M, Dimension.Moment, Source,
            ("f", f, Dimension.Force), ("s", span, Dimension.Length), ("c", spread, Dimension.Length));
        w?.Step("W", "section modulus of the cut", "(l - d) t² / 6", W, Dimension.SectionModulus, Source,
            ("l", length, Dimension.Length), ("d", hole, Dimension.Length), ("t", t, Dimension.Length));
        w?.Step("u", "share of the yield strength used by one newton", "M / (W f_y)", u, Dimension.Number, Source,
            ("M", M, Dimension.Moment), ("W", W, Dimension.SectionModulus), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
