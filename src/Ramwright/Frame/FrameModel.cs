using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>A node held in some directions.</summary>
/// <param name="Node">Its number.</param>
/// <param name="Ux">Held along X.</param>
/// <param name="Uy">Held along Y.</param>
/// <param name="Uz">Held along Z.</param>
/// <param name="Rx">Held about X.</param>
/// <param name="Ry">Held about Y.</param>
/// <param name="Rz">Held about Z.</param>
public sealed record Support(int Node, bool Ux, bool Uy, bool Uz, bool Rx, bool Ry, bool Rz);

/// <summary>Any frame: nodes, members, supports.</summary>
/// <param name="Nodes">Nodes; members name them by their place here.</param>
/// <param name="Members">Members.</param>
/// <param name="Supports">Supports; enough that nothing can move freely.</param>
public sealed record FrameModel(
    IReadOnlyList<Node> Nodes, IReadOnlyList<FrameMember> Members, IReadOnlyList<Support> Supports)
{
    /// <summary>Whether nodes, members and supports are all the same: then one matrix serves both.</summary>
    internal bool IsSameAs(FrameModel other) =>
        ReferenceEquals(this, other)
        || (Same(Nodes, other.Nodes) && Same(Members, other.Members) && Same(Supports, other.Supports));

    private static bool Same<T>(IReadOnlyList<T> a, IReadOnlyList<T> b)
    {
        if (a.Count != b.Count)
            return false;
        for (int i = 0; i < a.Count; i++)
        {
            if (!Equals(a[i], b[i]))
                return false;
        }

        return true;
    }
}

/// <summary>A force and a moment on a node, global axes.</summary>
/// <param name="Node">Its number.</param>
/// <param name="Force">N.</param>
/// <param name="Moment">N·m.</param>
public sealed record NodalLoad(int Node, Vector Force, Vector Moment = default);

/// <summary>A uniform load along part of a member, global axes.</summary>
/// <param name="Member">Its number.</param>
/// <param name="PerMetre">N/m of member length.</param>
/// <param name="From">Where it starts, m from the beam's first end.</param>
/// <param name="To">Where it ends, m from the beam's first end.</param>
public sealed record MemberLoad(int Member, Vector PerMetre, double From, double To);

/// <summary>Loads that act together.</summary>
/// <param name="Name">What it stands for: <c>centred</c>, <c>work 40 mm to the left</c>.</param>
/// <param name="OnNodes">Loads on nodes.</param>
/// <param name="OnMembers">Loads along members.</param>
public sealed record LoadCase(
    string Name, IReadOnlyList<NodalLoad> OnNodes, IReadOnlyList<MemberLoad> OnMembers);
