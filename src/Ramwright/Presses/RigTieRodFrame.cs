using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Crown and bed held together by tie rods.</summary>
public sealed record RigTieRodFrame : RigFrame
{
    /// <summary>Between the rods across the press, m.</summary>
    public required double RodsAcross { get; init; }
    /// <summary>Between the rods from front to back, m; 0 where there are two rods.</summary>
    public required double RodsDeep { get; init; }
    /// <summary>The top beam or plate.</summary>
    public required RigMember Crown { get; init; }
    /// <summary>The bottom beam or plate.</summary>
    public required RigMember Bed { get; init; }
    /// <summary>The crown's plate, where it is one.</summary>
    public RigEndPlate? CrownPlate { get; init; }
    /// <summary>The bed's plate, where it is one.</summary>
    public RigEndPlate? BedPlate { get; init; }
    /// <summary>Each rod.</summary>
    public required RigTieRod Rod { get; init; }

    /// <summary>Two or four.</summary>
    public int Rods => RodsDeep > 0 ? 4 : 2;
}

/// <summary>A thick plate that lies flat across the rods. SI.</summary>
/// <param name="Thickness">m.</param>
/// <param name="Width">From front to back, m.</param>
/// <param name="Length">Across the press, m.</param>
/// <param name="Hole">Through its middle, m; 0 for none.</param>
public sealed record RigEndPlate(double Thickness, double Width, double Length, double Hole);

/// <summary>A tie rod with every number settled. SI.</summary>
public sealed record RigTieRod
{
    /// <summary>Thread.</summary>
    public required ScrewThread Thread { get; init; }
    /// <summary>Class, or the steel of the bar by its name.</summary>
    public required string Grade { get; init; }
    /// <summary>Stress at which it keeps a stretch, Pa: proof stress of a class, yield strength of a bar.</summary>
    public required double Proof { get; init; }
    /// <summary>Tensile strength, Pa.</summary>
    public required double Fu { get; init; }
    /// <summary>Diameter of the plain part, m; null where it is threaded throughout.</summary>
    public double? Shank { get; init; }
    /// <summary>Threaded length at each end that stretches, from crown or bed to the plain part, m.</summary>
    public required double FreeThread { get; init; }
    /// <summary>What crown and bed stand against.</summary>
    public required RodSeat Seat { get; init; }
    /// <summary>Outside diameter of the sleeve, m; 0 where there is none.</summary>
    public double SleeveOutside { get; init; }
    /// <summary>Inside diameter of the sleeve, m.</summary>
    public double SleeveInside { get; init; }
    /// <summary>Height of the nut in mesh, m.</summary>
    public required double NutHeight { get; init; }
    /// <summary>Tensile strength of the nut, Pa.</summary>
    public required double NutFu { get; init; }
    /// <summary>The washer under each outer nut; null where the nut stands on the plate itself.</summary>
    public RigRodWasher? Washer { get; init; }
    /// <summary>The preload to count on, N; 0 for none.</summary>
    public required double PreloadLeast { get; init; }
    /// <summary>The preload to fear, N.</summary>
    public required double PreloadMost { get; init; }

    /// <summary>Stress area of the thread, m².</summary>
    public double As => Thread.As;

    /// <summary>Diameter of the round that has the stress area, m.</summary>
    public double StressDiameter => Math.Sqrt(4 * Thread.As / Math.PI);
}
