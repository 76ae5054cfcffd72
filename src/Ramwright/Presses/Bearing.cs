using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>The flange or plate by which the cylinder presses on the frame.</summary>
[Says("the flange or plate by which the cylinder presses on the frame")]
public sealed record Foot
{
    /// <summary>Diameter of a round foot, m.</summary>
    [Says("diameter of a round foot"), Measure(Dimension.Length, "160 mm", UpTo = 2)]
    public double? Diameter { get; init; }

    /// <summary>Length of a rectangular foot along the member it presses on, m.</summary>
    [Says("length of a rectangular foot, along the member it presses on"), Measure(Dimension.Length, "200 mm", UpTo = 2)]
    public double? Length { get; init; }

    /// <summary>Width of a rectangular foot across the member it presses on, m.</summary>
    [Says("width of a rectangular foot, across the member it presses on"), Measure(Dimension.Length, "250 mm", UpTo = 2)]
    public double? Width { get; init; }

    /// <summary>Thickness of its plate, m.</summary>
    [Says("thickness of its plate"), Measure(Dimension.Length, "30 mm", UpTo = 0.5)]
    public double? Thickness { get; init; }

    /// <summary>Steel of its plate.</summary>
    [Says("steel of its plate"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }
}

/// <summary>The plate between the lower die and the frame.</summary>
[Says("the plate between the lower die and the frame")]
public sealed record Bolster
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("its thickness"), Measure(Dimension.Length, "40 mm", UpTo = 0.5)]
    public double? Thickness { get; init; }

    /// <summary>Length along the member it lies on, m.</summary>
    [Says("its length along the member it lies on"), Measure(Dimension.Length, "250 mm", UpTo = 5)]
    public double? Length { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }
}

/// <summary>Plates welded in between the flanges where the ram force acts.</summary>
[Says("plates welded in between the flanges, beside the web, where the ram force acts")]
public sealed record Stiffening
{
    /// <summary>Thickness of each plate, m.</summary>
    [Needed, Says("thickness of each plate"), Measure(Dimension.Length, "12 mm", UpTo = 0.2)]
    public double? Thickness { get; init; }

    /// <summary>Their weld to web and flanges, on both faces.</summary>
    [Says("their weld to web and flanges, on both faces")]
    public Weld? Weld { get; init; }
}
