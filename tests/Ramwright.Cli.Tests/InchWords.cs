using System.Net;
using System.Text.RegularExpressions;

namespace Ramwright.Tests.Cli;

/// <summary>Finds metric units in what a person with an inch tape is given to read.</summary>
internal static partial class InchWords
{
    private const int Around = 50;

    /// <summary>Where it speaks metric, with some words around, but for the few places that may.</summary>
    public static string[] Metric(string text)
    {
        // a line may be broken between a number and its unit
        string flat = Kept().Replace(Blank().Replace(text, " "), "");
        return [.. Unit().Matches(flat).Select(m => flat[Math.Max(0, m.Index - Around)..Math.Min(flat.Length, m.Index + m.Length + Around / 2)]).Distinct()];
    }

    /// <summary>What is read on a page or drawing: its text, without marks that only set it.</summary>
    public static string OfPage(string page) =>
        WebUtility.HtmlDecode(Tag().Replace(Within().Replace(Style().Replace(page, ""), ""), " ¦ "));

    [GeneratedRegex(@"\d[ \u00a0]?(mm|cm[234]?|m|kN|MPa|GPa|bar|kg|g|t|mL|L|°C|kW|mm/m|N·m|kN·m|N/mm|kN/mm|mm/s|m/s|L/min|cm3/rev|N)(?![\w·/]|-\d)|\b(mm|kg|litres?|kilograms?|millimetres?)\b")]
    private static partial Regex Unit();

    // hydrogen in a filler and cooling from 800 to 500 °C are so named by the standards, and a source may say what its table holds for;
    // what a formula's own symbols stand for in it is said beside it; the file's keys are what they are; a guess by eye is said both ways
    [GeneratedRegex(@"mL/100 g|mL per 100 g|800 to 500 °C|PF at 80 °C|(; |, and |, )?\b\w+ in (kJ/)?mm|, mm, from which|heat input, kJ/mm|welding\.kilograms-an-hour|\d+ °C \(\d+ °F\)")]
    private static partial Regex Kept();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    [GeneratedRegex(@"<(style|script)\b.*?</\1>", RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex(@"</?(b|i|em|sub|sup|span|tspan|mi|mo|mn|mrow)\b[^>]*>")]
    private static partial Regex Within();

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tag();
}
