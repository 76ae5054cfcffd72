using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>One dial reading against the force it was taken at. SI.</summary>
/// <param name="From">The reading.</param>
/// <param name="Force">Ram force by the gauge, N.</param>
/// <param name="UForce">Its standard uncertainty, N.</param>
/// <param name="Moved">What the dial showed more than at the start, m.</param>
/// <param name="UMoved">Its standard uncertainty, m.</param>
public sealed record DialReading(Reading From, double Force, double UForce, double Moved, double UMoved);

/// <summary>How stiff the press is at one place, by a dial indicator.</summary>
public sealed record Stiffness
{
    /// <summary>Share of the greatest force below which parts still seat themselves; left out of the slope.</summary>
    public const double Seating = 0.2;

    /// <summary>How far the model itself may be off: what beams came to against solid models of such frames.</summary>
    public const double ModelBand = 0.15;

    /// <summary>Why the first part is left out.</summary>
    public static readonly Citation SeatingSource = Citation.Practice("a loaded frame first seats its joints: the slope is taken above a fifth of the greatest load");

    /// <summary>The place.</summary>
    public required DialPoint Point { get; init; }
    /// <summary>All readings there.</summary>
    public required IReadOnlyList<DialReading> Readings { get; init; }
    /// <summary>The line through those on the way up, above the seating: movement against force, m/N; null for fewer than three.</summary>
    public LineFit? Line { get; init; }
    /// <summary>Stiffness with its uncertainty, N/m; null without a line.</summary>
    public Uncertainty? Measured { get; init; }
    /// <summary>Readings that do not lie on the line with the others.</summary>
    public IReadOnlyList<DialReading> Outliers { get; init; } = [];
    /// <summary>Greatest difference between coming down and going up, as a share of the greatest movement; null where nothing was read coming down.</summary>
    public double? Hysteresis { get; init; }
    /// <summary>What stayed when all pressure was off, m; null where that was not read.</summary>
    public double? Set { get; init; }
    /// <summary>The most that may stay: what two readings of this dial cannot tell from nothing, m.</summary>
    public required double SetLimit { get; init; }

    /// <summary>Writes how the stiffness came about; nothing where it could not be told.</summary>
    public Action<Working> Work { get; private init; } = _ => { };

    /// <summary>Stiffness by the model at this place, N/m.</summary>
    public double Predicted => 1 / Math.Max(Point.PerNewton, 1e-13);

    /// <summary>Whether what stayed is more than the dial can be off: stop.</summary>
    public bool IsSet => Set is { } stays && Math.Abs(stays) > SetLimit;

    /// <summary>Whether it is softer than the model, beyond what the readings and the model may be off.</summary>
    /// <remarks>A joint that hardly moves is softer only once it gives a tenth of what the opening does: so little is not reckoned well.</remarks>
    public bool IsSofter => Measured is { } m && m.High < Math.Min(Predicted * (1 - ModelBand), 1 / Notable);

    /// <summary>Give at this place that is worth a word, m/N.</summary>
    public required double Notable { get; init; }

