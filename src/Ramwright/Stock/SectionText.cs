using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>
/// Reads a section as the trade calls it: a stock name (<c>HEB 160</c>), a pair (<c>2 x UPN 200</c>), or bar by its
/// dimensions (<c>flat 200x40</c>, <c>round 60</c>, <c>box 200x150x12</c>; millimetres unless a unit stands beside them).
/// </summary>
/// <remarks>
/// <list type="table">
/// <item><term><c>flat 200x40</c>, <c>bar 200x40</c>, <c>plate 200x40</c></term><description>height, thickness</description></item>
/// <item><term><c>square 50</c></term><description>side</description></item>
/// <item><term><c>round 60</c></term><description>diameter</description></item>
/// <item><term><c>box 200x150x12</c>, <c>box 200x150x12x10</c></term><description>welded: height, width, webs, flanges</description></item>
/// <item><term><c>SHS 100x100x6</c>, <c>SHS 100x6</c>, <c>RHS 120x80x6</c>, <c>CHS 88.9x5</c></term><description>hot finished; <c>cold</c> after it for cold formed</description></item>
/// <item><term><c>2 x UPN 200</c></term><description>back to back; <c>toes together</c> after it for the other way</description></item>
/// <item><term><c>HEB 160 turned</c></term><description>its weak axis carries the bending</description></item>
/// </list>
/// A dimension without a unit takes the unit of the next one that has one: <c>flat 8x1-1/2 in</c> is inches throughout.
/// </remarks>
public static partial class SectionText
{
    /// <summary>Source of what a person measured.</summary>
    public static readonly Citation AsGiven = Citation.Mechanics("dimensions as given");

    /// <summary>Least and greatest dimension that makes sense on a workshop press, m.</summary>
    public const double Least = 0.5e-3, Greatest = 3;

    private const string Examples = "a section such as HEB 160, 2 x UPN 200, flat 200x40, round 60 or box 200x150x12";

    /// <summary>Reads a section.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="shelf">The sections that go by name.</param>
    /// <param name="shape">The section, when it could be read.</param>
    /// <param name="fault">What is wrong and the nearest names, when it could not.</param>
    public static bool TryRead(
        string text, Shelf shelf, [NotNullWhen(true)] out Shape? shape, [NotNullWhen(false)] out ReadingFault? fault) =>
        TryRead(text, shelf, null, out shape, out fault);

    /// <summary>Reads a section and sets the halves of a pair apart.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="shelf">The sections that go by name.</param>
    /// <param name="apart">Clear gap between the two halves, m, or null; only a pair has one.</param>
    /// <param name="shape">The section, when it could be read.</param>
    /// <param name="fault">What is wrong and the nearest names, when it could not.</param>
    public static bool TryRead(
        string text, Shelf shelf, double? apart,
        [NotNullWhen(true)] out Shape? shape, [NotNullWhen(false)] out ReadingFault? fault)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(shelf);
        shape = null;
        string words = text.Replace('×', 'x').Replace('*', 'x');
        int start = words.Length - words.TrimStart().Length;
        words = words.TrimEnd();

        bool turned = Strip(ref words, TurnedWord());
        bool toes = Strip(ref words, ToesWord());
        bool backs = !toes && Strip(ref words, BacksWord());
        Match pair = PairWord().Match(words);
        int nameAt = pair.Success ? pair.Length : start;
        if (nameAt >= words.Length)
        {
            fault = new ReadingFault("nothing is named", Examples, 0, text.Length);
            return false;
        }

        if (!TryReadOne(words[nameAt..], nameAt, shelf, out Shape? one, out fault))
            return false;

        if (!pair.Success && (toes || backs))
        {
            fault = new ReadingFault(
                $"one {one.Name} has no second to face", $"a pair: 2 x {one.Name}{(toes ? " toes together" : "")}", 0, text.Length);
            return false;
        }

        if (toes && one is not Channel)
        {
            fault = new ReadingFault($"{one.Name} has no toes", "toes together for channels only", 0, text.Length);
            return false;
        }

