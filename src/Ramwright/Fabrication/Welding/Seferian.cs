using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>An old formula for preheat that reaches to higher carbon than method B. Orientation for a trial, not a procedure.</summary>
public static class Seferian
{
    /// <summary>Where it comes from.</summary>
    public static readonly Citation Source = new("Séférian, Métallurgie de la soudure, Dunod 1959", "preheat of hardenable steels", Standing.FromMemory);

    /// <summary>Preheat, °C; zero where none is asked for.</summary>
    /// <param name="s">Composition.</param>
    /// <param name="t">Thickness, mm.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Preheat(Composition s, double t, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        double Ct = (s.C + (s.Mn + s.Cr) / 9 + s.Ni / 18 + 7 * s.Mo / 90) * (1 + 0.005 * Check.Positive(t));
        w?.Step("C_t", "carbon equivalent by thickness, %; t in mm", "(C + (Mn + Cr) / 9 + Ni / 18 + 7 Mo / 90) (1 + 0.005 t)", Ct, Dimension.Number, Source,
            ("C", s.C, Dimension.Number), ("Mn", s.Mn, Dimension.Number), ("Cr", s.Cr, Dimension.Number), ("Ni", s.Ni, Dimension.Number),
            ("Mo", s.Mo, Dimension.Number), ("t", t, Dimension.Number));
        double T = 350 * Math.Sqrt(Math.Max(0, Ct - 0.25));
        w?.Step("T_p", "preheat to begin a trial with", "350 √(max(0, C_t - 0.25))", T, Dimension.Temperature, Source, ("C_t", Ct, Dimension.Number));
        return T;
    }
}
