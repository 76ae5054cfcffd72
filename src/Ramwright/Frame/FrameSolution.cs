using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>How a frame answers one load case.</summary>
/// <remarks>
/// Numbers of nodes and members that do not exist, and places off a beam, are refused with
/// <see cref="ArgumentOutOfRangeException"/>. Safe to share between threads.
/// </remarks>
public abstract class FrameSolution
{
    /// <summary>The case.</summary>
    public abstract LoadCase Case { get; }

    /// <summary>Displacement of a node, m.</summary>
    public abstract Vector Displacement(int node);

    /// <summary>Rotation of a node, rad.</summary>
    public abstract Vector Rotation(int node);

    /// <summary>Actions in a member at <paramref name="x"/> metres from its beam's first end.</summary>
    public abstract Actions At(int member, double x);

    /// <summary>
    /// Displacement of a member's beam at <paramref name="x"/> metres from its first end, global, m; exact between the ends,
    /// and the beam's own at an end that is let go or sprung.
    /// </summary>
    public abstract Vector DisplacementAlong(int member, double x);

    /// <summary>Rotation of the beam's cross-section at <paramref name="x"/> metres from its first end, global, rad.</summary>
    public abstract Vector RotationAlong(int member, double x);

    /// <summary>Length of a member's beam, rigid arms left out, m.</summary>
    public abstract double Length(int member);

    /// <summary>What the support at a node gives back: force, N, and moment, N·m, global; zero where it holds nothing.</summary>
    public abstract (Vector Force, Vector Moment) Reaction(int node);
}
