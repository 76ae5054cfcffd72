namespace Ramwright.Geometry;

/// <summary>Outlines as polygons, arcs cut into short straight lines.</summary>
public static class OutlinePolygons
{
    /// <summary>Each loop as its corners, closed on the first; no point of an arc is farther from its chord than the tolerance.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="tolerance">m, above zero.</param>
    public static IReadOnlyList<(double Y, double Z)[]> Polygons(this Outline outline, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        return [.. outline.Loops.Select(loop => Polygon(loop, tolerance))];
    }

    private static (double, double)[] Polygon(IReadOnlyList<Corner> loop, double tolerance)
    {
        var points = new List<(double, double)>(loop.Count);
        for (int i = 0; i < loop.Count; i++)
        {
            Corner a = loop[i], b = loop[(i + 1) % loop.Count];
            points.Add((a.Y, a.Z));
            if (a.Bulge == 0)
                continue;
            (double yc, double zc, double r) = Centre(a, b);
            double start = Math.Atan2(a.Z - zc, a.Y - yc), sweep = 4 * Math.Atan(a.Bulge);
            // sagitta of a step: r (1 - cos(step / 2))
            double step = tolerance < r ? 2 * Math.Acos(1 - tolerance / r) : Math.PI / 2;
            int parts = Math.Max(2, (int)Math.Ceiling(Math.Abs(sweep) / Math.Min(step, Math.PI / 2)));
            for (int p = 1; p < parts; p++)
            {
                (double sin, double cos) = Math.SinCos(start + sweep * p / parts);
                points.Add((yc + r * cos, zc + r * sin));
            }
        }

        return [.. points];
    }

    /// <summary>Centre and radius of the arc from a corner to the next.</summary>
    internal static (double Y, double Z, double Radius) Centre(Corner a, Corner b)
    {
        double lift = (1 - a.Bulge * a.Bulge) / (4 * a.Bulge);
        double y = (a.Y + b.Y) / 2 - lift * (b.Z - a.Z), z = (a.Z + b.Z) / 2 + lift * (b.Y - a.Y);
        return (y, z, Math.Sqrt((a.Y - y) * (a.Y - y) + (a.Z - z) * (a.Z - z)));
    }
}
