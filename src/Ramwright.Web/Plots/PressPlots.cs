using OxyPlot;
using OxyPlot.Axes;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Quantities;

namespace Ramwright.Web.Plots;

/// <summary>The plots of a press. Every number is the engine's; here it is only given its unit and its place.</summary>
internal static class PressPlots
{
    private static string Axis(string what, Unit unit) => $"{what}, {Name(unit)}";

    private static string Name(Unit unit) => unit.Symbol;

    /// <summary>Force and speed of the push against the pressure in the cylinder.</summary>
    public static PlotModel ForceAndSpeed(PressCheck check, IReadOnlyList<SpeedAtLoad> curve, UnitSystem units)
    {
        Unit pressure = Readout.UnitFor(Dimension.Pressure, units), force = Readout.UnitFor(Dimension.Force, units), speed = Readout.UnitFor(Dimension.Speed, units);
        PlotModel plot = PlotSheet.Empty();
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, Axis("pressure in the cylinder", pressure)));
        double top = Math.Max(check.Rig.Wanted, check.Power.MostPossibleForce) * 1.12;
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, Axis("force", force), "force", most: force.FromSi(top)));
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Right, Axis("speed", speed), "speed", grid: false, most: speed.FromSi(curve[0].Speed * 1.12)));
        plot.Series.Add(PlotSheet.Line("force", curve.Select(p => (pressure.FromSi(p.CylinderPressure), force.FromSi(p.Load))), yAxis: "force"));
        plot.Series.Add(PlotSheet.Line("speed", curve.Select(p => (pressure.FromSi(p.CylinderPressure), speed.FromSi(p.Speed))), second: true, yAxis: "speed"));
        foreach (OxyPlot.Annotations.LineAnnotation level in Levels(check, force, 0.34))
        {
            level.YAxisKey = "force";
            plot.Annotations.Add(level);
        }

        plot.Legends.Add(PlotSheet.Key());
        return plot;
    }

    /// <summary>How far the ram is out over the time of one stroke.</summary>
    public static PlotModel Stroke(IReadOnlyList<StrokeMoment> course, UnitSystem units)
    {
        Unit length = Readout.UnitFor(Dimension.Length, units), time = Readout.UnitFor(Dimension.Time, units);
        PlotModel plot = PlotSheet.Empty();
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, Axis("time", time)));
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, Axis("ram out", length)));
        plot.Series.Add(PlotSheet.Line("ram", course.Select(m => (time.FromSi(m.Time), length.FromSi(m.Travel))), marks: true));
        return plot;
    }

    /// <summary>The receiver's pressure over a series of squeezes.</summary>
    public static PlotModel Receiver(PressCheck check, ReceiverCourse course, UnitSystem units)
    {
        Unit pressure = Readout.UnitFor(Dimension.Pressure, units), time = Readout.UnitFor(Dimension.Time, units);
        PlotModel plot = PlotSheet.Empty();
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, Axis("time", time)));
        double top = course.Moments.Max(m => m.Pressure);
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, Axis("air in the receiver", pressure), most: pressure.FromSi(top) * 1.1));
        plot.Series.Add(PlotSheet.Line("receiver", course.Moments.Select(m => (time.FromSi(m.Time), pressure.FromSi(m.Pressure)))));
        if (check.Power.Air is { WantedInReach: true } air)
        {
            plot.Annotations.Add(PlotSheet.Level(pressure.FromSi(air.AirForWanted), "least for the wanted force", PlotSheet.Wanted, LineStyle.Solid, 0.99));
        }

        return plot;
    }

    /// <summary>The allowed force against how far off centre the work stands, both ways.</summary>
    public static PlotModel OffCentre(PressCheck check, OffCentre curve, UnitSystem units)
    {
        Unit length = Readout.UnitFor(Dimension.Length, units), force = Readout.UnitFor(Dimension.Force, units);
        PlotModel plot = PlotSheet.Empty();
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Bottom, Axis("off centre", length)));
        double top = Math.Max(curve.Points.Max(p => p.SafeTo), Math.Max(check.Rig.Wanted, check.Power.MostPossibleForce)) * 1.12;
        plot.Axes.Add(PlotSheet.Axis(AxisPosition.Left, Axis("safe to", force), most: force.FromSi(top)));
        foreach (OffCentreWay way in Enum.GetValues<OffCentreWay>())
        {
            plot.Series.Add(PlotSheet.Line(way == OffCentreWay.Across ? "to one side" : "to the front",
                curve.Points.Where(p => p.Way == way).Select(p => (length.FromSi(p.Offset), force.FromSi(p.SafeTo))), second: way == OffCentreWay.Deep, marks: true));
        }

        foreach (OxyPlot.Annotations.LineAnnotation level in Levels(check, force, 0.99))
            plot.Annotations.Add(level);
        plot.Legends.Add(PlotSheet.Key());
        return plot;
    }

    private static IEnumerable<OxyPlot.Annotations.LineAnnotation> Levels(PressCheck check, Unit force, double wanted)
    {
        double asked = check.Rig.Wanted, most = check.Power.MostPossibleForce;
        // of two lines close together the lower has its words below
        bool close = Math.Abs(asked - most) < 0.1 * Math.Max(asked, most);
        yield return PlotSheet.Level(force.FromSi(asked), "wanted", PlotSheet.Wanted, LineStyle.Solid, wanted, isBelow: close && asked <= most);
        yield return PlotSheet.Level(force.FromSi(most), "most possible", PlotSheet.Most, LineStyle.Dash, 0.66, isBelow: close && most < asked);
    }
}
