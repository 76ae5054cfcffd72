namespace Ramwright.Fabrication.Nesting;

/// <summary>A convex polygon, anticlockwise, from its lowest corner (the leftmost of those).</summary>
internal sealed class ConvexPiece
{
    /// <summary>Corners nearer than this to a straight line are none, m.</summary>
    private const double Flat = 1e-12;

    private ConvexPiece(Spot[] corners)
    {
        Corners = corners;
        Room = Room.Of(corners);
        _sides = [.. corners.Select((a, i) => Side.Of(a, corners[i + 1 == corners.Length ? 0 : i + 1]))];
    }

    private readonly Side[] _sides;

    // the line of an edge: its distance from a point within is Off - X x - Y y
    private readonly record struct Side(double X, double Y, double Off)
    {
        public static Side Of(Spot a, Spot b)
        {
            double x = b.Y - a.Y, y = a.X - b.X, l = Math.Sqrt(x * x + y * y);
            return l > 0 ? new Side(x / l, y / l, (x * a.X + y * a.Y) / l) : new Side(0, 0, double.PositiveInfinity);
        }
    }

    public Spot[] Corners { get; }

    public Room Room { get; }

    /// <summary>A piece of corners that run anticlockwise round a convex shape.</summary>
    public static ConvexPiece Of(IReadOnlyList<Spot> corners)
    {
        int first = 0;
        for (int i = 1; i < corners.Count; i++)
        {
            if (corners[i].Y < corners[first].Y || (corners[i].Y == corners[first].Y && corners[i].X < corners[first].X))
                first = i;
        }

        var turned = new Spot[corners.Count];
        for (int i = 0; i < turned.Length; i++)
            turned[i] = corners[(first + i) % corners.Count];
        return new ConvexPiece(turned);
    }

    /// <summary>
    /// Where the origin of <paramref name="moving"/> may not come: all places that make it overlap this piece. Both walked round by
    /// the heading of their edges.
    /// </summary>
    public ConvexPiece NoGo(ConvexPiece moving)
    {
        // a piece turned by half a turn is still convex and anticlockwise
        ConvexPiece back = Of([.. moving.Corners.Select(c => -c)]);
        Spot[] a = Corners, b = back.Corners;
        var sum = new List<Spot>(a.Length + b.Length);
        int i = 0, j = 0;
        while (i < a.Length || j < b.Length)
        {
            Spot at = a[i % a.Length] + b[j % b.Length];
            Spot ea = a[(i + 1) % a.Length] - a[i % a.Length], eb = b[(j + 1) % b.Length] - b[j % b.Length];
            sum.Add(at);
            double turn = i >= a.Length ? -1 : j >= b.Length ? 1 : ea.Cross(eb);
            if (turn >= 0)
                i++;
            if (turn <= 0)
                j++;
        }

        return new ConvexPiece(Cleaned(sum));
    }

    /// <summary>How far within a point lies: its distance to the nearest edge's line, m; no more than <paramref name="least"/> where that is not passed.</summary>
    /// <param name="p">The point, from this piece's own origin.</param>
    /// <param name="least">Depths up to this do not matter, m.</param>
    public double Depth(Spot p, double least)
    {
        if (p.X - Room.Left <= least || Room.Right - p.X <= least || p.Y - Room.Bottom <= least || Room.Top - p.Y <= least)
            return least;
        double depth = double.PositiveInfinity;
        foreach (ref readonly Side side in _sides.AsSpan())
        {
            double inside = side.Off - side.X * p.X - side.Y * p.Y;
            if (inside <= least)
                return least;
            if (inside < depth)
                depth = inside;
        }

        return depth;
    }

    private static Spot[] Cleaned(List<Spot> corners)
    {
        var kept = new List<Spot>(corners.Count);
        for (int i = 0; i < corners.Count; i++)
        {
            Spot before = kept.Count > 0 ? kept[^1] : corners[^1], here = corners[i], after = corners[(i + 1) % corners.Count];
            if (Math.Abs((here - before).Cross(after - here)) > Flat * ((here - before).Dot(here - before) + (after - here).Dot(after - here)))
                kept.Add(here);
        }

        return kept.Count >= 3 ? [.. kept] : [.. corners];
    }

    /// <summary>Whether a point lies within by more than a hair.</summary>
    /// <param name="at">Where this piece stands.</param>
    /// <param name="p">The point.</param>
    /// <param name="hair">m.</param>
    public bool Holds(Spot at, Spot p, double hair)
    {
        double x = p.X - at.X, y = p.Y - at.Y;
        if (x <= Room.Left + hair || x >= Room.Right - hair || y <= Room.Bottom + hair || y >= Room.Top - hair)
            return false;
        Spot[] c = Corners;
        for (int i = 0; i < c.Length; i++)
        {
            Spot a = c[i], b = c[i + 1 == c.Length ? 0 : i + 1];
            double ex = b.X - a.X, ey = b.Y - a.Y, side = ex * (y - a.Y) - ey * (x - a.X);
            // distance to the edge, both sides squared
            if (side <= 0 || side * side <= hair * hair * (ex * ex + ey * ey))
                return false;
        }

        return true;
    }
}
