namespace Ramwright.Geometry;

/// <summary>Outlines moved about; arcs and the sense of the loops are kept.</summary>
public static class OutlineMoves
{
    /// <summary>Shifted by a distance across and a distance up, m.</summary>
    public static Outline Moved(this Outline outline, double across, double up) =>
        new([.. outline.Loops.Select(loop => (Corner[])[.. loop.Select(c => new Corner(c.Y + across, c.Z + up, c.Bulge))])]);

    /// <summary>Left and right exchanged, about y = 0.</summary>
    public static Outline Mirrored(this Outline outline) => outline.Backwards(c => (-c.Y, c.Z));

    /// <summary>Top and bottom exchanged, about z = 0.</summary>
    public static Outline Upended(this Outline outline) => outline.Backwards(c => (c.Y, -c.Z));

    /// <summary>Turned a quarter anticlockwise about the origin: what pointed right points up.</summary>
    public static Outline QuarterTurned(this Outline outline) =>
        new([.. outline.Loops.Select(loop => (Corner[])[.. loop.Select(c => new Corner(-c.Z, c.Y, c.Bulge))])]);

    /// <summary>Drawn anew in a plane whose axes are these: y becomes <paramref name="y"/>, z becomes <paramref name="z"/>, arcs stay arcs.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="y">Where one metre of y ends up.</param>
    /// <param name="z">Where one metre of z ends up: square to <paramref name="y"/> and as long.</param>
    public static Outline Onto(this Outline outline, (double Y, double Z) y, (double Y, double Z) z)
    {
        (double, double) Image(Corner c) => (c.Y * y.Y + c.Z * z.Y, c.Y * y.Z + c.Z * z.Z);
        if (y.Y * z.Z - y.Z * z.Y < 0)
            return outline.Backwards(Image);
        return new([.. outline.Loops.Select(loop => (Corner[])[.. loop.Select(c => new Corner(Image(c).Item1, Image(c).Item2, c.Bulge))])]);
    }

    /// <summary>Both outlines as one; they must not overlap, unless the second is a hole in the first.</summary>
    public static Outline With(this Outline outline, Outline other) => new([.. outline.Loops, .. other.Loops]);

    /// <summary>A mirror image runs the other way round, so its corners are taken from last to first.</summary>
    private static Outline Backwards(this Outline outline, Func<Corner, (double Y, double Z)> image)
    {
        var loops = new List<IReadOnlyList<Corner>>(outline.Loops.Count);
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
        {
            var back = new Corner[loop.Count];
            for (int i = 0; i < loop.Count; i++)
            {
                int from = loop.Count - 1 - i;
                (double y, double z) = image(loop[from]);
                // The mirror turns the bulge round and so does the reversal; the arc now belongs to its other end.
                back[i] = new Corner(y, z, loop[(from + loop.Count - 1) % loop.Count].Bulge);
            }

            loops.Add(back);
        }

        return new Outline(loops);
    }
}
