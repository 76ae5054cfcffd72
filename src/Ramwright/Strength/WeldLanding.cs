using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Where the face is that an edge is welded to: bands of steel side by side, each running on across the plane.</summary>
/// <remarks>
/// A run counts where its root lies on a band, and the steel behind it too; an edge that is flush with the band's own counts. What is left is dropped where it is shorter than a weld
/// may be. An edge that lies on steel all round is left as it is.
/// </remarks>
public sealed class WeldLanding
{
    /// <summary>How far an edge may stand out beside a band, m: what rolled sections differ by is filled by the weld; common practice.</summary>
    public const double Overhang = 1e-3;

    /// <summary>Drawn outlines laid on one another.</summary>
    public static readonly Citation Source = Citation.Mechanics("outline of the beam's end laid on the face it stands against");

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
