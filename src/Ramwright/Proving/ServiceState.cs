using Ramwright.Ladders;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>Something that comes round.</summary>
/// <param name="What">What is to be done.</param>
/// <param name="Last">When it was done last; null where the log does not say.</param>
/// <param name="Due">When it is due; null where only squeezes tell and none are counted.</param>
/// <param name="Why">By what rule.</param>
public sealed record ServiceDue(string What, DateOnly? Last, DateOnly? Due, string Why)
{
    /// <summary>Whether the day has come.</summary>
    /// <param name="today">The day.</param>
    public bool IsDue(DateOnly today) => Due is { } due && due <= today;
}

/// <summary>How a press stands in service: squeezes, life used, what is due.</summary>
public sealed record ServiceState
{
    /// <summary>Oil, filter and seals.</summary>
    public static readonly Citation Intervals = Citation.Practice("workshop hydraulics run little: change by the calendar, sooner where the oil is dark, milky or hot");

    /// <summary>Share of a life after which it is looked at again.</summary>
    public const double Quarter = 0.25;

    /// <summary>Squeezes in all.</summary>
    public required double Squeezes { get; init; }
    /// <summary>Squeezes in a day, over the days of the log; 0 where they cannot be told.</summary>
    public required double ADay { get; init; }
    /// <summary>The blocks counted.</summary>
    public required IReadOnlyList<SqueezeBlock> Blocks { get; init; }
    /// <summary>Life used, the most first.</summary>
    public required IReadOnlyList<LifeUsed> Lives { get; init; }
    /// <summary>What is due, the earliest first.</summary>
    public required IReadOnlyList<ServiceDue> Due { get; init; }

    /// <summary>The details that the next look for cracks goes to: those with at least half as much used as the most used.</summary>
    /// <remarks>Before any squeeze is counted it is the detail with the shortest life.</remarks>
    public IReadOnlyList<LifeUsed> LookAt => Lives.Count == 0 || !(Lives[0].Used > 0) ? [.. Lives.Take(1)] : [.. Lives.Where(l => l.Used >= 0.5 * Lives[0].Used).Take(5)];

    /// <summary>From the log.</summary>
    /// <param name="check">The press.</param>
    /// <param name="book">Its readings.</param>
    /// <param name="today">The day.</param>
    public static ServiceState Of(PressCheck check, ReadingBook book, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(book);
        IReadOnlyList<SqueezeBlock> blocks = SqueezeLog.Of(book);
        double all = blocks.Sum(b => b.Count), aDay = Rate(blocks, check);
        IReadOnlyList<LifeUsed> lives = LifeUsed.Of(check, blocks);
        var due = new List<ServiceDue> { Cracks(book, blocks, lives, today, check) };
        DateOnly? first = book.All.Count > 0 ? book.All.Min(r => r.Day) : null;
        due.Add(Calendar("oil change", "oil-change", 24, "every two years; the first after half a year, which brings out what building left in it"));
        due.Add(Calendar("filter", "filter", 12, "every year, and with every oil change"));
        due.Add(Calendar("seals and hoses", "seals", 72, "every six years, or when they weep, harden or crack; a hose older than six years is changed unseen"));
        due.Add(Calendar("bolts tried", "bolts", 12, "after the first fifty squeezes, then every year"));
        due.Add(Calendar("gauge compared", "gauge", 12, "every year, and after every knock"));
        return new ServiceState { Squeezes = all, ADay = aDay, Blocks = blocks, Lives = lives, Due = [.. due.OrderBy(d => d.Due ?? DateOnly.MaxValue)] };

        ServiceDue Calendar(string what, string word, int months, string why)
        {
            DateOnly? last = book.Of(ReadingKind.Service).Where(r => r.Word == word || word == "seals" && r.Word == "hose").Select(r => (DateOnly?)r.Day).Max();
            int next = last is null && word == "oil-change" ? 6 : months;
            return new ServiceDue(what, last, (last ?? first)?.AddMonths(next), why);
        }
    }

    private static double Rate(IReadOnlyList<SqueezeBlock> blocks, PressCheck check)
    {
        if (blocks.Count == 0)
            return 0;
        int days = blocks.Max(b => b.Day).DayNumber - blocks.Min(b => b.Day).DayNumber;
        // one count alone tells no rate
        return days >= 7 ? blocks.Where(b => b.Day > blocks.Min(x => x.Day)).Sum(b => b.Count) / days : check.Rig.Loading.SqueezesADay ?? 0;
    }

    /// <summary>When the most used detail has used another quarter of its life since it was last looked at, or a year has gone.</summary>
    private static ServiceDue Cracks(ReadingBook book, IReadOnlyList<SqueezeBlock> blocks, IReadOnlyList<LifeUsed> lives, DateOnly today, PressCheck check)
    {
        DateOnly? last = book.Of(ReadingKind.Service).Where(r => r.Word == "inspection").Select(r => (DateOnly?)r.Day).Max();
        DateOnly? start = last ?? (book.All.Count > 0 ? book.All.Min(r => r.Day) : null);
        DateOnly? year = start?.AddMonths(12);
        const string Why = "whenever another quarter of the most used life is gone, and every year";
        if (lives.Count == 0 || !(lives[0].Used > 0))
            return new ServiceDue("look for cracks", last, year, Why);
        SqueezeBlock[] since = [.. blocks.Where(b => last is null || b.Day > last)];
        double used = LifeUsed.Of(check, since).Select(l => l.Used).DefaultIfEmpty(0).Max();
        if (used >= Quarter || lives[0].Used >= 1)
            return new ServiceDue("look for cracks", last, today, lives[0].Used >= 1 ? "the reckoned life of a detail is used up" : Why);
        int days = blocks.Max(b => b.Day).DayNumber - blocks.Min(b => b.Day).DayNumber;
        if (days < 7)
            return new ServiceDue("look for cracks", last, year, Why);
        double perDay = lives[0].Used / days, left = (Quarter - used) / perDay;
        DateOnly by = left < 36500 ? blocks.Max(b => b.Day).AddDays((int)left) : DateOnly.MaxValue;
        return new ServiceDue("look for cracks", last, year is { } y && y < by ? y : by, Why);
    }
}
