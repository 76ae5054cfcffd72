using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Shear of a section by itself, plastic.</summary>
/// <remarks>Webs thicker than h_w/(72 ε) do not buckle in shear; thinner ones are counted with less: <see cref="SectionWalls.InShear"/>.</remarks>
public static class WebShear
{
    /// <summary>V_pl = A_v f_y / √3.</summary>
    public static readonly Citation Source = new("EN 1993-1-1:2005", "6.2.6(2), eq. 6.18");

    /// <summary>Plastic shear resistance, N, γ_M0 = 1.</summary>
    /// <param name="Av">Shear area, m², above zero.</param>
    /// <param name="fy">Yield strength, Pa, above zero.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Resistance(double Av, double fy, Working? w = null)
    {
        double V = Check.Positive(Av) * Check.Positive(fy) / Math.Sqrt(3);
        w?.Step("V_pl", "shear resistance", "A_v f_y / √(3)", V, Dimension.Force, Source,
            ("A_v", Av, Dimension.Area), ("f_y", fy, Dimension.Stress));
        return V;
    }

    /// <summary>Whether a web is thick enough not to buckle in shear (η = 1).</summary>
    /// <param name="hw">Clear depth between flanges, m.</param>
    /// <param name="tw">Web, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    public static bool IsStocky(double hw, double tw, double fy) =>
        Check.Positive(hw) / Check.Positive(tw) <= 72 * PlateClass.Epsilon(fy);

    /// <summary>Ram force at which the section shears off plastically along z or y, whichever comes first.</summary>
    /// <param name="a">Actions per newton at the ram.</param>
    /// <param name="s">The section.</param>
    /// <param name="fy">Yield strength, Pa, above zero.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where no shear acts.</returns>
    public static Limit? Shear(Actions a, SectionProperties s, double fy, PartialFactors factors, Working? w = null)
    {
        Acting.Finite(a);
        double uz = Math.Abs(a.Vz) / Resistance(s.Avz, fy), uy = Math.Abs(a.Vy) / Resistance(s.Avy, fy);
        bool alongZ = uz >= uy;
        double V = alongZ ? a.Vz : a.Vy, u = Math.Max(uz, uy);
        if (u < 1 / Limit.Farthest)
            return null;
        double Vpl = Resistance(alongZ ? s.Avz : s.Avy, fy, w);
        w?.Step("u", "share of the shear resistance used by one newton", "abs(V) / V_pl", u, Dimension.Number, Source,
            ("V", V, Dimension.Force), ("V_pl", Vpl, Dimension.Force));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
