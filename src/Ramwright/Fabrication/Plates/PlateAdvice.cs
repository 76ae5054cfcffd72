using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Plates;

/// <summary>What to mind before a plate is cut by a torch.</summary>
public static class PlateAdvice
{
    /// <summary>A torch cuts no round hole smaller than the plate is thick, and steel left between cuts narrower than that warps or melts.</summary>
    public static readonly Citation Source = Citation.Practice("holes and webs of plasma and gas cuts, no smaller than the plate is thick");

    private const double Fine = 1e-5;

    /// <summary>Warnings, in words; none where all holes and webs are as wide as the plate is thick.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="units">Units to read.</param>
    /// <param name="style">How its cuts are drawn; null where they are drawn true to size.</param>
    public static IReadOnlyList<string> Of(PlatePart plate, UnitSystem units = UnitSystem.Metric, CutStyle? style = null)
    {
        ArgumentNullException.ThrowIfNull(plate);
        string Mm(double x) => Readout.Text(x, Dimension.Length, units);
        var all = new List<string>();
        foreach (IGrouping<double, PlateHole> small in plate.Holes.Where(h => !h.MarkOnly && h.Diameter < plate.Thickness * (1 - 1e-9)).GroupBy(h => Math.Round(h.Diameter, 6)))
        {
            all.Add($"{small.Count()} {(small.Count() == 1 ? "hole" : "holes")} of {Mm(small.Key)} in plate {Mm(plate.Thickness)} thick: too fine for a torch; centre-punch and drill "
                + $"{(small.Count() == 1 ? "it" : "them")}, or cut undersize and ream.");
        }

        double web = LeastWeb(plate);
        if (web < plate.Thickness * (1 - 1e-9))
            all.Add($"Only {Mm(web)} of steel stands between two cuts in plate {Mm(plate.Thickness)} thick: it may warp or burn through; cut one of them last and let it cool, or drill.");
        if (style is { Kerf: > 0 } && plate.Outline.Loops.Any(l => !PlateCuts.HasRoom(l, style)))
            all.Add($"Not every cut has room for a kerf of {Mm(style.Kerf)}: those are drawn true to size and will come out wide.");
        return all;
    }

    /// <summary>Least steel between any two of its cuts, m; infinite where there is one cut only.</summary>
    /// <param name="plate">The plate.</param>
    public static double LeastWeb(PlatePart plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        IReadOnlyList<(double Y, double Z)[]> loops = plate.Outline.Polygons(Fine);
        double least = double.PositiveInfinity;
        for (int i = 0; i < loops.Count; i++)
        {
            for (int j = 0; j < loops.Count; j++)
            {
                if (i == j)
                    continue;
                foreach ((double y, double z) in loops[i])
                    least = Math.Min(least, PlateFit.Nearest(loops[j], y, z));
            }
        }

        return least;
    }
}
