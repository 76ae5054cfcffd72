using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Where the face is that an edge is welded to: bands of steel side by side, each running on across the plane.</summary>
/// <remarks>
/// A run counts where its root lies on a band, and the steel behind it too; an edge that is flush with the band's own counts. Where the part stands out beside a band, the weld runs along
/// the band's edge instead, against the part's end, with a leg no longer than it stands out. What is left is dropped where it is shorter than a weld may be. An edge that lies on steel
/// all round is left as it is.
/// </remarks>
public sealed class WeldLanding
{
    /// <summary>How far an edge may stand out beside a band and still be welded as if flush, m: widths of rolled sections may differ by 2 mm and more (EN 10034, EN 10279, from memory).</summary>
    public const double Overhang = 2e-3;

    /// <summary>Drawn outlines laid on one another.</summary>
    public static readonly Citation Source = Citation.Mechanics("outline of the beam's end laid on the face it stands against");

    // where along a run it is looked how far the part stands out
    private static readonly double[] Looked = [0.02, 0.5, 0.98];

    private readonly bool _acrossV;
    private readonly double _behind;
    private readonly List<(double From, double To)> _bands = [];

    /// <summary>Takes the bands.</summary>
    /// <param name="bands">From and to, m.</param>
    /// <param name="acrossV">Whether they lie side by side along V; otherwise along U.</param>
    /// <param name="behind">How far behind the edge there must be steel, m: the throat, or half of a thinner wall.</param>
    /// <param name="least">Shortest run that counts, m.</param>
    public WeldLanding(IEnumerable<(double From, double To)> bands, bool acrossV, double behind, double least)
    {
        ArgumentNullException.ThrowIfNull(bands);
        _acrossV = acrossV;
        _behind = Check.Positive(behind);
        Least = Check.NotNegative(least);
        double over = Math.Min(Overhang, behind / 2);
        foreach ((double from, double to) in bands.OrderBy(b => b.From))
        {
            if (_bands.Count > 0 && from - over <= _bands[^1].To)
                _bands[^1] = (_bands[^1].From, Math.Max(_bands[^1].To, to + over));
            else
                _bands.Add((from - over, to + over));
        }
    }

    /// <summary>Shortest run that counts, m.</summary>
    public double Least { get; }

    /// <summary>Runs along the edges of the bands against the end of a part that stands out beside them.</summary>
    /// <param name="loops">The part's edge.</param>
    /// <param name="throat">Throat of a run that finds room for it, m.</param>
    /// <param name="least">Thinnest throat that counts, m.</param>
    internal IEnumerable<((double Y, double Z) From, (double Y, double Z) To, (double Y, double Z) Outward, double Throat)> Beside(
        IReadOnlyList<(double Y, double Z)[]> loops, double throat, double least)
    {
        double over = Math.Min(Overhang, _behind / 2), leg = Math.Sqrt(2) * throat, foot = Math.Min(leg, Math.Sqrt(2) * least);
        if (_bands.Count == 0)
            yield break;
        // no torch reaches in between two bands
        foreach ((double at, int side) in ((double, int)[])[(_bands[0].From + over, -1), (_bands[^1].To - over, 1)])
        {
            foreach ((double low, double high) in Both(Steel(loops, at - side * (_behind - over)), Steel(loops, at + side * foot)))
            {
                double room = Looked.Min(share => Room(loops, at, side, low + share * (high - low), leg));
                yield return (At(at, low), At(at, high), _acrossV ? (0, side) : (side, 0), Math.Min(throat, room / Math.Sqrt(2)));
            }
        }
    }

    private (double Y, double Z) At(double across, double along) => _acrossV ? (along, across) : (across, along);

    // how far a part goes on beside a place, as far as it matters
    private double Room(IReadOnlyList<(double Y, double Z)[]> loops, double at, int side, double along, double most)
    {
        double room = most;
        foreach ((double Y, double Z)[] loop in loops)
        {
            for (int i = 0; i < loop.Length; i++)
            {
                (double a, double z) = Turned(loop[i]);
                (double b, double y) = Turned(loop[(i + 1) % loop.Length]);
                if (z > along == y > along)
                    continue;
                double ends = side * (a + (along - z) / (y - z) * (b - a) - at);
                if (ends > 0)
                    room = Math.Min(room, ends);
            }
        }

        return room;
    }

    // where there is steel along a line across the bands
    private List<(double From, double To)> Steel(IReadOnlyList<(double Y, double Z)[]> loops, double across)
    {
        var crossed = new List<double>();
        foreach ((double Y, double Z)[] loop in loops)
        {
            for (int i = 0; i < loop.Length; i++)
            {
                (double a, double z) = Turned(loop[i]);
                (double b, double y) = Turned(loop[(i + 1) % loop.Length]);
                if (a > across != b > across)
                    crossed.Add(z + (across - a) / (b - a) * (y - z));
            }
        }

        crossed.Sort();
        return [.. Enumerable.Range(0, crossed.Count / 2).Select(i => (crossed[2 * i], crossed[2 * i + 1]))];
    }

    private static List<(double From, double To)> Both(List<(double From, double To)> one, List<(double From, double To)> other) =>
        [.. from a in one from b in other let low = Math.Max(a.From, b.From) let high = Math.Min(a.To, b.To) where high - low > 1e-6 select (low, high)];

    // across the bands first
    private (double Across, double Along) Turned((double Y, double Z) p) => _acrossV ? (p.Z, p.Y) : (p.Y, p.Z);

    /// <summary>The parts of an edge from a point to another that count, as shares of its length.</summary>
    internal IEnumerable<(double From, double To)> Parts((double Y, double Z) p, (double Y, double Z) q, (double Y, double Z) outward)
    {
        (double a, double b) = _acrossV ? (p.Z, q.Z) : (p.Y, q.Y);
        double inward = -_behind * (_acrossV ? outward.Z : outward.Y), run = b - a;
        foreach ((double from, double to) in _bands)
        {
            // both the edge and what is behind it
            (double low, double high) = (Math.Max(from, from - inward), Math.Min(to, to - inward));
            if (Math.Abs(run) < 1e-9)
            {
                if (a >= low && a <= high)
                    yield return (0, 1);
                continue;
            }

            (double s, double t) = ((low - a) / run, (high - a) / run);
            (s, t) = (Math.Max(0, Math.Min(s, t)), Math.Min(1, Math.Max(s, t)));
            if (t > s)
                yield return (s, t);
        }
    }
}
