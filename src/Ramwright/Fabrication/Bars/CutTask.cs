namespace Ramwright.Fabrication.Bars;

/// <summary>Lengths to be sawn from bars, in whole units; the saw's cut is counted into each length and once into each bar.</summary>
public sealed record CutTask
{
    /// <summary>A task.</summary>
    /// <param name="lengths">What is wanted, the longest first.</param>
    /// <param name="bars">What there is.</param>
    public CutTask(IReadOnlyList<CutLength> lengths, IReadOnlyList<CutBar> bars)
    {
        ArgumentNullException.ThrowIfNull(lengths);
        ArgumentNullException.ThrowIfNull(bars);
        if (lengths.Any(l => l.Weight <= 0 || l.Count is <= 0 or > char.MaxValue) || bars.Any(b => b.Room <= 0 || b.Cost <= 0 || b.Count < 0))
            throw new ArgumentException("Lengths, rooms, costs and counts are above zero.");
        if (lengths.Zip(lengths.Skip(1)).Any(p => p.First.Weight < p.Second.Weight))
            throw new ArgumentException("The longest length comes first.", nameof(lengths));
        (Lengths, Bars) = (lengths, bars);
        BarsByCost = [.. Enumerable.Range(0, bars.Count).OrderBy(j => bars[j].Cost).ThenBy(j => j)];
        CostStep = bars.Select(b => b.Cost).Aggregate(0L, Divisor);
    }

    /// <summary>What is wanted.</summary>
    public IReadOnlyList<CutLength> Lengths { get; }

    /// <summary>What there is.</summary>
    public IReadOnlyList<CutBar> Bars { get; }

    internal int[] BarsByCost { get; }

    /// <summary>Every cost is a multiple of this.</summary>
    internal long CostStep { get; }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}

/// <summary>A length that is wanted.</summary>
/// <param name="Weight">Room it takes, the saw's cut included.</param>
/// <param name="Count">How many.</param>
public readonly record struct CutLength(long Weight, int Count);

/// <summary>A kind of bar.</summary>
/// <param name="Room">Room on it, one saw's cut more than its length.</param>
/// <param name="Cost">What using it costs.</param>
/// <param name="Count">How many there are.</param>
public readonly record struct CutBar(long Room, long Cost, int Count);

/// <summary>How one bar is sawn.</summary>
/// <param name="Bar">Its kind.</param>
/// <param name="Counts">How many of each length.</param>
public sealed record CutPattern(int Bar, IReadOnlyList<int> Counts);

/// <summary>A plan for all bars.</summary>
/// <param name="Patterns">One for each bar.</param>
/// <param name="Cost">What the bars cost together.</param>
/// <param name="Bound">No plan costs less than this.</param>
/// <param name="States">How many states of the search were looked at.</param>
public sealed record CutSolution(IReadOnlyList<CutPattern> Patterns, long Cost, long Bound, long States)
{
    /// <summary>Whether no plan costs less.</summary>
    public bool IsProven => Cost <= Bound;
}
