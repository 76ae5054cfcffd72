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
        bool whole = true;
        foreach ((double Y, double Z)[] loop in loops)
        {
            if (SignedArea(loop) < 0)
                continue;
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
                    Add(from <= 0 ? p : (p.Y + from * dy, p.Z + from * dz), to >= 1 ? q : (p.Y + to * dy, p.Z + to * dz), outward, throat, 1);
                    counted += to - from;
                }

                whole &= counted > 1 - 1e-9;
            }
        }

        if (whole)
            return welds;
        foreach (((double Y, double Z) from, (double Y, double Z) to, (double Y, double Z) outward, double a) in on!.Beside(loops, throat, Math.Min(throat, LeastThroat)))
            Add(from, to, outward, a, -1);
        return LongEnough(welds, on.Least);

        void Add((double Y, double Z) p, (double Y, double Z) q, (double Y, double Z) outward, double a, int climbs) => welds.Add(butt
            ? WeldSegment.Butt(plane.At(p.Y, p.Z), plane.At(q.Y, q.Z), a, plane.Normal)
            : WeldSegment.Fillet(plane.At(p.Y, p.Z), plane.At(q.Y, q.Z), a, outward.Y * plane.U + outward.Z * plane.V, climbs * plane.Normal));
    }

    /// <summary>A thinner fillet must not carry load: EN 1993-1-8:2005, 4.5.2(2), m.</summary>
    private const double LeastThroat = 3e-3;

    // what hangs together round corners is one run; short runs are left out
    private static List<WeldSegment> LongEnough(List<WeldSegment> welds, double least)
    {
        int[] run = [.. Enumerable.Range(0, welds.Count)];
        for (int i = 0; i < welds.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (run[i] == run[j] || !Meet(welds[i], welds[j]))
                    continue;
                int from = run[j], to = run[i];
                for (int k = 0; k < run.Length; k++)
                    run[k] = run[k] == from ? to : run[k];
            }
        }

        return [.. welds.Where((_, i) => welds.Where((_, j) => run[j] == run[i]).Sum(s => s.Length) >= least)];
    }

    private static bool Meet(WeldSegment one, WeldSegment other) =>
        Math.Min(Math.Min((one.From - other.From).Length, (one.To - other.To).Length), Math.Min((one.From - other.To).Length, (one.To - other.From).Length)) < 2 * WeldLanding.Overhang;

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
