namespace Ramwright.Power;

/// <summary>What brings the ram back.</summary>
public enum ReturnBy
{
    /// <summary>Oil in the ring.</summary>
    Oil,
    /// <summary>A spring, through the hoses alone.</summary>
    Spring,
    /// <summary>Its weight, a load, or something not told: no time can be given.</summary>
    Unknown,
}

/// <summary>The times of a stroke.</summary>
/// <param name="FullStroke">The whole stroke with no load, s.</param>
/// <param name="PressingPart">Length under load, m.</param>
/// <param name="PressingForce">Force over it, N.</param>
/// <param name="Approach">Time of the part before, s.</param>
/// <param name="Pressing">Time of the part under load, s; null where the load holds the ram.</param>
/// <param name="ReturnBy">What brings it back.</param>
/// <param name="Return">Time of the return, s; null where it cannot be told.</param>
/// <param name="Whole">Approach, pressing and return, s; null where one of them is.</param>
/// <param name="PressureRise">Time to raise the trapped oil to nine tenths of the true pressure with the ram held fast at full stroke, s.</param>
public sealed record StrokeTimes(
    double FullStroke, double PressingPart, double PressingForce, double Approach, double? Pressing, ReturnBy ReturnBy,
    double? Return, double? Whole, double PressureRise);
