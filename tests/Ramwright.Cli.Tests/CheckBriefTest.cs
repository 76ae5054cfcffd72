using System.Text.RegularExpressions;
using Ramwright.Files;

namespace Ramwright.Tests.Cli;

/// <summary>The first look fits a screen, says how much it leaves out, and <c>--all</c> leaves nothing out.</summary>
public sealed class CheckBriefTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-brief-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> Examples() => ["wherry-yard", "railing-shop", "drainage-mill-puller", "salvage"];

    [Theory, MemberData(nameof(Examples))]
    public void FitsOneScreen(string example)
    {
        string text = Run.Command("check", Run.Example(example + ".press.yaml")).Text;

        Assert.True(text.Split('\n').Length <= 60, text);
    }

    [Theory, MemberData(nameof(Examples))]
    public void WhatIsLeftOutIsCounted(string example)
    {
        string file = Run.Example(example + ".press.yaml"), text = Run.Command("check", file).Text;
        var check = CheckedPress.Of(PressOnDisk.Open(file)).Check!;

        int rows = check.Ladder.Rungs.Count(r => Regex.IsMatch(text, $@"^ *[0-9.]+ +[0-9.]+ +[0-9.-]+ {Regex.Escape(r.Id)}( |$)", RegexOptions.Multiline));
        int counted = Regex.Matches(text, @"^ +(\d+) more rungs", RegexOptions.Multiline).Sum(m => int.Parse(m.Groups[1].Value, null));
        Assert.Equal(check.Ladder.Rungs.Count, rows + counted);

        int cautions = Regex.Count(text[text.IndexOf("\nCautions", StringComparison.Ordinal)..], "^  ! ", RegexOptions.Multiline);
        Match more = Regex.Match(text, @"^  ! (\d+) more,", RegexOptions.Multiline);
        // the one on the pump's strength stands above, as what to do
        int above = text.Contains("\nTo do: ", StringComparison.Ordinal) && check.Cautions()[0].StartsWith("The pump can give more", StringComparison.Ordinal) ? 1 : 0;
        Assert.Equal(check.Cautions().Count, above + cautions + (more.Success ? int.Parse(more.Groups[1].Value, null) - 1 : 0));
        Assert.Contains($"Assumed {check.Assumed.Count} things", text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Examples))]
    public void AllLeavesNothingOut(string example)
    {
        string file = Run.Example(example + ".press.yaml"), text = Spaced(Run.Command("check", file, "--all").Text);
        var check = CheckedPress.Of(PressOnDisk.Open(file)).Check!;

        Assert.All(check.Ladder.Rungs, r => Assert.Contains($" {r.Id} ", text, StringComparison.Ordinal));
        Assert.All(check.Cautions(), c => Assert.Contains(Spaced(c), text, StringComparison.Ordinal));
        Assert.All(check.Assumed, a => Assert.Contains(Spaced($"{a.What}: {a.Value(Quantities.UnitSystem.Metric)} ({a.Why.Text()})"), text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("wherry-yard", "metric")]
    [InlineData("wherry-yard", "imperial")]
    [InlineData("railing-shop", "metric")]
    public void TheWholeOfItIsAsApproved(string example, string units)
    {
        string text = Run.Command("check", Run.Example(example + ".press.yaml"), "--all", "--units", units).Text;

        Approved.Matches(text.Replace(Repository.Folder("examples"), "examples"), $"check-{example}-all-{units}.txt");
    }

    [Theory]
    [InlineData("5 t", "You want 49 kN (5.0 t), and the ram gives 256 kN (26.1 t). Are number and unit as you mean them?")]
    [InlineData("50 t", "You want 490 kN (50.0 t), and the ram gives no more than 256 kN (26.1 t). Are number and unit as you mean them?")]
    [InlineData("27 t", "DOES NOT REACH the wanted 265 kN (27.0 t): the ram gives no more than 256 kN (26.1 t).")]
    [InlineData("27 t", "To do: raise the pressure, where every part bears it, or take a larger bore; or want less.")]
    public void AWantedForceFarFromTheTrueOneIsAskedAbout(string wanted, string expected)
    {
        string file = Path.Combine(_folder, "far.press.yaml");
        File.WriteAllText(file, File.ReadAllText(Run.Example("wherry-yard.press.yaml")).Replace("wanted: 25 t", "wanted: " + wanted));

        Assert.Contains(expected, Spaced(Run.Command("check", file).Text), StringComparison.Ordinal);
    }

    [Fact]
    public void AWantedForceNearTheTrueOneIsNotAskedAbout() =>
        Assert.DoesNotContain("Are number and unit", Spaced(Run.Command("check", Run.Example("wherry-yard.press.yaml"), "--all").Text), StringComparison.Ordinal);

    private static string Spaced(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
