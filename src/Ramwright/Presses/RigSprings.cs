namespace Ramwright.Presses;

/// <summary>What a joint gives beyond what its members give as beams, as found from a local solid; infinite where it gives nothing.</summary>
/// <param name="Beam">Turning at the beam's or arm's end, where it enters the joint, N·m/rad.</param>
/// <param name="Upright">Turning at the upright's or column's end, N·m/rad.</param>
/// <param name="Along">Along the upright or column, N/m.</param>
public sealed record RigSpring(double Beam, double Upright, double Along)
{
    /// <summary>Stress at the toes of its welds, from the same solid; empty where none is read.</summary>
    public IReadOnlyList<RigToe> Toes { get; init; } = [];
}

/// <summary>Springs at a frame's joints, taken in place of the rules where they are there.</summary>
/// <param name="Upper">At the crown's corners, or the upper arm.</param>
/// <param name="Lower">At the bed's corners, or the lower arm.</param>
public sealed record RigSprings(RigSpring Upper, RigSpring Lower);
