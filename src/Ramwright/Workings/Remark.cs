using Ramwright.Quantities;

namespace Ramwright.Workings;

/// <summary>Something to be said, with the numbers that make it true; written out only when the reader's units are known.</summary>
/// <param name="Words">One or two short sentences, or a clause; <c>{0}</c>, <c>{1}</c> stand for the numbers.</param>
/// <param name="Numbers">The numbers, SI.</param>
public sealed record Remark(string Words, params IReadOnlyList<Given> Numbers)
{
    /// <summary>The remark as it is read.</summary>
    /// <param name="units">Which units.</param>
    public string Text(UnitSystem units = UnitSystem.Metric) => Text((si, dimension) => Readout.Text(si, dimension, units));

    /// <summary>The remark with its numbers written by the caller.</summary>
    /// <param name="write">Writes an SI value of a dimension with its unit.</param>
    public string Text(Func<double, Dimension, string> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        string text = Words;
        for (int i = 0; i < Numbers.Count; i++)
            text = text.Replace("{" + i + "}", write(Numbers[i].Si, Numbers[i].Dimension));
        return text;
    }

    /// <summary>In metric units.</summary>
    public override string ToString() => Text();

    /// <summary>Words alone.</summary>
    public static implicit operator Remark(string words) => new(words);

    /// <summary>A number for a remark.</summary>
    public static Given Of(double si, Dimension dimension) => new("", si, dimension);
}
