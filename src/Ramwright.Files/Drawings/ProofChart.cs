using Ramwright.Geometry;
using Ramwright.Measuring;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>What was measured as plots with error bars: dials against force, flow against pressure, the budget.</summary>
public static class ProofChart
{
    private const double Wide = 130, High = 84, Left = 22, Right = 30, Foot = 17;

    /// <summary>A dial against the ram force: readings up and down with their uncertainty, the line through them, and what was reckoned.</summary>
    /// <param name="s">The place.</param>
    /// <param name="units">Which units.</param>
    public static Sheet Of(Stiffness s, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(s);
        Unit force = Readout.UnitFor(Dimension.Force, units), length = Readout.UnitFor(Dimension.Length, units);
        double most = s.Readings.Max(r => r.Force), top = Math.Max(s.Readings.Max(r => r.Moved + 2 * r.UMoved), s.Point.PerNewton * most);
        double least = Math.Min(0, s.Readings.Min(r => r.Moved - 2 * r.UMoved));
        var plot = new Plot("", Left, Foot, Wide - Left - Right, High - Foot - 10, $"force at the ram, {force.Symbol}", $"dial at {s.Point.Name}, {length.Symbol}")
        {
            XRange = Plot.Round(0, force.FromSi(Math.Max(most, 1))),
            YRange = Plot.Round(length.FromSi(least), length.FromSi(1.15 * top)),
        };
        List<Mark> marks = [new Lettering("", $"{s.Point.Name}: dots up, circles down; bars k = 2", Left, High - 6, 2.5, Bold: true)];
        plot.Frame(marks);
        plot.Draw(marks, new PlotLine("reckoned", [(0, 0), (plot.XRange.To, length.FromSi(s.Point.PerNewton * force.ToSi(plot.XRange.To)))], Pen.Hidden));
        if (s.Line is { } line)
        {
            double from = s.Readings.Where(r => r.From.Way != Way.Down).Select(r => r.Force).Where(f => f >= Stiffness.Seating * most).DefaultIfEmpty(0).Min();
            plot.Draw(marks, new PlotLine("measured", [(force.FromSi(from), length.FromSi(line.At(from))), (plot.XRange.To, length.FromSi(line.At(force.ToSi(plot.XRange.To))))]));
        }

        foreach (DialReading r in s.Readings)
        {
            Bars(marks, plot, force.FromSi(r.Force), force.FromSi(2 * r.UForce), length.FromSi(r.Moved), length.FromSi(2 * r.UMoved));
            Dot(marks, plot, force.FromSi(r.Force), length.FromSi(r.Moved), r.From.Way != Way.Down, s.Outliers.Contains(r));
        }

        return Apart($"Dial at {s.Point.Name}", marks);
    }

    /// <summary>The pump's flow against pressure, with the curve through the strokes that belong together.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="units">Which units.</param>
    public static Sheet Of(PumpFit fit, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(fit);
        Unit pressure = Readout.UnitFor(Dimension.Pressure, units), flow = Readout.UnitFor(Dimension.Flow, units);
        double most = Math.Max(1e5, fit.Points.Max(t => t.Pressure)), top = fit.Points.Max(t => t.Flow + 2 * t.U);
        var plot = new Plot("", Left, Foot, Wide - Left - Right, High - Foot - 10, $"pressure, {pressure.Symbol}", $"flow, {flow.Symbol}")
        {
            XRange = Plot.Round(0, pressure.FromSi(most)),
            YRange = Plot.Round(0, flow.FromSi(top)),
        };
        List<Mark> marks = [new Lettering("", $"{fit.Stage}: bars k = 2; a cross is an outlier", Left, High - 6, 2.5, Bold: true)];
        plot.Frame(marks);
        if (fit.Fit is not null)
            plot.Draw(marks, new PlotLine("fit", [.. Enumerable.Range(0, 41).Select(i => pressure.ToSi(plot.XRange.To) * i / 40).Select(p => (pressure.FromSi(p), flow.FromSi(fit.FlowAt(p)!.Value.Value)))]));
        foreach (TimedFlow t in fit.Points)
        {
            Bars(marks, plot, pressure.FromSi(t.Pressure), 0, flow.FromSi(t.Flow), flow.FromSi(2 * t.U));
            Dot(marks, plot, pressure.FromSi(t.Pressure), flow.FromSi(t.Flow), true, fit.Outliers.Contains(t));
        }

        return Apart($"Pump, {fit.Stage}", marks);
    }

