namespace Ramwright.Tests.Cli;

/// <summary>A file written in inches, psi and US tons is answered in them, by every command.</summary>
public sealed class InchFileTest : IDisposable
{
    private const string Press = """
        name: Barn press
        wanted: 24 US ton
        cylinder: { kind: double-acting, bore: 5 in, stroke: 8 in, rod: 2-1/2 in, rated-pressure: 3000 psi, rated-force: 25 US ton }
        pump: { kind: electric, motor: 5 hp, relief: 2800 psi }
        frame:
          kind: closed
          daylight: 14 in
          width: 16 in
          steel: A36
          crown: { section: 2 x C8x11.5, apart: 4 in }
          bed: { section: 2 x C8x11.5, apart: 4 in }
          upright: { section: HSS4x4x1/4 }
          crown-joint: { kind: bolt, fit: lapped, thread: 1 UNC, class: grade 5, count: 4 }
          bed-joint: { kind: bolt, fit: lapped, thread: 1 UNC, class: grade 5, count: 4 }
        jobs:
          - { kind: punch, name: slot, thickness: 3/8 in, hole: 3/4 in, steel: A36 }
          - { kind: v-bend, name: bracket, thickness: 3/8 in, length: 3 in, steel: A36, angle: 90°, dies: [{ opening: 3 in, length: 8 in }], leg: 3 in, other-leg: 6 in }

        """;

    private readonly string _file = Path.Combine(Directory.CreateTempSubdirectory("ramwright-inch-").FullName, "barn.press.yaml");

    public InchFileTest() => File.WriteAllText(_file, Press);

    public void Dispose() => Directory.Delete(Path.GetDirectoryName(_file)!, recursive: true);

    [Theory]
    [InlineData("check")]
    [InlineData("check --all")]
    [InlineData("check --guesses")]
    [InlineData("explain")]
    [InlineData("offset")]
    [InlineData("lift")]
    [InlineData("job")]
    [InlineData("job slot")]
    [InlineData("job bracket")]
    [InlineData("make")]
    [InlineData("prove")]
    [InlineData("prove --plan")]
    [InlineData("prove --force")]
    public void NothingIsMetric(string command)
    {
        string[] words = command.Split(' ');
        (int code, string text) = Run.Command([words[0], _file, .. words[1..]]);

        Assert.True(code is 0 or 1, text);
        Assert.Empty(InchWords.Metric(text));
    }

    [Fact]
    public void WhatIsToBeChangedIsSoldInInches()
    {
        (int code, string text) = Run.Command("lift", _file, "--to", "30 US ton");

        Assert.True(code is 0 or 1, text);
        string[] edits = [.. text.Split('\n').Where(l => l.Contains(" → ", StringComparison.Ordinal))];
        Assert.NotEmpty(edits);
        Assert.All(edits, e => Assert.DoesNotMatch(@"\bM\d|→ \d+\.\d{4}|S235|S275|S355", e));
    }

