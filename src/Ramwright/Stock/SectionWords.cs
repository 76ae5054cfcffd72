using System.Text.RegularExpressions;

namespace Ramwright.Stock;

/// <summary>What the trade calls a section, whatever its sizes: the words, the one word for each, and what belongs behind it.</summary>
internal static partial class SectionWords
{
    /// <summary>The one word for what the trade calls by many.</summary>
    public static string Word(string written) => WhiteSpace().Replace(written.ToLowerInvariant(), " ").TrimEnd('.') switch
    {
        "flat bar" or "flat iron" or "flatbar" or "flatiron" or "fb" or "bar" or "plate" or "pl" => "flat",
        "square bar" or "squarebar" or "sq" or "sq bar" => "square",
        "round bar" or "roundbar" or "rd" or "rnd" or "dia" or "diameter" or "ø" or "⌀" => "round",
        "l" or "angle iron" or "equal angle" or "unequal angle" => "angle",
        "t" => "tee",
        "round tube" or "tube" or "pipe" => "chs",
        "square tube" => "shs",
        "box section" or "hollow section" => "hollow",
        string word => word,
    };

    /// <summary>HE 160 B is HEB 160; UNP is UPN.</summary>
    public static string OtherWays(string name)
    {
        Match he = HeLast().Match(name);
        if (he.Success)
            return $"HE{he.Groups[2].Value} {he.Groups[1].Value}";
        Match unp = Unp().Match(name);
        return unp.Success ? $"UPN {unp.Groups[1].Value}" : name;
    }

    /// <summary>What is to be written for such a section.</summary>
    public static string Wanted(string word) => word switch
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
        "hss" => "height, width and wall in inches: HSS 6x4x1/4; or diameter and wall: HSS 6.625x0.280",
        "chs" => "diameter and wall: CHS 88.9x5, with cold after it where it is cold formed",
        _ => "height and thickness: flat 200x40",
    };

    private const string Words =
        @"(?<word>flat(\s*(bar|iron))?|fb|bar|plate|pl|square\s+tube|sq(uare)?\.?(\s*bar)?|round\s+tube|round(\s*bar)?|rnd|rd|dia(meter|\.)?|[øØ⌀]"
        + @"|box\s+section|hollow\s+section|box|shs|rhs|chs|hss|tube|pipe|((un)?equal\s+)?angle(\s+iron)?|l|tee|t|channel)";

    private const string ColdWord = @"(?<cold>\s+cold(\s+formed)?)?\s*$";

    /// <summary>The word first, its sizes behind it.</summary>
    [GeneratedRegex(@"^\s*" + Words + @"(?![a-z])\s*(?<sizes>.*?)" + ColdWord, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    public static partial Regex ByDimensions();

    /// <summary>The sizes first, the word behind them.</summary>
    [GeneratedRegex(@"^\s*(?<sizes>[0-9].*?)(?<![a-z])" + Words + ColdWord, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    public static partial Regex SizesFirst();

    /// <summary>Two sizes and no word.</summary>
    [GeneratedRegex(@"^\s*(?<a>\d+(\.\d+)?)\s*x\s*(?<b>\d+(\.\d+)?)(\s*mm)?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    public static partial Regex SizesAlone();

    [GeneratedRegex(@"^\s*HE\s*(\d+)\s*([ABM])\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex HeLast();

    [GeneratedRegex(@"^\s*UNP\s*(\d+)\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Unp();

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();
}
