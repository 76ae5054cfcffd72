using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>All readings of a press, in the order they were written, with their instruments found.</summary>
public sealed class ReadingBook
{
    private readonly Dictionary<string, Instrument> _instruments = new(StringComparer.OrdinalIgnoreCase);
    private readonly PressCheck _check;
    private string[]? _places;

    /// <summary>Opens a book.</summary>
    /// <param name="check">The press.</param>
    /// <param name="readings">Its readings; instruments may be named before or after they are used.</param>
    /// <param name="units">Units of what is said of them in words.</param>
    public ReadingBook(PressCheck check, IEnumerable<Reading> readings, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        _check = check;
        Units = units;
        All = [.. readings];
        foreach (Reading reading in All)
        {
            if (reading.Kind == ReadingKind.Instrument && Named(reading) is { } instrument)
                _instruments[reading.Word] = instrument;     // a later line about the same instrument stands
        }
    }

    /// <summary>Units of what is said of them in words.</summary>
    public UnitSystem Units { get; }

    /// <summary>Places where a dial may stand on this frame.</summary>
    public IReadOnlyList<string> Places => _places ??= [.. DialPoint.Of(_check.Response).Concat(DialPoint.Joints(_check.Response)).Select(p => p.Name)];

    /// <summary>Every reading.</summary>
    public IReadOnlyList<Reading> All { get; }

    /// <summary>Instruments that the log names.</summary>
    public IReadOnlyCollection<Instrument> Instruments => _instruments.Values;

    /// <summary>Readings of one kind.</summary>
    /// <param name="kind">Which.</param>
    public IReadOnlyList<Reading> Of(ReadingKind kind) => [.. All.Where(r => r.Kind == kind)];

    /// <summary>Values of one kind.</summary>
    /// <param name="kind">Which.</param>
    public IReadOnlyList<double> Values(ReadingKind kind) => [.. All.Where(r => r.Kind == kind).Select(r => r.Value)];

    /// <summary>The instrument that readings of a kind were taken with: the one they name, else the press file's gauge, else what is usual.</summary>
    /// <param name="kind">Which kind.</param>
    public Instrument For(ReadingKind kind)
    {
        Dimension? measures = ReadingForm.Of(kind).Measures;
        foreach (Reading reading in All)
        {
            if (reading.Kind == kind && _instruments.TryGetValue(reading.Instrument, out Instrument? named) && named.Measures == measures)
                return named;
        }

        // the only one that measures such a thing need not be named each time; lengths are measured with many things
        bool air = kind is ReadingKind.Air or ReadingKind.ReceiverFall;
        Instrument[] alike = [.. _instruments.Values.Where(i => i.Measures == measures)];
        if (alike.Length == 1 && measures != Dimension.Length && !air)
            return alike[0];
        if (measures == Dimension.Pressure && !air && Gauge(_check.Rig.Gauge) is { } gauge)
            return gauge;
        double size = measures == Dimension.Force ? Values(kind).DefaultIfEmpty(_check.Power.TrueForce).Max() : _check.Power.TruePressure;
        return Instrument.Usual(kind, size);
    }

    /// <summary>The most that what a reading was taken with can show, and what that is called; null where nothing is said of it.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="measures">Which of its figures: what it measures.</param>
    /// <remarks>A reading that names no instrument may have been taken with any of them: the widest counts.</remarks>
    public (double Range, string Name)? Shows(Reading reading, Dimension measures)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (_instruments.TryGetValue(reading.Instrument, out Instrument? named) && named.Measures == measures)
            return named.Range is { } range ? (range, named.Name) : null;
        if (measures != Dimension.Pressure)
            return null;
        Instrument[] gauges = [.. _instruments.Values.Where(i => i.Measures == measures)];
        if (gauges.Length == 0)
            return Gauge(_check.Rig.Gauge) is { Range: { } most } gauge ? (most, gauge.Name) : null;
        return gauges.All(g => g.Range is not null) ? (gauges.Max(g => Math.Max(g.Range!.Value, _check.Rig.Gauge?.Range ?? 0)), gauges.MaxBy(g => g.Range)!.Name) : null;
    }

    private static Instrument? Gauge(RigGauge? gauge) => gauge is null ? null
        : new Instrument("the press's gauge", Dimension.Pressure, gauge.Class / 100 * gauge.Range, gauge.Range / 100)
        {
            Why = new Remark($"class {gauge.Class:0.##} on {{0}}, EN 837-1: per cent of the span; read to a hundredth of it", Remark.Of(gauge.Range, Dimension.Pressure)),
            Range = gauge.Range,
        };

    private static Instrument? Named(Reading reading)
    {
        if (reading.Measures is not { } measures)
            return null;
        double? limit = reading.Limit ?? (reading.Class is { } c && reading.Range is { } range ? c / 100 * range : null);
        if (limit is not { } most)
            return null;
        // how far off a thermometer may be is a difference, and no place on a scale
        Given said = Remark.Of(reading.Limit is null ? reading.Range!.Value : most, measures);
        string how = reading.Limit is null ? $"class {reading.Class:0.##} on {{0}}, EN 837-1: per cent of the span"
            : measures == Dimension.Temperature ? $"within {Readout.Number(most)} °C ({Readout.Number(1.8 * most)} °F) as the log says" : "within {0} as the log says";
        return new Instrument(reading.Word, measures, most, reading.Resolution ?? (reading.Range / 100 ?? most / 2))
        {
            Why = new Remark(reading.Calibrated is { } day ? $"{how}; compared {day:yyyy-MM-dd}" : how + "; when it was last compared is not said", said),
            Calibrated = reading.Calibrated,
            Range = reading.Range,
        };
    }
}
