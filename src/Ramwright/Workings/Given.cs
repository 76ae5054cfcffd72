using Ramwright.Quantities;

namespace Ramwright.Workings;

/// <summary>One number put into a formula.</summary>
/// <param name="Symbol">The letter it has in the formula.</param>
/// <param name="Si">Its SI value.</param>
/// <param name="Dimension">What it measures.</param>
public readonly record struct Given(string Symbol, double Si, Dimension Dimension)
{
    /// <summary>Lets a step be written with plain tuples.</summary>
    public static implicit operator Given((string Symbol, double Si, Dimension Dimension) given) =>
        new(given.Symbol, given.Si, given.Dimension);
}
