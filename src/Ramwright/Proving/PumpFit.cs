using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Presses;

namespace Ramwright.Proving;

/// <summary>One timed stroke as flow. SI.</summary>
/// <param name="From">The reading.</param>
/// <param name="Pressure">Gauge pressure while it was timed, Pa.</param>
/// <param name="Flow">Oil delivered, m³/s.</param>
/// <param name="U">Standard uncertainty of the flow by timing, m³/s.</param>
public sealed record TimedFlow(Reading From, double Pressure, double Flow, double U);

/// <summary>The pump's curve through timed strokes.</summary>
/// <param name="Stage">Which part of the curve: <c>pump</c>, <c>both stages</c>, <c>small stage</c>.</param>
/// <param name="Points">The strokes it goes through.</param>
/// <param name="Fit">The curve; null where there are too few strokes, or all at one pressure.</param>
/// <param name="Outliers">Strokes that do not belong with the others.</param>
public sealed record PumpFit(string Stage, IReadOnlyList<TimedFlow> Points, RobustFit? Fit, IReadOnlyList<TimedFlow> Outliers)
{
    /// <summary>Flow by the fit at a pressure, with its standard uncertainty; null without a fit.</summary>
    /// <param name="p">Gauge pressure, Pa.</param>
    public Estimate? FlowAt(double p) => Fit is { } fit ? new Estimate(Math.Max(0, fit.At(p)), fit.UAt(p), fit.Dof) : null;

    /// <summary>Fits the timed strokes of a press, stage by stage.</summary>
    /// <param name="check">The press.</param>
    /// <param name="book">Its readings.</param>
    /// <remarks>
    /// An air pump's flow falls as Q_0 (1 − p/p_s)^m to its stall, as read or as the model has it; an electric pump's falls in a straight line as it leaks. A hand pump has no
    /// flow of its own. Every flow is taken to be known to the same share of itself.
    /// </remarks>
    public static IReadOnlyList<PumpFit> Of(PressCheck check, ReadingBook book)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(book);
        if (check.Rig.Pump is RigHandPump)
            return [];
        TimedFlow[] all = [.. Timed(check, book)];
        if (all.Length == 0)
            return [];
        switch (check.Rig.Pump)
        {
            case RigAirPump:
                double read = book.Values(ReadingKind.TopPressure).DefaultIfEmpty(0).Max();
                // a relief valve that opens first hides the stall
                double stall = check.Rig.Pump.Relief is null && read > 0 ? read : check.Power.Curve.Ends;
                stall = Math.Max(stall, 1.001 * all.Max(t => t.Pressure));
                return [Through("pump", all, TwoPointCurve.Falling(stall))];
            case RigElectricPack { LowStage: not null } pack:
                TimedFlow[] both = [.. all.Where(t => t.Pressure < pack.UnloadAt)], small = [.. all.Where(t => t.Pressure >= pack.UnloadAt)];
                return [.. new[] { ("both stages", both), ("small stage", small) }.Where(s => s.Item2.Length > 0).Select(s => Through(s.Item1, s.Item2, TwoPointCurve.Line))];
            default:
                return [Through("pump", all, TwoPointCurve.Line)];
        }
    }

    private static PumpFit Through(string stage, TimedFlow[] points, TwoPointCurve curve)
    {
        RobustFit? fit = RobustFit.Of([.. points.Select(t => t.Pressure)], [.. points.Select(t => t.Flow)], curve, points.Average(t => t.U), relative: true);
        return new PumpFit(stage, points, fit, fit is null ? [] : [.. fit.Outliers.Select(i => points[i])]);
    }

    private static IEnumerable<TimedFlow> Timed(PressCheck check, ReadingBook book)
    {
        double A = OilToRam.Of(check, book).Area;
        Instrument watch = book.For(ReadingKind.TimeOut);
        double u = Math.Sqrt(watch.Error.U * watch.Error.U + watch.Reading.U * watch.Reading.U);
        foreach (Reading reading in book.Of(ReadingKind.TimeOut))
        {
            if (reading.Travel is { } way && reading.Value > 0)
                yield return new TimedFlow(reading, reading.Pressure ?? 0, A * way / reading.Value, A * way / reading.Value * u / reading.Value);
        }
    }
}
