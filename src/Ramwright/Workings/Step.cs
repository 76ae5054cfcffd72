using Ramwright.Quantities;

namespace Ramwright.Workings;

/// <summary>One line of working.</summary>
/// <param name="Symbol">The letter the result has in the source.</param>
/// <param name="Meaning">What it is, in a few words.</param>
/// <param name="Formula">The formula as text; empty where the value was read from a table.</param>
/// <param name="Givens">The numbers put in.</param>
/// <param name="Si">The result, SI.</param>
/// <param name="Dimension">What the result measures.</param>
/// <param name="Source">Where the formula or the value comes from.</param>
public sealed record Step(
    string Symbol,
    string Meaning,
    string Formula,
    IReadOnlyList<Given> Givens,
    double Si,
    Dimension Dimension,
    Citation Source)
{
    /// <summary>Whether the result is for one newton at the ram, and grows with the ram force; its meaning then says so.</summary>
    public bool IsPerNewton => Meaning.Contains(" newton", StringComparison.Ordinal);

    /// <summary>What rounding leaves of nothing, beside values of its own kind or beside one newton.</summary>
    /// <param name="si">A value of this step.</param>
    /// <param name="dimension">What it measures.</param>
    public bool IsNothing(double si, Dimension dimension)
    {
        double size = dimension is Dimension.Force or Dimension.Moment ? 1e-3 : 0;
        foreach (Given given in Givens)
        {
            if (given.Dimension == dimension)
                size = Math.Max(size, Math.Abs(given.Si));
        }

        return Math.Abs(si) < 1e-9 * size;
    }
}
