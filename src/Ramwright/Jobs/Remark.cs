using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Something to be said about a job, with the numbers that make it true.</summary>
/// <param name="Words">One or two short sentences, or a clause; <c>{0}</c>, <c>{1}</c> stand for the numbers.</param>
/// <param name="Numbers">The numbers, SI.</param>
public sealed record Remark(string Words, params IReadOnlyList<Given> Numbers)
{
    /// <summary>The remark as it is read.</summary>
    /// <param name="units">Which units.</param>
    public string Text(UnitSystem units = UnitSystem.Metric)
    {
        string text = Words;
        for (int i = 0; i < Numbers.Count; i++)
            text = text.Replace("{" + i + "}", Readout.Text(Numbers[i].Si, Numbers[i].Dimension, units));
        return text;
    }

    /// <summary>Words alone.</summary>
    public static implicit operator Remark(string words) => new(words);

    /// <summary>A number for a remark.</summary>
    public static Given Of(double si, Dimension dimension) => new("", si, dimension);
}
