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
/// <item><term><c>L 80x80x8</c>, <c>L 80x8</c>, <c>angle 100x65x8</c></term><description>standing leg, lying leg, thickness; rolled where it is in stock, else with square roots</description></item>
/// <item><term><c>T 100</c>, <c>T 90x80x10</c>, <c>half IPE 200</c></term><description>rolled; welded from two flats of one thickness; an I cut along its web</description></item>
/// <item><term><c>SHS 100x100x6</c>, <c>SHS 100x6</c>, <c>RHS 120x80x6</c>, <c>CHS 88.9x5</c></term><description>hot finished; <c>cold</c> after it for cold formed</description></item>
/// <item><term><c>2 x UPN 200</c></term><description>back to back; <c>toes together</c> after it for the other way</description></item>
/// <item><term><c>HEB 160 turned</c></term><description>its weak axis carries the bending</description></item>
/// </list>
/// A dimension without a unit takes the unit of the next one that has one: <c>flat 8x1-1/2 in</c> is inches throughout. The
/// word may stand behind the sizes: <c>2" round bar</c>, <c>200x40 flat</c>. A name may be cut short where one section only
/// begins so: <c>PFC 150x75</c>.
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
        fault = null;
        if (shelf.Known.TryRead(text, apart, out shape))
            return true;
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
        shape = shelf.Known.Read(text, apart, shape);
        return true;
    }

    private static bool TryReadOne(
        string name, int at, Shelf shelf, [NotNullWhen(true)] out Shape? shape, [NotNullWhen(false)] out ReadingFault? fault)
    {
        fault = null;
        string written = OtherWays(name);
        if (shelf.TrySection(written, out shape))
            return true;
        Match half = HalfWord().Match(name);
        if (half.Success)
            return TryHalf(name, half.Length, at, shelf, out shape, out fault);

        Match m = ByDimensions().Match(name);
        if (!m.Success)
            m = SizesFirst().Match(name);
        if (!m.Success)
        {
            IReadOnlyList<Shape> begun = Begun(written, shelf);
            shape = begun.Count == 1 ? begun[0] : null;
            fault = shape is null ? Unknown(name, written, at, shelf, begun) : null;
            return shape is not null;
        }

        string word = Word(m.Groups["word"].Value);
        if (m.Groups["sizes"].Value.AsSpan().Trim().IsEmpty)
        {
            fault = new ReadingFault($"\"{name.Trim()}\" has no size", Wanted(word), at, Math.Max(1, name.Length));
            return false;
        }

        if (!TryDimensions(m.Groups["sizes"], at, out double[]? sizes, out fault))
            return false;

        if (word == "channel")
            return TryChannel(name, sizes, at, shelf, out shape, out fault);

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
            case ("flat", [var h, var t]) when !cold:
                return new Flat(h, t) { Name = $"flat {mm}", Source = AsGiven };
            case ("square", [var a]) when !cold:
                return new Flat(a, a) { Name = $"square {mm}", Source = AsGiven };
            case ("round", [var d]) when !cold:
                return new Round(d) { Name = $"round {mm}", Source = AsGiven };
            case ("box", [var h, var b, var t]) when !cold:
                return new Box(h, b, t, t) { Name = $"box {mm}", Source = AsGiven };
            case ("box", [var h, var b, var tw, var tf]) when !cold:
                return new Box(h, b, tw, tf) { Name = $"box {mm}", Source = AsGiven };
            case ("angle", [var a, var t]) when !cold:
                return Make(word, [a, a, t], cold, shelf);
            case ("angle", [var h, var b, var t]) when !cold:
                return RolledAngle(h, b, t, shelf)
                    ?? new Angle(h, b, t, 0, t / 2) { Name = $"L {mm}", Source = AsGiven };      // no root counted, toes rounded
            case ("tee", [var h, var b, var t]) when !cold:
                return Rolled<Tee>(shelf, r => Same(r.H, h) && Same(r.B, b) && Same(r.Tw, t) && Same(r.Tf, t))
                    ?? new Tee(h, b, t, t, 0) { Name = $"T {mm}", Source = AsGiven };
            case ("tee", [var h, var b, var tw, var tf]) when !cold:
                return new Tee(h, b, tw, tf, 0) { Name = $"T {mm}", Source = AsGiven };
            case ("hollow", [var h, var b, var t]):
                return Make(h == b ? "shs" : "rhs", s, cold, shelf);
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

    /// <summary>The channel in stock with this depth and width, where there is but one.</summary>
    private static bool TryChannel(
        string name, double[] s, int at, Shelf shelf, [NotNullWhen(true)] out Shape? shape, [NotNullWhen(false)] out ReadingFault? fault)
    {
        List<Channel> fits = s is [var h, var b, ..] ? [.. shelf.Sections.OfType<Channel>().Where(c => Same(c.H, h) && Same(c.B, b))] : [];
        shape = fits.Count == 1 ? fits[0] : null;
        fault = shape is not null ? null
            : fits.Count == 0 ? new ReadingFault($"no channel of this depth and width is in stock: \"{name.Trim()}\"", Wanted("channel"), at, Math.Max(1, name.Length))
            : new ReadingFault($"\"{name.Trim()}\" may be any of {fits.Count} channels", $"nearest: {string.Join(", ", fits.Select(f => f.Name))}", at, Math.Max(1, name.Length));
        return shape is not null;
    }

    /// <summary>The angle in stock with these legs, whichever of them stands.</summary>
    private static Angle? RolledAngle(double h, double b, double t, Shelf shelf)
    {
        Angle? rolled = Rolled<Angle>(shelf, r => Same(r.T, t) && (Same(r.H, h) && Same(r.B, b) || Same(r.H, b) && Same(r.B, h)));
        return rolled is null || Same(rolled.H, h)
            ? rolled
            : new Angle(h, b, t, rolled.R1, rolled.R2) { Name = $"L {Mm(h)}x{Mm(b)}x{Mm(t)}", Source = rolled.Source };
    }

    private static T? Rolled<T>(Shelf shelf, Func<T, bool> fits)
        where T : Shape => shelf.Sections.OfType<T>().FirstOrDefault(fits);

    private static bool Same(double a, double b) => Math.Abs(a - b) < 1e-6;

    /// <summary>An I cut along its web.</summary>
    private static bool TryHalf(
        string name, int from, int at, Shelf shelf, [NotNullWhen(true)] out Shape? shape, [NotNullWhen(false)] out ReadingFault? fault)
    {
        shape = null;
        if (!TryReadOne(name[from..], at + from, shelf, out Shape? whole, out fault))
            return false;
        shape = whole is ISection i ? Tee.HalfOf(i) : null;
        fault = shape is null ? new ReadingFault($"half of {whole.Name} is no T", "half of an I or H section: half IPE 200", at, name.Length) : null;
        return shape is not null;
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

    private static ReadingFault Unknown(string name, string written, int at, Shelf shelf, IReadOnlyList<Shape> begun)
    {
        IReadOnlyList<string> nearest = begun.Count > 0 ? [.. begun.Take(3).Select(s => s.Name)] : shelf.NearestSections(written);
        string wanted = nearest.Count > 0 ? $"nearest: {string.Join(", ", nearest)}" : Examples;
        string found = begun.Count > 0 ? $"\"{name.Trim()}\" comes in {begun.Count} sizes" : $"no section is called \"{name.Trim()}\"";
        return new ReadingFault(found, wanted, at, Math.Max(1, name.Length));
    }

    /// <summary>The sections whose names begin with what was written and go on with another size.</summary>
    private static IReadOnlyList<Shape> Begun(string written, Shelf shelf)
    {
        string key = Shelf.Key(written);
        return key.Length == 0 ? [] : [.. shelf.Sections.Where(s => Shelf.Key(s.Name) is var full && full.Length > key.Length
            && full.StartsWith(key, StringComparison.Ordinal) && !(char.IsAsciiDigit(key[^1]) && full[key.Length] is '.' or (>= '0' and <= '9')))];
    }

    /// <summary>The one word for what the trade calls by many.</summary>
    private static string Word(string written) => WhiteSpace().Replace(written.ToLowerInvariant(), " ").TrimEnd('.') switch
    {
        "flat bar" or "flat iron" or "fb" or "bar" or "plate" or "pl" => "flat",
        "square bar" or "sq" or "sq bar" => "square",
        "round bar" or "rd" or "rnd" or "dia" or "diameter" or "ø" or "⌀" => "round",
        "l" or "angle iron" or "equal angle" or "unequal angle" => "angle",
        "t" => "tee",
        "round tube" or "tube" or "pipe" => "chs",
        "square tube" => "shs",
        "box section" or "hollow section" => "hollow",
        string word => word,
    };

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
        "square" => "one size: square 50",
        "round" => "one size: round 60",
        "box" => "height, width and plate: box 200x150x12, or with webs and flanges: box 200x150x12x10",
        "shs" => "side and wall: SHS 100x100x6, with cold after it where it is cold formed",
        "rhs" => "height, width and wall: RHS 120x80x6, with cold after it where it is cold formed",
        "angle" => "both legs and the thickness: L 80x80x8",
        "tee" => "a rolled T: T 100; or depth, width and thickness: T 90x80x10",
        "channel" => "a channel in stock by its depth and width, or by name: PFC 200x90x30, UPN 200",
        "hollow" => "height, width and wall: box section 120x80x6",
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

    [GeneratedRegex(@"^\s*2(?>\s*(x|no\.?|off)?\s*)(?=[A-Za-z½])(?!(in|inch|inches|mm|cm)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PairWord();

    [GeneratedRegex(@"[\s,]+turned\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex TurnedWord();

    [GeneratedRegex(@"[\s,]+toes?[\s-]+to(gether|[\s-]+toe)\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ToesWord();

    [GeneratedRegex(@"[\s,]+back[\s-]+to[\s-]+back\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex BacksWord();

    private const string Words =
        @"(?<word>flat(\s+(bar|iron))?|fb|bar|plate|pl|square\s+tube|sq(uare)?\.?(\s+bar)?|round\s+tube|round(\s+bar)?|rnd|rd|dia(meter|\.)?|[øØ⌀]"
        + @"|box\s+section|hollow\s+section|box|shs|rhs|chs|tube|pipe|((un)?equal\s+)?angle(\s+iron)?|l|tee|t|channel)";

    private const string ColdWord = @"(?<cold>\s+cold(\s+formed)?)?\s*$";

    [GeneratedRegex(@"^\s*" + Words + @"(?![a-z])\s*(?<sizes>.*?)" + ColdWord, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ByDimensions();

    [GeneratedRegex(@"^\s*(?<sizes>[0-9].*?)(?<![a-z])" + Words + ColdWord, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex SizesFirst();

    [GeneratedRegex(@"^\s*(half\s+|1/2\s+|½\s*)(of\s+)?(an?\s+)?(?=[A-Za-z])(?!(x|in|inch|inches|mm|cm)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex HalfWord();

    [GeneratedRegex(@"^(?<number>[0-9][0-9.,/\s-]*?)\s*(?<unit>[a-z]+|['""″′”]+)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Size();

    [GeneratedRegex(@"^\s*HE\s*(\d+)\s*([ABM])\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex HeLast();

    [GeneratedRegex(@"^\s*UNP\s*(\d+)\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Unp();

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();
}
