using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>Says in words how a frame moves that should not.</summary>
internal static class FreeMovement
{
    private const double Noticeable = 1e-6;

    /// <summary>Builds the exception for a mode.</summary>
    /// <param name="model">The frame.</param>
    /// <param name="d">Movements in the mode, six for each node.</param>
    public static FrameMovesException Describe(FrameModel model, ReadOnlySpan<double> d)
    {
        double size = Extent(model);
        var mode = new (Vector, Vector)[model.Nodes.Count];
        int most = 0, moving = 0;
        double largest = 0;
        for (int i = 0; i < mode.Length; i++)
        {
            ReadOnlySpan<double> m = d.Slice(Unknowns.PerNode * i, Unknowns.PerNode);
            mode[i] = (new Vector(m[0], m[1], m[2]), new Vector(m[3], m[4], m[5]));
            double moves = Math.Max(mode[i].Item1.Length, size * mode[i].Item2.Length);
            // Of those that turn together, the one nearest the axis: it is the place to hold. Margins that rounding cannot cross.
            bool more = moves > largest * (1 + Noticeable), asMuch = moves > largest * (1 - Noticeable);
            if (more || (asMuch && mode[i].Item1.Length < mode[most].Item1.Length - Noticeable * largest))
                (largest, most) = (Math.Max(moves, largest), i);
        }
        for (int i = 0; i < mode.Length; i++)
        {
            (Vector u, Vector t) = mode[i];
            mode[i] = (u / largest, t / largest);
            if (Math.Max(u.Length, size * t.Length) > Noticeable * largest)
                moving++;
        }
        return new FrameMovesException(model.Nodes[most], most, Words(mode[most].Item1, mode[most].Item2, size), moving - 1, mode);
    }

    private static string Words(Vector u, Vector t, double size) =>
        size * t.Length > 0.3 * u.Length ? "can turn freely " + About(t.Unit) : "can slide freely " + Along(u.Unit);

    private static string About(Vector t) => Axis(t) switch
    {
        0 => "about the line from left to right (X)",
        1 => "about the line from front to back (Y)",
        2 => "about the vertical (Z)",
        _ => $"about the direction ({t.X:F2}, {t.Y:F2}, {t.Z:F2})",
    };

    private static string Along(Vector u) => Axis(u) switch
    {
        0 => "from left to right (X)",
        1 => "from front to back (Y)",
        2 => "up and down (Z)",
        _ => $"along the direction ({u.X:F2}, {u.Y:F2}, {u.Z:F2})",
    };

    private static int Axis(Vector v) =>
        Math.Abs(v.X) > 0.99 ? 0 : Math.Abs(v.Y) > 0.99 ? 1 : Math.Abs(v.Z) > 0.99 ? 2 : -1;

    private static double Extent(FrameModel model)
    {
        Vector low = model.Nodes[0].At, high = low;
        foreach (Node n in model.Nodes)
        {
            low = new Vector(Math.Min(low.X, n.At.X), Math.Min(low.Y, n.At.Y), Math.Min(low.Z, n.At.Z));
            high = new Vector(Math.Max(high.X, n.At.X), Math.Max(high.Y, n.At.Y), Math.Max(high.Z, n.At.Z));
        }
        // Nodes may coincide, with members on arms between them.
        return Math.Max((high - low).Length, 1e-3);
    }
}
