using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using Ramwright.Measuring;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Web.Plots;

/// <summary>Plots of what was measured, with error bars. Every number is the engine's.</summary>
internal static class ProofPlots
{
    /// <summary>A dial against the ram force: readings with their uncertainty (k = 2), the line through them, what was reckoned.</summary>
    public static PlotModel Dial(Stiffness s, UnitSystem units)
    {
        Unit force = Readout.UnitFor(Dimension.Force, units), length = Readout.UnitFor(Dimension.Length, units);
        PlotModel plot = PlotSheet.Empty();
        double most = s.Readings.Max(r => r.Force + 2 * r.UForce), top = 1.08 * Math.Max(s.Readings.Max(r => r.Moved + 2 * r.UMoved), s.Point.PerNewton * most);
        double least = Math.Min(0, s.Readings.Min(r => r.Moved - 2 * r.UMoved));
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, $"force at the ram, {force.Symbol}", most: force.FromSi(most)));
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, $"dial, {length.Symbol}", least: length.FromSi(least), most: length.FromSi(top)));
        plot.Series.Add(PlotSheet.Line("reckoned", [(0, 0), (force.FromSi(most), length.FromSi(s.Point.PerNewton * most))], second: true));
        if (s.Line is { } line)
        {
            double from = Stiffness.Seating * s.Readings.Max(r => r.Force);
            plot.Series.Add(PlotSheet.Line("measured", [(force.FromSi(from), length.FromSi(line.At(from))), (force.FromSi(most), length.FromSi(line.At(most)))]));
        }

        plot.Series.Add(Points("going up", s.Readings.Where(r => r.From.Way != Way.Down), false));
        if (s.Readings.Any(r => r.From.Way == Way.Down))
            plot.Series.Add(Points("coming down", s.Readings.Where(r => r.From.Way == Way.Down), true));
        plot.Legends.Add(PlotSheet.Key());
        return plot;

        ScatterErrorSeries Points(string title, IEnumerable<DialReading> readings, bool down) => Bars(title, down, readings.Select(r =>
            (force.FromSi(r.Force), length.FromSi(r.Moved), 2 * force.FromSi(r.UForce), 2 * length.FromSi(r.UMoved))));
    }

    /// <summary>The pump's flow against pressure, timed strokes with error bars, strokes that do not belong apart.</summary>
    public static PlotModel Pump(PumpFit fit, UnitSystem units)
    {
        Unit pressure = Readout.UnitFor(Dimension.Pressure, units), flow = Readout.UnitFor(Dimension.Flow, units);
        PlotModel plot = PlotSheet.Empty();
        double most = Math.Max(1e5, fit.Points.Max(t => t.Pressure)) * 1.05;
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, $"pressure, {pressure.Symbol}", most: pressure.FromSi(most)));
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, $"flow, {flow.Symbol}", most: flow.FromSi(1.12 * fit.Points.Max(t => t.Flow + 2 * t.U))));
        if (fit.Fit is not null)
            plot.Series.Add(PlotSheet.Line("fit", Enumerable.Range(0, 41).Select(i => most * i / 40).Select(p => (pressure.FromSi(p), flow.FromSi(fit.FlowAt(p)!.Value.Value)))));
        plot.Series.Add(Bars("timed", false, fit.Points.Except(fit.Outliers).Select(At)));
        if (fit.Outliers.Count > 0)
            plot.Series.Add(Bars("does not belong", true, fit.Outliers.Select(At)));
        plot.Legends.Add(PlotSheet.Key());
        return plot;

        (double, double, double, double) At(TimedFlow t) => (pressure.FromSi(t.Pressure), flow.FromSi(t.Flow), 0, 2 * flow.FromSi(t.U));
    }

    /// <summary>What each input brings to an uncertainty, the greatest at the top.</summary>
    public static PlotModel Budget(Uncertainty result, Dimension dimension, UnitSystem units)
    {
        Unit unit = Readout.UnitFor(dimension, units);
        BudgetLine[] lines = [.. result.Budget.Take(8).Reverse()];
        PlotModel plot = PlotSheet.Empty();
        var names = new CategoryAxis { Position = AxisPosition.Left, GapWidth = 0.5, MinorTickSize = 0, MajorTickSize = 0, AxislineStyle = LineStyle.None };
        LinearAxis like = PlotSheet.Axis(AxisPosition.Bottom, $"brings alone, {unit.Symbol} (standard uncertainty)");
        (names.TextColor, names.TicklineColor) = (like.TextColor, like.TicklineColor);
        names.Labels.AddRange(lines.Select(l => Symbol(l.Input.Symbol)));
        // room for the letters: the axis reckons with a narrower face
        plot.Padding = new OxyThickness(20, 8, 14, 4);
        plot.Axes.Add(names);
        plot.Axes.Add(like);
        var bars = new BarSeries { FillColor = PlotSheet.One, StrokeThickness = 0 };
        bars.Items.AddRange(lines.Select(l => new BarItem(unit.FromSi(l.Contribution))));
        plot.Series.Add(bars);
        return plot;
    }

    // p_1 as it stands in the table beside
    private static string Symbol(string symbol) => symbol.Split('_') is [var name, [>= '0' and <= '9' and var digit]] ? name + (char)('₀' + (digit - '0')) : symbol;

    private static ScatterErrorSeries Bars(string title, bool second, IEnumerable<(double X, double Y, double UX, double UY)> points)
    {
        var series = new ScatterErrorSeries
        {
            Title = title,
            MarkerType = second ? MarkerType.Square : MarkerType.Circle,
            MarkerFill = second ? PlotSheet.Two : PlotSheet.One,
            MarkerSize = 3.5,
            ErrorBarColor = second ? PlotSheet.Two : PlotSheet.One,
            ErrorBarStopWidth = 3,
            ErrorBarStrokeThickness = 1.4,
        };
        series.Points.AddRange(points.Select(p => new ScatterErrorPoint(p.X, p.Y, 2 * p.UX, 2 * p.UY)));
        return series;
    }
}
