using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>
/// Dimension lines below and to the left of a view, each on the nearest free lane: shorter ones stand nearer to the
/// view, and no figure touches another line. After ISO 129-1.
/// </summary>
internal sealed class DimensionLines
{
    private const double First = 8, Lane = 6.5, Gap = 1, Past = 1.5, Arrow = 2.5, ArrowHalf = 0.42, Clear = 1;

    private readonly List<Measured> _across = [], _up = [];

    private readonly record struct Measured(double From, double To, double FaceFrom, double FaceTo, string Text);

    /// <summary>A distance across, shown below.</summary>
    /// <param name="x1">One end on paper.</param>
    /// <param name="x2">The other.</param>
    /// <param name="y1">Where the thing measured ends at its first end.</param>
    /// <param name="y2">And at its second.</param>
    /// <param name="text">The figure.</param>
    public void Across(double x1, double x2, double y1, double y2, string text) =>
        _across.Add(x1 <= x2 ? new Measured(x1, x2, y1, y2, text) : new Measured(x2, x1, y2, y1, text));

    /// <summary>A distance up, shown on the left.</summary>
    public void Up(double y1, double y2, double x1, double x2, string text) =>
        _up.Add(y1 <= y2 ? new Measured(y1, y2, x1, x2, text) : new Measured(y2, y1, x2, x1, text));

    /// <summary>How far below a view the lines reach, mm.</summary>
    public double RoomBelow => Room(_across);

    /// <summary>How far to the left of a view the lines reach, mm.</summary>
    public double RoomLeft => Room(_up) + (_up.Count > 0 ? Lettering.Usual : 0);

    /// <summary>Draws them round a view.</summary>
    /// <param name="view">What the view covers on paper.</param>
    public IEnumerable<Mark> Draw(Extents view)
    {
        foreach ((Measured m, int lane) in Lanes(_across))
        {
            foreach (Mark mark in One(m, view.Bottom - First - lane * Lane, upward: false))
                yield return mark;
        }

        foreach ((Measured m, int lane) in Lanes(_up))
        {
            foreach (Mark mark in One(m, view.Left - First - lane * Lane, upward: true))
                yield return mark;
        }
    }

    private static double Room(List<Measured> all) => all.Count == 0 ? 0 : First + Lane * Lanes(all).Max(l => l.Lane) + Past;

    private static List<(Measured Of, int Lane)> Lanes(List<Measured> all)
    {
        var taken = new List<List<(double From, double To)>>();
        var placed = new List<(Measured, int)>();
        foreach (Measured m in all.OrderBy(m => m.To - m.From).ThenBy(m => m.From))
        {
            (double from, double to) = Covers(m);
            int lane = 0;
            while (lane < taken.Count && taken[lane].Exists(t => from < t.To + Clear && to > t.From - Clear))
                lane++;
            // a longer line never crosses the ends of a shorter one: it stands further out than all it spans
            for (int inner = lane; inner < taken.Count; inner++)
            {
                if (taken[inner].Exists(t => t.From >= m.From - 1e-9 && t.To <= m.To + 1e-9))
                    lane = inner + 1;
            }

            while (taken.Count <= lane)
                taken.Add([]);
            taken[lane].Add((from, to));
            placed.Add((m, lane));
        }

        return placed;
    }

    private static double Needs(Measured m) => new Lettering("", m.Text, 0, 0).Width;

    private static bool Fits(Measured m) => m.To - m.From >= Needs(m) + 2 * Arrow;

    // a figure that does not fit between its arrows stands beside them
    private static (double From, double To) Covers(Measured m) =>
        Fits(m) ? (m.From, m.To) : (m.From - 2 * Arrow, m.To + 2 * Arrow + Needs(m));

    private static IEnumerable<Mark> One(Measured m, double at, bool upward)
    {
        (double, double) P(double along, double off) => upward ? (off, along) : (along, off);
        yield return new Line("", [P(m.From, m.FaceFrom - Gap), P(m.From, at - Past)], Pen.Thin);
        yield return new Line("", [P(m.To, m.FaceTo - Gap), P(m.To, at - Past)], Pen.Thin);
        bool fits = Fits(m);
        (double from, double to) = Covers(m);
        yield return new Line("", [P(fits ? m.From : from, at), P(to, at)], Pen.Thin);
        yield return Head(m.From, fits ? 1 : -1);
        yield return Head(m.To, fits ? -1 : 1);
        double middle = fits ? (m.From + m.To) / 2 : m.To + 2 * Arrow + Needs(m) / 2;
        yield return upward
            ? new Lettering("", m.Text, at - 0.8, middle, At: Anchor.Middle, Upward: true)
            : new Lettering("", m.Text, middle, at + 0.8, At: Anchor.Middle);

        Area Head(double tip, int way)
        {
            (double, double)[] p = [P(tip, at), P(tip + way * Arrow, at + ArrowHalf), P(tip + way * Arrow, at - ArrowHalf)];
            return new Area("", new Outline([[.. p.Select(q => new Corner(q.Item1, q.Item2))]]), Pen.None, "#1c1c1c");
        }
    }
}
