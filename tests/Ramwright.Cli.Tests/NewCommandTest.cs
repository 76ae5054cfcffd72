using Ramwright.Files;
using Ramwright.Quantities;

namespace Ramwright.Tests.Cli;

public sealed class NewCommandTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-test-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string, string> Kinds()
    {
        var kinds = new TheoryData<string, string>();
        foreach (string kind in Starter.Kinds)
        {
            foreach (string option in (string[])["--full", "--units=metric", "--units=imperial"])
                kinds.Add(kind, option);
        }

        return kinds;
    }

    [Theory, MemberData(nameof(Kinds))]
    public void AStarterIsAPressThatCanBeChecked(string kind, string option)
    {
        string file = Path.Combine(_folder, "mine.press.yaml");

        Assert.Equal(0, Run.Command("new", file, "--frame", kind, option).Code);

        Assert.True(Run.Command("check", file).Code is 0 or 1);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void AStarterThatIsNotSafeToItsForceSaysSo(string kind, string option)
    {
        string file = Path.Combine(_folder, "mine.press.yaml");
        string said = Run.Command("new", file, "--frame", kind, option).Text;
        bool holds = Run.Command("check", file).Code == 0;
        Assert.Equal(!holds, said.ReplaceLineEndings(" ").Contains("is meant so", StringComparison.Ordinal));
        if (option != "--full")
            Assert.Equal(!holds, File.ReadAllText(file).Contains(Starter.NotYet, StringComparison.Ordinal));
    }

    [Fact]
    public void AFirstFileIsShort()
    {
        string file = Path.Combine(_folder, "mine.press.yaml"), full = Path.Combine(_folder, "full.press.yaml");
        Run.Command("new", file);
        Run.Command("new", full, "--full");

        Assert.InRange(File.ReadAllLines(file).Length, 15, 25);
        Assert.InRange(File.ReadAllLines(full).Length, 400, 1000);
        Assert.Contains("ramwright new --full", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("closed")]
    [InlineData("open-front")]
    [InlineData("tie-rod")]
    [InlineData("free")]
    public void InInchesNothingIsMetric(string kind)
    {
        string text = Starter.First(kind, UnitSystem.Imperial);

        Assert.DoesNotMatch(@"(?m)^[^#\n]*\d (mm|bar|t|kN|L|mL|L/min)\b", text);
        PressReading reading = PressFile.Read(text, kind, StockTables.Built);
        Assert.Equal((UnitSystem.Imperial, 0), (reading.Units, reading.Faults.Count));
    }

    [Fact]
    public void TheFullStarterIsMetricAndSaysSo()
    {
        (int code, string text) = Run.Command("new", "--full", "--units", "imperial");

        Assert.Equal(2, code);
        Assert.Contains("leave out --units", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void AnotherEndingIsRefused()
    {
        string file = Path.Combine(_folder, "mine.yaml");

        Assert.Equal(2, Run.Command("new", file).Code);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public void AFileThatIsThereIsLeftAsItIs()
    {
        string file = Path.Combine(_folder, "mine.press.yaml");
        File.WriteAllText(file, "my work");

        (int code, string text) = Run.Command("new", file);

        Assert.Equal(2, code);
        Assert.Contains("left as it is", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        Assert.Equal("my work", File.ReadAllText(file));
    }

    [Fact]
    public void AnUnknownFrameNamesTheKinds()
    {
        (int code, string text) = Run.Command("new", "--frame", "round");

        Assert.Equal(2, code);
        Assert.Contains("open-front", text);
    }
}
