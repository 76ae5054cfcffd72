using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A plate that lies in the heap, or a sheet that can be bought.</summary>
[Says("a plate you have, or a sheet you can buy")]
public sealed record SheetInStock
{
    /// <summary>What it is called.</summary>
    [Says("what you call it")]
    public string? Name { get; init; }

    /// <summary>Thickness, m.</summary>
    [Needed, Says("its thickness"), Measure(Dimension.Length, "12 mm", UpTo = 0.5)]
    public double? Thickness { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }

    /// <summary>Width of a rectangle, m.</summary>
    [Says("width of a rectangle"), Measure(Dimension.Length, "1000 mm", UpTo = 20)]
    public double? Width { get; init; }

    /// <summary>Height of a rectangle, m.</summary>
    [Says("height of a rectangle"), Measure(Dimension.Length, "500 mm", UpTo = 20)]
    public double? Height { get; init; }

    /// <summary>Corners of an odd shape, in turn.</summary>
    [Says("corners of an odd shape, one after another round it")]
    public IReadOnlyList<PlateCorner>? Corners { get; init; }

    /// <summary>How many alike.</summary>
    [Says("how many alike there are"), Measure(Dimension.Count, "1", From = 1, UpTo = 1000)]
    public double? Count { get; init; }

    /// <summary>It has to be bought.</summary>
    [Says("it has to be bought: used only when what you have is full")]
    public bool? Buy { get; init; }
}

/// <summary>A bar or section that lies in the rack, or a length that can be bought.</summary>
[Says("a bar or section you have, or a length you can buy")]
public sealed record BarInStock
{
    /// <summary>Its section.</summary>
    [Needed, Says("its section; of a pair, of one half"), StockName(StockKind.Section, "UPN 200")]
    public string? Section { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }

    /// <summary>Its length, m.</summary>
    [Needed, Says("its length"), Measure(Dimension.Length, "6 m", UpTo = 30)]
    public double? Length { get; init; }

    /// <summary>How many alike.</summary>
    [Says("how many alike there are; as many as are needed where it is bought"), Measure(Dimension.Count, "1", From = 1, UpTo = 1000)]
    public double? Count { get; init; }

    /// <summary>It has to be bought.</summary>
    [Says("it has to be bought: used only when what you have is used up")]
    public bool? Buy { get; init; }
}

/// <summary>How plates are cut and bars are sawn.</summary>
[Says("how plates are cut and bars are sawn")]
public sealed record Cutting
{
    /// <summary>From part to part on a sheet, m.</summary>
    [Says("least steel left between parts on a sheet"), Measure(Dimension.Length, "8 mm", From = 0, UpTo = 0.2)]
    public double? PartGap { get; init; }

    /// <summary>From part to the sheet's edge, m.</summary>
    [Says("least steel left between a part and the edge of its sheet"), Measure(Dimension.Length, "10 mm", From = 0, UpTo = 0.2)]
    public double? EdgeGap { get; init; }

    /// <summary>Turns that are tried on a sheet, rad.</summary>
    [Says("by what angle parts may be turned on a sheet, and its multiples"), Measure(Dimension.Angle, "90°", From = 0.0174, UpTo = 6.2832)]
    public double? TurnStep { get; init; }

    /// <summary>Width of the torch's cut that is drawn in, m.</summary>
    [Says("width of the torch's cut, where the cut files shall make room for it; most tables do that themselves"), Measure(Dimension.Length, "1.5 mm", From = 0, UpTo = 0.01)]
    public double? TorchKerf { get; init; }

    /// <summary>Length of a run-in to each cut, m.</summary>
    [Says("length of a run-in to each cut, where the cut files shall have one"), Measure(Dimension.Length, "5 mm", From = 0, UpTo = 0.05)]
    public double? LeadIn { get; init; }

    /// <summary>Width of the saw's cut, m.</summary>
    [Says("width of the saw's cut"), Measure(Dimension.Length, "2 mm", From = 0, UpTo = 0.02)]
    public double? SawKerf { get; init; }

    /// <summary>Sawn off each end of a bar, m.</summary>
    [Says("sawn off a bar's rough end before the first part"), Measure(Dimension.Length, "5 mm", From = 0, UpTo = 0.5)]
    public double? RoughEnd { get; init; }
}