    [Fact]
    public void HalvesThatPassTheUprightByAreToldOfInInches()
    {
        File.WriteAllText(_file, Press.Replace("bed: { section: 2 x C8x11.5, apart: 4 in }", "bed: { section: 2 x C8x11.5, apart: 6 in }")
            .Replace("bed-joint: { kind: bolt, fit: lapped, thread: 1 UNC, class: grade 5, count: 4 }", "bed-joint: { kind: weld, weld: { leg: 1/4 in } }"));

        string text = string.Join(' ', Run.Command("check", _file).Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

        Assert.Contains("the halves of the bed stand 6 in apart and the face of the upright that they are welded to is 4 in wide", text, StringComparison.Ordinal);
        Assert.DoesNotContain("mm", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bore: 5 in", "bore: 200 in", "such as 4 in", " in at most")]
    [InlineData("bore: 5 in", "bore: 0 in", "such as 4 in", "more than 0 in")]
    [InlineData("bore: 5 in", "bore: five inches", "such as 4 in")]
    [InlineData("bore: 5 in", "bore: 5 psi", "a length, such as 24 in")]
    [InlineData("bore: 5 in", "bore:", "bore: 4 in")]
    [InlineData("daylight: 14 in", "name: x", "daylight: ")]
    [InlineData("rated-pressure: 3000 psi", "rated-pressure: 3000 in", "a pressure, such as 3000 psi")]
    [InlineData("wanted: 24 US ton", "wanted: 24 in", "a force, such as 28 US ton")]
    [InlineData("crown: { section: 2 x C8x11.5, apart: 4 in }", "crown: { section: 2 x C8x11.7, apart: 4 in }", "such as 2 x C8x13.75, or bar by its sizes, such as flat 8x1-1/2 in")]
    [InlineData("thread: 1 UNC, class: grade 5, count: 4 }\n  bed", "thread: Q9, class: grade 5, count: 4 }\n  bed", "UNC")]
    [InlineData("steel: A36\n", "steel: A37\n", "a steel from stock, such as A")]
    [InlineData("{ kind: bolt, fit: lapped, thread: 1 UNC, class: grade 5, count: 4 }\n  bed", "{ kind: weld, weld: {} }\n  bed", "leg: 5/16 in or throat: 1/4 in")]
    [InlineData("{ kind: bolt, fit: lapped, thread: 1 UNC, class: grade 5, count: 4 }\n  bed", "{ kind: weld, weld: { leg: 1/16 in } }\n  bed", "leg: 3/16 in or more", "under 0.118 in")]
    [InlineData("hole: 3/4 in, ", "", "hole: 9/16 in, or outline: 4-1/2 in")]
    [InlineData("pump: { kind: electric, ", "pump: { kind: electric, unload-at: 600 psi, ", "displacement: 0.98 in3/rev")]
    public void WhatIsWrongIsSaidInInches(string right, string wrong, params string[] says)
    {
        right = right.Replace("\\n", "\n", StringComparison.Ordinal);
        Assert.Contains(right, Press, StringComparison.Ordinal);
        File.WriteAllText(_file, Press.Replace(right, wrong.Replace("\\n", "\n", StringComparison.Ordinal), StringComparison.Ordinal));

        (int code, string text) = Run.Command("check", _file);

        Assert.Equal(2, code);
        string flat = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.All(says, s => Assert.Contains(s, flat, StringComparison.Ordinal));
        Assert.Empty(InchWords.Metric(text));
    }

    [Fact]
    public void BarNamedInInchesKeepsItsNameAndIsChangedForTheNextInchBar()
    {
        File.WriteAllText(_file, Press.Replace("bed: { section: 2 x C8x11.5, apart: 4 in }", "bed: { section: flat 4x1-1/2 in }")
            .Replace("bed-joint: { kind: bolt, fit: lapped, thread: 1 UNC, class: grade 5, count: 4 }", "bed-joint: { kind: weld, weld: { leg: 3/8 in } }"));

        Assert.Contains("flat 4x1-1/2 in", Run.Command("make", _file).Text, StringComparison.Ordinal);
        string lift = Run.Command("lift", _file, "--to", "12 US ton").Text;
        Assert.Contains("→ flat ", lift, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"→ flat [0-9.x]+\s*$", lift);
        Assert.Matches(@"→ flat [0-9x/-]+ in", lift);
    }

    [Fact]
    public void WhatIsProposedIsSoldAndDrilledInInches()
    {
        File.WriteAllText(_file, Press.Replace("rod: 2-1/2 in,", "rod: 2-1/2 in, mount: { kind: flange, thread: 3/4 UNC, class: grade 5, count: 8, circle: 8 in, outside: 10 in, plate: 1-1/2 in, steel: A36 },")
            .Replace("  width: 16 in\n", "  width: 16 in\n  die-width: 3 in\n"));

        string text = string.Join(' ', Run.Command("make", _file).Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

        Assert.Contains("foot plate: ", text, StringComparison.Ordinal);
        Assert.Contains("keeper: flat 1-1/4x1/2 in", text, StringComparison.Ordinal);
        Assert.Contains("socket head cap screw 1/2-13 UNC x 1-1/4 in", text, StringComparison.Ordinal);
        Assert.Contains("taken as 240 in", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\bM\d\d\b", text);
    }

    [Fact]
    public void TheTableOfOffsetsStepsInInches() =>
        Assert.Matches(@"(?m)^ +1 +[0-9.]+ +\d+ %", Run.Command("offset", _file).Text);
}
