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
