using Ramwright.Geometry;

namespace Ramwright.Fabrication.Plates;

/// <summary>A part's mark as lines to scribe, where there is room for it on the steel.</summary>
internal static class PartMark
{
    /// <summary>Heights of letters that are tried, m.</summary>
    private static readonly double[] Heights = [0.012, 0.010, 0.008, 0.006, 0.004];

    private const int Steps = 24;

    /// <summary>The strokes; null where the mark finds no room.</summary>
    public static IReadOnlyList<IReadOnlyList<Corner>>? On(PlatePart plate, PlateTurn turn)
    {
        if (Place(plate) is not var (by, bz, height))
            return null;
        double wide = StrokeLetters.Width(plate.Mark) * height;
        return
        [
            .. StrokeLetters.Of(plate.Mark).Select(stroke => (Corner[])
            [
                .. stroke.Select(p =>
                {
                    (double y, double z) = turn.Of(by - wide / 2 + p.X * height, bz - height / 2 + p.Y * height);
                    return new Corner(y, z);
                }),
            ]),
        ];
    }

    /// <summary>Middle of the mark and the height of its letters, m; null where it finds no room on the steel.</summary>
    public static (double Y, double Z, double Height)? Place(PlatePart plate)
    {
        if (plate.Mark.Length == 0)
            return null;
        IReadOnlyList<(double Y, double Z)[]> loops = plate.Outline.Polygons(1e-4);
        Extents e = plate.Outline.Extents();
        (double Y, double Z)[] drilled = [.. plate.Holes.Where(h => h.MarkOnly).Select(h => (h.Y, h.Z))];
        foreach (double height in Heights)
        {
            double wide = StrokeLetters.Width(plate.Mark) * height, clear = Math.Sqrt(wide * wide + height * height) / 2 + height / 4;
            (double Y, double Z)? best = null;
            double nearest = double.PositiveInfinity;
            for (int i = 1; i < Steps; i++)
            {
                for (int j = 1; j < Steps; j++)
                {
                    double y = e.Left + e.Width * i / Steps, z = e.Bottom + e.Height * j / Steps;
                    double from = (y - (e.Left + e.Right) / 2) * (y - (e.Left + e.Right) / 2) + (z - (e.Bottom + e.Top) / 2) * (z - (e.Bottom + e.Top) / 2);
                    if (from < nearest && IsSteel(loops, y, z) && loops.All(l => PlateFit.Nearest(l, y, z) > clear)
                        && drilled.All(d => Math.Sqrt((d.Y - y) * (d.Y - y) + (d.Z - z) * (d.Z - z)) > clear + height))
                        (best, nearest) = ((y, z), from);
                }
            }

            if (best is var (my, mz))
                return (my, mz, height);
        }

        return null;
    }

    private static bool IsSteel(IReadOnlyList<(double Y, double Z)[]> loops, double y, double z)
    {
        bool inside = false;
        foreach ((double Y, double Z)[] loop in loops)
        {
            for (int i = 0, j = loop.Length - 1; i < loop.Length; j = i++)
            {
                if ((loop[i].Z > z) != (loop[j].Z > z) && y < (loop[j].Y - loop[i].Y) * (z - loop[i].Z) / (loop[j].Z - loop[i].Z) + loop[i].Y)
                    inside = !inside;
            }
        }

        return inside;
    }
}
