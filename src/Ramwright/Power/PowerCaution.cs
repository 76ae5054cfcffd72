using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Something the person at the press must know, with the numbers that make it true.</summary>
/// <param name="Words">One or two short sentences; <c>{0}</c>, <c>{1}</c> stand for the numbers.</param>
/// <param name="Numbers">The numbers, SI.</param>
public sealed record PowerCaution(string Words, IReadOnlyList<Given> Numbers)
{
    /// <summary>The caution as it is read.</summary>
    /// <param name="system">Which units.</param>
    public string Text(UnitSystem system = UnitSystem.Metric) =>
        Text((si, dimension) => Readout.Text(si, dimension, system));

    /// <summary>The caution with its numbers written by the caller.</summary>
    /// <param name="write">Writes an SI value of a dimension with its unit.</param>
    public string Text(Func<double, Dimension, string> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        string text = Words;
        for (int i = 0; i < Numbers.Count; i++)
            text = text.Replace("{" + i + "}", write(Numbers[i].Si, Numbers[i].Dimension));
        return text;
    }
}
