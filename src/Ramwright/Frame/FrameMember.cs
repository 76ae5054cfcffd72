using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>
/// A straight, uniform Timoshenko beam between two nodes, with rigid arms from the nodes to its ends.
/// Local axes: x from the first end to the second; z as near <see cref="Up"/> as can be; y = z × x. Section axes match.
/// </summary>
/// <remarks>
/// Uses A, Iy, Iz, It, Asy and Asz of the section; an infinite Asy or Asz leaves shear deflection out. The axis is the line of
/// centroids, and shear is taken to pass through it: see <see cref="FrameSolver"/> on sections with the shear centre elsewhere.
/// </remarks>
public sealed record FrameMember
{
    /// <summary>The part of the press it belongs to: <c>crown</c>, <c>left upright</c>.</summary>
    public required string Part { get; init; }
    /// <summary>Number of the node at its first end.</summary>
    public required int From { get; init; }
    /// <summary>Number of the node at its second end.</summary>
    public required int To { get; init; }
    /// <summary>Its cross-section.</summary>
    public required SectionProperties Section { get; init; }
    /// <summary>Young's modulus, Pa.</summary>
    public double E { get; init; } = 210e9;
    /// <summary>Shear modulus, Pa.</summary>
    public double G { get; init; } = 210e9 / 2.6;
    /// <summary>Where the section's z points; must not lie along the member.</summary>
    public required Vector Up { get; init; }
    /// <summary>Rigid arm from the first node to the beam's first end, global, m.</summary>
    public Vector ArmFrom { get; init; }
    /// <summary>Rigid arm from the second node to the beam's second end, global, m.</summary>
    public Vector ArmTo { get; init; }
    /// <summary>Hold at the first end.</summary>
    public EndFixity FixityFrom { get; init; } = EndFixity.Rigid;
    /// <summary>Hold at the second end.</summary>
    public EndFixity FixityTo { get; init; } = EndFixity.Rigid;
    /// <summary>Length of the part within its joints, beyond the beam's own ends, m: it weighs, and does nothing else.</summary>
    public double InJoints { get; init; }
}
