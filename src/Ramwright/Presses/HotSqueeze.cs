using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>Hot bar or block squeezed between flat dies.</summary>
[Says("hot bar or block squeezed between flat dies, once or drawn out"), Kind("hot-squeeze")]
public sealed record HotSqueeze : Job
{
    /// <summary>Section of the bar.</summary>
    [Needed, Says("section of the bar: round, square or flat"), StockName(StockKind.Section, "square 30")]
    public string? Bar { get; init; }

    /// <summary>Length of the bar, m.</summary>
    [Says("length of the bar or block"), Measure(Dimension.Length, "400 mm", UpTo = 20)]
    public double? Length { get; init; }

    /// <summary>Flat bar squeezed on its narrow side.</summary>
    [Says("flat bar stands on its narrow side")]
    public bool? OnEdge { get; init; }

    /// <summary>Squeezed along its length.</summary>
    [Says("the piece stands on its end and is upset along its length")]
    public bool? OnEnd { get; init; }

    /// <summary>Its steel by name.</summary>
    [Says("its steel: mild, C45, 42CrMo4 and the like")]
    public string? Steel { get; init; }

    /// <summary>Carbon, share of one.</summary>
    [Says("its carbon, where the steel has no name here"), Measure(Dimension.Ratio, "0.45 %", From = 0, UpTo = 0.05)]
    public double? Carbon { get; init; }

    /// <summary>Temperature out of the fire, °C.</summary>
    [Says("how hot it comes out of the fire"), Measure(Dimension.Temperature, "1150 °C", From = 0, UpTo = 1500)]
    public double? Heat { get; init; }

    /// <summary>Time from the fire to the first squeeze, s.</summary>
    [Says("time from the fire to the first squeeze"), Measure(Dimension.Time, "5 s", From = 0, UpTo = 600)]
    public double? Transfer { get; init; }

    /// <summary>Width of the dies along the bar, m.</summary>
    [Says("width of the dies along the bar"), Measure(Dimension.Length, "40 mm", UpTo = 2)]
    public double? DieWidth { get; init; }

    /// <summary>Length of the dies across the bar, m.</summary>
    [Says("length of the dies across the bar"), Measure(Dimension.Length, "100 mm", UpTo = 3)]
    public double? DieLength { get; init; }

    /// <summary>Temperature of the dies, °C.</summary>
    [Says("how warm the dies are"), Measure(Dimension.Temperature, "150 °C", From = -40, UpTo = 700)]
    public double? DieHeat { get; init; }

    /// <summary>Coefficient of friction at the dies.</summary>
    [Says("friction at the dies: 0.4 dry and scaled, 0.2 with graphite, 0.6 sticks"), Measure(Dimension.Number, "0.4", From = 0, UpTo = 1)]
    public double? Friction { get; init; }

    /// <summary>Height after one squeeze, m.</summary>
    [Says("height one squeeze is to bring it to"), Measure(Dimension.Length, "15 mm", UpTo = 3)]
    public double? Height { get; init; }

    /// <summary>Section it is drawn out to.</summary>
    [Says("section it is to be drawn out to, square or flat"), StockName(StockKind.Section, "square 20")]
    public string? To { get; init; }

    /// <summary>How much of the bar is drawn out, m.</summary>
    [Says("how much of the bar is drawn out, measured before"), Measure(Dimension.Length, "100 mm", UpTo = 20)]
    public double? Over { get; init; }

    /// <summary>How far the bar moves on between squeezes, m.</summary>
    [Says("how far the bar moves on between squeezes"), Measure(Dimension.Length, "30 mm", UpTo = 2)]
    public double? Bite { get; init; }

    /// <summary>Share of the height taken by each squeeze.</summary>
    [Says("share of the height each squeeze takes off"), Measure(Dimension.Ratio, "20 %", UpTo = 0.6)]
    public double? Reduction { get; init; }

    /// <summary>Whether it is turned a quarter after each pass.</summary>
    [Says("the bar is turned a quarter after each pass")]
    public bool? QuarterTurns { get; init; }

    /// <summary>Time from the end of one squeeze to the touch of the next, s.</summary>
    [Says("time from one squeeze to the next, for moving and turning the bar"), Measure(Dimension.Time, "3 s", From = 0, UpTo = 600)]
    public double? Between { get; init; }

    /// <summary>How far the ram is lifted off the work between squeezes, m.</summary>
    [Says("how far the ram is lifted off the work between squeezes"), Measure(Dimension.Length, "5 mm", UpTo = 1)]
    public double? Lift { get; init; }

    /// <summary>Time in the fire before each further heat, s.</summary>
    [Says("time in the fire before each further heat"), Measure(Dimension.Time, "3 min", From = 0, UpTo = 36000)]
    public double? InTheFire { get; init; }
}
