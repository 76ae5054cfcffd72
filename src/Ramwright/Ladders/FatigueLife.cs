namespace Ramwright.Ladders;

/// <summary>How many squeezes of the wanted force a detail stands, factors included.</summary>
/// <param name="Rung">Its rung.</param>
/// <param name="Part">The part.</param>
/// <param name="Where">Where a crack is to be looked for; empty where the part says it.</param>
/// <param name="Detail">What may crack, in words, with table and row.</param>
/// <param name="Squeezes">How many; null where there is no end to it; 0 where the stress is beyond judging.</param>
public sealed record FatigueLife(string Rung, string Part, string Where, string Detail, double? Squeezes)
{
    /// <summary>How many squeezes of another ram force it stands, N to squeezes, read as <see cref="Squeezes"/>.</summary>
    public required Func<double, double?> At { get; init; }

    /// <summary>Part and place together.</summary>
    public string Spot => Where.Length == 0 ? Part : $"{Part}, {Where}";

    /// <summary>The shortest life on a ladder; null where no rung has one.</summary>
    internal static FatigueLife? Least(IReadOnlyList<Rung> rungs)
    {
        FatigueLife? least = null;
        foreach (Rung rung in rungs)
        {
            if (rung.Fatigue is { } life && (least is null || life.Squeezes is { } n && !(n >= least.Squeezes)))
                least = life;
        }

        return least;
    }
}
