using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>Words beside a view, each with a thin line to what it speaks of; stacked so that none touches another.</summary>
internal sealed class Callouts
{
    /// <summary>From the view to the words, mm.</summary>
    public const double Reach = 10;

    private const double Line = 3.9, Between = 2.2, Elbow = 3, Dot = 0.45;

    private readonly List<Callout> _all = [];

    public void Add(Callout callout) => _all.Add(callout);

    /// <summary>How much room the words need to the right of the view, mm.</summary>
    public double Room => _all.Count == 0 ? 0 : Reach + Elbow + _all.Max(c => c.Width);

    /// <summary>How high they reach beside a view, mm.</summary>
    public double Crest(Extents view) => Stack(view).Tops.DefaultIfEmpty(view.Top).Max();

    private (List<Callout> Down, double[] Tops) Stack(Extents view)
    {
        List<Callout> down = [.. _all.OrderByDescending(c => c.Y).ThenBy(c => c.X)];
        double[] top = new double[down.Count];
        for (int i = 0; i < down.Count; i++)
            top[i] = Math.Min(down[i].Y + Line / 2, i == 0 ? view.Top + 4 : top[i - 1] - Tall(down[i - 1]) - Between);
        // push back up what has sunk below the view
        double floor = view.Bottom;
        for (int i = down.Count - 1; i >= 0; i--)
        {
            top[i] = Math.Max(top[i], floor + Tall(down[i]));
            floor = top[i] + Between;
        }

        return (down, top);
    }

    /// <summary>Draws them to the right of a view.</summary>
    public IEnumerable<Mark> Draw(Extents view)
    {
        (List<Callout> down, double[] top) = Stack(view);
        double x = view.Right + Reach;
        for (int i = 0; i < down.Count; i++)
        {
            Callout c = down[i];
            double shelf = top[i] - Line + 0.9;
            yield return new Area(c.Part, new Outline([Circle(c.X, c.Y, Dot)]), Pen.None, "#1c1c1c");
            yield return new Line(c.Part, [(c.X, c.Y), (x, shelf), (x + Elbow + c.SignRoom, shelf)], Pen.Thin);
            double words = x + Elbow + 0.8;
            if (c.Weld)
            {
                foreach (Mark mark in WeldSign(c, x, shelf))
                    yield return mark;
                words += c.SignRoom + c.TailRoom;
            }

            for (int row = 0; row < c.Rows.Count; row++)
                yield return new Lettering(c.Part, c.Rows[row], words, top[i] - (row + 1) * Line + 1.7, Bold: row == 0 && !c.Weld);
        }
    }

    private static double Tall(Callout c) => c.Rows.Count * Line;

    // ISO 2553, system A: throat, then the weld's sign on the line, a ring at the bend for a weld all round, the dashed line below for the other
    // side or the sign on both sides for fillets on both faces, and in a tail the process by its number
    private static IEnumerable<Mark> WeldSign(Callout c, double x, double y)
    {
        double end = x + Elbow + c.SignRoom, at = end - 4;
        if (c.BothFaces)
            yield return new Line(c.Part, [(at, y), (at, y - 2.6), (at + 2.6, y)], Pen.Edge);
        else
        {
            yield return new Line(c.Part, [(x + 1, y - 1), (end, y - 1)], Pen.Hidden);
            yield return new Area(c.Part, new Outline([Circle(x, y, 1)]), Pen.Thin, "#ffffff");
        }

        yield return new Lettering(c.Part, c.WeldSize, x + 1.8, y + 0.7, Height: 2.2);
        if (c.Butt)
        {
            yield return new Line(c.Part, [(at, y), (at, y + 2.6)], Pen.Edge);
            yield return new Line(c.Part, [(at, y), (at + 2.4, y + 2.6)], Pen.Edge);
        }
        else
            yield return new Line(c.Part, [(at, y), (at, y + 2.6), (at + 2.6, y)], Pen.Edge);
        if (c.WeldTail.Length == 0)
            yield break;
        yield return new Line(c.Part, [(end + 1.4, y + 1.4), (end, y), (end + 1.4, y - 1.4)], Pen.Thin);
        yield return new Lettering(c.Part, c.WeldTail, end + 1.8, y - 0.8, Height: 1.8);
    }

    private static Corner[] Circle(double x, double y, double r) => [new(x + r, y, 1), new(x - r, y, 1)];
}

/// <summary>Words about one thing.</summary>
/// <param name="Part">The part.</param>
/// <param name="X">What it points at, on paper.</param>
/// <param name="Y">What it points at, on paper.</param>
/// <param name="Rows">The words; the first row names the thing.</param>
internal sealed record Callout(string Part, double X, double Y, IReadOnlyList<string> Rows)
{
    /// <summary>Room that a weld's sign takes before the words, mm.</summary>
    public const double WeldRoom = 15;

    /// <summary>What stands before the weld's triangle: <c>a5.6</c>; empty for anything else.</summary>
    public string WeldSize { get; init; } = "";

    /// <summary>Whether the weld is a butt weld.</summary>
    public bool Butt { get; init; }

    /// <summary>Whether fillets run along both faces of a plate, instead of one weld all round.</summary>
    public bool BothFaces { get; init; }

    /// <summary>Number of the process, ISO 4063; empty where the file does not say which.</summary>
    public string WeldTail { get; init; } = "";

    public bool Weld => WeldSize.Length > 0;

    /// <summary>Room of the sign, mm.</summary>
    public double SignRoom => Weld ? WeldRoom : 0;

    /// <summary>Room of its tail, mm.</summary>
    public double TailRoom => WeldTail.Length > 0 ? 7 : 0;

    public double Width => Rows.Max(r => new Lettering("", r, 0, 0).Width) + SignRoom + TailRoom;
}
