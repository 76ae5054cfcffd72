using System.Text.Json;

namespace Ramwright.Tests.Cli;

public sealed class MakeCommandTest : IDisposable
{
    private readonly string _home = Directory.CreateTempSubdirectory("ramwright-make-").FullName;

    public void Dispose() => Directory.Delete(_home, recursive: true);

    public static TheoryData<string> Examples() => [.. Directory.GetFiles(Repository.Folder("examples"), "*.press.yaml").Select(f => Path.GetFileName(f)!)];

    [Theory, MemberData(nameof(Examples))]
    public void EveryExampleIsMadeAndOnlyWithinTheFolder(string example)
    {
        string folder = Path.Combine(_home, "out");
        string[] beside = Directory.GetFileSystemEntries(Repository.Folder("examples"));

        (int code, string text) = Run.Command("make", Run.Example(example), "--out", folder);

        Assert.Equal(Run.Command("check", Run.Example(example)).Code, code);
        Assert.Contains("files are in", text, StringComparison.Ordinal);
        Assert.Equal([folder], Directory.GetFileSystemEntries(_home));
        Assert.Equal(beside, Directory.GetFileSystemEntries(Repository.Folder("examples")));
        Assert.True(File.Exists(Path.Combine(folder, "parts.csv")));
        Assert.NotEmpty(Directory.GetFiles(Path.Combine(folder, "plates"), "*.dxf"));
        Assert.DoesNotContain(Directory.GetFileSystemEntries(folder), f => Path.GetFileName(f).StartsWith('.'));
    }

    [Fact]
    public void TheListFitsTheScreen()
    {
        (_, string text) = Run.Command("make", Run.Example("wherry-yard.press.yaml"));

        Assert.All(text.Split('\n').Where(l => !l.StartsWith("Nothing is written", StringComparison.Ordinal)), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Assert.Contains("Builder to decide", text, StringComparison.Ordinal);
        Assert.Contains("(proposed)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ASecondRunReplacesNothingUnlessItIsTold()
    {
        string folder = Path.Combine(_home, "out");
        Run.Command("make", Run.Example("salvage.press.yaml"), "--out", folder);
        File.WriteAllText(Path.Combine(folder, "parts.csv"), "mine");

        (int code, string text) = Run.Command("make", Run.Example("salvage.press.yaml"), "--out", folder);

        Assert.Equal(2, code);
        Assert.Contains("already; nothing was written", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder, "parts.csv")));
        Assert.Equal(0, Run.Command("make", Run.Example("salvage.press.yaml"), "--out", folder, "--force").Code);
        Assert.StartsWith("mark,part", File.ReadAllText(Path.Combine(folder, "parts.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void TheJsonNamesPartsBarsNestsAndFiles()
    {
        string folder = Path.Combine(_home, "out");

        JsonElement json = JsonDocument.Parse(Run.Command("make", Run.Example("wherry-yard.press.yaml"), "--json", "--out", folder, "--rounds", "20").Text).RootElement;

        Assert.Equal(json.GetProperty("files").GetArrayLength(), Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Length);
        JsonElement foot = json.GetProperty("parts").EnumerateArray().Single(p => p.GetProperty("name").GetString() == "foot plate");
        Assert.Equal("plate", foot.GetProperty("kind").GetString());
        Assert.Equal(4, foot.GetProperty("holes").GetArrayLength());
        JsonElement nest = json.GetProperty("nests").EnumerateArray().Single(n => n.GetProperty("thicknessMm").GetDouble() == 12);
        Assert.Equal(2, nest.GetProperty("parts").GetArrayLength());
        Assert.All(json.GetProperty("bars").EnumerateArray(), b => Assert.True(b.GetProperty("provenLeast").GetBoolean()));
        Assert.True(json.GetProperty("massKg").GetDouble() > 200);
        Assert.Equal(64, json.GetProperty("fileSha256").GetString()!.Length);
        Assert.True(File.Exists(Path.Combine(folder, "nests", "N1-slipway-block.dxf")));
    }

    [Fact]
    public void AFolderThatCannotBeMadeIsSaidAndNothingIsLeft()
    {
        string file = Path.Combine(_home, "a file");
        File.WriteAllText(file, "");

        (int code, string text) = Run.Command("make", Run.Example("salvage.press.yaml"), "--out", Path.Combine(file, "out"));

        Assert.Equal(2, code);
        Assert.Contains("could not be written", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal([file], Directory.GetFileSystemEntries(_home));
        JsonElement json = JsonDocument.Parse(Run.Command("make", Run.Example("salvage.press.yaml"), "--json", "--out", Path.Combine(file, "out")).Text).RootElement;
        Assert.Contains("could not be written", json.GetProperty("faults")[0].GetProperty("found").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--rounds", "-1"), InlineData("--rounds", "many"), InlineData("--rounds", "9000000")]
    public void RoundsThatAreNoneAreTheInputsFault(params string[] words) =>
        Assert.Equal(2, Run.Command(["make", Run.Example("salvage.press.yaml"), .. words]).Code);
}
