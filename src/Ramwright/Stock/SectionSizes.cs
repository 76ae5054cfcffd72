using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Ramwright.Quantities;

namespace Ramwright.Stock;

/// <summary>Reads the sizes behind a section's word: <c>200x40</c>, <c>8"x1-1/2"</c>; a size without a unit takes that of the next one that has one.</summary>
internal static partial class SectionSizes
{
    /// <summary>Least and greatest dimension that makes sense on a workshop press, m.</summary>
    public const double Least = 0.5e-3, Greatest = 3;

    private const double Small = 0.010, Inch = 0.0254;

    private static readonly System.Buffers.SearchValues<char> Fractions = System.Buffers.SearchValues.Create("/½¼¾⅛⅜⅝⅞");

    /// <summary>Reads sizes, m.</summary>
    /// <param name="group">The sizes as written.</param>
    /// <param name="at">Where the text that they stand in begins.</param>
    /// <param name="word">What they are the sizes of.</param>
    /// <param name="sizes">In their order.</param>
    /// <param name="inches">Whether all were said in inches.</param>
    /// <param name="fault">What is wrong.</param>
    public static bool TryRead(Group group, int at, string word, [NotNullWhen(true)] out double[]? sizes, out bool inches, [NotNullWhen(false)] out ReadingFault? fault)
    {
        string[] parts = group.Value.Split('x', 'X');
        inches = true;
        sizes = new double[parts.Length];
        bool american = word == "hss", said = american;       // a name of the American tables is in inches
        string unit = american ? "in" : "mm";
        int end = at + group.Index + group.Length;
        for (int i = parts.Length - 1; i >= 0; i--)
        {
            string part = parts[i].Trim();
            int offset = end - parts[i].Length + (parts[i].Length - parts[i].TrimStart().Length);
            end -= parts[i].Length + 1;
            Match size = Size().Match(part);
            if (!size.Success)
            {
                fault = new ReadingFault($"\"{part}\" is not a size", "sizes in millimetres, or with a unit: 200x40, 8\"x1-1/2\"", offset, Math.Max(1, part.Length));
                return false;
            }

            if (size.Groups["unit"].Length > 0)
                (unit, said) = (size.Groups["unit"].Value, true);
            if (!TryLength(size.Groups["number"].Value.Trim(), unit, out sizes[i], ref inches, out ReadingFault? inner))
            {
                fault = inner with { Offset = offset, Length = Math.Max(1, part.Length) };
                return false;
            }

            if (!(sizes[i] >= Least && sizes[i] <= Greatest))
            {
                fault = !said && part.AsSpan().ContainsAny(Fractions) ? Asked(group, at, word)
                    : new ReadingFault($"\"{part}\" is {Mm(sizes[i])} mm", "a size from 0.5 mm to 3 m", offset, Math.Max(1, part.Length));
                return false;
            }
        }

        fault = said || !LooksLikeInches(group.Value, word, sizes) ? null : Asked(group, at, word);
        return fault is null;
    }

    private static ReadingFault Asked(Group group, int at, string word) => new(
        $"\"{word} {group.Value.Trim()}\" may be inches or millimetres", $"with its unit: {word} {group.Value.Trim()} in, or {word} {group.Value.Trim()} mm",
        at + group.Index, Math.Max(1, group.Length));

    // Nobody measures millimetres in quarters, and flats and boxes so small are not what a press is made of.
    private static bool LooksLikeInches(string text, string word, double[] sizes) =>
        text.AsSpan().ContainsAny(Fractions) || word is "flat" or "box" or "hollow" && sizes.Max() <= Small;

    private static bool TryLength(string number, string unit, out double m, ref bool inches, [NotNullWhen(false)] out ReadingFault? fault)
    {
        fault = null;
        if (unit.Equals("mm", StringComparison.OrdinalIgnoreCase)
            && double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double mm))
        {
            m = mm / 1000;
            inches = false;
            return true;
        }

        bool read = QuantityText.TryRead($"{number} {unit}", Dimension.Length, out Quantity quantity, out fault);
        m = quantity.Si;
        inches &= read && quantity.Unit.Symbol == "in";
        return read;
    }

    /// <summary>Sizes as they stand in a name: <c>200x40</c>, or <c>8x1-1/2 in</c> of what is sold in inches.</summary>
    /// <param name="sizes">m.</param>
    /// <param name="inches">Whether it is sold in inches.</param>
    public static string Named(IEnumerable<double> sizes, bool inches) => inches ? $"{string.Join('x', sizes.Select(Inches))} in" : string.Join('x', sizes.Select(Mm));

    /// <summary>A size as it stands in a name, mm.</summary>
    public static string Mm(double m) => (m * 1000).ToString("0.##", CultureInfo.InvariantCulture);

    // a fraction down to a sixty-fourth, else decimals
    private static string Inches(double m)
    {
        const int parts = 64;
        double inches = m / Inch;
        int all = (int)Math.Round(inches * parts);
        return Math.Abs(inches * parts - all) <= 1e-4 ? Readout.Fraction(all, parts) : inches.ToString("0.####", CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"^(?<number>[0-9][0-9.,/\s-]*?)\s*(?<unit>[a-z]+|['""″′”]+)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Size();
}
