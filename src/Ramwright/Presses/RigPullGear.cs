using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>What carries a pull, every number settled. SI.</summary>
public sealed record RigPullGear
{
    /// <summary>Thread of the rod.</summary>
    public required ScrewThread Thread { get; init; }
    /// <summary>Class of the rod; null where its steel is known instead.</summary>
    public PropertyClass? Class { get; init; }
    /// <summary>Steel of the rod; null where it has a class.</summary>
    public Steel? Steel { get; init; }
    /// <summary>Height of thread in the nut, m; 0 for a full nut of the rod's class.</summary>
    public double Nut { get; init; }
    /// <summary>Steel of the nut.</summary>
    public Steel? NutSteel { get; init; }
    /// <summary>Washer.</summary>
    public RigPullWasher? Washer { get; init; }
    /// <summary>Chair.</summary>
    public RigPullChair? Chair { get; init; }
    /// <summary>Coupler.</summary>
    public RigPullCoupler? Coupler { get; init; }

    /// <summary>Tensile strength of the rod, Pa: of its class, or of its steel.</summary>
    public double Fu => Class?.Rm ?? Steel!.Fu(Thread.D);
}

/// <summary>Washer over the plunger's hole.</summary>
/// <param name="Thickness">m.</param>
/// <param name="Hole">m.</param>
/// <param name="NutWidth">Across the nut's flats, m.</param>
/// <param name="Steel">Its steel.</param>
public sealed record RigPullWasher(double Thickness, double Hole, double NutWidth, Steel Steel);

/// <summary>A ring plate on legs.</summary>
/// <param name="Legs">How many legs.</param>
/// <param name="Section">Section of each leg.</param>
/// <param name="Length">Length of the legs, m.</param>
/// <param name="Plate">Thickness of the ring plate, m.</param>
/// <param name="Circle">Circle through the legs' middles, m.</param>
/// <param name="Hole">Hole in the ring plate, m.</param>
/// <param name="Steel">Its steel.</param>
public sealed record RigPullChair(int Legs, Shape Section, double Length, double Plate, double Circle, double Hole, Steel Steel);

/// <summary>A sleeve that joins two rods.</summary>
/// <param name="Engagement">Thread of each rod in it, m.</param>
/// <param name="Outside">Outside diameter, m.</param>
/// <param name="Steel">Its steel.</param>
public sealed record RigPullCoupler(double Engagement, double Outside, Steel Steel);
