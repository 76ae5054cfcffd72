using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>How a frame answers one load case.</summary>
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

    /// <summary>Length of a member's beam, rigid arms left out, m.</summary>
    public abstract double Length(int member);

    /// <summary>What the support at a node gives back: force, N, and moment, N·m, global.</summary>
    public abstract (Vector Force, Vector Moment) Reaction(int node);
}
