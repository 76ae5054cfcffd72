namespace Ramwright.Fabrication.Nesting;

/// <summary>Where edges of regions that may not be entered cross each other and leave the rectangle.</summary>
internal static class EdgeMeets
{
    /// <summary>Where two edges cross; false where they do not.</summary>
    public static bool Cross(Spot p, Spot q, Spot r, Spot s, out Spot at)
    {
        at = default;
        double px = q.X - p.X, py = q.Y - p.Y, rx = s.X - r.X, ry = s.Y - r.Y, cross = px * ry - py * rx;
        if (cross == 0)
            return false;
        double dx = r.X - p.X, dy = r.Y - p.Y, t = (dx * ry - dy * rx) / cross, u = (dx * py - dy * px) / cross;
        if (t is not (>= 0 and <= 1) || u is not (>= 0 and <= 1))
            return false;
        at = new Spot(p.X + t * px, p.Y + t * py);
        return true;
    }

    /// <summary>Where an edge meets the lines of a rectangle's sides.</summary>
    /// <param name="p">Its one end.</param>
    /// <param name="q">Its other end.</param>
    /// <param name="room">The rectangle.</param>
    /// <param name="found">Takes up to four places.</param>
    /// <returns>How many there are.</returns>
    public static int Sides(Spot p, Spot q, Room room, Span<Spot> found)
    {
        int count = 0;
        double dx = q.X - p.X, dy = q.Y - p.Y;
        if (dx != 0)
        {
            if ((room.Left - p.X) / dx is >= 0 and <= 1 and var left)
                found[count++] = new Spot(room.Left, p.Y + left * dy);
            if ((room.Right - p.X) / dx is >= 0 and <= 1 and var right)
                found[count++] = new Spot(room.Right, p.Y + right * dy);
        }

        if (dy != 0)
        {
            if ((room.Bottom - p.Y) / dy is >= 0 and <= 1 and var bottom)
                found[count++] = new Spot(p.X + bottom * dx, room.Bottom);
            if ((room.Top - p.Y) / dy is >= 0 and <= 1 and var top)
                found[count++] = new Spot(p.X + top * dx, room.Top);
        }

        return count;
    }
}