        if (apart is { } gap && (!pair.Success || !(gap >= 0) || !double.IsFinite(gap)))
        {
            fault = pair.Success
                ? new ReadingFault("the gap of the pair is less than nothing", "a clear gap of 0 or more", 0, text.Length)
                : new ReadingFault($"one {one.Name} has no gap", $"a gap for a pair only: 2 x {one.Name}", 0, text.Length);
            return false;
        }

        shape = one;
        if (pair.Success)
            shape = new Pair(one, apart ?? 0, toes) { Name = $"2 x {one.Name}{(toes ? " toes together" : "")}", Source = one.Source };
        if (turned)
            shape = new Turned(shape) { Name = $"{shape.Name} turned", Source = one.Source };
        return true;
    }

    private static bool TryReadOne(
        string name, int at, Shelf shelf, [NotNullWhen(true)] out Shape? shape, [NotNullWhen(false)] out ReadingFault? fault)
    {
        fault = null;
        string written = OtherWays(name);
        if (shelf.TrySection(written, out shape))
            return true;

        Match m = ByDimensions().Match(name);
        if (!m.Success)
        {
            fault = Unknown(name, written, at, shelf);
            return false;
        }

        string word = WhiteSpace().Replace(m.Groups["word"].Value.ToLowerInvariant(), " ");
        if (!TryDimensions(m.Groups["sizes"], at, out double[]? sizes, out fault))
            return false;

        try
        {
            shape = Make(word, sizes, m.Groups["cold"].Success, shelf);
        }
        catch (ArgumentOutOfRangeException e)
        {
            fault = new ReadingFault($"these sizes do not make a section: {Reason(e)}", Wanted(word), at, name.Length);
            return false;
        }

        if (shape is not null)
            return true;

        fault = new ReadingFault($"\"{name.Trim()}\" has {Counted(sizes.Length)}", Wanted(word), at, name.Length);
        return false;
    }

    /// <summary>Makes what is not in the tables from its sizes, or null where there are too many or too few.</summary>
    private static Shape? Make(string word, double[] s, bool cold, Shelf shelf)
    {
        string mm = string.Join('x', s.Select(Mm));
        switch (word, s)
        {
            case ("flat" or "flat bar" or "bar" or "plate", [var h, var t]) when !cold:
                return new Flat(h, t) { Name = $"flat {mm}", Source = AsGiven };
            case ("square" or "square bar", [var a]) when !cold:
                return new Flat(a, a) { Name = $"square {mm}", Source = AsGiven };
            case ("round" or "round bar", [var d]) when !cold:
                return new Round(d) { Name = $"round {mm}", Source = AsGiven };
            case ("box", [var h, var b, var t]) when !cold:
                return new Box(h, b, t, t) { Name = $"box {mm}", Source = AsGiven };
            case ("box", [var h, var b, var tw, var tf]) when !cold:
                return new Box(h, b, tw, tf) { Name = $"box {mm}", Source = AsGiven };
            case ("shs", [var a, var t]):
                return Make(word, [a, a, t], cold, shelf);
            case ("shs" or "rhs", [var h, var b, var t]) when word == "rhs" || h == b:
                string name = $"{word.ToUpperInvariant()} {mm}{(cold ? " cold" : "")}";
                return shelf.TrySection(name, out Shape? rolled) ? rolled
                    : cold ? RectangularHollow.Cold(name, h, b, t)
                    : RectangularHollow.Hot(name, h, b, t);
            case ("chs", [var d, var t]):
                string tube = $"CHS {mm}{(cold ? " cold" : "")}";
                return shelf.TrySection(tube, out Shape? round) ? round
                    : new CircularHollow(d, t, cold) { Name = tube, Source = cold ? CircularHollow.ColdSource : CircularHollow.HotSource };
            default:
                return null;
        }
    }

    private static bool TryDimensions(Group group, int at, [NotNullWhen(true)] out double[]? sizes, [NotNullWhen(false)] out ReadingFault? fault)
    {
        string[] parts = group.Value.Split('x', 'X');
        sizes = new double[parts.Length];
        string unit = "mm";
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
                unit = size.Groups["unit"].Value;
            if (!TryLength(size.Groups["number"].Value.Trim(), unit, out sizes[i], out ReadingFault? inner))
            {
                fault = inner with { Offset = offset, Length = Math.Max(1, part.Length) };
                return false;
            }

            if (!(sizes[i] >= Least && sizes[i] <= Greatest))
            {
                fault = new ReadingFault($"\"{part}\" is {Mm(sizes[i])} mm", "a size from 0.5 mm to 3 m", offset, Math.Max(1, part.Length));
                return false;
            }
        }

        fault = null;
        return true;
    }

    private static bool TryLength(string number, string unit, out double m, [NotNullWhen(false)] out ReadingFault? fault)
    {
        fault = null;
        if (unit.Equals("mm", StringComparison.OrdinalIgnoreCase)
            && double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double mm))
        {
            m = mm / 1000;
            return true;
        }

        bool read = QuantityText.TryRead($"{number} {unit}", Dimension.Length, out Quantity quantity, out fault);
        m = quantity.Si;
        return read;
    }

    private static ReadingFault Unknown(string name, string written, int at, Shelf shelf)
    {
        IReadOnlyList<string> nearest = shelf.NearestSections(written);
        string wanted = nearest.Count > 0 ? $"nearest: {string.Join(", ", nearest)}" : Examples;
        return new ReadingFault($"no section is called \"{name.Trim()}\"", wanted, at, Math.Max(1, name.Length));
    }

    /// <summary>HE 160 B is HEB 160; UNP is UPN.</summary>
    private static string OtherWays(string name)
    {
        Match he = HeLast().Match(name);
        if (he.Success)
            return $"HE{he.Groups[2].Value} {he.Groups[1].Value}";
        Match unp = Unp().Match(name);
        return unp.Success ? $"UPN {unp.Groups[1].Value}" : name;
    }

    private static bool Strip(ref string words, Regex last)
    {
        Match m = last.Match(words);
        if (m.Success)
            words = words[..m.Index];
        return m.Success;
    }

    private static string Wanted(string word) => word switch
    {
        "square" or "square bar" => "one size: square 50",
        "round" or "round bar" => "one size: round 60",
        "box" => "height, width and plate: box 200x150x12, or with webs and flanges: box 200x150x12x10",
        "shs" => "side and wall: SHS 100x100x6, with cold after it where it is cold formed",
        "rhs" => "height, width and wall: RHS 120x80x6, with cold after it where it is cold formed",
        "chs" => "diameter and wall: CHS 88.9x5, with cold after it where it is cold formed",
        _ => "height and thickness: flat 200x40",
    };

    private static string Counted(int sizes) => sizes == 1 ? "one size that does not fit" : $"{sizes} sizes that do not fit";

    private static string Mm(double m) => (m * 1000).ToString("0.##", CultureInfo.InvariantCulture);

    // Without the parameter's name and value, which the framework adds.
    private static string Reason(ArgumentOutOfRangeException e)
    {
        int bracket = e.Message.IndexOf(" (Parameter", StringComparison.Ordinal);
        return (bracket < 0 ? e.Message : e.Message[..bracket]).TrimEnd('.');
    }

    [GeneratedRegex(@"^\s*2(?>\s*(x|no\.?|off)?\s*)(?=[A-Za-z])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PairWord();

    [GeneratedRegex(@"[\s,]+turned\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex TurnedWord();

    [GeneratedRegex(@"[\s,]+toes?[\s-]+to(gether|[\s-]+toe)\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ToesWord();

    [GeneratedRegex(@"[\s,]+back[\s-]+to[\s-]+back\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex BacksWord();

    [GeneratedRegex(
        @"^\s*(?<word>flat(\s+bar)?|bar|plate|square(\s+bar)?|round(\s+bar)?|box|shs|rhs|chs)(?![a-z])\s*(?<sizes>.*?)(?<cold>\s+cold(\s+formed)?)?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ByDimensions();

    [GeneratedRegex(@"^(?<number>[0-9][0-9.,/\s-]*?)\s*(?<unit>[a-z]+|['""″′”]+)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Size();

    [GeneratedRegex(@"^\s*HE\s*(\d+)\s*([ABM])\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex HeLast();

    [GeneratedRegex(@"^\s*UNP\s*(\d+)\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Unp();

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();
}
