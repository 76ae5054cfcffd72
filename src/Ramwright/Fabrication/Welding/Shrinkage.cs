using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>What welds pull out of true as they cool.</summary>
public static class Shrinkage
{
    /// <summary>Where the formulas come from.</summary>
    public static readonly Citation Source = new("Blodgett, Design of Welded Structures, Lincoln Arc Welding Foundation 1966", "7.7, shrinkage and distortion", Standing.FromMemory);

    /// <summary>Shrinkage across a butt weld, m: 0.10 A_w/t.</summary>
    /// <param name="Aw">Area of the weld, m².</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Across(double Aw, double t, Working? w = null)
    {
        double d = 0.10 * Check.Positive(Aw) / Check.Positive(t);
        w?.Step("Δ", "shrinkage across the weld", "0.1 A_w / t", d, Dimension.Length, Source, ("A_w", Aw, Dimension.Area), ("t", t, Dimension.Length));
        return d;
    }
}
