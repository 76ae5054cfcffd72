using Ramwright.Files.Yaml;
using Ramwright.Quantities;

namespace Ramwright.Files.Binding;

/// <summary>Which tape a person holds: the units in which most lengths of their file are written.</summary>
/// <remarks>It is looked for before anything else, so that what is wrong with the file is said in its own units.</remarks>
internal static class Tape
{
    /// <summary>Looks through every value of a file.</summary>
    public static UnitSystem Of(Node top) => Inches(top) > 0 ? UnitSystem.Imperial : UnitSystem.Metric;

    // lengths in inches, less those in metric units
    private static int Inches(Node node) => node switch
    {
        KeysNode keys => keys.Entries.Sum(e => Inches(e.Value)),
        ListNode list => list.Items.Sum(Inches),
        TextNode { Text: { Length: > 0 and < 40 } text } when char.IsAsciiLetter(text[0]) is false
            && QuantityText.TryRead(text, Dimension.Length, out Quantity length, out _) && length.Unit.Symbol.Length > 0 =>
            length.Unit.Symbol is "in" or "ft" or "yd" or "thou" ? 1 : -1,
        _ => 0,
    };
}
