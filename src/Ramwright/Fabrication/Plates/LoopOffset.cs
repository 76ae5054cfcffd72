using Ramwright.Geometry;

namespace Ramwright.Fabrication.Plates;

/// <summary>Loops of lines and arcs moved aside by a small distance, arcs staying arcs.</summary>
public static class LoopOffset
{
    private const double Tiny = 1e-12;

    /// <summary>Area within a loop, m²; below zero where it runs clockwise.</summary>
    public static double SignedArea(IReadOnlyList<Corner> loop)
    {
        ArgumentNullException.ThrowIfNull(loop);
        double area = 0;
        for (int i = 0; i < loop.Count; i++)
        {
            Corner a = loop[i], b = loop[(i + 1) % loop.Count];
            area += (a.Y * b.Z - b.Y * a.Z) / 2;
            if (a.Bulge != 0)
            {
                // the segment between chord and arc
                double θ = 4 * Math.Atan(a.Bulge), chord2 = (b.Y - a.Y) * (b.Y - a.Y) + (b.Z - a.Z) * (b.Z - a.Z), sin = Math.Sin(θ / 2);
                area += chord2 / (8 * sin * sin) * (θ - Math.Sin(θ));
            }
        }

        return area;
    }

    /// <summary>The lesser side of the upright rectangle round a loop, m.</summary>
    internal static double Widest(IReadOnlyList<Corner> loop)
    {
        Extents e = new Outline([loop]).Extents();
        return Math.Min(e.Width, e.Height);
    }

    /// <summary>The loop moved to the right of its run: an outer loop grows, a hole shrinks.</summary>
    /// <param name="loop">The loop.</param>
    /// <param name="d">How far, m; small against the edges and radii of the loop.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance that an inner radius or an edge is too small for.</exception>
    public static IReadOnlyList<Corner> ToTheRight(IReadOnlyList<Corner> loop, double d)
    {
        ArgumentNullException.ThrowIfNull(loop);
        int n = loop.Count;
        var edges = new Side[n];
        for (int i = 0; i < n; i++)
            edges[i] = Side.Of(loop[i], loop[(i + 1) % n], d);
        var moved = new List<Corner>();
        for (int i = 0; i < n; i++)
        {
            Side into = edges[(i + n - 1) % n], outOf = edges[i];
            // a left turn opens a gap on the right, which an arc round the corner closes; a right turn makes the two meet earlier
            double turn = into.EndDirection.Y * outOf.StartDirection.Z - into.EndDirection.Z * outOf.StartDirection.Y;
            double ahead = into.EndDirection.Y * outOf.StartDirection.Y + into.EndDirection.Z * outOf.StartDirection.Z;
            if (Math.Abs(turn) < 1e-9 && ahead > 0)
                moved.Add(new Corner(outOf.From.Y, outOf.From.Z, outOf.Bulge));
            else if (turn > 0)
            {
                moved.Add(new Corner(into.To.Y, into.To.Z, Math.Tan(Math.Atan2(turn, ahead) / 4)));
                moved.Add(new Corner(outOf.From.Y, outOf.From.Z, outOf.Bulge));
            }
            else
            {
                (double Y, double Z) meet = into.Meets(outOf, (loop[i].Y, loop[i].Z)) ?? throw new ArgumentOutOfRangeException(nameof(d), d, "The loop has no room for so wide a cut.");
                moved.Add(new Corner(meet.Y, meet.Z, outOf.Bulge));
            }
        }

        return Rebent(moved, edges);
    }

    // where an arc was cut shorter its bulge is that of the arc that is left
    private static Corner[] Rebent(List<Corner> moved, Side[] edges)
    {
        Corner[] loop = [.. moved];
        for (int i = 0; i < loop.Length; i++)
        {
            if (loop[i].Bulge == 0)
                continue;
            Corner a = loop[i], b = loop[(i + 1) % loop.Length];
            foreach (Side side in edges)
            {
                if (!side.IsArc || Math.Abs(side.Bulge - a.Bulge) > Tiny)
                    continue;
                (double cy, double cz, double r) = side.Circle;
                double ra = Distance(a.Y - cy, a.Z - cz), rb = Distance(b.Y - cy, b.Z - cz);
                if (Math.Abs(ra - r) > 1e-9 || Math.Abs(rb - r) > 1e-9)
                    continue;
                double sweep = Math.Atan2(b.Z - cz, b.Y - cy) - Math.Atan2(a.Z - cz, a.Y - cy);
                if (a.Bulge > 0 && sweep <= 1e-12)
                    sweep += 2 * Math.PI;
                if (a.Bulge < 0 && sweep >= -1e-12)
                    sweep -= 2 * Math.PI;
                loop[i] = a with { Bulge = Math.Tan(sweep / 4) };
                break;
            }
        }

        return loop;
    }

