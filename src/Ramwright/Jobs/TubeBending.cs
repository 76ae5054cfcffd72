using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What a bend does to a tube's wall.</summary>
public static class TubeBending
{
    /// <summary>Geometry of the bend.</summary>
    public static readonly Citation Geometry = Citation.Mechanics("arc lengths at the middle and the outside of the bend");
    /// <summary>Tightest bends without a mandrel.</summary>
    public static readonly Citation Practice = Citation.Practice("pipe bent without a mandrel: 3 D in a formed die with a thick wall, 4 to 5 D with D/t above 20");

    /// <summary>Strain of the outer wall: D/(2R).</summary>
    public static double OuterStrain(double D, double R) => Check.Positive(D) / (2 * Check.Positive(R));

    /// <summary>Outer wall over the wall before: 2R/(2R + D).</summary>
    public static double OuterWall(double D, double R) => 2 * Check.Positive(R) / (2 * R + Check.Positive(D));

    /// <summary>Tightest radius to the centre line without a mandrel, m.</summary>
    public static double TightestRadius(double D, double t) => Check.Positive(D) * (D / Check.Positive(t) > 20 ? 4.5 : 3);
}
