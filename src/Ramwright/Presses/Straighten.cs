using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A bow pressed out of a shaft or bar.</summary>
[Says("a bow pressed out of a shaft or bar, cold"), Kind("straighten")]
public sealed record Straighten : Job
{
    /// <summary>Section.</summary>
    [Needed, Says("section of the shaft or bar"), StockName(StockKind.Section, "round 30")]
    public string? Bar { get; init; }

    /// <summary>Flat bar straightened the hard way.</summary>
    [Says("flat bar stands on its narrow side")]
    public bool? OnEdge { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "C45+QT")]
    public string? Steel { get; init; }

    /// <summary>Between the supports, m.</summary>
    [Needed, Says("distance between the supports"), Measure(Dimension.Length, "500 mm", UpTo = 20)]
    public double? Span { get; init; }

    /// <summary>How far out of straight at the middle, m.</summary>
    [Says("how far it is out of straight at the middle of the supports"), Measure(Dimension.Length, "0.5 mm", UpTo = 1)]
    public double? Bow { get; init; }

    /// <summary>Total runout on a dial, turned once, m.</summary>
    [Says("total runout on the dial in one turn: twice the bow"), Measure(Dimension.Length, "1 mm", UpTo = 2)]
    public double? Runout { get; init; }
}
