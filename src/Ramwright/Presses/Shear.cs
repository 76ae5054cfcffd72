using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>Plate or flat bar cut between two blades.</summary>
[Says("plate or flat bar cut cold between two blades"), Kind("shear")]
public sealed record Shear : Job
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("thickness of the plate or bar"), Measure(Dimension.Length, "6 mm", UpTo = 0.2)]
    public double? Thickness { get; init; }

    /// <summary>Length of the cut, m.</summary>
    [Needed, Says("length of the cut"), Measure(Dimension.Length, "60 mm", UpTo = 10)]
    public double? Length { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }

    /// <summary>Slope of the blade over the cut, m.</summary>
    [Says("how much one blade slopes over the cut"), Measure(Dimension.Length, "6 mm", From = 0, UpTo = 0.5)]
    public double? Slope { get; init; }
}
