namespace Ramwright.Presses;

/// <summary>A job with every number settled. SI.</summary>
public abstract record RigJob
{
    /// <summary>What it is called; unique on its press.</summary>
    public required string Name { get; init; }
    /// <summary>What kind of job, as a file writes it: <c>hot-squeeze</c>.</summary>
    public required string Kind { get; init; }
    /// <summary>Where it stands in the press: <c>jobs.0</c>.</summary>
    public required string Path { get; init; }
    /// <summary>Height of all tooling in the opening, m; null where that was not said.</summary>
    public double? Tools { get; init; }
    /// <summary>What was assumed for it.</summary>
    public required IReadOnlyList<Assumed> Assumed { get; init; }
}
