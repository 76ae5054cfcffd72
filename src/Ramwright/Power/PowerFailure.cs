using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>What a raised ram does.</summary>
public enum RamFate
{
    /// <summary>It stays.</summary>
    Holds,
    /// <summary>It comes down slowly, or a little.</summary>
    Creeps,
    /// <summary>It comes down.</summary>
    Drops,
    /// <summary>The file does not say enough.</summary>
    Unknown,
}

/// <summary>What a raised ram and its load do when something fails.</summary>
/// <param name="Lost">What fails: <c>electricity</c>, <c>air</c>, <c>the pump's handle</c>, <c>hose 1</c>.</param>
/// <param name="Fate">What the ram does; where the file leaves it open, the worse.</param>
/// <param name="What">The same with its reason and speed.</param>
/// <param name="Missing">What would have to be said or fitted, each with its key.</param>
public sealed record PowerFailure(string Lost, RamFate Fate, Remark What, IReadOnlyList<string> Missing);
