using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A part of the builder's own, or one of the press's parts made otherwise than it is proposed.</summary>
[Says("a part of your own, or one of the press's made otherwise than proposed")]
[Kinds(typeof(OwnPlate), typeof(OwnBentPlate), typeof(OwnLength))]
public abstract record OwnPart
{
    /// <summary>What it is called.</summary>
    [Needed, Says("what the part is called")]
    public string? Name { get; init; }

    /// <summary>How many alike.</summary>
    [Says("how many alike"), Measure(Dimension.Count, "2", From = 1, UpTo = 1000)]
    public double? Count { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }

    /// <summary>Name of the part of the press that it stands in for.</summary>
    [Says("name of the part in the cut list that it is made in place of")]
    public string? InPlaceOf { get; init; }
}

/// <summary>A flat plate.</summary>
[Kind("plate"), Says("a flat plate: a rectangle, a disc, or any corners")]
public sealed record OwnPlate : OwnPart
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("its thickness"), Measure(Dimension.Length, "12 mm", UpTo = 0.5)]
    public double? Thickness { get; init; }

    /// <summary>Width of a rectangle, m.</summary>
    [Says("width of a rectangle"), Measure(Dimension.Length, "200 mm", UpTo = 12)]
    public double? Width { get; init; }

    /// <summary>Height of a rectangle, m.</summary>
    [Says("height of a rectangle"), Measure(Dimension.Length, "120 mm", UpTo = 12)]
    public double? Height { get; init; }

    /// <summary>Diameter of a disc, m.</summary>
    [Says("diameter of a disc"), Measure(Dimension.Length, "150 mm", UpTo = 12)]
    public double? Diameter { get; init; }

    /// <summary>Corners of any other outline, in turn.</summary>
    [Says("corners of any other outline, one after another round it")]
    public IReadOnlyList<PlateCorner>? Corners { get; init; }

    /// <summary>Round holes.</summary>
    [Says("its round holes")]
    public IReadOnlyList<OwnHole>? Holes { get; init; }
}

/// <summary>A plate bent along lines across it.</summary>
[Kind("bent"), Says("a plate bent along lines across it; its flat length is reckoned")]
public sealed record OwnBentPlate : OwnPart
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("its thickness"), Measure(Dimension.Length, "6 mm", UpTo = 0.1)]
    public double? Thickness { get; init; }

    /// <summary>Width along the bends, m.</summary>
    [Needed, Says("its width, along the bends"), Measure(Dimension.Length, "100 mm", UpTo = 12)]
    public double? Width { get; init; }

    /// <summary>Inside radius of the bends, m.</summary>
    [Says("inside radius of its bends; its thickness where nothing is said"), Measure(Dimension.Length, "6 mm", UpTo = 1)]
    public double? Radius { get; init; }

    /// <summary>Its legs.</summary>
    [Needed, Says("its legs from one end to the other")]
    public IReadOnlyList<BentLeg>? Legs { get; init; }

    /// <summary>Round holes on the flat pattern.</summary>
    [Says("its round holes, measured on the flat pattern from its first end and its lower edge")]
    public IReadOnlyList<OwnHole>? Holes { get; init; }
}

/// <summary>A leg of a bent plate.</summary>
[Says("a leg of a bent plate")]
public sealed record BentLeg
{
    /// <summary>Outside length, m.</summary>
    [Needed, Says("its length, measured outside"), Measure(Dimension.Length, "80 mm", UpTo = 12)]
    public double? Length { get; init; }

    /// <summary>How far the plate is bent at its end, rad.</summary>
    [Says("how far the plate is bent at this leg's end; a square corner where nothing is said"), Measure(Dimension.Angle, "90°", UpTo = 3)]
    public double? Bend { get; init; }

    /// <summary>Bent down, away from whoever looks at the flat pattern.</summary>
    [Says("bent down, away from you as you look at the flat pattern")]
    public bool? Down { get; init; }
}

/// <summary>A length of bar or section.</summary>
[Kind("length"), Says("a length sawn from a bar or section")]
public sealed record OwnLength : OwnPart
{
    /// <summary>Its section.</summary>
    [Needed, Says("its section"), StockName(StockKind.Section, "flat 60x10")]
    public string? Section { get; init; }

    /// <summary>Finished length, m.</summary>
    [Needed, Says("its finished length"), Measure(Dimension.Length, "400 mm", UpTo = 30)]
    public double? Length { get; init; }
}

/// <summary>A corner of an outline.</summary>
[Says("a corner of an outline")]
public sealed record PlateCorner
{
    /// <summary>To the right, m.</summary>
    [Says("how far to the right"), Measure(Dimension.Length, "120 mm", From = 0, UpTo = 12)]
    public double? Right { get; init; }

    /// <summary>Up, m.</summary>
    [Says("how far up"), Measure(Dimension.Length, "80 mm", From = 0, UpTo = 12)]
    public double? Up { get; init; }

    /// <summary>Radius it is rounded by, m.</summary>
    [Says("radius it is rounded by; sharp where nothing is said"), Measure(Dimension.Length, "10 mm", From = 0, UpTo = 6)]
    public double? Radius { get; init; }
}

/// <summary>A round hole.</summary>
[Says("a round hole")]
public sealed record OwnHole
{
    /// <summary>To the right, m.</summary>
    [Needed, Says("its centre, how far to the right"), Measure(Dimension.Length, "30 mm", From = 0, UpTo = 12)]
    public double? Right { get; init; }

    /// <summary>Up, m.</summary>
    [Needed, Says("its centre, how far up"), Measure(Dimension.Length, "30 mm", From = 0, UpTo = 12)]
    public double? Up { get; init; }

    /// <summary>Diameter, m.</summary>
    [Needed, Says("its diameter"), Measure(Dimension.Length, "18 mm", UpTo = 6)]
    public double? Diameter { get; init; }

    /// <summary>What goes through.</summary>
    [Says("what goes through it")]
    public string? For { get; init; }

    /// <summary>Only centre-marked, to be drilled.</summary>
    [Says("only centre-marked, to be drilled")]
    public bool? Drill { get; init; }
}
