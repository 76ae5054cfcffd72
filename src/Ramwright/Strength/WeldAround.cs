using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Strength;

/// <summary>Welds that follow the edge of any section standing on a face.</summary>
/// <remarks>
/// Straight edges and arcs alike are followed, arcs in short chords. Edges that a torch cannot reach are left out: the inside of hollow
/// sections, and faces of a pair that stand closer than three throats.
/// </remarks>
public static class WeldAround
{
    /// <summary>Chords of a quarter circle; its length then comes out 0.3 % short.</summary>
    private const int ChordsOfQuarter = 6;

    /// <summary>All the edge of a section, welded from outside.</summary>
    /// <param name="plane">The face; U along the section's y, V along its z, the origin at its centroid's axis origin.</param>
    /// <param name="outline">The section's edge.</param>
    /// <param name="throat">Throat of each run, m.</param>
    /// <param name="butt">Full-penetration butt welds instead of fillets.</param>
    /// <param name="on">Where the face has steel; null where it goes on all round.</param>
    /// <exception cref="ArgumentException">Nothing of the edge can be reached, or none of it lies on steel.</exception>
    public static WeldGroup Edge(WeldPlane plane, Outline outline, double throat, bool butt = false, WeldLanding? on = null) =>
        new(Runs(plane, outline, throat, butt, on));

    /// <summary>The runs of such a weld; none where none of the edge lies on steel.</summary>
    internal static List<WeldSegment> Runs(WeldPlane plane, Outline outline, double throat, bool butt, WeldLanding? on)
    {
        ArgumentNullException.ThrowIfNull(plane);
        ArgumentNullException.ThrowIfNull(outline);
        Check.Positive(throat);
        var loops = new List<(double Y, double Z)[]>();
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
            loops.Add(Chords(loop));
        var welds = new List<WeldSegment>();
        foreach ((double Y, double Z)[] loop in loops)
        {
            if (SignedArea(loop) < 0)
                continue;
            var pieces = new List<(int Edge, double From, double To)>();
            bool whole = true;
            for (int i = 0; i < loop.Length; i++)
            {
                (double Y, double Z) p = loop[i], q = loop[(i + 1) % loop.Length];
                double dy = q.Y - p.Y, dz = q.Z - p.Z, length = Math.Sqrt(dy * dy + dz * dz);
                if (length < 1e-6)
                    continue;
                (double Y, double Z) outward = (dz / length, -dy / length);
                if (Inside(loops, (p.Y + q.Y) / 2 + 3 * throat * outward.Y, (p.Z + q.Z) / 2 + 3 * throat * outward.Z, loop))
                    continue;
                double counted = 0;
                foreach ((double from, double to) in on?.Parts(p, q, outward) ?? [(0, 1)])
                {
                    pieces.Add((i, from, to));
                    counted += to - from;
                }

                whole &= counted > 1 - 1e-9;
            }

            foreach ((int i, double from, double to) in whole ? pieces : LongEnough(pieces, loop, on!.Least))
            {
                (double Y, double Z) p = Along(loop, i, from), q = Along(loop, i, to), all = Along(loop, i, 1), none = Along(loop, i, 0);
                double dy = all.Y - none.Y, dz = all.Z - none.Z, length = Math.Sqrt(dy * dy + dz * dz);
                welds.Add(butt
                    ? WeldSegment.Butt(plane.At(p.Y, p.Z), plane.At(q.Y, q.Z), throat, plane.Normal)
                    : WeldOutline.Line(plane, p.Y, p.Z, q.Y, q.Z, throat, dz / length * plane.U + -dy / length * plane.V));
            }
        }

        return welds;
    }

    private static (double Y, double Z) Along((double Y, double Z)[] loop, int edge, double share)
    {
        (double Y, double Z) p = loop[edge], q = loop[(edge + 1) % loop.Length];
        return share <= 0 ? p : share >= 1 ? q : (p.Y + share * (q.Y - p.Y), p.Z + share * (q.Z - p.Z));
    }

