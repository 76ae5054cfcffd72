using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Something the file left unsaid and the program filled in.</summary>
/// <param name="What">The path of the key that would override it: <c>cylinder.rod</c>.</param>
/// <param name="Why">Why that value.</param>
public abstract record Assumed(string What, Remark Why)
{
    /// <summary>What was assumed, in the reader's units.</summary>
    public abstract string Value(UnitSystem system);
}

/// <summary>An assumed value with a unit.</summary>
/// <param name="What">The path of the key that would override it.</param>
/// <param name="Si">The value, SI.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Why">Why that value.</param>
public sealed record AssumedMeasure(string What, double Si, Dimension Dimension, Remark Why) : Assumed(What, Why)
{
    /// <inheritdoc/>
    public override string Value(UnitSystem system) => Readout.Text(Si, Dimension, system);
}

/// <summary>An assumed word or name.</summary>
/// <param name="What">The path of the key that would override it.</param>
/// <param name="Word">The word.</param>
/// <param name="Why">Why that word.</param>
public sealed record AssumedWord(string What, Remark Word, Remark Why) : Assumed(What, Why)
{
    /// <inheritdoc/>
    public override string Value(UnitSystem system) => Word.Text(system);
}
