using Ramwright.Quantities;

namespace Ramwright.Power;

/// <summary>What the ram is doing in a stretch of its stroke.</summary>
public enum StrokePhase
{
    /// <summary>Standing up.</summary>
    Up,
    /// <summary>Coming out with no load.</summary>
    Approach,
    /// <summary>Under load.</summary>
    Pressing,
    /// <summary>Going back.</summary>
    Return,
}

/// <summary>Where the ram is at a moment.</summary>
/// <param name="Time">Since it started, s.</param>
/// <param name="Travel">How far it is out, m.</param>
/// <param name="Phase">What it did until then.</param>
public sealed record StrokeMoment(double Time, double Travel, StrokePhase Phase);

/// <summary>One stroke over time: out, under load, and home.</summary>
public static class StrokeCourse
{
    /// <summary>Lays the times of a stroke end to end.</summary>
    /// <param name="times">The times.</param>
    /// <param name="stroke">Full travel, m, not below the pressing part.</param>
    /// <returns>From the ram up, in the order of time; it ends where the load holds the ram, or where the time home cannot be told.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A stroke shorter than its pressing part.</exception>
    public static IReadOnlyList<StrokeMoment> Of(StrokeTimes times, double stroke)
    {
        ArgumentNullException.ThrowIfNull(times);
        Check.Positive(stroke);
        Check.AtLeast(stroke, times.PressingPart);
        double t = times.Approach;
        var moments = new List<StrokeMoment> { new(0, 0, StrokePhase.Up), new(t, stroke - times.PressingPart, StrokePhase.Approach) };
        if (times.Pressing is not { } pressing)
            return moments;
        t += pressing;
        if (times.PressingPart > 0)
            moments.Add(new StrokeMoment(t, stroke, StrokePhase.Pressing));
        if (times.Return is { } back)
            moments.Add(new StrokeMoment(t + back, 0, StrokePhase.Return));
        return moments;
    }
}