    // pieces that hang together round a corner are one run; short runs are left out
    private static IEnumerable<(int Edge, double From, double To)> LongEnough(List<(int Edge, double From, double To)> pieces, (double Y, double Z)[] loop, double least)
    {
        var runs = new List<List<(int Edge, double From, double To)>>();
        foreach ((int Edge, double From, double To) piece in pieces)
        {
            if (runs.Count > 0 && Meet(runs[^1][^1], piece, loop))
                runs[^1].Add(piece);
            else
                runs.Add([piece]);
        }

        if (runs.Count > 1 && Meet(runs[^1][^1], runs[0][0], loop))
        {
            runs[0].InsertRange(0, runs[^1]);
            runs.RemoveAt(runs.Count - 1);
        }

        return runs.Where(run => run.Sum(piece => Distance(Along(loop, piece.Edge, piece.From), Along(loop, piece.Edge, piece.To))) >= least).SelectMany(run => run);
    }

    private static bool Meet((int Edge, double From, double To) one, (int Edge, double From, double To) next, (double Y, double Z)[] loop) =>
        Distance(Along(loop, one.Edge, one.To), Along(loop, next.Edge, next.From)) < 1e-6;

    private static double Distance((double Y, double Z) p, (double Y, double Z) q) => Math.Sqrt((q.Y - p.Y) * (q.Y - p.Y) + (q.Z - p.Z) * (q.Z - p.Z));

    private static (double, double)[] Chords(IReadOnlyList<Corner> loop)
    {
        var points = new List<(double, double)>(loop.Count);
        for (int i = 0; i < loop.Count; i++)
        {
            Corner a = loop[i], b = loop[(i + 1) % loop.Count];
            points.Add((a.Y, a.Z));
            if (a.Bulge == 0)
                continue;
            // centre of the arc, left of the chord by (1 − k²)/(4k) chords
            double k = a.Bulge, angle = 4 * Math.Atan(k), left = (1 - k * k) / (4 * k);
            double cy = (a.Y + b.Y) / 2 - left * (b.Z - a.Z), cz = (a.Z + b.Z) / 2 + left * (b.Y - a.Y);
            int n = Math.Max(1, (int)Math.Ceiling(Math.Abs(angle) / (Math.PI / 2) * ChordsOfQuarter));
            for (int j = 1; j < n; j++)
            {
                double turn = angle * j / n, c = Math.Cos(turn), s = Math.Sin(turn);
                points.Add((cy + c * (a.Y - cy) - s * (a.Z - cz), cz + s * (a.Y - cy) + c * (a.Z - cz)));
            }
        }

        return [.. points];
    }

    private static double SignedArea((double Y, double Z)[] loop)
    {
        double twice = 0;
        for (int i = 0; i < loop.Length; i++)
        {
            (double Y, double Z) p = loop[i], q = loop[(i + 1) % loop.Length];
            twice += p.Y * q.Z - q.Y * p.Z;
        }

        return twice / 2;
    }

    // whether a point lies in the material of another loop, or straight across a gap inside the own one (a narrow notch)
    private static bool Inside(List<(double Y, double Z)[]> loops, double y, double z, (double Y, double Z)[] own)
    {
        foreach ((double Y, double Z)[] loop in loops)
        {
            if (SignedArea(loop) > 0 && Within(loop, y, z) && !ReferenceEquals(loop, own))
                return true;
        }

        return false;
    }

    private static bool Within((double Y, double Z)[] loop, double y, double z)
    {
        bool inside = false;
        for (int i = 0, j = loop.Length - 1; i < loop.Length; j = i++)
        {
            (double Y, double Z) a = loop[i], b = loop[j];
            if (a.Z > z != b.Z > z && y < (b.Y - a.Y) * (z - a.Z) / (b.Z - a.Z) + a.Y)
                inside = !inside;
        }

        return inside;
    }
}
