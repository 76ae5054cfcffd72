using Ramwright.Strength;

namespace Ramwright.Proving;

/// <summary>Squeezes of one size.</summary>
/// <param name="Day">When they were counted.</param>
/// <param name="Count">How many; halves of loops are halves.</param>
/// <param name="Peak">Peak pressure, Pa.</param>
/// <param name="Low">Pressure they fall back to between peaks, Pa.</param>
public readonly record struct SqueezeBlock(DateOnly Day, double Count, double Peak, double Low)
{
    /// <summary>Range of pressure, Pa.</summary>
    public double Range => Math.Max(0, Peak - Low);
}

/// <summary>Squeezes from a counter's course of pressure, put into a few sizes so that they fit on a few lines.</summary>
public static class SqueezeLog
{
    /// <summary>Share of a peak that a size is wide.</summary>
    public const double Bin = 0.05;

    /// <summary>Blocks of a log.</summary>
    /// <param name="book">The readings.</param>
    public static IReadOnlyList<SqueezeBlock> Of(ReadingBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.Of(ReadingKind.Squeezes).Where(r => r.Pressure is > 0 && r.Value > 0).Select(r => new SqueezeBlock(r.Day, r.Value, r.Pressure!.Value, r.Low ?? 0))];
    }

    /// <summary>Counts the squeezes in a course of pressure by rainflow; each size is written at its upper edge.</summary>
    /// <param name="course">Pressures in time, Pa.</param>
    /// <param name="day">The day to write them under.</param>
    /// <param name="least">Ranges below this are no squeezes, Pa.</param>
    public static IReadOnlyList<SqueezeBlock> Count(IReadOnlyList<double> course, DateOnly day, double least)
    {
        ArgumentNullException.ThrowIfNull(course);
        if (course.Count == 0)
            return [];
        double most = course.Max(), width = Bin * most;
        if (!(width > 0))
            return [];
        // a course that begins and ends with no pressure has whole squeezes; a half is counted as one: two halves of one size make up a whole
        return
        [
            .. Rainflow.Count([0, .. course, 0], least)
                .Where(l => l.Range > least)
                .GroupBy(l => (Peak: Math.Ceiling(Math.Max(l.From, l.To) / width - 1e-9), Low: Math.Floor(Math.Min(l.From, l.To) / width + 1e-9)))
                .OrderByDescending(g => g.Key.Peak).ThenBy(g => g.Key.Low)
                .Select(g => new SqueezeBlock(day, Math.Ceiling(g.Sum(l => l.Count)), g.Key.Peak * width, Math.Max(0, g.Key.Low * width))),
        ];
    }
}