    /// <summary>Stiffness at every place where a dial was read.</summary>
    /// <param name="check">The press.</param>
    /// <param name="book">Its readings.</param>
    public static IReadOnlyList<Stiffness> Of(PressCheck check, ReadingBook book)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(book);
        var scale = OilToRam.Of(check, book);
        Instrument gauge = book.For(ReadingKind.TopPressure), dial = book.For(ReadingKind.Dial);
        double notable = 0.1 * DialPoint.Of(check.Response)[0].PerNewton;
        ILookup<string, Reading> read = book.Of(ReadingKind.Dial).Where(r => r.Pressure is not null).ToLookup(r => r.At, StringComparer.OrdinalIgnoreCase);
        return [.. DialPoint.Of(check.Response).Concat(DialPoint.Joints(check.Response)).Where(p => read.Contains(p.Name)).Select(p => At(p, [.. read[p.Name]], scale, gauge, dial, notable))];
    }

    /// <summary>The most that may stay when all pressure is off: twice the standard uncertainty of the difference of two readings. No set that the dial can tell is let pass.</summary>
    /// <param name="dial">The dial.</param>
    /// <returns>m.</returns>
    public static double SetLimitOf(Instrument dial)
    {
        ArgumentNullException.ThrowIfNull(dial);
        return 2 * Math.Sqrt(2) * Math.Sqrt(dial.Error.U * dial.Error.U + dial.Reading.U * dial.Reading.U);
    }

    private static Stiffness At(DialPoint point, Reading[] read, OilToRam scale, Instrument gauge, Instrument dial, double notable)
    {
        double lowest = 0.03 * read.Max(r => r.Pressure!.Value);
        // dials are set to zero before they are read; where one was read with no pressure that is where it stood
        double start = read.Where(r => r.Way != Way.Down && r.Pressure <= lowest).Select(r => (double?)r.Value).FirstOrDefault() ?? 0;
        double uF = scale.Area * Math.Sqrt(gauge.Error.U * gauge.Error.U + gauge.Reading.U * gauge.Reading.U);
        double uX = Math.Sqrt(dial.Error.U * dial.Error.U + dial.Reading.U * dial.Reading.U);
        DialReading[] all = [.. read.Select(r => new DialReading(r, scale.Force(r.Pressure!.Value, r.Way ?? Way.Up), uF, r.Value - start, uX))];
        double most = all.Max(r => r.Force);
        DialReading[] up = [.. all.Where(r => r.From.Way != Way.Down)], down = [.. all.Where(r => r.From.Way == Way.Down)];
        DialReading[] slope = [.. up.Where(r => r.Force >= Seating * most)];
        double[] atRest = [.. down.Where(r => r.From.Pressure <= lowest).Select(r => r.From.Value)];
        double[] before = [.. up.Where(r => r.From.Pressure <= lowest).Select(r => r.From.Value)];
        double? set = atRest.Length > 0 && before.Length > 0 ? atRest[^1] - before[0] : null;
        var bare = new Stiffness { Point = point, Readings = all, Notable = notable, SetLimit = SetLimitOf(dial), Set = set };
        if (slope.Length < 3 || slope.Max(r => r.Force) - slope.Min(r => r.Force) < 0.1 * most)
            return bare;

        RobustFit? robust = RobustFit.Of([.. slope.Select(r => r.Force)], [.. slope.Select(r => r.Moved)], TwoPointCurve.Line, uX);
        DialReading[] outliers = robust is null ? [] : [.. robust.Outliers.Select(i => slope[i])];
        DialReading[] kept = [.. slope.Except(outliers)];
        if (kept.Length < 3 || kept.Max(r => r.Force) - kept.Min(r => r.Force) < 0.1 * most)
            return bare;
        var line = LineFit.Of([.. kept.Select(r => r.Force)], [.. kept.Select(r => r.Moved)]);
        return bare with
        {
            Line = line,
            Outliers = outliers,
            Measured = line.Slope > 0 ? Budget(line, kept, uF, uX, scale, gauge.Name, dial.Name) : null,
            Work = w =>
            {
                w.Note($"Readings on the way up from a fifth of the greatest force on: {kept.Length}. {SeatingSource}.");
                LineFit.Of([.. kept.Select(r => r.Force)], [.. kept.Select(r => r.Moved)], w);
                w.Step("k", "stiffness", "1 / b", 1 / line.Slope, Dimension.Stiffness, LineFit.Source, ("b", line.Slope, Dimension.Number));
                if (line.Slope > 0)
                    Budget(line, kept, uF, uX, scale, gauge.Name, dial.Name, w);
            },
            Hysteresis = Loop(down, line, most),
        };
    }

    /// <summary>Scatter of the line, and the errors that are the same at all its points.</summary>
    private static Uncertainty Budget(LineFit line, DialReading[] kept, double uF, double uX, OilToRam scale, string gauge, string dial, Working? w = null)
    {
        // errors of an instrument at the two ends of what was read, each anywhere within its limit: their difference turns the line
        double force = Math.Sqrt(2) * uF / kept.Max(r => r.Force), moved = Math.Sqrt(2) * uX / Math.Max(kept.Max(r => Math.Abs(r.Moved)), 1e-9);
        UncertainInput[] inputs =
        [
            new("b", "slope of movement against force", Dimension.Number, line.SlopeEstimate, "scatter of the readings about their line"),
            new("e_F", "error of the force from end to end, by the gauge", Dimension.Ratio, new Estimate(0, force, double.PositiveInfinity, Spread.Triangular), gauge),
            new("e_x", "error of the dial from end to end", Dimension.Ratio, new Estimate(0, moved, double.PositiveInfinity, Spread.Triangular), dial),
            new("e_f", "seal friction that grows with pressure", Dimension.Ratio, new Estimate(0, scale.UShare), "seal friction"),
            new("e_A", "area that pushes", Dimension.Ratio, new Estimate(0, scale.UArea), "bore"),
        ];
        return Uncertainty.Of(x => (1 + x[1] + x[3] + x[4]) / (x[0] * (1 + x[2])), inputs, w: w, dimension: Dimension.Stiffness);
    }

    private static double? Loop(DialReading[] down, LineFit line, double most)
    {
        DialReading[] under = [.. down.Where(r => r.Force >= Seating * most && r.Force <= 0.95 * most)];
        double greatest = line.At(most);
        return under.Length == 0 || !(greatest > 0) ? null : under.Max(r => r.Moved - line.At(r.Force)) / greatest;
    }
}
