namespace Ramwright.Ladders;

/// <summary>The answer in one word.</summary>
public enum Verdict
{
    /// <summary>Safe with its factors.</summary>
    Holds,
    /// <summary>Nothing gives, but the factors are eaten into.</summary>
    Marginal,
    /// <summary>Something gives.</summary>
    DoesNotHold,
}
