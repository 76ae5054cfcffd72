namespace Ramwright.Geometry;

/// <summary>A flat face of an outline that shows from below.</summary>
/// <param name="From">Its left end, m.</param>
/// <param name="To">Its right end, m.</param>
/// <param name="Depth">How far it lies behind the foremost point, m.</param>
public readonly record struct SeenFace(double From, double To, double Depth);

/// <summary>What of an outline shows to something that is set against it.</summary>
public static class SeenFaces
{
    private const double Same = 1e-7;

    /// <summary>Flat faces that show from below, from left to right; what stands in front hides what lies behind.</summary>
    /// <remarks>Rounded outer corners count as sharp, and a round as the square about it: what is set against them is fitted to them.</remarks>
    public static IReadOnlyList<SeenFace> FromBelow(this Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var edges = new List<((double Y, double Z) From, (double Y, double Z) To)>();
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
        {
            List<(double Y, double Z)> sharp = Sharp(loop);
            for (int i = 0; i < sharp.Count; i++)
                edges.Add((sharp[i], sharp[(i + 1) % sharp.Count]));
        }

        double front = edges.Min(e => e.From.Z);
        double[] at = [.. edges.Select(e => e.From.Y).Order()];
        var faces = new List<SeenFace>();
        for (int i = 1; i < at.Length; i++)
        {
            if (at[i] - at[i - 1] < Same || Lowest(edges, (at[i - 1] + at[i]) / 2) is not { } depth)
                continue;
            depth -= front;
            if (faces.Count > 0 && faces[^1] is var last && at[i - 1] - last.To < Same && Math.Abs(last.Depth - depth) < Same)
                faces[^1] = last with { To = at[i] };
            else
                faces.Add(new SeenFace(at[i - 1], at[i], depth));
        }

        return faces;
    }

    // height of the lowest edge over a place; null where there is none, or where it slopes
    private static double? Lowest(List<((double Y, double Z) From, (double Y, double Z) To)> edges, double y)
    {
        double lowest = double.PositiveInfinity;
        bool level = false;
        foreach (((double Y, double Z) a, (double Y, double Z) b) in edges)
        {
            if (a.Y < y == b.Y < y)
                continue;
            double z = a.Z + (y - a.Y) / (b.Y - a.Y) * (b.Z - a.Z);
            if (z < lowest)
                (lowest, level) = (z, Math.Abs(b.Z - a.Z) < Same);
        }

        return level ? lowest : null;
    }

    // arcs that bulge outward are replaced by the corners that their ends point to
    private static List<(double Y, double Z)> Sharp(IReadOnlyList<Corner> loop)
    {
        var points = new List<(double, double)>();
        for (int i = 0; i < loop.Count; i++)
        {
            Corner a = loop[i], b = loop[(i + 1) % loop.Count];
            points.Add((a.Y, a.Z));
            if (a.Bulge <= 0)
                continue;
            (double y, double z, double r) = OutlinePolygons.Centre(a, b);
            double start = Math.Atan2(a.Z - z, a.Y - y), sweep = 4 * Math.Atan(a.Bulge);
            int parts = (int)Math.Ceiling(sweep / (Math.PI / 2) - 1e-9);
            double part = sweep / parts, reach = r / Math.Cos(part / 2);
            for (int p = 0; p < parts; p++)
            {
                double turn = start + (p + 0.5) * part;
                points.Add((y + reach * Math.Cos(turn), z + reach * Math.Sin(turn)));
            }
        }

        return points;
    }
}
