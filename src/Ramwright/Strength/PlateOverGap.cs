using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A plate across a gap, pressed by the end or the collar of a cylinder: bent one way, like a beam.</summary>
/// <remarks>The plate rests on its two edges and its whole width left beside a hole carries alike, which holds for plates no wider than about their span.</remarks>
public static class PlateOverGap
{
    /// <summary>Moment in the middle.</summary>
    public static readonly Citation Source = Citation.Mechanics("beam on two supports; the middle of pressure of each half of a ring lies d/π from the middle");

    /// <summary>Bending moment in the middle for one newton, m.</summary>
    /// <param name="L">Between the supports, m.</param>
    /// <param name="d">Diameter of the ring that presses on it, m; 0 takes a point.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>L/4 − d/(2π); 0 where the ring reaches the supports.</returns>
    public static double Moment(double L, double d, Working? w = null)
    {
        double M = Math.Max(0, Check.Positive(L) / 4 - Check.NotNegative(d) / (2 * Math.PI));
        w?.Step("M_1", "moment in the middle of the plate, per newton", "max(0, L / 4 - d / (2 π))", M, Dimension.Moment, Source,
            ("L", L, Dimension.Length), ("d", d, Dimension.Length));
        return M;
    }
}
