using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using Ramwright.Geometry;
using NtsGeometry = NetTopologySuite.Geometries.Geometry;

namespace Ramwright.Fabrication.Nesting;

/// <summary>The edge of a part turned one way, and of those of its holes that other parts may be cut from, as straight lines no steel stands out of; and its convex pieces.</summary>
internal sealed class NestShape
{
    /// <summary>How far the straight lines may stand off an arc, m: what it costs in steel.</summary>
    private const double Coarse = 0.8e-3;

    /// <summary>A corner of an offset edge is cut off no nearer than this many offsets.</summary>
    private const double Mitre = 5;

    private NestShape(int number, double angle, Polygon polygon, double gap)
    {
        (Number, Angle, Polygon) = (number, angle, polygon);
        Pieces = Convex.Pieces(polygon);
        NtsGeometry wide = gap > 0 ? Wider(polygon, gap) : polygon;
        Kept = gap > 0 ? Convex.Pieces(wide) : Pieces;
        (Sides, KeptSides) = (Side.Round(polygon), Side.Round(wide));
        Perimeter = Sides.Sum(e => e.Length);
        Claim = (polygon.Area + wide.Area) / 2;
        Envelope e = polygon.EnvelopeInternal;
        Room = new Room(e.MinX, e.MaxX, e.MinY, e.MaxY);
        Area = polygon.Area;
    }

    /// <summary>Its number among all shapes and turns.</summary>
    public int Number { get; }

    /// <summary>How it is turned, rad.</summary>
    public double Angle { get; }

    /// <summary>The edge.</summary>
    public Polygon Polygon { get; }

    /// <summary>Its convex pieces.</summary>
    public IReadOnlyList<ConvexPiece> Pieces { get; }

    /// <summary>Convex pieces of what it keeps clear of others: itself and the gap.</summary>
    public IReadOnlyList<ConvexPiece> Kept { get; }

    /// <summary>Its straight sides.</summary>
    public Side[] Sides { get; }

    /// <summary>The sides of what it keeps clear of others.</summary>
    public Side[] KeptSides { get; }

    /// <summary>All its sides added, m.</summary>
    public double Perimeter { get; }

    public Room Room { get; }

    public double Area { get; }

    /// <summary>What it takes of a sheet with half of the gap round it, nearly enough, m².</summary>
    public double Claim { get; }

    /// <summary>A part in every turn that is not the same as another.</summary>
    /// <param name="edge">Its outer edge, anticlockwise, m.</param>
    /// <param name="windows">Those of its holes that other parts may be cut from, clockwise.</param>
    /// <param name="step">Turns, rad; its multiples up to a whole turn.</param>
    /// <param name="gap">Least steel to the next part, m.</param>
    /// <param name="numbers">Gives each shape its number.</param>
    public static IReadOnlyList<NestShape> Turns(IReadOnlyList<Corner> edge, IReadOnlyList<IReadOnlyList<Corner>> windows, double step, double gap, Func<int> numbers)
    {
        var turns = new List<NestShape>();
        (double Y, double Z)[][] loops = [Outside(edge), .. windows.Select(Outside)];
        int count = Math.Max(1, (int)Math.Round(2 * Math.PI / step));
        if (Math.Abs(count * step - 2 * Math.PI) > 1e-6)
            count = Math.Max(1, (int)Math.Floor(2 * Math.PI / step));
        for (int i = 0; i < count; i++)
        {
            double angle = i * step;
            var turn = new Plates.PlateTurn(angle, 0, 0);
            LinearRing[] rings = [.. loops.Select(l => Ring([.. l.Select(p => turn.Of(p.Y, p.Z))]))];
            var polygon = new Polygon(rings[0], rings[1..]);
            if (!turns.Exists(t => IsSame(t.Polygon, polygon)))
                turns.Add(new NestShape(numbers(), angle, polygon, gap));
        }

        return turns;
    }

    internal static Polygon Closed(IReadOnlyList<(double Y, double Z)> corners) => new(Ring(corners));

    private static LinearRing Ring(IReadOnlyList<(double Y, double Z)> corners) => new([.. corners.Append(corners[0]).Select(p => new Coordinate(p.Y, p.Z))]);

    /// <summary>A polygon made wider all round, by no less than is asked.</summary>
    /// <remarks>The library leaves out corners of its offset that lie nearer than a thousandth of it: that much is added, and a little.</remarks>
    internal static NtsGeometry Wider(NtsGeometry polygon, double by) =>
        polygon.Buffer(1.003 * by, new BufferParameters(2, EndCapStyle.Flat, JoinStyle.Mitre, Mitre) { SimplifyFactor = 1e-9 });

    // arcs that bulge out are replaced by tangents, arcs that bulge in by chords, on a hole as well: the part lies within
    internal static (double Y, double Z)[] Outside(IReadOnlyList<Corner> edge)
    {
        var points = new List<(double, double)>();
        for (int i = 0; i < edge.Count; i++)
        {
            Corner a = edge[i], b = edge[(i + 1) % edge.Count];
            points.Add((a.Y, a.Z));
            if (a.Bulge == 0)
                continue;
            (double cy, double cz, double r) = OutlinePolygons.Centre(a, b);
            double start = Math.Atan2(a.Z - cz, a.Y - cy), sweep = 4 * Math.Atan(a.Bulge);
            double most = Math.Min(Math.PI / 4, 2 * Math.Acos(Math.Max(0, 1 - Coarse / r)));
            int parts = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / most));
            double part = sweep / parts;
            for (int p = 0; p < parts; p++)
            {
                if (a.Bulge > 0)
                {
                    // where the tangents at both ends of this part meet
                    double out_ = r / Math.Cos(part / 2), at = start + part * (p + 0.5);
                    points.Add((cy + out_ * Math.Cos(at), cz + out_ * Math.Sin(at)));
                }
                else if (p > 0)
                {
                    points.Add((cy + r * Math.Cos(start + part * p), cz + r * Math.Sin(start + part * p)));
                }
            }
        }

        return [.. points];
    }

    private static bool IsSame(Polygon a, Polygon b)
    {
        (Envelope ea, Envelope eb) = (a.EnvelopeInternal, b.EnvelopeInternal);
        if (Math.Abs(ea.Width - eb.Width) > 1e-9 || Math.Abs(ea.Height - eb.Height) > 1e-9 || a.NumPoints != b.NumPoints)
            return false;
        double dx = ea.MinX - eb.MinX, dy = ea.MinY - eb.MinY;
        return b.Coordinates.All(c => a.Coordinates.Any(d => Math.Abs(d.X - c.X - dx) < 1e-9 && Math.Abs(d.Y - c.Y - dy) < 1e-9));
    }
}
