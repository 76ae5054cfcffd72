using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>The cylinder that pushes.</summary>
[Says("the cylinder that pushes")]
[Kinds(typeof(SingleActing), typeof(DoubleActing), typeof(HollowPlunger))]
public abstract record Cylinder
{
    /// <summary>Inside diameter of the barrel, m.</summary>
    [Needed, Says("inside diameter of the barrel"), Measure(Dimension.Length, "100 mm", UpTo = 1)]
    public double? Bore { get; init; }

    /// <summary>Travel, m.</summary>
    [Says("full travel of the ram"), Measure(Dimension.Length, "250 mm", UpTo = 5)]
    public double? Stroke { get; init; }

    /// <summary>Diameter of the rod or plunger, m.</summary>
    [Says("diameter of the rod"), Measure(Dimension.Length, "56 mm", UpTo = 1)]
    public double? Rod { get; init; }

    /// <summary>Pressure the maker allows, Pa.</summary>
    [Says("the pressure the maker allows"), Measure(Dimension.Pressure, "250 bar", UpTo = 300e6)]
    public double? RatedPressure { get; init; }

    /// <summary>Force the seller names, N.</summary>
    [Says("the force it is sold as"), Measure(Dimension.Force, "25 t", UpTo = 20e6)]
    public double? RatedForce { get; init; }

    /// <summary>Outside diameter of the barrel, m.</summary>
    [Says("outside diameter of the barrel"), Measure(Dimension.Length, "125 mm", UpTo = 2)]
    public double? BarrelOutside { get; init; }

    /// <summary>Steel of the barrel.</summary>
    [Says("steel of the barrel"), StockName(StockKind.Steel, "S355")]
    public string? BarrelSteel { get; init; }

    /// <summary>Steel of the rod.</summary>
    [Says("steel of the rod"), StockName(StockKind.Steel, "C45+N")]
    public string? RodSteel { get; init; }

    /// <summary>How the ram's end is held.</summary>
    [Says("how the lower end of the ram is held sideways")]
    public RamGuide? Guide { get; init; }

    /// <summary>Length of the guide in the gland, m.</summary>
    [Says("length of the guide in the gland"), Measure(Dimension.Length, "30 mm", UpTo = 1)]
    public double? GlandGuide { get; init; }

    /// <summary>Length of the guide on the piston, m.</summary>
    [Says("length of the guide on the piston"), Measure(Dimension.Length, "25 mm", UpTo = 1)]
    public double? PistonGuide { get; init; }

    /// <summary>Between the middles of both guides, ram fully out, m.</summary>
    [Says("between the middles of both guides, ram fully out"), Measure(Dimension.Length, "120 mm", UpTo = 3)]
    public double? GuideApart { get; init; }

    /// <summary>What the guides are made of.</summary>
    [Says("what the guides in gland and piston are made of")]
    public GuideRing? GuideRing { get; init; }

    /// <summary>How it is held in the frame.</summary>
    [Says("how it is held in the frame")]
    public Mounting? Mount { get; init; }

    /// <summary>Thread that carries the die or the pull.</summary>
    [Says("thread at the end of the rod that carries tools in return or pull"), StockName(StockKind.Thread, "M36x2")]
    public string? RodThread { get; init; }

    /// <summary>How it presses on the frame.</summary>
    [Says("the flange or plate by which it presses on the frame")]
    public Foot? Foot { get; init; }

    /// <summary>Share of the hydraulic force lost to seals.</summary>
    [Says("share of the force lost to seal friction"), Measure(Dimension.Ratio, "3 %", From = 0, UpTo = 0.3)]
    public double? SealFriction { get; init; }

    /// <summary>How many such cylinders push side by side.</summary>
    [Says("how many such cylinders push side by side on one line"), Measure(Dimension.Count, "1", From = 1, UpTo = 16)]
    public double? Count { get; init; }

    /// <summary>Which way it pushes.</summary>
    [Says("which way the ram pushes")]
    public RamDirection? Pushes { get; init; }

    /// <summary>Mass that hangs or stands on the oil, kg.</summary>
    [Says("mass of what moves: ram, platen, die"), Measure(Dimension.Mass, "60 kg", From = 0, UpTo = 50e3)]
    public double? MovingMass { get; init; }
}

