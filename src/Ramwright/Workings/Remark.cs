using Ramwright.Quantities;

namespace Ramwright.Workings;

/// <summary>Something to be said, with the numbers that make it true; written out only when the reader's units are known.</summary>
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
        {
            (string symbol, double si, Dimension dimension) = (Numbers[i].Symbol, Numbers[i].Si, Numbers[i].Dimension);
            text = text.Replace("{" + i + "}", symbol == Rough ? ExampleSize.Text(si, dimension, units) : Readout.Text(si, dimension, units));
        }

        return text;
    }

    /// <summary>In metric units.</summary>
    public override string ToString() => Text();

    /// <summary>Words alone.</summary>
    public static implicit operator Remark(string words) => new(words);

    /// <summary>A number for a remark.</summary>
    public static Given Of(double si, Dimension dimension) => new("", si, dimension);

    /// <summary>A number for a remark that may be rounded to what the reader's own tape has: an example, a rule of thumb.</summary>
    public static Given About(double si, Dimension dimension) => new(Rough, si, dimension);

    private const string Rough = "≈";
}
