using System.Diagnostics.CodeAnalysis;
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
/// <item><term><c>HSS 6x4x1/4</c>, <c>HSS 6.625x0.280</c></term><description>American, in inches; the wall reckoned with is 0.93 of the one it is sold by</description></item>
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
        string written = SectionWords.OtherWays(name);
        if (shelf.TrySection(written, out shape))
            return true;
        Match half = HalfWord().Match(name);
        if (half.Success)
            return TryHalf(name, half.Length, at, shelf, out shape, out fault);

        Match m = SectionWords.ByDimensions().Match(name);
        if (!m.Success)
            m = SectionWords.SizesFirst().Match(name);
        if (!m.Success)
        {
            IReadOnlyList<Shape> begun = Begun(written, shelf);
            shape = begun.Count == 1 ? begun[0] : null;
            fault = shape is null ? Unknown(name, written, at, shelf, begun) : null;
            return shape is not null;
        }

        string word = SectionWords.Word(m.Groups["word"].Value);
        if (m.Groups["sizes"].Value.AsSpan().Trim().IsEmpty)
        {
            fault = new ReadingFault($"\"{name.Trim()}\" has no size", SectionWords.Wanted(word), at, Math.Max(1, name.Length));
            return false;
        }

        if (!SectionSizes.TryRead(m.Groups["sizes"], at, word, out double[]? sizes, out bool inches, out fault))
            return false;

        if (word == "channel")
            return TryChannel(name, sizes, at, shelf, out shape, out fault);

        try
        {
            shape = Make(word, sizes, inches, m.Groups["cold"].Success, shelf);
        }
        catch (ArgumentOutOfRangeException e)
        {
            fault = new ReadingFault($"these sizes do not make a section: {Reason(e)}", SectionWords.Wanted(word), at, name.Length);
            return false;
        }

        if (shape is not null)
            return true;

        fault = new ReadingFault($"\"{name.Trim()}\" has {Counted(sizes.Length)}", SectionWords.Wanted(word), at, name.Length);
        return false;
    }

    /// <summary>Makes what is not in the tables from its sizes, or null where there are too many or too few.</summary>
    private static Shape? Make(string word, double[] s, bool inches, bool cold, Shelf shelf)
    {
        string sizes = SectionSizes.Named(s, inches), mm = SectionSizes.Named(s, inches: false);
        switch (word, s)
        {
            case ("flat", [var h, var t]) when !cold:
                return new Flat(h, t) { Name = $"flat {sizes}", Source = AsGiven };
            case ("square", [var a]) when !cold:
                return new Flat(a, a) { Name = $"square {sizes}", Source = AsGiven };
            case ("round", [var d]) when !cold:
                return new Round(d) { Name = $"round {sizes}", Source = AsGiven };
            case ("box", [var h, var b, var t]) when !cold:
                return new Box(h, b, t, t) { Name = $"box {sizes}", Source = AsGiven };
            case ("box", [var h, var b, var tw, var tf]) when !cold:
                return new Box(h, b, tw, tf) { Name = $"box {sizes}", Source = AsGiven };
            case ("angle", [var a, var t]) when !cold:
                return Make(word, [a, a, t], inches, cold, shelf);
            case ("angle", [var h, var b, var t]) when !cold:
                return RolledAngle(h, b, t, shelf)
                    ?? new Angle(h, b, t, 0, t / 2) { Name = $"L {sizes}", Source = AsGiven };      // no root counted, toes rounded
            case ("tee", [var h, var b, var t]) when !cold:
                return Rolled<Tee>(shelf, r => Same(r.H, h) && Same(r.B, b) && Same(r.Tw, t) && Same(r.Tf, t))
                    ?? new Tee(h, b, t, t, 0) { Name = $"T {sizes}", Source = AsGiven };
            case ("tee", [var h, var b, var tw, var tf]) when !cold:
                return new Tee(h, b, tw, tf, 0) { Name = $"T {sizes}", Source = AsGiven };
            case ("hollow", [var h, var b, var t]):
                return Make(h == b ? "shs" : "rhs", s, inches, cold, shelf);
            case ("shs", [var a, var t]):
                return Make(word, [a, a, t], inches, cold, shelf);
            case ("shs" or "rhs", [var h, var b, var t]) when word == "rhs" || h == b:
                string name = $"{word.ToUpperInvariant()} {mm}{(cold ? " cold" : "")}";
                return shelf.TrySection(name, out Shape? rolled) ? rolled
                    : cold ? RectangularHollow.Cold(name, h, b, t)
                    : RectangularHollow.Hot(name, h, b, t);
            case ("hss", [var h, var b, var t]) when !cold:
                return AmericanHollow.Rectangular(h, b, t);
            case ("hss", [var d, var t]) when !cold:
                return AmericanHollow.Circular(d, t);
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
            : fits.Count == 0 ? new ReadingFault($"no channel of this depth and width is in stock: \"{name.Trim()}\"", NearestChannels(s, shelf), at, Math.Max(1, name.Length))
            : new ReadingFault($"\"{name.Trim()}\" may be any of {fits.Count} channels", $"nearest: {string.Join(", ", fits.Select(f => f.Name))}", at, Math.Max(1, name.Length));
        return shape is not null;
    }

    /// <summary>Those nearest in depth and width; where there is no other, whoever measured it writes it into a table of their own.</summary>
    private static string NearestChannels(double[] s, Shelf shelf)
    {
        if (s is not [var h, var b, ..])
            return SectionWords.Wanted("channel");
        IEnumerable<string> near = shelf.Sections.OfType<Channel>()
            .OrderBy(c => Math.Abs(Math.Log(c.H / h)) + Math.Abs(Math.Log(c.B / b))).ThenBy(c => c.Name, StringComparer.Ordinal).Take(3)
            .Select(c => $"{c.Name} ({SectionSizes.Mm(c.H)}x{SectionSizes.Mm(c.B)})");
        return $"one in stock, the nearest by size {string.Join(", ", near)}; or its sizes in a table of your own, named under stock:";
    }

    /// <summary>The angle in stock with these legs, whichever of them stands.</summary>
    private static Angle? RolledAngle(double h, double b, double t, Shelf shelf)
    {
        Angle? rolled = Rolled<Angle>(shelf, r => Same(r.T, t) && (Same(r.H, h) && Same(r.B, b) || Same(r.H, b) && Same(r.B, h)));
        return rolled is null || Same(rolled.H, h)
            ? rolled
            : new Angle(h, b, t, rolled.R1, rolled.R2) { Name = $"L {SectionSizes.Mm(h)}x{SectionSizes.Mm(b)}x{SectionSizes.Mm(t)}", Source = rolled.Source };
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

    private static ReadingFault Unknown(string name, string written, int at, Shelf shelf, IReadOnlyList<Shape> begun)
    {
        IReadOnlyList<string> nearest = begun.Count > 0 ? [.. begun.Take(3).Select(s => s.Name)] : shelf.NearestSections(written);
        // sizes alone: the bar of those sizes, if it is one
        if (SectionWords.SizesAlone().Match(name) is { Success: true } bare)
            nearest = [bare.Groups["a"].Value == bare.Groups["b"].Value ? $"square {bare.Groups["a"].Value}" : $"flat {bare.Groups["a"].Value}x{bare.Groups["b"].Value}"];
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

    private static bool Strip(ref string words, Regex last)
    {
        Match m = last.Match(words);
        if (m.Success)
            words = words[..m.Index];
        return m.Success;
    }

    private static string Counted(int sizes) => sizes == 1 ? "one size that does not fit" : $"{sizes} sizes that do not fit";

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

    [GeneratedRegex(@"^\s*(half\s+|1/2\s+|½\s*)(of\s+)?(an?\s+)?(?=[A-Za-z])(?!(x|in|inch|inches|mm|cm)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex HalfWord();
}
