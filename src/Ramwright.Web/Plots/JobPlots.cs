using OxyPlot;
using OxyPlot.Axes;
using Ramwright.Jobs;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Squeeze;

namespace Ramwright.Web.Plots;

/// <summary>The plots of a job. Every number is the engine's.</summary>
internal static class JobPlots
{
    /// <summary>Force against travel, with what is uncertain of it, against what the press has and what the bar comes to ask as it cools.</summary>
    public static PlotModel Force(JobCheck check, double? asItCools, UnitSystem units)
    {
        Unit length = Readout.UnitFor(Dimension.Length, units), force = Readout.UnitFor(Dimension.Force, units);
        Demand demand = check.Demand;
        double low = Share(demand.Peak.Low, demand.Peak.Likely), high = Share(demand.Peak.High, demand.Peak.Likely);
        double most = Math.Max(demand.Peak.High, asItCools ?? 0);
        PlotModel plot = PlotSheet.Empty();
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, $"travel from the touch, {length.Symbol}"));
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, $"force, {force.Symbol}", most: force.FromSi(Math.Max(most, Math.Min(check.Available, 3 * most)) * 1.15)));
        plot.Series.Add(PlotSheet.Band("low to high", demand.Curve.Select(p => (length.FromSi(p.Travel), force.FromSi(p.Force * low), force.FromSi(p.Force * high)))));
        plot.Series.Add(PlotSheet.Line("likely", demand.Curve.Select(p => (length.FromSi(p.Travel), force.FromSi(p.Force)))));
        plot.Annotations.Add(PlotSheet.Level(force.FromSi(check.Available), "the press is good for", PlotSheet.Most, LineStyle.Dash, 0.99));
        if (asItCools is { } cooled)
            plot.Annotations.Add(PlotSheet.Level(force.FromSi(cooled), "the most, as the bar cools", PlotSheet.Two, LineStyle.Dot, 0.62));
        plot.Legends.Add(PlotSheet.Key());
        return plot;
    }

    /// <summary>Force against time, from the approach to the return.</summary>
    public static PlotModel ForceInTime(SqueezeResult r, UnitSystem units)
    {
        Unit force = Readout.UnitFor(Dimension.Force, units), time = Readout.UnitFor(Dimension.Time, units);
        PlotModel plot = PlotSheet.Empty();
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, $"time, {time.Symbol}"));
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, $"force, {force.Symbol}", most: force.FromSi(Math.Max(r.PeakForce, 1) * 1.1)));
        plot.Series.Add(PlotSheet.Line("force", r.Points.Select(p => (time.FromSi(p.Time), force.FromSi(p.Force)))));
        return plot;
    }

    /// <summary>The heat of the bar against time: mean, and from the skin to the inside.</summary>
    public static PlotModel Heat(SqueezeResult r, UnitSystem units)
    {
        Unit heat = Readout.UnitFor(Dimension.Temperature, units), time = Readout.UnitFor(Dimension.Time, units);
        PlotModel plot = PlotSheet.Empty();
        SqueezePoint[] points = [.. r.Points.Where(p => p.Mean is not null)];
        double least = heat.FromSi(points.Min(p => p.Coldest!.Value)), most = heat.FromSi(points.Max(p => p.Hottest!.Value)), room = Math.Max(5, (most - least) * 0.08);
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, $"time, {time.Symbol}"));
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, $"heat of the bar, {heat.Symbol}", least: least - room, most: most + room));
        plot.Series.Add(PlotSheet.Band("skin to inside", points.Select(p => (time.FromSi(p.Time), heat.FromSi(p.Coldest!.Value), heat.FromSi(p.Hottest!.Value)))));
        plot.Series.Add(PlotSheet.Line("mean", points.Select(p => (time.FromSi(p.Time), heat.FromSi(p.Mean!.Value)))));
        plot.Legends.Add(PlotSheet.Key());
        return plot;
    }

    private static double Share(double bound, double likely) => likely > 0 ? bound / likely : 1;
}
