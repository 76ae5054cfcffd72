namespace Ramwright.Power;

/// <summary>What a hand pump asks of the person.</summary>
/// <param name="HandleForce">Push on the handle at the true pressure, N, where the maker states it for the rated one.</param>
/// <param name="ApproachStrokes">Strokes of the handle until the work is met.</param>
/// <param name="PressingStrokes">Strokes under load; null where the load holds the ram.</param>
public sealed record HandWork(double? HandleForce, int ApproachStrokes, int? PressingStrokes)
{
    /// <summary>Push that a person can keep up with one arm, N; EN 1494 allows no more on the lever of a jack.</summary>
    public const double Comfortable = 400;

    /// <summary>Where that comes from.</summary>
    public static readonly Workings.Citation ComfortSource = new("EN 1494", "greatest effort on the lever of a jack", Workings.Standing.FromMemory);
}
