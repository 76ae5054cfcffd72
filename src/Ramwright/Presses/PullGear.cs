using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>What carries the pull from the ram to the work: rod, nut, washer, chair, coupler.</summary>
[Says("what carries a pull from the ram to the work")]
public sealed record PullGear
{
    /// <summary>Thread of the rod.</summary>
    [Needed, Says("thread of the pull rod"), StockName(StockKind.Thread, "M36")]
    public string? Thread { get; init; }

    /// <summary>Class of the rod.</summary>
    [Says("strength class of the rod, where it is marked; it counts before its steel"), StockName(StockKind.PropertyClass, "8.8")]
    public string? Class { get; init; }

    /// <summary>Steel of a rod without a class.</summary>
    [Says("steel of a rod that has no strength class"), StockName(StockKind.Steel, "C45+QT")]
    public string? Steel { get; init; }

    /// <summary>Height of the nut's thread, m.</summary>
    [Says("height of thread in the nut"), Measure(Dimension.Length, "30 mm", UpTo = 0.5)]
    public double? Nut { get; init; }

    /// <summary>Steel of the nut.</summary>
    [Says("steel of a nut made in the shop"), StockName(StockKind.Steel, "S355")]
    public string? NutSteel { get; init; }

    /// <summary>Washer between nut and plunger.</summary>
    [Says("washer between the nut and the plunger")]
    public PullWasher? Washer { get; init; }

    /// <summary>Chair between cylinder and work.</summary>
    [Says("chair between the cylinder and the work")]
    public PullChair? Chair { get; init; }

    /// <summary>Coupler that joins two rods.</summary>
    [Says("coupler that joins two rods")]
    public PullCoupler? Coupler { get; init; }
}

/// <summary>Washer between nut and plunger.</summary>
[Says("washer between the nut and the plunger")]
public sealed record PullWasher
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("its thickness"), Measure(Dimension.Length, "20 mm", UpTo = 0.5)]
    public double? Thickness { get; init; }

    /// <summary>Hole, m.</summary>
    [Says("its hole"), Measure(Dimension.Length, "39 mm", UpTo = 1)]
    public double? Hole { get; init; }

    /// <summary>Across the flats of the nut, m.</summary>
    [Says("width across the flats of the nut on it"), Measure(Dimension.Length, "55 mm", UpTo = 1)]
    public double? NutWidth { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S355")]
    public string? Steel { get; init; }
}

/// <summary>A ring plate on legs, between cylinder and work.</summary>
[Says("a ring plate on legs, between the cylinder and the work")]
public sealed record PullChair
{
    /// <summary>How many legs.</summary>
    [Needed, Says("how many legs it has"), Measure(Dimension.Count, "4", From = 2, UpTo = 32)]
    public double? Legs { get; init; }

    /// <summary>Section of each leg.</summary>
    [Needed, Says("section of each leg"), StockName(StockKind.Section, "SHS 50x5")]
    public string? Section { get; init; }

    /// <summary>Length of the legs, m.</summary>
    [Needed, Says("length of the legs"), Measure(Dimension.Length, "250 mm", UpTo = 5)]
    public double? Length { get; init; }

    /// <summary>Thickness of the ring plate, m.</summary>
    [Needed, Says("thickness of the ring plate"), Measure(Dimension.Length, "30 mm", UpTo = 0.5)]
    public double? Plate { get; init; }

    /// <summary>Diameter of the circle through the legs' middles, m.</summary>
    [Needed, Says("diameter of the circle through the middles of the legs"), Measure(Dimension.Length, "200 mm", UpTo = 3)]
    public double? Circle { get; init; }

    /// <summary>Hole in the ring plate, m.</summary>
    [Says("hole in the ring plate"), Measure(Dimension.Length, "60 mm", UpTo = 3)]
    public double? Hole { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S235")]
    public string? Steel { get; init; }
}

/// <summary>A sleeve that joins two rods.</summary>
[Says("a threaded sleeve that joins two rods")]
public sealed record PullCoupler
{
    /// <summary>Length of thread each rod has in it, m.</summary>
    [Needed, Says("length of thread each rod has in it"), Measure(Dimension.Length, "36 mm", UpTo = 0.5)]
    public double? Engagement { get; init; }

    /// <summary>Outside diameter, m.</summary>
    [Needed, Says("its outside diameter, or the width across its flats"), Measure(Dimension.Length, "60 mm", UpTo = 1)]
    public double? Outside { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S355")]
    public string? Steel { get; init; }
}