    private static double Distance(double y, double z) => Math.Sqrt(y * y + z * z);

    /// <summary>One edge, moved.</summary>
    private readonly record struct Side(
        (double Y, double Z) From, (double Y, double Z) To, (double Y, double Z) StartDirection, (double Y, double Z) EndDirection, double Bulge, (double Y, double Z, double R) Circle)
    {
        public bool IsArc => Bulge != 0;

        public static Side Of(Corner a, Corner b, double d)
        {
            double dy = b.Y - a.Y, dz = b.Z - a.Z, l = Distance(dy, dz), chord = Math.Atan2(dz, dy), half = 2 * Math.Atan(a.Bulge);
            if (!(l > Tiny))
                throw new ArgumentOutOfRangeException(nameof(a), l, "Two corners of a loop lie on one spot.");
            (double Y, double Z) start = (Math.Cos(chord - half), Math.Sin(chord - half)), end = (Math.Cos(chord + half), Math.Sin(chord + half));
            (double, double, double) circle = default;
            if (a.Bulge != 0)
            {
                (double cy, double cz, double r) = OutlinePolygons.Centre(a, b);
                // an arc that turns left has its centre on the left: moved to the right it grows
                double moved = r + Math.Sign(a.Bulge) * d;
                if (!(moved > Tiny))
                    throw new ArgumentOutOfRangeException(nameof(d), d, "The loop has no room for so wide a cut.");
                circle = (cy, cz, moved);
            }

            return new Side((a.Y + d * start.Z, a.Z - d * start.Y), (b.Y + d * end.Z, b.Z - d * end.Y), start, end, a.Bulge, circle);
        }

        /// <summary>Where two moved edges meet, nearest to where the corner was.</summary>
        public (double Y, double Z)? Meets(Side other, (double Y, double Z) near)
        {
            IEnumerable<(double Y, double Z)> all = (IsArc, other.IsArc) switch
            {
                (false, false) => Lines(this, other),
                (true, false) => LineCircle(other, this),
                (false, true) => LineCircle(this, other),
                _ => Circles(Circle, other.Circle),
            };
            (double Y, double Z)[] found = [.. all];
            return found.Length == 0 ? null : found.MinBy(p => Distance(p.Y - near.Y, p.Z - near.Z));
        }

        private static IEnumerable<(double, double)> Lines(Side a, Side b)
        {
            double cross = a.EndDirection.Y * b.StartDirection.Z - a.EndDirection.Z * b.StartDirection.Y;
            if (Math.Abs(cross) < Tiny)
                yield break;
            double t = ((b.From.Y - a.To.Y) * b.StartDirection.Z - (b.From.Z - a.To.Z) * b.StartDirection.Y) / cross;
            yield return (a.To.Y + t * a.EndDirection.Y, a.To.Z + t * a.EndDirection.Z);
        }

        private static IEnumerable<(double, double)> LineCircle(Side line, Side arc)
        {
            (double Y, double Z) u = line.StartDirection;
            double py = line.From.Y - arc.Circle.Y, pz = line.From.Z - arc.Circle.Z;
            double b = py * u.Y + pz * u.Z, c = py * py + pz * pz - arc.Circle.R * arc.Circle.R, root = b * b - c;
            if (root < 0)
                yield break;
            foreach (double t in new[] { -b - Math.Sqrt(root), -b + Math.Sqrt(root) })
                yield return (line.From.Y + t * u.Y, line.From.Z + t * u.Z);
        }

        private static IEnumerable<(double, double)> Circles((double Y, double Z, double R) a, (double Y, double Z, double R) b)
        {
            double dy = b.Y - a.Y, dz = b.Z - a.Z, d = Distance(dy, dz);
            if (d < Tiny)
                yield break;
            double along = (d * d + a.R * a.R - b.R * b.R) / (2 * d), off2 = a.R * a.R - along * along;
            if (off2 < 0)
                yield break;
            double off = Math.Sqrt(off2), my = a.Y + along * dy / d, mz = a.Z + along * dz / d;
            yield return (my - off * dz / d, mz + off * dy / d);
            yield return (my + off * dz / d, mz - off * dy / d);
        }
    }
}
