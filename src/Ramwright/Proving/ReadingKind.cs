using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>What can be read and written down.</summary>
public enum ReadingKind
{
    /// <summary>An instrument is named, with what is known of it.</summary>
    Instrument,
    /// <summary>Gauge pressure with the ram dead against a block, at relief or stall: what makes the true force.</summary>
    TopPressure,
    /// <summary>Gauge pressure at a step.</summary>
    Pressure,
    /// <summary>Inside diameter of the barrel.</summary>
    Bore,
    /// <summary>Diameter of the rod.</summary>
    Rod,
    /// <summary>Outside diameter of the centre tube of a hollow plunger.</summary>
    CentreTube,
    /// <summary>Time of a stroke out.</summary>
    TimeOut,
    /// <summary>Time of a stroke back.</summary>
    TimeBack,
    /// <summary>Pressure while the ram creeps out under a load.</summary>
    SlowOut,
    /// <summary>Pressure while the ram creeps back under the same load.</summary>
    SlowBack,
    /// <summary>Dial indicator.</summary>
    Dial,
    /// <summary>Load cell, or known weight.</summary>
    Load,
    /// <summary>Air pressure at the pump.</summary>
    Air,
    /// <summary>Fall of the receiver's pressure over a time.</summary>
    ReceiverFall,
    /// <summary>Temperature of the oil.</summary>
    OilTemperature,
    /// <summary>Fall of the oil's pressure over a time, shut in.</summary>
    LeakDown,
    /// <summary>Pressure at which the relief valve opens.</summary>
    Relief,
    /// <summary>Something looked at and found in order or not.</summary>
    Look,
    /// <summary>Squeezes counted since the last count.</summary>
    Squeezes,
    /// <summary>Work done on the press: oil, filter, seals, bolts.</summary>
    Service,
    /// <summary>Something wrong, or a test made to find out what.</summary>
    Sign,
    /// <summary>Groove of a seal, measured.</summary>
    Groove,
    /// <summary>The step is closed, or the test ended.</summary>
    Done,
    /// <summary>Free words.</summary>
    Note,
    /// <summary>An earlier line is struck out: it stays, and is not counted.</summary>
    Strike,
}

