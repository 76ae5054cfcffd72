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
    public string Text(UnitSystem system = UnitSystem.Metric)
    {
        string text = Words;
        for (int i = 0; i < Numbers.Count; i++)
            text = text.Replace("{" + i + "}", Readout.Text(Numbers[i].Si, Numbers[i].Dimension, system));
        return text;
    }
}
