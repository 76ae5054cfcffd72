using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>A piece of steel as it is seen: its edge, and the edges of its section that can be seen along it.</summary>
internal static class PieceFigure
{
    /// <summary>Two edges closer than this are one, m.</summary>
    private const double Same = 1e-6;

    public static IEnumerable<Mark> Of(Piece piece, View view, string part, string fill)
    {
        return Math.Abs(piece.Along.Dot(view.Toward)) > 0.5 ? EndOn(piece, view, part, fill) : FromSide(piece, view, part, fill);
    }

    /// <summary>How near its nearest point is.</summary>
    public static double Nearest(Piece piece, View view)
    {
        double near = Math.Max(view.Nearness(piece.From), view.Nearness(piece.To));
        foreach ((double y, double z) in Points(piece.Outline).SelectMany(loop => loop))
            near = Math.Max(near, view.Nearness(piece.At(0, y, z)));
        return near;
    }

    /// <summary>The rectangle of paper it covers.</summary>
    public static Extents Cover(Piece piece, View view)
    {
        var e = new Extents(double.MaxValue, double.MinValue, double.MaxValue, double.MinValue);
        foreach ((double y, double z) in Points(piece.Outline).SelectMany(loop => loop))
        {
            foreach (double x in (ReadOnlySpan<double>)[0, piece.Length])
            {
                (double px, double py) = view.On(piece.At(x, y, z));
                e = new Extents(Math.Min(e.Left, px), Math.Max(e.Right, px), Math.Min(e.Bottom, py), Math.Max(e.Top, py));
            }
        }

        return e;
    }

    private static IEnumerable<Mark> EndOn(Piece piece, View view, string part, string fill)
    {
        (double x, double y) = view.On(piece.From);
        Outline outline = piece.Outline
            .Onto((view.Scale * piece.Side.Dot(view.Right), view.Scale * piece.Side.Dot(View.Upward)),
                (view.Scale * piece.Up.Dot(view.Right), view.Scale * piece.Up.Dot(View.Upward)))
            .Moved(x, y);
        yield return new Area(part, outline, Pen.Edge, fill);
    }

    private static IEnumerable<Mark> FromSide(Piece piece, View view, string part, string fill)
    {
        Vector lateral = piece.Along.Cross(view.Toward);
        List<(double C, double D)[]> loops =
        [
            .. Points(piece.Outline).Select(loop => loop
                .Select(p => (p.Y * piece.Side.Dot(lateral) + p.Z * piece.Up.Dot(lateral), p.Y * piece.Side.Dot(view.Toward) + p.Z * piece.Up.Dot(view.Toward)))
                .ToArray()),
        ];
        double low = loops.Min(l => l.Min(p => p.C)), high = loops.Max(l => l.Max(p => p.C));
        (double, double) Paper(Vector end, double c) => view.On(end + c * lateral);
        Corner Corner(Vector end, double c)
        {
            (double x, double y) = Paper(end, c);
            return new Corner(x, y);
        }

        yield return new Area(part,
            new Outline([[Corner(piece.From, low), Corner(piece.To, low), Corner(piece.To, high), Corner(piece.From, high)]]), Pen.Edge, fill);
        var drawn = new List<double> { low, high };
        foreach ((double C, double D)[] loop in loops)
        {
            for (int i = 0; i < loop.Length; i++)
            {
                (double C, double D) a = loop[(i + loop.Length - 1) % loop.Length], b = loop[i], c = loop[(i + 1) % loop.Length];
                if (IsSmooth(a, b, c) || drawn.Exists(d => Math.Abs(d - b.C) < Same) || !IsSeen(loops, b))
                    continue;
                drawn.Add(b.C);
                yield return new Line(part, [Paper(piece.From, b.C), Paper(piece.To, b.C)], Pen.Thin);
            }
        }
    }

    private static bool IsSmooth((double C, double D) a, (double C, double D) b, (double C, double D) c)
    {
        double turn = Math.Atan2(
            (b.C - a.C) * (c.D - b.D) - (b.D - a.D) * (c.C - b.C), (b.C - a.C) * (c.C - b.C) + (b.D - a.D) * (c.D - b.D));
        return Math.Abs(turn) < 0.5;
    }

    // nothing of the section may stand before the corner, just to one side of it or just to the other
    private static bool IsSeen(List<(double C, double D)[]> loops, (double C, double D) corner) =>
        Front(loops, corner.C - Same) <= corner.D + Same || Front(loops, corner.C + Same) <= corner.D + Same;

    private static double Front(List<(double C, double D)[]> loops, double c)
    {
        double front = double.MinValue;
        foreach ((double C, double D)[] loop in loops)
        {
            for (int i = 0; i < loop.Length; i++)
            {
                (double C, double D) a = loop[i], b = loop[(i + 1) % loop.Length];
                if ((a.C < c) != (b.C < c))
                    front = Math.Max(front, a.D + (c - a.C) / (b.C - a.C) * (b.D - a.D));
            }
        }

        return front;
    }

    /// <summary>The loops of an outline as corners, arcs cut into short straight lines.</summary>
    internal static IEnumerable<List<(double Y, double Z)>> Points(Outline outline)
    {
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
        {
            var points = new List<(double, double)>();
            for (int i = 0; i < loop.Count; i++)
            {
                Corner a = loop[i], b = loop[(i + 1) % loop.Count];
                points.Add((a.Y, a.Z));
                if (a.Bulge == 0)
                    continue;
                double lift = (1 - a.Bulge * a.Bulge) / (4 * a.Bulge);
                double yc = (a.Y + b.Y) / 2 - lift * (b.Z - a.Z), zc = (a.Z + b.Z) / 2 + lift * (b.Y - a.Y);
                double r = Math.Sqrt((a.Y - yc) * (a.Y - yc) + (a.Z - zc) * (a.Z - zc));
                double start = Math.Atan2(a.Z - zc, a.Y - yc), sweep = 4 * Math.Atan(a.Bulge);
                int parts = Math.Max(2, (int)Math.Ceiling(Math.Abs(sweep) / 0.2));
                for (int p = 1; p < parts; p++)
                    points.Add((yc + r * Math.Cos(start + sweep * p / parts), zc + r * Math.Sin(start + sweep * p / parts)));
            }

            yield return points;
        }
    }
}
