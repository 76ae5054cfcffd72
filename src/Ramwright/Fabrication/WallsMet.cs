using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Fabrication;

/// <summary>A wall of a piece that a straight line goes through.</summary>
/// <param name="From">Where the line enters it, m along the line from its point.</param>
/// <param name="To">Where it leaves it.</param>
internal readonly record struct WallMet(double From, double To)
{
    public double Thickness => To - From;
}

/// <summary>Which walls of a piece of the frame a bolt or pin goes through.</summary>
internal static class WallsMet
{
    private const double Fine = 1e-5;

    /// <summary>The walls that a line across a piece goes through, in order; none where it passes the piece by.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="at">A point of the line, global, m.</param>
    /// <param name="along">Its direction, one long; across the piece.</param>
    public static IReadOnlyList<WallMet> Of(Piece piece, Vector at, Vector along)
    {
        Vector from = at - piece.From;
        double x = from.Dot(piece.Along);
        if (Math.Abs(along.Dot(piece.Along)) > 1e-6 || x <= 0 || x >= piece.Length)
            return [];
        (double Y, double Z) p = (from.Dot(piece.Side), from.Dot(piece.Up)), d = (along.Dot(piece.Side), along.Dot(piece.Up));
        var crossings = new List<double>();
        foreach ((double Y, double Z)[] loop in piece.Outline.Polygons(Fine))
        {
            for (int i = 0; i < loop.Length; i++)
            {
                (double Y, double Z) a = loop[i], b = loop[(i + 1) % loop.Length];
                // how far each end stands beside the line
                double sa = (a.Y - p.Y) * d.Z - (a.Z - p.Z) * d.Y, sb = (b.Y - p.Y) * d.Z - (b.Z - p.Z) * d.Y;
                if ((sa < 0) == (sb < 0))
                    continue;
                double t = sa / (sa - sb);
                crossings.Add((a.Y + t * (b.Y - a.Y) - p.Y) * d.Y + (a.Z + t * (b.Z - a.Z) - p.Z) * d.Z);
            }
        }

        crossings.Sort();
        return [.. Enumerable.Range(0, crossings.Count / 2).Select(i => new WallMet(crossings[2 * i], crossings[2 * i + 1]))];
    }
}