/// <summary>How a kind of reading is written.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Name">The word for it in the log.</param>
/// <param name="Says">What it is.</param>
/// <param name="Measures">What its value measures; null for words.</param>
/// <param name="Example">A value as people write it.</param>
/// <param name="Words">The words that its value may be; empty where any will do.</param>
/// <param name="Needs">Keys that must be there.</param>
/// <param name="Takes">Keys that may be there beside those that any reading takes.</param>
public sealed record ReadingForm(
    ReadingKind Kind, string Name, string Says, Dimension? Measures, string Example, IReadOnlyList<string> Words, IReadOnlyList<string> Needs, IReadOnlyList<string> Takes)
{
    /// <summary>Keys that any reading takes.</summary>
    public static IReadOnlyList<string> Common { get; } = ["instrument", "ambient", "step", "note"];

    /// <summary>All kinds.</summary>
    public static IReadOnlyList<ReadingForm> All { get; } =
    [
        Named(ReadingKind.Instrument, "instrument", "an instrument by a name of its own, and what is known of it", "G1", [], ["measures"], ["range", "class", "limit", "resolution", "calibrated"]),
        Sized(ReadingKind.TopPressure, "top-pressure", "gauge pressure, ram dead against a block, at relief or stall", Dimension.Pressure, "212 bar", [], ["air"]),
        Sized(ReadingKind.Pressure, "pressure", "gauge pressure at a step", Dimension.Pressure, "105 bar", [], ["way"]),
        Sized(ReadingKind.Bore, "bore", "inside diameter of the barrel", Dimension.Length, "125.04 mm", [], []),
        Sized(ReadingKind.Rod, "rod", "diameter of the rod", Dimension.Length, "70 mm", [], []),
        Sized(ReadingKind.CentreTube, "centre-tube", "outside diameter of the tube through a hollow plunger", Dimension.Length, "48 mm", [], []),
        Sized(ReadingKind.TimeOut, "time-out", "time of a stroke out over a length, against a pressure", Dimension.Time, "14.2 s", ["travel"], ["pressure", "air", "oil"]),
        Sized(ReadingKind.TimeBack, "time-back", "time of a stroke back over a length", Dimension.Time, "9.1 s", ["travel"], ["pressure", "oil"]),
        Sized(ReadingKind.SlowOut, "slow-out", "pressure while the ram creeps out under a load", Dimension.Pressure, "14 bar", [], ["load"]),
        Sized(ReadingKind.SlowBack, "slow-back", "pressure while the ram creeps back under the same load", Dimension.Pressure, "11 bar", [], ["load"]),
        Sized(ReadingKind.Dial, "dial", "dial indicator at a place", Dimension.Length, "0.62 mm", ["at", "pressure"], ["way"]),
        Sized(ReadingKind.Load, "load", "load cell or known weight on the ram", Dimension.Force, "180 kN", ["pressure"], ["way"]),
        Sized(ReadingKind.Air, "air", "air pressure at the pump's inlet", Dimension.Pressure, "6.2 bar", [], ["pressure"]),
        Sized(ReadingKind.ReceiverFall, "receiver-fall", "how far the receiver fell", Dimension.Pressure, "0.8 bar", ["over"], []),
        Sized(ReadingKind.OilTemperature, "oil", "temperature of the oil in the tank", Dimension.Temperature, "41 °C", [], []),
        Sized(ReadingKind.LeakDown, "leak-down", "how far the shut-in pressure fell", Dimension.Pressure, "6 bar", ["over"], ["pressure", "oil", "oil-after", "volume"]),
        Sized(ReadingKind.Relief, "relief", "pressure at which the relief valve opens", Dimension.Pressure, "215 bar", [], []),
        Named(ReadingKind.Look, "look", "something looked at, by its name in the plan", "ok", ["ok", "not-ok", "not-looked"], ["at"], []),
        Sized(ReadingKind.Squeezes, "squeezes", "squeezes since the last count, and their peak pressure", Dimension.Count, "340", ["pressure"], ["low"]),
        Named(ReadingKind.Service, "service", "work done on the press", "oil-change", ["oil-change", "filter", "seals", "bolts", "hose", "inspection", "gauge"], [], ["at"]),
        Named(ReadingKind.Sign, "sign", "a sign of trouble, or the answer to a test", "yes", ["yes", "no"], ["at"], []),
        Sized(ReadingKind.Groove, "groove", "diameter at the bottom of a seal's groove", Dimension.Length, "118.5 mm", ["at", "width", "bore"], []),
        Named(ReadingKind.Done, "done", "a step is closed: held or stopped", "held", ["held", "stopped"], [], []),
        Named(ReadingKind.Note, "note", "free words", "\"drips at the gland\"", [], [], []),
        Sized(ReadingKind.Strike, "strike", "strikes out an earlier line by its number: it stays in the log and is not counted", Dimension.Count, "14", [], []),
    ];

    /// <summary>The form of a kind.</summary>
    public static ReadingForm Of(ReadingKind kind) => All[(int)kind];

    /// <summary>What a key's value measures; null for words, names, dates.</summary>
    /// <param name="key">The key.</param>
    public static Dimension? KeyMeasures(string key) => key switch
    {
        "ambient" or "oil" or "oil-after" => Dimension.Temperature,
        "pressure" or "low" or "air" => Dimension.Pressure,
        "travel" or "width" or "bore" => Dimension.Length,
        "over" => Dimension.Time,
        "load" => Dimension.Force,
        "volume" => Dimension.Volume,
        "class" => Dimension.Number,
        "step" => Dimension.Count,
        _ => null,
    };

    private static ReadingForm Sized(ReadingKind kind, string name, string says, Dimension measures, string example, string[] needs, string[] takes) =>
        new(kind, name, says, measures, example, [], needs, takes);

    private static ReadingForm Named(ReadingKind kind, string name, string says, string example, string[] words, string[] needs, string[] takes) =>
        new(kind, name, says, null, example, words, needs, takes);
}
