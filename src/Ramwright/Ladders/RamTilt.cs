using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>What pushes the ram's face sideways or tilts it, for one newton at the ram.</summary>
/// <param name="Name">The load case.</param>
/// <param name="H">Side push, N.</param>
/// <param name="M">Tilting moment, N·m.</param>
internal sealed record RamTilt(string Name, double H, double M)
{
    private static readonly Citation Statics = Citation.Mechanics("statics of the ram");

    /// <summary>The cases that the press's own guides must carry: none where slides take everything.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="loading">How squarely the work is pressed.</param>
    public static IEnumerable<RamTilt> Cases(RigCylinder cylinder, RigLoading loading)
    {
        if (cylinder.Guide == RamGuide.Guided)
            yield break;
        // a guide at the ram's end takes the side push before the rod feels it
        if (loading.SideLoad > 0 && cylinder.Guide == RamGuide.Free)
            yield return new RamTilt("side push", loading.SideLoad, 0);
        if (loading.Across > 0)
            yield return new RamTilt("off to one side", 0, loading.Across);
        if (loading.Deep > 0)
            yield return new RamTilt("off to the front", 0, loading.Deep);
    }

    /// <summary>Moment a length above the ram's face, m.</summary>
    public double At(double L, Working? w = null)
    {
        double m = H * L + M;
        w?.Step("M", $"bending moment there ({Name}), per newton", "H L + M_0", m, Dimension.Moment, Statics,
            ("H", H, Dimension.Force), ("L", L, Dimension.Length), ("M_0", M, Dimension.Moment));
        return m;
    }
}
