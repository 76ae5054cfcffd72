using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>How the press is welded.</summary>
[Says("how the press is welded: process, hydrogen, current, and what is known of the steel")]
public sealed record Welder
{
    /// <summary>The process.</summary>
    [Says("the process")]
    public WeldingProcess? Process { get; init; }

    /// <summary>Diffusible hydrogen, ml per 100 g of deposited metal.</summary>
    [Says("hydrogen that the filler brings, in mL per 100 g of weld, as its packet says"), Measure(Dimension.Number, "5", UpTo = 40)]
    public double? Hydrogen { get; init; }

    /// <summary>Welding current, A.</summary>
    [Says("welding current in amperes"), Measure(Dimension.Number, "120", From = 10, UpTo = 1500)]
    public double? Amperes { get; init; }

    /// <summary>Arc voltage, V.</summary>
    [Says("voltage of the arc in volts"), Measure(Dimension.Number, "24", From = 8, UpTo = 60)]
    public double? Volts { get; init; }

    /// <summary>Mass of weld laid down while the arc burns, kg/s.</summary>
    [Says("weld laid down in an hour of burning arc, in kg"), Measure(Dimension.Number, "1.2", From = 0.05, UpTo = 30)]
    public double? KilogramsAnHour { get; init; }

    /// <summary>Travel of the arc in a full run, m/s.</summary>
    [Says("slowest travel of the arc, that of a full run"), Measure(Dimension.Speed, "2.5 mm/s", UpTo = 0.1)]
    public double? Travel { get; init; }

    /// <summary>Temperature of the steel before any heating, °C.</summary>
    [Says("temperature of the steel before it is heated"), Measure(Dimension.Temperature, "10 °C", From = -20, UpTo = 60)]
    public double? SteelTemperature { get; init; }

    /// <summary>Heat of the torch, W.</summary>
    [Says("heat of the torch for preheating"), Measure(Dimension.Power, "20 kW", UpTo = 5e5)]
    public double? Torch { get; init; }

    /// <summary>What the steels are made of, where that is known.</summary>
    [Says("what the steels are made of, from a mill certificate or an analysis")]
    public IReadOnlyList<SteelAnalysis>? Analyses { get; init; }
}

/// <summary>Ways of welding with an arc.</summary>
public enum WeldingProcess
{
    /// <summary>Stick with a rutile or cellulosic coat.</summary>
    [Says("stick, rutile or cellulosic rods")]
    Stick,
    /// <summary>Stick with a basic coat, dried as its packet says.</summary>
    [Says("stick, basic low-hydrogen rods, dried as their packet says")]
    LowHydrogenStick,
    /// <summary>Solid wire under gas.</summary>
    [Says("solid wire under gas (MIG/MAG)")]
    Wire,
    /// <summary>Flux-cored wire.</summary>
    [Says("flux-cored wire")]
    CoredWire,
    /// <summary>Tungsten arc under inert gas.</summary>
    [Says("tungsten arc under inert gas (TIG)")]
    Tig,
}

/// <summary>What a steel is made of, by mill certificate or analysis.</summary>
[Says("what a steel is made of, from a mill certificate or an analysis")]
public sealed record SteelAnalysis
{
    /// <summary>The steel, as it is named elsewhere in the file.</summary>
    [Needed, Says("the steel, as it is named elsewhere in this file"), StockName(StockKind.Steel, "S355")]
    public string? Steel { get; init; }

    /// <summary>Carbon, as a share.</summary>
    [Needed, Says("carbon"), Measure(Dimension.Ratio, "0.18 %", UpTo = 0.021)]
    public double? Carbon { get; init; }

    /// <summary>Silicon, as a share.</summary>
    [Says("silicon"), Measure(Dimension.Ratio, "0.3 %", From = 0, UpTo = 0.05)]
    public double? Silicon { get; init; }

    /// <summary>Manganese, as a share.</summary>
    [Needed, Says("manganese"), Measure(Dimension.Ratio, "1.4 %", From = 0, UpTo = 0.3)]
    public double? Manganese { get; init; }

    /// <summary>Chromium, as a share.</summary>
    [Says("chromium"), Measure(Dimension.Ratio, "0.05 %", From = 0, UpTo = 0.3)]
    public double? Chromium { get; init; }

    /// <summary>Molybdenum, as a share.</summary>
    [Says("molybdenum"), Measure(Dimension.Ratio, "0.02 %", From = 0, UpTo = 0.1)]
    public double? Molybdenum { get; init; }

    /// <summary>Nickel, as a share.</summary>
    [Says("nickel"), Measure(Dimension.Ratio, "0.05 %", From = 0, UpTo = 0.4)]
    public double? Nickel { get; init; }

    /// <summary>Copper, as a share.</summary>
    [Says("copper"), Measure(Dimension.Ratio, "0.1 %", From = 0, UpTo = 0.05)]
    public double? Copper { get; init; }

    /// <summary>Vanadium, as a share.</summary>
    [Says("vanadium"), Measure(Dimension.Ratio, "0.005 %", From = 0, UpTo = 0.05)]
    public double? Vanadium { get; init; }

    /// <summary>Boron, as a share.</summary>
    [Says("boron"), Measure(Dimension.Ratio, "0.001 %", From = 0, UpTo = 0.01)]
    public double? Boron { get; init; }
}
