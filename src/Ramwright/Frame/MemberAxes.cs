using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>Where a member's beam lies: its first end and its own axes, in global axes.</summary>
/// <param name="Start">The beam's first end: the first node and its rigid arm, m.</param>
/// <param name="Length">From the beam's first end to its second, m.</param>
/// <param name="X">Unit vector along the beam.</param>
/// <param name="Y">Unit vector of the section's y: <c>Z × X</c>.</param>
/// <param name="Z">Unit vector of the section's z, as near to the member's <see cref="FrameMember.Up"/> as can be.</param>
public readonly record struct MemberAxes(Vector Start, double Length, Vector X, Vector Y, Vector Z)
{
    /// <summary>Up must stand off the member by at least this much of its own length.</summary>
    private const double LeastSine = 1e-6;

    /// <summary>Where the point at <paramref name="x"/> metres from the first end lies, m.</summary>
    public Vector At(double x) => Start + x * X;

    /// <summary>A vector given in the member's own axes, in global axes.</summary>
    public Vector ToGlobal(double x, double y, double z) => x * X + y * Y + z * Z;

    /// <summary>The axes of one member of a frame.</summary>
    /// <param name="model">The frame.</param>
    /// <param name="member">The member's number.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such member.</exception>
    /// <exception cref="ArgumentException">It names a node that does not exist, has no length, or points along its Up.</exception>
    public static MemberAxes Of(FrameModel model, int member)
    {
        ArgumentNullException.ThrowIfNull(model);
        if ((uint)member >= (uint)model.Members.Count)
            throw new ArgumentOutOfRangeException(nameof(member), member, $"There are {model.Members.Count} members.");
        FrameMember m = model.Members[member];
        FrameCheck.Ends(model, member, m);
        return Of(member, m, model.Nodes[m.From].At, model.Nodes[m.To].At);
    }

    internal static MemberAxes Of(int number, FrameMember m, Vector from, Vector to)
    {
        Vector start = from + m.ArmFrom, along = to + m.ArmTo - start;
        double L = along.Length;
        double size = Math.Max(Math.Max(from.Length, to.Length), Math.Max(m.ArmFrom.Length, m.ArmTo.Length));
        if (!(L > 1e-12 * size) || !double.IsFinite(L))
            throw new ArgumentException($"{FrameCheck.Name(number, m)} has no length between its ends ({L:G3} m).");
        Vector x = along / L;
        Vector y = m.Up.Cross(x);
        double sine = y.Length;
        if (!(sine > LeastSine * m.Up.Length) || !double.IsFinite(sine))
            throw new ArgumentException(
                $"{FrameCheck.Name(number, m)} runs along its Up ({m.Up.X:G4}, {m.Up.Y:G4}, {m.Up.Z:G4}); Up must point across it.");
        y /= sine;
        return new MemberAxes(start, L, x, y, x.Cross(y));
    }
}
