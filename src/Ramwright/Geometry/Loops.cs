namespace Ramwright.Geometry;

/// <summary>Makes the loops that outlines of steel are built from.</summary>
public static class Loops
{
    /// <summary>A polygon whose corners are rounded by arcs that touch both edges.</summary>
    /// <param name="corners">Sharp corners in order, m, each with its radius, m; 0 leaves it sharp.</param>
    /// <exception cref="ArgumentException">A radius too great for the edges beside it.</exception>
    public static IReadOnlyList<Corner> Rounded(params ReadOnlySpan<(double Y, double Z, double Radius)> corners)
    {
        int n = corners.Length;
        if (n < 3)
            throw new ArgumentException("A loop has three corners or more.", nameof(corners));

        // How far from each corner its arc begins, and the bulge of that arc.
        var setback = new double[n];
        var bulge = new double[n];
        for (int i = 0; i < n; i++)
        {
            (double dy, double dz) into = Direction(corners[(i + n - 1) % n], corners[i]);
            (double dy, double dz) outOf = Direction(corners[i], corners[(i + 1) % n]);
            double turn = Math.Atan2(
                into.dy * outOf.dz - into.dz * outOf.dy, into.dy * outOf.dy + into.dz * outOf.dz);
            setback[i] = corners[i].Radius * Math.Abs(Math.Tan(turn / 2));
            bulge[i] = Math.Tan(turn / 4);
        }

        var loop = new List<Corner>(2 * n);
        for (int i = 0; i < n; i++)
        {
            int next = (i + 1) % n;
            double length = Distance(corners[i], corners[next]);
            if (!(setback[i] + setback[next] <= length * (1 + 1e-9)))
                throw new ArgumentException($"The rounding at corner {i} or {next} does not fit on the edge between them.", nameof(corners));

            if (setback[i] == 0)
            {
                loop.Add(new Corner(corners[i].Y, corners[i].Z));
                continue;
            }

            (double dy, double dz) into = Direction(corners[(i + n - 1) % n], corners[i]);
            (double dy, double dz) outOf = Direction(corners[i], corners[next]);
            loop.Add(new Corner(corners[i].Y - setback[i] * into.dy, corners[i].Z - setback[i] * into.dz, bulge[i]));
            loop.Add(new Corner(corners[i].Y + setback[i] * outOf.dy, corners[i].Z + setback[i] * outOf.dz));
        }

        return loop;
    }

    /// <summary>A rectangle, anticlockwise, m.</summary>
    public static IReadOnlyList<Corner> Rectangle(double left, double right, double bottom, double top) =>
        [new(left, bottom), new(right, bottom), new(right, top), new(left, top)];

    /// <summary>A circle about the origin, anticlockwise, of diameter <paramref name="d"/>, m.</summary>
    public static IReadOnlyList<Corner> Circle(double d) => [new(d / 2, 0, 1), new(-d / 2, 0, 1)];

    /// <summary>The same loop run the other way: an outer loop becomes a hole.</summary>
    public static IReadOnlyList<Corner> AsHole(this IReadOnlyList<Corner> loop)
    {
        int n = loop.Count;
        var back = new Corner[n];
        for (int i = 0; i < n; i++)
        {
            Corner c = loop[n - 1 - i];
            back[i] = new Corner(c.Y, c.Z, -loop[(2 * n - 2 - i) % n].Bulge);
        }

        return back;
    }

    private static (double, double) Direction((double Y, double Z, double) a, (double Y, double Z, double) b)
    {
        double length = Distance(a, b);
        if (!(length > 0))
            throw new ArgumentException("Two corners of a loop lie on one spot.");
        return ((b.Y - a.Y) / length, (b.Z - a.Z) / length);
    }

    private static double Distance((double Y, double Z, double) a, (double Y, double Z, double) b) =>
        Math.Sqrt((b.Y - a.Y) * (b.Y - a.Y) + (b.Z - a.Z) * (b.Z - a.Z));
}
