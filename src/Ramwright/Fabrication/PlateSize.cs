using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication;

/// <summary>How thick a plate or flat bar must be so that bending does not make it yield.</summary>
public static class PlateSize
{
    private static readonly Citation Bending = Citation.Mechanics("bending of a rectangle: W = b t²/6, first yield over the load factor");
    private static readonly Citation Statics = Citation.Mechanics("statics");

    /// <summary>Thickness that carries a moment, m: √(6 M γ/(b f_y)).</summary>
    /// <param name="M">Moment, N·m.</param>
    /// <param name="b">Width that bends, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="γ">Factor on the load.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Thickness(double M, double b, double fy, double γ, Working? w = null)
    {
        double t = Math.Sqrt(6 * Check.NotNegative(M) * Check.Positive(γ) / (Check.Positive(b) * Check.Positive(fy)));
        w?.Step("t", "thickness at which it just yields under the load with its factor", "√(6 M γ / (b f_y))", t, Dimension.Length, Bending,
            ("M", M, Dimension.Moment), ("γ", γ, Dimension.Number), ("b", b, Dimension.Length), ("f_y", fy, Dimension.Stress));
        return t;
    }

    /// <summary>Moment of a force in the middle of what spans a gap, N·m: F l/4.</summary>
    /// <param name="F">N.</param>
    /// <param name="l">Gap, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double InTheMiddle(double F, double l, Working? w = null)
    {
        double M = Check.NotNegative(F) * Check.Positive(l) / 4;
        w?.Step("M", "moment in the middle of what spans the gap", "F l / 4", M, Dimension.Moment, Statics, ("F", F, Dimension.Force), ("l", l, Dimension.Length));
        return M;
    }

    /// <summary>Moment over a narrow support of a plate that half the force bends on either side, its middle half way out, N·m: F l/8.</summary>
    /// <param name="F">N.</param>
    /// <param name="l">Width of the plate across the support, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double OverNarrow(double F, double l, Working? w = null)
    {
        double M = Check.NotNegative(F) * Check.Positive(l) / 8;
        w?.Step("M", "moment over the narrow bed, half the force on either side half way out", "F l / 8", M, Dimension.Moment, Statics, ("F", F, Dimension.Force), ("l", l, Dimension.Length));
        return M;
    }

    /// <summary>Push of the anti-twist arm on its guide, N: F a/l.</summary>
    /// <param name="F">Ram force, N.</param>
    /// <param name="a">Torque over ram force, m.</param>
    /// <param name="l">From the ram's centre to the roller, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Push(double F, double a, double l, Working? w = null)
    {
        double P = Check.NotNegative(F) * Check.NotNegative(a) / Check.Positive(l);
        w?.Step("P", "push of the roller on its guide", "F a / l", P, Dimension.Force, Statics, ("F", F, Dimension.Force), ("a", a, Dimension.Length), ("l", l, Dimension.Length));
        return P;
    }

    /// <summary>Moment where the arm meets the ram, N·m: P (l − r).</summary>
    /// <param name="P">Push on the roller, N.</param>
    /// <param name="l">From the ram's centre to the roller, m.</param>
    /// <param name="r">Radius of the ram, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double AtTheRam(double P, double l, double r, Working? w = null)
    {
        double M = Check.NotNegative(P) * (Check.Above(l, r) - r);
        w?.Step("M", "moment where the arm meets the ram", "P (l - r)", M, Dimension.Moment, Statics, ("P", P, Dimension.Force), ("l", l, Dimension.Length), ("r", r, Dimension.Length));
        return M;
    }
}
