using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A plate that lies across the gap of a pair and carries the ram force in its middle: a foot plate, a bolster.</summary>
public static class SpanningPlate
{
    /// <summary>Bending of a beam under a load spread over its middle.</summary>
    public static readonly Citation Source = Citation.Mechanics("beam on two supports, load spread over its middle");

    private static readonly Citation Spread = Citation.Practice("a plate held along two edges spreads a load to half the span beside it");

    /// <summary>Moment in the middle for one newton, N·m: (2L − c)/8, or L²/(8c) where the load reaches past the supports.</summary>
    /// <param name="L">Between the webs that hold it, m.</param>
    /// <param name="c">Width of the load across the gap, m.</param>
    public static double Moment(double L, double c) => Check.NotNegative(c) <= Check.Positive(L) ? (2 * L - c) / 8 : L * L / (8 * c);

    /// <summary>How much of the plate's length carries, m.</summary>
    /// <param name="length">Length along the members, m.</param>
    /// <param name="c">Length of the load along them, m.</param>
    /// <param name="L">Between the webs, m.</param>
    public static double Carrying(double length, double c, double L) => Math.Min(Check.Positive(length), Check.NotNegative(c) + L / 2);

    /// <summary>Thickness that carries a force at the yield strength, m.</summary>
    /// <param name="F">Force, N.</param>
    /// <param name="L">Between the webs, m.</param>
    /// <param name="across">Width of the load across the gap, m.</param>
    /// <param name="length">Length that carries, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    public static double Thickness(double F, double L, double across, double length, double fy) =>
        Math.Sqrt(6 * Check.Positive(F) * Moment(L, across) / (Check.Positive(length) * Check.Positive(fy)));

    /// <summary>Ram force at which the plate yields.</summary>
    /// <param name="L">Between the webs that hold it, m.</param>
    /// <param name="length">Its length along the members, m.</param>
    /// <param name="t">Its thickness, m.</param>
    /// <param name="across">Width of the load across the gap, m.</param>
    /// <param name="along">Length of the load along the members, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Yields(double L, double length, double t, double across, double along, double fy, PartialFactors factors, Working? w = null)
    {
        double M = Moment(L, across), b = Carrying(length, along, L), u = 6 * M / (b * Check.Positive(t) * t * Check.Positive(fy));
        Given span = ("L", L, Dimension.Length), c = ("c", across, Dimension.Length);
        w?.Step("M", "moment in the middle of the plate, for one newton", across <= L ? "(2 L - c) / 8" : "L² / (8 c)", M, Dimension.Moment, Source, span, c);
        w?.Step("b", "length of the plate that carries", "min(l, c_l + L / 2)", b, Dimension.Length, Spread,
            ("l", length, Dimension.Length), ("c_l", along, Dimension.Length), span);
        w?.Step("u", "share of the yield strength used by one newton", "6 M / (b t² f_y)", u, Dimension.Number, Source,
            ("M", M, Dimension.Moment), ("b", b, Dimension.Length), ("t", t, Dimension.Length), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
