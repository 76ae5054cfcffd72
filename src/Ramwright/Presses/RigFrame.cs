using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A frame with every number settled. SI.</summary>
public abstract record RigFrame
{
    /// <summary>Largest opening, m.</summary>
    public required double Daylight { get; init; }
    /// <summary>Width the load is spread over, m; 0 takes it as a point.</summary>
    public required double DieWidth { get; init; }
    /// <summary>Depth of the dies from front to back, m; 0 takes them as a line.</summary>
    public double DieDepth { get; init; }
    /// <summary>The plate between the lower die and the frame, where there is one.</summary>
    public RigBolster? Bolster { get; init; }
    /// <summary>From the crown's (or upper arm's) face down to the ram's face, ram fully up, m.</summary>
    public required double RamDrop { get; init; }
    /// <summary>Whether it lies on its back; its weight then acts from front to back.</summary>
    public bool Horizontal { get; init; }
}

/// <summary>Crown and bed between two uprights.</summary>
public sealed record RigClosedFrame : RigFrame
{
    /// <summary>Clear width between the uprights, m.</summary>
    public required double Width { get; init; }
    /// <summary>The top beam.</summary>
    public required RigMember Crown { get; init; }
    /// <summary>The bottom beam.</summary>
    public required RigMember Bed { get; init; }
    /// <summary>Each upright.</summary>
    public required RigMember Upright { get; init; }
    /// <summary>Crown to upright.</summary>
    public required RigJoint CrownJoint { get; init; }
    /// <summary>Bed to upright.</summary>
    public required RigJoint BedJoint { get; init; }
    /// <summary>The rows of holes, where the bed rests on pins.</summary>
    public RigBedPins? BedPins { get; init; }

    /// <summary>How many heights the bed can be set at.</summary>
    public int BedHeights => BedPins?.Count ?? 1;

    /// <summary>The same frame with its bed raised; 0 is the lowest.</summary>
    /// <param name="height">Which height, from 0.</param>
    public RigClosedFrame WithBedAt(int height) => this with { Daylight = Daylight - height * (BedPins?.Pitch ?? 0) };
}

/// <summary>A column with two arms.</summary>
public sealed record RigOpenFrontFrame : RigFrame
{
    /// <summary>From the ram's centre line to the column's front face, m.</summary>
    public required double Throat { get; init; }
    /// <summary>From the column's front face to the arms' tips, m.</summary>
    public required double ArmReach { get; init; }
    /// <summary>The column.</summary>
    public required RigMember Column { get; init; }
    /// <summary>The arm that carries the cylinder.</summary>
    public required RigMember UpperArm { get; init; }
    /// <summary>The arm that carries the lower die.</summary>
    public required RigMember LowerArm { get; init; }
    /// <summary>Arms to column.</summary>
    public required RigJoint ArmJoint { get; init; }
}

/// <summary>A member with its section and steel found.</summary>
/// <param name="Part">What the trade calls it: <c>crown</c>.</param>
/// <param name="Shape">Its full section.</param>
/// <param name="Net">Its section where its holes and slots are; null where nothing is cut.</param>
/// <param name="Steel">Its steel.</param>
public sealed record RigMember(string Part, Shape Shape, Shape? Net, Steel Steel)
{
    /// <summary>Its path in the press: <c>frame.crown</c>.</summary>
    public string Key { get; init; } = "";

    /// <summary>Thickness of the plates welded in between its flanges, under the ram force or in line with the flanges that meet it, m; null where there are none.</summary>
    public double? Stiffened { get; init; }

    /// <summary>Weld of those plates to web and flanges; null where there are none.</summary>
    public RigWeld? StiffenerWeld { get; init; }

    /// <summary>Its section through the holes of the joint's bolts or pin; null where there are none, or they could not be placed.</summary>
    public Shape? JointNet { get; init; }

    /// <summary>Yield strength at the section's thickness, Pa.</summary>
    public double Fy => Steel.Fy(Shape.Properties.Thickness);
    /// <summary>Tensile strength at the section's thickness, Pa.</summary>
    public double Fu => Steel.Fu(Shape.Properties.Thickness);
}
