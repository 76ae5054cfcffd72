using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A cylinder with every number settled. SI.</summary>
public sealed record RigCylinder
{
    /// <summary>Inside diameter of the barrel, m.</summary>
    public required double Bore { get; init; }
    /// <summary>Diameter of the rod or plunger, m.</summary>
    public required double Rod { get; init; }
    /// <summary>Travel, m.</summary>
    public required double Stroke { get; init; }
    /// <summary>Outside diameter of the centre tube of a hollow plunger, m; 0 for any other.</summary>
    public double CentreTube { get; init; }
    /// <summary>Hole through the plunger, m; 0 for any other.</summary>
    public double Hole { get; init; }
    /// <summary>Whether oil brings it back.</summary>
    public required bool PullsByOil { get; init; }
    /// <summary>Pressure the maker allows, Pa.</summary>
    public required double RatedPressure { get; init; }
    /// <summary>Force the seller names, N, where one was stated.</summary>
    public double? RatedForce { get; init; }
    /// <summary>Outside diameter of the barrel, m, where stated.</summary>
    public double? BarrelOutside { get; init; }
    /// <summary>Steel of the barrel.</summary>
    public required Steel BarrelSteel { get; init; }
    /// <summary>Steel of the rod.</summary>
    public required Steel RodSteel { get; init; }
    /// <summary>Effective length factor K of the rod, by its guide.</summary>
    public required double BucklingLengthFactor { get; init; }
    /// <summary>How the ram's end is held.</summary>
    public required RamGuide Guide { get; init; }
    /// <summary>Length of the guide in the gland, m; 0 where slides carry what tilts the ram.</summary>
    public double GlandGuide { get; init; }
    /// <summary>Length of the guide on the piston, m.</summary>
    public double PistonGuide { get; init; }
    /// <summary>Between the middles of both guides, ram fully out, m.</summary>
    public double GuideApart { get; init; }
    /// <summary>What the guides are made of.</summary>
    public GuideRing GuideRing { get; init; }
    /// <summary>How it is held; null where that is not said.</summary>
    public RigMount? Mount { get; init; }
    /// <summary>Thread at the rod's end, where stated.</summary>
    public ScrewThread? RodThread { get; init; }
    /// <summary>How it presses on the frame; null leaves that unlooked at.</summary>
    public RigFoot? Foot { get; init; }
    /// <summary>Share of the hydraulic force lost to the seals.</summary>
    public required double SealFriction { get; init; }
    /// <summary>How many such cylinders push side by side on one line; sizes and ratings are those of each.</summary>
    public int Count { get; init; } = 1;
    /// <summary>When the oil of the ring joins the pump's.</summary>
    public Regeneration Regeneration { get; init; } = Regeneration.Never;
    /// <summary>What brings it back; null where oil does.</summary>
    public RamReturn? Return { get; init; }
    /// <summary>Which way it pushes; null where nothing is known.</summary>
    public RamDirection? Pushes { get; init; }
    /// <summary>Mass of what moves, kg; null where nothing is known.</summary>
    public double? MovingMass { get; init; }
    /// <summary>Return spring force with the ram in, of all cylinders together, N; 0 where there is none.</summary>
    public double SpringPreload { get; init; }
    /// <summary>Return spring rate, of all cylinders together, N/m; 0 where there is none.</summary>
    public double SpringRate { get; init; }
}
