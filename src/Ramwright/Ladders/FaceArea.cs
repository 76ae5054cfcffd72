using Ramwright.Power;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>A round face that bears, with or without a hole in it.</summary>
internal static class FaceArea
{
    public static readonly Citation Source = Citation.Mechanics("force over area");

    /// <summary>Area, m².</summary>
    public static double Of(double outside, double hole, Working? w)
    {
        double A = CylinderAreas.Ring(outside, hole);
        w?.Step("A", "area of the face that bears", "π (D² - d²) / 4", A, Dimension.Area, Source, ("D", outside, Dimension.Length), ("d", hole, Dimension.Length));
        return A;
    }
}
