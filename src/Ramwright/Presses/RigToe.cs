namespace Ramwright.Presses;

/// <summary>The toe of a weld on one face of a part, and the hot-spot stress there for what goes through the joint.</summary>
/// <param name="OnBeam">Whether it stands on the beam or arm; else on the upright or column.</param>
/// <param name="Inner">On the side of the frame's opening; else on the far side.</param>
/// <param name="Thickness">Of the wall that it stands on, m.</param>
/// <param name="Lines">Places along it: each may be the worst of them, as moment and forces stand to each other.</param>
public sealed record RigToe(bool OnBeam, bool Inner, double Thickness, IReadOnlyList<ToeLine> Lines)
{
    /// <summary>Whether it stands on a plate's narrow edge; else on a face.</summary>
    public bool OnEdge { get; init; }
}

/// <summary>Structural stress at one place along a toe for what the rest of the beam or arm does to its joint, at the face where it enters.</summary>
/// <param name="M">k_M: for a moment of 1 N·m that stretches the beam's inner face, Pa.</param>
/// <param name="V">k_V: for a force of 1 N away from the frame's opening, Pa.</param>
/// <param name="N">k_N: for a pull of 1 N along the beam, Pa.</param>
public sealed record ToeLine(double M, double V, double N)
{
    /// <summary>σ_hs = k_M M + k_V V + k_N N, Pa.</summary>
    /// <param name="m">M, N·m.</param>
    /// <param name="v">V, N.</param>
    /// <param name="n">N, N.</param>
    public double Stress(double m, double v, double n) => M * m + V * v + N * n;
}
