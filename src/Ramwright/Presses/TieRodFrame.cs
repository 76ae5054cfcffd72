using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>Crown and bed held together by tie rods with nuts.</summary>
[Kind("tie-rod"), Says("crown and bed held together by two or four tie rods with nuts")]
public sealed record TieRodFrame : PressFrame
{
    /// <summary>Between the rods across the press, centre to centre, m.</summary>
    [Needed, Says("between the rods across the press, centre to centre"), Measure(Dimension.Length, "400 mm", UpTo = 10)]
    public double? RodsAcross { get; init; }

    /// <summary>Between the rods from front to back, centre to centre, m; there are two rods where it is left out, else four.</summary>
    [Says("between the rods from front to back, centre to centre; leave it out for two rods"), Measure(Dimension.Length, "200 mm", UpTo = 5)]
    public double? RodsDeep { get; init; }

    /// <summary>Each of the rods.</summary>
    [Needed, Says("each of the rods")]
    public TieRod? Rod { get; init; }

    /// <summary>The beam that takes the cylinder's thrust.</summary>
    [Says("the beam that takes the cylinder's thrust")]
    public Member? Crown { get; init; }

    /// <summary>The beam that carries the work.</summary>
    [Says("the beam that carries the work")]
    public Member? Bed { get; init; }

    /// <summary>The crown, where it is a plate.</summary>
    [Says("the crown, where it is a thick plate lying flat")]
    public EndPlate? CrownPlate { get; init; }

    /// <summary>The bed, where it is a plate.</summary>
    [Says("the bed, where it is a thick plate lying flat")]
    public EndPlate? BedPlate { get; init; }
}

/// <summary>A thick plate that lies flat across the rods.</summary>
[Says("a thick plate that lies flat across the rods")]
public sealed record EndPlate
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("its thickness"), Measure(Dimension.Length, "60 mm", UpTo = 0.5)]
    public double? Thickness { get; init; }

    /// <summary>Width from front to back, m.</summary>
    [Needed, Says("its width from front to back"), Measure(Dimension.Length, "250 mm", UpTo = 3)]
    public double? Width { get; init; }

    /// <summary>Length across the press, m.</summary>
    [Says("its length across the press"), Measure(Dimension.Length, "500 mm", UpTo = 10)]
    public double? Length { get; init; }

    /// <summary>Hole through its middle, m.</summary>
    [Says("diameter of the hole through its middle"), Measure(Dimension.Length, "80 mm", UpTo = 1)]
    public double? Hole { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S355")]
    public string? Steel { get; init; }
}

/// <summary>A tie rod with its nuts.</summary>
[Says("a tie rod with its nuts")]
public sealed record TieRod
{
    /// <summary>Thread.</summary>
    [Needed, Says("its thread"), StockName(StockKind.Thread, "M36")]
    public string? Thread { get; init; }

    /// <summary>Strength class, where it is marked.</summary>
    [Says("its strength class, where it is marked"), StockName(StockKind.PropertyClass, "8.8")]
    public string? Class { get; init; }

    /// <summary>Steel, where it is turned from bar.</summary>
    [Says("its steel, where it is made from bar"), StockName(StockKind.Steel, "C45+N")]
    public string? Steel { get; init; }

    /// <summary>Diameter of the plain part between the threads, m.</summary>
    [Says("diameter of the plain part; leave it out where it is threaded throughout"), Measure(Dimension.Length, "36 mm", UpTo = 0.5)]
    public double? Shank { get; init; }

    /// <summary>Threaded length at each end between the nut and the plain part, m.</summary>
    [Says("threaded length at each end, from crown or bed to the plain part"), Measure(Dimension.Length, "40 mm", From = 0, UpTo = 3)]
    public double? FreeThread { get; init; }

    /// <summary>What crown and bed stand against on the inner side.</summary>
    [Says("what crown and bed stand against on their inner side")]
    public RodSeat? Seat { get; init; }

    /// <summary>The spacer tube.</summary>
    [Says("the spacer tube over the rod from bed to crown")]
    public Sleeve? Sleeve { get; init; }

    /// <summary>Height of the outer nut, m.</summary>
    [Says("height of the outer nut"), Measure(Dimension.Length, "29 mm", UpTo = 0.5)]
    public double? NutHeight { get; init; }

    /// <summary>Steel of the nut, where it is home-made.</summary>
    [Says("steel of the nut, where it is not one of the rod's own class"), StockName(StockKind.Steel, "S355")]
    public string? NutSteel { get; init; }

    /// <summary>The washer under each outer nut.</summary>
    [Says("the washer under each outer nut; over a pair it spans the gap")]
    public RodWasher? Washer { get; init; }

    /// <summary>Preload of each rod, N.</summary>
    [Says("preload of each rod, set by its stretch"), Measure(Dimension.Force, "150 kN", From = 0, UpTo = 20e6)]
    public double? Preload { get; init; }

    /// <summary>Torque on each nut, N·m.</summary>
    [Says("torque on each nut, where that is how it is tightened"), Measure(Dimension.Moment, "800 N·m", From = 0, UpTo = 1e6)]
    public double? Torque { get; init; }
}

/// <summary>A spacer tube over a tie rod.</summary>
[Says("a spacer tube over a tie rod")]
public sealed record Sleeve
{
    /// <summary>Outside diameter, m.</summary>
    [Needed, Says("its outside diameter"), Measure(Dimension.Length, "70 mm", UpTo = 1)]
    public double? Outside { get; init; }

    /// <summary>Inside diameter, m.</summary>
    [Needed, Says("its inside diameter"), Measure(Dimension.Length, "40 mm", UpTo = 1)]
    public double? Inside { get; init; }
}

/// <summary>What crown and bed stand against on the rod's inner side.</summary>
public enum RodSeat
{
    /// <summary>A second nut.</summary>
    [Says("a second nut")]
    Nut,
    /// <summary>A shoulder of the rod.</summary>
    [Says("a shoulder turned on the rod")]
    Shoulder,
    /// <summary>A spacer tube.</summary>
    [Says("a spacer tube over the rod")]
    Sleeve,
}
