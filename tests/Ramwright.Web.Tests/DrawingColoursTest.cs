using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Ramwright.Files;
using Ramwright.Files.Drawings;
using Ramwright.Files.Making;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Tests;

namespace Ramwright.Web.Tests;

/// <summary>Drawings on the bench follow the page's light or dark; the files are paper in both.</summary>
public sealed partial class DrawingColoursTest
{
    private static readonly string[] Examples = ["wherry-yard", "railing-shop", "drainage-mill-puller"];
    private static readonly Lazy<string> Sheets = new(() => string.Concat(Examples.SelectMany(Drawn)));
    private static readonly string Css = File.ReadAllText(Path.Combine(Repository.Folder("src"), "Ramwright.Web", "wwwroot", "bench.css"));

    [Fact]
    public void EveryColourOfADrawingHasOneForTheDark()
    {
        (string Of, string Colour)[] used = [.. Colours().Matches(Sheets.Value).Select(m => (m.Groups[1].Value, m.Groups[2].Value)).Distinct()];

        Assert.Contains(("fill", "#d98a5b"), used);
        Assert.True(used.Length > 10);
        Assert.All(used, u => Assert.Contains($"[{u.Of}=\"{u.Colour}\"] {{ {u.Of}: var(--draw-", Css, StringComparison.Ordinal));
    }

    [Fact]
    public void OnALightScreenTheyAreThoseOfThePaper() =>
        Assert.All(Rules().Matches(Css), rule => Assert.Equal(rule.Groups[1].Value, Named(dark: false)[rule.Groups[2].Value]));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void LettersAndLinesStandOutFromAllTheyLieOn(bool dark)
    {
        Dictionary<string, string> named = Named(dark);
        string[] grounds = [.. named.Where(n => n.Key is not ("ink" or "chosen" or "near")).Select(n => n.Value)];

        Assert.Equal(13, grounds.Length);
        Assert.All(grounds, g => Assert.True(Contrast(named["ink"], g) >= 4.5, $"{named["ink"]} on {g}: {Contrast(named["ink"], g):0.00}"));
        Assert.True(Contrast(named["chosen"], named["ground"]) >= 4.5);
    }

    [Fact]
    public void ContrastIsReckonedAsTheGuidelinesDo()
    {
        var wcag = new Reference("WCAG-1", "WCAG 2.1, definition of contrast ratio: black on white is 21 to 1", Trust.FromMemory);
        wcag.Within("black on white", 21, Contrast("#000000", "#ffffff"), 1e-9);
        wcag.Within("a colour on itself", 1, Contrast("#8a3208", "#8a3208"), 1e-9);
    }

    private static IEnumerable<string> Drawn(string example)
    {
        CheckedPress press = CheckedPress.Of(PressOnDisk.Read(Example.Text(example), example + PressFile.Ending, example));
        PressCheck check = press.Check!;
        // from hardly used to far too much, so that every step of the shade is there
        for (double share = 0.02; share < 3; share *= 1.25)
            yield return SvgSheet.Write(PressDrawing.Of(check, UnitSystem.Metric, share * check.Ladder.SafeRating, Paper.Figure));
        yield return SvgSheet.Write(BentDrawing.Of(check, check.Rig.Wanted, 0, UnitSystem.Metric, Paper.Figure));
        foreach (OutFile file in Makers.Files(new MakeOf(press.Press, check, UnitSystem.Metric)).Where(f => f.Name.EndsWith(".svg", StringComparison.Ordinal)))
            yield return Encoding.UTF8.GetString(file.Bytes);
    }

    // names and values of one block of custom properties: the first is light, the second dark
    private static Dictionary<string, string> Named(bool dark) =>
        Blocks().Matches(Css)[dark ? 1 : 0].Value is var block ? Properties().Matches(block).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value) : [];

    private static double Contrast(string a, string b)
    {
        double x = Luminance(a), y = Luminance(b);
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Linear(int at) => int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0 is var v && v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
        return 0.2126 * Linear(1) + 0.7152 * Linear(3) + 0.0722 * Linear(5);
    }

    [GeneratedRegex("(fill|stroke)=\"(#[0-9a-f]{6})\"")]
    private static partial Regex Colours();

    [GeneratedRegex("=\"(#[0-9a-f]{6})\"\\] \\{ \\w+: var\\(--draw-(\\w+)\\)")]
    private static partial Regex Rules();

    [GeneratedRegex("--draw-ground: [^}]*")]
    private static partial Regex Blocks();

    [GeneratedRegex("--draw-(\\w+): (#[0-9a-f]{6});")]
    private static partial Regex Properties();
}