    /// <summary>The budget of a result as bars: the longest is what to improve first.</summary>
    /// <param name="result">The result.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="units">Which units.</param>
    public static Sheet Budget(Uncertainty result, Dimension dimension, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(result);
        BudgetLine[] lines = [.. result.Budget.Take(8)];
        double high = 14 + 8 * lines.Length, most = lines.Max(l => l.Contribution);
        List<Mark> marks = [new Lettering("", "what each brings to the uncertainty (standard)", 4, high - 6, 2.5, Bold: true)];
        for (int i = 0; i < lines.Length; i++)
        {
            double y = high - 16 - 8 * i, wide = most > 0 ? Math.Max(0.3, 48 * lines[i].Contribution / most) : 0.3;
            marks.Add(new Lettering("", $"{lines[i].Input.Symbol}  {lines[i].Input.Meaning}", 4, y + 4.2, 2.1));
            marks.Add(new Area("", new Outline([[new Corner(4, y), new Corner(4 + wide, y), new Corner(4 + wide, y + 3), new Corner(4, y + 3)]]), Pen.Thin, "#8fa8bf"));
            marks.Add(new Lettering("", $"{Readout.Text(lines[i].Contribution, dimension, units, 2)}, {Readout.Text(Math.Max(0, lines[i].Share), Dimension.Ratio, digits: 2)}", 6 + wide, y + 0.4, 2.1));
        }

        return new Sheet("Budget", Wide, high, marks);
    }

    private static void Bars(List<Mark> marks, Plot plot, double x, double ux, double y, double uy)
    {
        const double Cap = 0.8;
        double X(double v) => plot.AtX(Math.Clamp(v, plot.XRange.From, plot.XRange.To));
        double Y(double v) => plot.AtY(Math.Clamp(v, plot.YRange.From, plot.YRange.To));
        double atX = X(x), atY = Y(y), low = Y(y - uy), high = Y(y + uy);
        marks.Add(new Line("", [(atX, low), (atX, high)], Pen.Edge));
        marks.Add(new Line("", [(atX - Cap, low), (atX + Cap, low)], Pen.Edge));
        marks.Add(new Line("", [(atX - Cap, high), (atX + Cap, high)], Pen.Edge));
        if (!(ux > 0))
            return;
        double left = X(x - ux), right = X(x + ux);
        marks.Add(new Line("", [(left, atY), (right, atY)], Pen.Edge));
        marks.Add(new Line("", [(left, atY - Cap), (left, atY + Cap)], Pen.Edge));
        marks.Add(new Line("", [(right, atY - Cap), (right, atY + Cap)], Pen.Edge));
    }

    private static void Dot(List<Mark> marks, Plot plot, double x, double y, bool filled, bool crossed)
    {
        double atX = plot.AtX(x), atY = plot.AtY(y);
        const double R = 0.75;
        if (crossed)
        {
            marks.Add(new Line("", [(atX - 1.6, atY - 1.6), (atX + 1.6, atY + 1.6)], Pen.Frame));
            marks.Add(new Line("", [(atX - 1.6, atY + 1.6), (atX + 1.6, atY - 1.6)], Pen.Frame));
            return;
        }

        Corner[] round = [.. Enumerable.Range(0, 16).Select(i => new Corner(atX + R * Math.Cos(i * Math.PI / 8), atY + R * Math.Sin(i * Math.PI / 8)))];
        marks.Add(new Area("", new Outline([round]), Pen.Edge, filled ? "#1c1c1c" : "#ffffff"));
    }

    /// <summary>Names at the ends of lines, moved apart where they would stand on one another.</summary>
    private static Sheet Apart(string title, List<Mark> marks)
    {
        Lettering[] names = [.. marks.OfType<Lettering>().Where(l => l.Text is "reckoned" or "measured" or "fit")];
        if (names.Length == 2 && Math.Abs(names[0].Y - names[1].Y) < 3)
        {
            (Lettering low, Lettering high) = names[0].Y <= names[1].Y ? (names[0], names[1]) : (names[1], names[0]);
            double middle = (low.Y + high.Y) / 2;
            marks[marks.IndexOf(low)] = low with { Y = middle - 1.6 };
            marks[marks.IndexOf(high)] = high with { Y = middle + 1.6 };
        }

        return new Sheet(title, Wide, High, marks);
    }
}
