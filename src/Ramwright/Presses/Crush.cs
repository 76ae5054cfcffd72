using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A tube or box crushed.</summary>
[Says("a tube or box section crushed, on its end or from the side"), Kind("crush")]
public sealed record Crush : Job
{
    /// <summary>Section.</summary>
    [Needed, Says("its section: CHS, SHS or RHS"), StockName(StockKind.Section, "SHS 60x60x3")]
    public string? Bar { get; init; }

    /// <summary>Length, m.</summary>
    [Needed, Says("its length; lying, the length under the die"), Measure(Dimension.Length, "100 mm", UpTo = 5)]
    public double? Length { get; init; }

    /// <summary>Crushed along its length.</summary>
    [Says("it stands on its end")]
    public bool? OnEnd { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S235")]
    public string? Steel { get; init; }

    /// <summary>How far it is crushed, m.</summary>
    [Says("how far it is crushed"), Measure(Dimension.Length, "50 mm", UpTo = 5)]
    public double? Travel { get; init; }
}