/// <summary>Pushes by oil, comes back by a spring or its weight.</summary>
[Kind("single-acting"), Says("oil pushes; a spring or gravity brings it back")]
public sealed record SingleActing : Cylinder
{
    /// <summary>What brings it back.</summary>
    [Says("what brings the ram back")]
    public RamReturn? Return { get; init; }

    /// <summary>Spring force with the ram in, N.</summary>
    [Says("spring force with the ram in"), Measure(Dimension.Force, "0.9 kN", From = 0, UpTo = 1e6)]
    public double? SpringPreload { get; init; }

    /// <summary>Spring rate, N/m.</summary>
    [Says("spring rate"), Measure(Dimension.Stiffness, "4 N/mm", From = 0, UpTo = 1e7)]
    public double? SpringRate { get; init; }
}

/// <summary>Pushes and pulls by oil.</summary>
[Kind("double-acting"), Says("oil pushes and brings it back")]
public sealed record DoubleActing : Cylinder
{
    /// <summary>Whether the ring's oil joins the pump's.</summary>
    [Says("whether the oil from the rod side joins the pump's on the way out: faster, and only the rod's area pushes")]
    public Regeneration? Regeneration { get; init; }
}

/// <summary>A ring-shaped plunger with a hole through the middle.</summary>
[Kind("hollow-plunger"), Says("a plunger with a hole right through, for pulling")]
public sealed record HollowPlunger : Cylinder
{
    /// <summary>Outside diameter of the centre tube that the seal rides on, m.</summary>
    [Needed, Says("outside diameter of the centre tube the seal rides on, not the hole"), Measure(Dimension.Length, "60 mm", UpTo = 1)]
    public double? CentreTube { get; init; }

    /// <summary>Hole through the plunger, m.</summary>
    [Says("diameter of the through hole"), Measure(Dimension.Length, "54 mm", UpTo = 1)]
    public double? Hole { get; init; }

    /// <summary>What brings it back.</summary>
    [Says("what brings the plunger back")]
    public RamReturn? Return { get; init; }

    /// <summary>Spring force with the plunger in, N.</summary>
    [Says("spring force with the plunger in"), Measure(Dimension.Force, "0.9 kN", From = 0, UpTo = 1e6)]
    public double? SpringPreload { get; init; }

    /// <summary>Spring rate, N/m.</summary>
    [Says("spring rate"), Measure(Dimension.Stiffness, "4 N/mm", From = 0, UpTo = 1e7)]
    public double? SpringRate { get; init; }
}

/// <summary>When the oil of the rod side joins the pump's.</summary>
public enum Regeneration
{
    /// <summary>Never: it goes to the tank.</summary>
    [Says("to the tank")]
    Never,
    /// <summary>Until the ram meets the work.</summary>
    [Says("joins it until the ram meets the work, then to the tank")]
    Approach,
    /// <summary>Over the whole stroke.</summary>
    [Says("joins it all the way")]
    Always,
}

/// <summary>Which way the ram pushes.</summary>
public enum RamDirection
{
    /// <summary>Down onto the work.</summary>
    [Says("down")]
    Down,
    /// <summary>Up against the work.</summary>
    [Says("up")]
    Up,
    /// <summary>Level.</summary>
    [Says("level, sideways")]
    Sideways,
}

/// <summary>How the ram's lower end is held sideways.</summary>
public enum RamGuide
{
    /// <summary>Nothing holds it: the ram stands out like a flagpole.</summary>
    [Says("nothing but the gland")]
    Free,
    /// <summary>The end cannot move sideways but can tilt.</summary>
    [Says("held sideways, free to tilt")]
    Pinned,
    /// <summary>Guides keep it from moving sideways and from tilting.</summary>
    [Says("guided on slides")]
    Guided,
}

/// <summary>What brings a single-acting ram back.</summary>
public enum RamReturn
{
    /// <summary>A spring.</summary>
    [Says("a spring inside")]
    Spring,
    /// <summary>Its own weight, or a load.</summary>
    [Says("its own weight or a load")]
    Gravity,
}
