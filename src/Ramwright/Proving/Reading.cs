using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>Which way the press went when a reading was taken.</summary>
public enum Way
{
    /// <summary>Pressure going up.</summary>
    Up,
    /// <summary>Pressure coming down.</summary>
    Down,
}

/// <summary>One reading, as it was written down on one line. What was not said is null. SI.</summary>
/// <param name="Line">Line of the log it stands on, from 1.</param>
/// <param name="Day">The day.</param>
/// <param name="Time">Time of day, where said.</param>
/// <param name="Who">Who read it.</param>
/// <param name="Kind">What was read.</param>
public sealed record Reading(int Line, DateOnly Day, TimeOnly? Time, string Who, ReadingKind Kind)
{
    /// <summary>The value, SI; 0 for a reading in words.</summary>
    public double Value { get; init; }
    /// <summary>The word, for a reading in words: <c>ok</c>, <c>yes</c>, the name of an instrument.</summary>
    public string Word { get; init; } = "";
    /// <summary>Where: <c>crown</c>, <c>bed</c>, <c>opening</c>, <c>throat</c>, or which weld.</summary>
    public string At { get; init; } = "";
    /// <summary>Which step of the plan.</summary>
    public int? Step { get; init; }
    /// <summary>Gauge pressure at that moment, Pa.</summary>
    public double? Pressure { get; init; }
    /// <summary>Which way the press went.</summary>
    public Way? Way { get; init; }
    /// <summary>Way travelled, m.</summary>
    public double? Travel { get; init; }
    /// <summary>How long it took, s.</summary>
    public double? Over { get; init; }
    /// <summary>Name of the instrument, as a line of the log gives it.</summary>
    public string Instrument { get; init; } = "";
    /// <summary>Temperature of the air around, °C.</summary>
    public double? Ambient { get; init; }
    /// <summary>Temperature of the oil, °C.</summary>
    public double? Oil { get; init; }
    /// <summary>Temperature of the oil at the end, °C.</summary>
    public double? OilAfter { get; init; }
    /// <summary>Volume of trapped oil, m³.</summary>
    public double? Volume { get; init; }
    /// <summary>Greatest reading of an instrument, SI of what it measures.</summary>
    public double? Range { get; init; }
    /// <summary>Accuracy class of a gauge: greatest error in per cent of its range.</summary>
    public double? Class { get; init; }
    /// <summary>Greatest error of an instrument, SI of what it measures.</summary>
    public double? Limit { get; init; }
    /// <summary>Smallest step that can be read, SI of what the instrument measures.</summary>
    public double? Resolution { get; init; }
    /// <summary>When an instrument was last compared.</summary>
    public DateOnly? Calibrated { get; init; }
    /// <summary>What an instrument measures.</summary>
    public Dimension? Measures { get; init; }
    /// <summary>Width of a seal's groove, m.</summary>
    public double? Width { get; init; }
    /// <summary>What the seal in a groove runs in or on, m: the bore, or the rod.</summary>
    public double? Bore { get; init; }
    /// <summary>Pressure that squeezes fall back to between peaks, Pa; nothing where not said.</summary>
    public double? Low { get; init; }
    /// <summary>Air pressure at the pump at that moment, Pa.</summary>
    public double? Air { get; init; }
    /// <summary>Load on the ram at that moment, N.</summary>
    public double? OnRam { get; init; }
    /// <summary>Whatever else was said of it.</summary>
    public string Note { get; init; } = "";
}
