using Ramwright.Geometry;

namespace Ramwright.Presses;

/// <summary>Any frame, by its points and bars. SI.</summary>
public sealed record RigFreeFrame : RigFrame
{
    /// <summary>Its points.</summary>
    public required IReadOnlyList<RigPoint> Points { get; init; }
    /// <summary>Its bars.</summary>
    public required IReadOnlyList<RigBar> Bars { get; init; }
    /// <summary>Place in <see cref="Points"/> that the cylinder pushes up.</summary>
    public required int CylinderAt { get; init; }
    /// <summary>Place in <see cref="Points"/> that the work pushes down.</summary>
    public required int WorkAt { get; init; }
}

/// <summary>A point.</summary>
/// <param name="Name">Its name.</param>
/// <param name="At">Where, m.</param>
/// <param name="Held">Whether it cannot move.</param>
public sealed record RigPoint(string Name, Vector At, bool Held);

/// <summary>A bar.</summary>
/// <param name="Member">Its part, section and steel.</param>
/// <param name="From">Point at its first end.</param>
/// <param name="To">Point at its second end.</param>
/// <param name="Depth">Where the depth of its section points.</param>
/// <param name="FromJoint">How its first end is joined; null is taken as rigid and not checked.</param>
/// <param name="ToJoint">How its second end is joined.</param>
public sealed record RigBar(RigMember Member, int From, int To, Vector Depth, RigJoint? FromJoint, RigJoint? ToJoint);
