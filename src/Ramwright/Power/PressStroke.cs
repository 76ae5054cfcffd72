namespace Ramwright.Power;

/// <summary>How a stroke is divided and what force is wanted. What is left null is the usual.</summary>
/// <param name="PressingPart">Last part of the stroke, under load, m; null for <see cref="UsualPressingShare"/> of the stroke.</param>
/// <param name="PressingForce">Force over that part, N; null for <see cref="UsualForceShare"/> of the true force.</param>
/// <param name="Wanted">Force the air supply must be able to hold, N; null for the true force.</param>
public sealed record PressStroke(double? PressingPart = null, double? PressingForce = null, double? Wanted = null)
{
    /// <summary>Share of the stroke taken as pressing, where nothing is said.</summary>
    public const double UsualPressingShare = 0.2;

    /// <summary>Share of the true force over that part, where nothing is said.</summary>
    public const double UsualForceShare = 0.5;
}
