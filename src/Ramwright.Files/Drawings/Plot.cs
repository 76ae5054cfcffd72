using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>One line of a plot.</summary>
/// <param name="Name">What it is; stands at its end.</param>
/// <param name="Points">Its points, in the plot's own units.</param>
/// <param name="Pen">How it is drawn.</param>
internal sealed record PlotLine(string Name, IReadOnlyList<(double X, double Y)> Points, Pen Pen = Pen.Edge);

/// <summary>A plot on a sheet: axes with round numbers, lines that carry their names, so that nothing depends on colour.</summary>
/// <param name="Part">What its marks belong to.</param>
/// <param name="X">Left edge, mm.</param>
/// <param name="Y">Lower edge, mm.</param>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
/// <param name="Across">What goes across, with its unit.</param>
/// <param name="Up">What goes up, with its unit.</param>
internal sealed record Plot(string Part, double X, double Y, double Width, double Height, string Across, string Up)
{
    private const double Tick = 1.5, Figure = 2.2;

    /// <summary>Ends of the axes; the plot's own units.</summary>
    public required (double From, double To) XRange { get; init; }
    /// <summary>Ends of the axes; the plot's own units.</summary>
    public required (double From, double To) YRange { get; init; }

    /// <summary>A range with round ends about values.</summary>
    public static (double From, double To) Round(double from, double to)
    {
        if (!(to > from))
            to = from + Math.Max(1, Math.Abs(from));
        double step = Step(from, to);
        return (Math.Floor(from / step + 1e-9) * step, Math.Ceiling(to / step - 1e-9) * step);
    }

    /// <summary>Axes, figures and grid.</summary>
    public void Frame(List<Mark> marks)
    {
        foreach (double x in Ticks(XRange))
        {
            double at = AtX(x);
            marks.Add(new Line(Part, [(at, Y), (at, Y + Height)], Pen.Thin));
            marks.Add(new Lettering(Part, Readout.Number(x, 6), at, Y - Tick - Figure - 0.5, Figure, Anchor.Middle));
        }

        foreach (double y in Ticks(YRange))
        {
            double at = AtY(y);
            marks.Add(new Line(Part, [(X, at), (X + Width, at)], Pen.Thin));
            marks.Add(new Lettering(Part, Readout.Number(y, 6), X - Tick, at - Figure / 2, Figure, Anchor.Right));
        }

        marks.Add(new Line(Part, [(X, Y), (X + Width, Y), (X + Width, Y + Height), (X, Y + Height), (X, Y)], Pen.Edge));
        marks.Add(new Lettering(Part, Across, X + Width / 2, Y - 10, At: Anchor.Middle));
        marks.Add(new Lettering(Part, Up, X - 13, Y + Height / 2, At: Anchor.Middle, Upward: true));
    }

    /// <summary>A line with its name at its end.</summary>
    public void Draw(List<Mark> marks, PlotLine line)
    {
        (double X, double Y)[] on = [.. line.Points.Select(p => (AtX(Math.Clamp(p.X, XRange.From, XRange.To)), AtY(Math.Clamp(p.Y, YRange.From, YRange.To))))];
        if (on.Length < 2)
            return;
        marks.Add(new Line(Part, on, line.Pen));
        if (line.Name.Length > 0)
            marks.Add(new Lettering(Part, line.Name, Math.Min(on[^1].X + 1, X + Width + 1), on[^1].Y - 1, Figure));
    }

    /// <summary>A filled area between two lines that go across alike.</summary>
    public void Fill(List<Mark> marks, IReadOnlyList<(double X, double Y)> top, IReadOnlyList<(double X, double Y)> bottom, string colour)
    {
        if (top.Count < 2)
            return;
        List<Corner> loop = [.. bottom.Concat(top.Reverse()).Select(p => new Corner(AtX(p.X), AtY(p.Y)))];
        marks.Add(new Area(Part, new Outline([loop]), Pen.None, colour));
    }

    /// <summary>Where a value stands across, mm.</summary>
    public double AtX(double x) => X + (x - XRange.From) / (XRange.To - XRange.From) * Width;

    /// <summary>Where a value stands up, mm.</summary>
    public double AtY(double y) => Y + (y - YRange.From) / (YRange.To - YRange.From) * Height;

    private static IEnumerable<double> Ticks((double From, double To) range)
    {
        double step = Step(range.From, range.To);
        for (double t = Math.Ceiling(range.From / step - 1e-9) * step; t <= range.To + 1e-9 * step; t += step)
            yield return Math.Abs(t) < 1e-9 * step ? 0 : t;
    }

    private static double Step(double from, double to)
    {
        double rough = (to - from) / 8, power = Math.Pow(10, Math.Floor(Math.Log10(rough))), share = rough / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }
}
