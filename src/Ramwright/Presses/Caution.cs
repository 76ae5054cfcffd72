using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>How soon a caution must be heard.</summary>
public enum CautionKind
{
    /// <summary>Something of this press breaks, bursts or lets go if it is left so.</summary>
    Danger,
    /// <summary>Something is not known, or not checked: the answer is not whole.</summary>
    Unchecked,
    /// <summary>What every such press asks of the person who works it.</summary>
    Handling,
}

/// <summary>Something the person at the press must know.</summary>
/// <param name="Kind">How soon.</param>
/// <param name="Says">What, with the numbers that make it true.</param>
public sealed record Caution(CautionKind Kind, Remark Says)
{
    /// <summary>The caution as it is read.</summary>
    /// <param name="units">Which units.</param>
    public string Text(UnitSystem units = UnitSystem.Metric) => Says.Text(units);
}
