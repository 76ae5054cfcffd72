using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>One limit of the press, as ram force.</summary>
public sealed record Rung
{
    /// <summary>Short stable name for commands: <c>crown-bending</c>.</summary>
    public required string Id { get; init; }
    /// <summary>The part, as the trade calls it.</summary>
    public required string Part { get; init; }
    /// <summary>How it fails, in a few words: <c>bends at the column's face</c>.</summary>
    public required string Mode { get; init; }
    /// <summary>How it fails in the fewest words, without place and load: for a table.</summary>
    public string Brief { get => field ?? Mode; init; }
    /// <summary>The load case it is tightest in, in words; empty where that is the centred one, or where there is none.</summary>
    public string Load { get; init; } = "";
    /// <summary>What happens, to follow "the part": <c>starts to bend for good under the cylinder</c>.</summary>
    public required string Saying { get; init; }
    /// <summary>Whether <see cref="Part"/> is more than one: dies open, a crown bends.</summary>
    public bool Plural { get; init; }
    /// <summary>Which side of the press it belongs to.</summary>
    public required RungGroup Group { get; init; }
    /// <summary>Ram force at which it gives, nominal values, N.</summary>
    public required double GivesAt { get; init; }
    /// <summary>Ram force it is safe to, with its factors, N; never above <see cref="GivesAt"/>.</summary>
    public required double SafeTo { get; init; }
    /// <summary>Where the factor comes from.</summary>
    public required string FactorFrom { get; init; }
    /// <summary>Where the limit comes from.</summary>
    public required Citation Source { get; init; }
    /// <summary>Writes the full working.</summary>
    public required Action<Working> Work { get; init; }

    /// <summary>The stable name that stands for a part: <c>upper arm</c> is <c>upper-arm</c>.</summary>
    internal static string IdOf(string part) => part.Replace(' ', '-');

    /// <summary>Whether it is about a part as drawings name it: the part itself, all of several alike, or a place on it.</summary>
    public bool IsOf(string part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Part.StartsWith(part, StringComparison.Ordinal) && (Part.Length == part.Length || Part[part.Length] == ' ' || Plural && Part.Length == part.Length + 1 && Part[^1] == 's');
    }

    /// <summary>The force at which it gives over the force it is safe to; null where it is safe to nothing.</summary>
    public double? Factor => SafeTo > 0 ? GivesAt / SafeTo : null;

    /// <summary>Whether reaching it can break something; unless said, by its group.</summary>
    public bool? CanBreak { get; init; }

    /// <summary>
    /// Thrust of the oil over the ram force at the same pressure. Above one for limits of pressure, where seals and spring take a
    /// share; one for limits of what the ram force itself does.
    /// </summary>
    public double PressureScale { get; init; } = 1;

    /// <summary>How many squeezes of the wanted force it stands, for a limit of repetition; null for all others.</summary>
    /// <remarks>
    /// Such a limit is judged against the wanted force alone: it counts squeezes that come again and again, and the most the pump can give is
    /// not one of those. The rare full squeeze is for the static rungs of the same part.
    /// </remarks>
    public FatigueLife? Fatigue { get; init; }

    /// <summary>Whether it must survive the most the pump can give.</summary>
    public bool MustSurvive => CanBreak ?? Fatigue is null && Group is RungGroup.Lines or RungGroup.Cylinder or RungGroup.Frame or RungGroup.Joints;
}
