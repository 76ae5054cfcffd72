using System.Text.Json;
using Ramwright.Files.Readings;

namespace Ramwright.Tests.Cli;

public sealed class ProveCommandTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-prove").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>A press of the examples in a folder of its own, with or without its readings.</summary>
    private string Copy(string example, bool readings = false)
    {
        string press = Path.Combine(_folder, example + ".press.yaml");
        File.Copy(Run.Example(example + ".press.yaml"), press, overwrite: true);
        if (readings)
            File.Copy(Run.Example(example + ".readings"), ReadingLog.PathFor(press), overwrite: true);
        return press;
    }

    [Theory]
    [InlineData("wherry-yard", "", "")]
    [InlineData("wherry-yard", "--plan", "")]
    [InlineData("wherry-yard", "--force", "")]
    [InlineData("wherry-yard", "--stiffness", "")]
    [InlineData("wherry-yard", "--service", "")]
    [InlineData("wherry-yard", "--plan", "imperial")]
    [InlineData("railing-shop", "--plan", "")]
    [InlineData("drainage-mill-puller", "--plan", "")]
    [InlineData("railing-shop", "", "")]
    [InlineData("railing-shop", "--stiffness", "")]
    public void TheAnswerIsAsApprovedAndFitsTheScreen(string example, string view, string units)
    {
        string[] words = ["prove", Run.Example(example + ".press.yaml"), "--day", "2026-09-20", .. view.Length > 0 ? (string[])[view] : [], .. units.Length > 0 ? (string[])["--units", units] : []];
        (_, string text) = Run.Command(words);
        text = text.Replace(Run.Example(""), "examples/", StringComparison.Ordinal);
        Assert.All(text.Split('\n').Where(l => !l.Contains("ramwright prove", StringComparison.Ordinal)), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Approved.Matches(Unbroken(text), $"prove-{example}{view}{(units.Length > 0 ? "-" + units : "")}.txt");
    }

    // the path of the clone decides where a line with it is broken
    private static string Unbroken(string text) =>
        string.Join('\n', text.Split('\n').Where(l => !l.Contains("ramwright prove", StringComparison.Ordinal) && !l.Contains("press.yaml", StringComparison.Ordinal)));

    [Theory]
    [InlineData("--plan", "F_s")]
    [InlineData("--force", "JCGM 100:2008")]
    [InlineData("--stiffness", "slope")]
    [InlineData("--service", "n_i / N_i")]
    public void EveryAnswerShowsItsWorking(string view, string step)
    {
        string press = Run.Example("wherry-yard.press.yaml");
        string without = Run.Command("prove", press, view, "--day", "2026-09-20").Text, with = Run.Command("prove", press, view, "--working", "--day", "2026-09-20").Text;
        Assert.StartsWith(without.TrimEnd(), with, StringComparison.Ordinal);
        Assert.Contains(step, with[without.TrimEnd().Length..], StringComparison.Ordinal);
        Assert.All(with.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 80, line));
    }

    [Fact]
    public void AReadingIsAddedWithDayAndName()
    {
        string press = Copy("wherry-yard");
        (int code, string text) = Run.Command("prove", press, "--add", "bore 125.04 mm", "--add", "top-pressure 212 bar", "--who", "Ines of the yard", "--day", "2026-05-09");
        Assert.Equal(0, code);
        Assert.Contains("added to wherry-yard.readings", text, StringComparison.Ordinal);
        Assert.Equal(["2026-05-09T00:00 \"Ines of the yard\" bore 125.04 mm", "2026-05-09T00:00 \"Ines of the yard\" top-pressure 212 bar"], File.ReadAllLines(ReadingLog.PathFor(press)));
        Assert.Contains("sold as 30 t", Run.Command("prove", press).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void AReadingThatCannotBeReadIsRefusedAndNothingIsWritten()
    {
        string press = Copy("wherry-yard");
        (int code, string text) = Run.Command("prove", press, "--add", "bore 125.04 mm", "--add", "boer 125 mm");
        Assert.Equal(2, code);
        Assert.Contains("nearest: bore", text, StringComparison.Ordinal);
        Assert.False(File.Exists(ReadingLog.PathFor(press)));
    }

    [Fact]
    public void ASetMeansStop()
    {
        string press = Copy("wherry-yard", readings: true);
        Assert.Equal(0, Run.Command("prove", press).Code);
        Run.Command("prove", press, "--add", "dial 0.21 mm at=opening pressure=0 bar way=down step=13");
        (int code, string text) = Run.Command("prove", press);
        Assert.Equal(1, code);
        Assert.Contains("STOP: a set of 0.21 mm stayed at the opening", text.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void ASlippedDigitIsRefusedAndOneInTheLogIsStruckOut()
    {
        string press = Copy("wherry-yard", readings: true), log = ReadingLog.PathFor(press);
        string before = File.ReadAllText(log);
        (int code, string text) = Run.Command("prove", press, "--add", "top-pressure 2130 bar");
        Assert.Equal(2, code);
        Assert.Contains("more than", text, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(log));
        Assert.Contains("nearest: opening", string.Join(' ', Run.Command("prove", press, "--add", "dial 0.4 mm at=openning pressure=100 bar").Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);

        ReadingLog.Append(log, "2026-09-20 Ines top-pressure 2130 bar instrument=G1");
        int line = File.ReadAllLines(log).Length;
        (code, text) = Run.Command("prove", press);
        Assert.Equal(1, code);
        Assert.Contains($"STOP: line {line}: 2130 bar", text, StringComparison.Ordinal);
        (code, text) = Run.Command("prove", press, "--add", $"strike {line} note=\"slip of the pen\"");
        Assert.Equal(0, code);
        Assert.DoesNotContain("STOP", text, StringComparison.Ordinal);
        Assert.Contains("2130 bar", File.ReadAllText(log), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("prove", "--sheet")]
    [InlineData("draw", "--out")]
    public void AFolderThatIsNotThereIsSaidInPlainWords(string command, string option)
    {
        string press = Copy("wherry-yard"), nowhere = Path.Combine(_folder, "no", "sheet.html");
        (int code, string text) = Run.Command(command, press, option, command == "draw" ? nowhere.Replace(".html", ".svg", StringComparison.Ordinal) : nowhere);
        Assert.Equal(2, code);
        Assert.Contains("there is no folder", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.DoesNotContain("Could not find", text, StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutATrueForceThereIsNoRecord()
    {
        string press = Copy("wherry-yard"), record = Path.Combine(_folder, "record.html");
        foreach (string reading in new[] { "top-pressure 213 bar", "top-pressure 212 bar", "top-pressure 21.3 bar" })
            Run.Command("prove", press, "--add", reading);
        (int code, string text) = Run.Command("prove", press, "--certificate", record);
        Assert.Equal(2, code);
        Assert.Contains("do not belong together", text, StringComparison.Ordinal);
        Assert.False(File.Exists(record));
        (code, text) = Run.Command("prove", press, "--force");
        Assert.Equal(1, code);
        Assert.Contains("None: the readings", text, StringComparison.Ordinal);
        Assert.DoesNotContain("±", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ABrokenLogIsSaidAndTheRestCounts()
    {
        string press = Copy("wherry-yard", readings: true);
        File.AppendAllText(ReadingLog.PathFor(press), "2026-09-13 Jonas top-pressure 21");
        (int code, string text) = Run.Command("prove", press);
        Assert.Equal(0, code);
        Assert.Contains("cut off", text, StringComparison.Ordinal);
        Assert.Contains("sold as 30 t", text, StringComparison.Ordinal);
    }

    [Fact]
    public void TheJsonHoldsItAll()
    {
        JsonElement all = JsonDocument.Parse(Run.Command("prove", Run.Example("wherry-yard.press.yaml"), "--json", "--day", "2026-09-20").Text).RootElement;
        Assert.Equal(13, all.GetProperty("plan").GetProperty("steps").GetArrayLength());
        JsonElement force = all.GetProperty("trueForce");
        double share = force.GetProperty("budget").EnumerateArray().Sum(b => b.GetProperty("share").GetDouble());
        Near.Absolute(1, share, 1e-4, "shares");
        Assert.InRange(force.GetProperty("kN").GetDouble(), 240, 262);
        Assert.Equal(3, all.GetProperty("stiffness").GetArrayLength());
        Assert.Contains(all.GetProperty("pump").EnumerateArray().SelectMany(p => p.GetProperty("points").EnumerateArray()), p => p.GetProperty("outlier").GetBoolean());
        Assert.Equal(565, all.GetProperty("service").GetProperty("squeezes").GetDouble());
    }

    [Fact]
    public void FaultsAreFoundStepByStep()
    {
        string press = Run.Example("railing-shop.press.yaml");
        (int code, string text) = Run.Command("prove", press, "--fault", "low-pressure, air-running=yes");
        Assert.Equal(0, code);
        Assert.Contains("air-low", text, StringComparison.Ordinal);
        Assert.Contains("Before any line is opened", text, StringComparison.Ordinal);
        JsonElement found = JsonDocument.Parse(Run.Command("prove", press, "--fault", "low-pressure, air-running=yes", "--json").Text).RootElement;
        Assert.Equal("air-low", found.GetProperty("suspects")[0].GetProperty("cause").GetString());
        Assert.Equal(2, Run.Command("prove", press, "--fault", "low-presure").Code);
        Assert.Contains("nearest: low-pressure", Run.Command("prove", press, "--fault", "low-presure").Text, StringComparison.Ordinal);
        Assert.Contains("it builds no pressure", Run.Command("prove", press, "--fault", "?").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void SheetAndRecordAreWrittenWithTheirStanding()
    {
        string press = Copy("wherry-yard", readings: true), sheet = Path.Combine(_folder, "s.html"), record = Path.Combine(_folder, "r.html");
        Assert.Equal(0, Run.Command("prove", press, "--sheet", sheet, "--certificate", record, "--day", "2026-09-20").Code);
        string s = File.ReadAllText(sheet), r = File.ReadAllText(record);
        Assert.Contains("PROOF, once", s, StringComparison.Ordinal);
        Assert.Contains("no inspection by a third party", r, StringComparison.Ordinal);
        Assert.Contains("What was not tested", r, StringComparison.Ordinal);
        Assert.Contains("Held at 260 bar", r, StringComparison.Ordinal);
        Assert.Contains("<svg", r, StringComparison.Ordinal);
        foreach (string page in new[] { s, r })
        {
            Assert.DoesNotContain("http:", page.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        }

        Assert.Equal(2, Run.Command("prove", press, "--sheet", Path.Combine(_folder, "no", "such", "s.html")).Code);
    }

    [Fact]
    public void ARecordOfNothingSaysSo()
    {
        string press = Copy("railing-shop"), record = Path.Combine(_folder, "r.html");
        Run.Command("prove", press, "--certificate", record);
        string r = File.ReadAllText(record);
        Assert.Contains("Nothing has been read yet", r, StringComparison.Ordinal);
        Assert.Contains("is not closed as held", r, StringComparison.Ordinal);
        Assert.Contains("steps not closed: 1", r, StringComparison.Ordinal);
    }

    [Fact]
    public void NamesInTheFileStayText()
    {
        string press = Copy("wherry-yard"), record = Path.Combine(_folder, "r.html");
        File.WriteAllText(press, File.ReadAllText(press).Replace("name: Wherry Yard 25 t", "name: \"<script>alert(1)</script>\"", StringComparison.Ordinal));
        Run.Command("prove", press, "--add", "note \"<img src=x>\"", "--who", "<b>x</b>");
        Run.Command("prove", press, "--certificate", record, "--sheet", Path.Combine(_folder, "s.html"));
        Assert.DoesNotContain("<script", File.ReadAllText(record) + File.ReadAllText(Path.Combine(_folder, "s.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("<b>x", File.ReadAllText(record), StringComparison.Ordinal);
    }

    [Fact]
    public void ALoggersFileIsCounted()
    {
        string press = Copy("wherry-yard"), csv = Path.Combine(_folder, "counter.csv");
        File.WriteAllLines(csv, ["time;pressure_psi", .. Enumerable.Range(0, 30).SelectMany(i => new[] { $"{i};0", $"{i};{1500 + i % 2 * 5}", $"{i};900", $"{i};1000" })]);
        (int code, _) = Run.Command("prove", press, "--count", csv, "--who", "Ines");
        Assert.Equal(0, code);
        ReadingLog log = ReadingLog.Load(ReadingLog.PathFor(press));
        Assert.Empty(log.Faults);
        Assert.Equal(30, log.Readings.Where(r => r.Pressure > 100e5).Sum(r => r.Value));
        // in the wrong unit: fifteen hundred bar on a gauge of four hundred
        File.WriteAllLines(csv, ["time;pressure_bar", .. Enumerable.Range(0, 30).SelectMany(i => new[] { $"{i};0", $"{i};1500" })]);
        Assert.Equal(2, Run.Command("prove", press, "--count", csv).Code);
        Assert.Equal(log.Readings.Count, ReadingLog.Load(ReadingLog.PathFor(press)).Readings.Count);
        File.WriteAllText(csv, "pressure\n12\nx\n");
        Assert.Equal(2, Run.Command("prove", press, "--count", csv).Code);
    }

    [Theory]
    [InlineData("nowhere.press.yaml", "--plan")]
    public void AMissingFileIsTheInputsFault(string press, string view) => Assert.Equal(2, Run.Command("prove", press, view).Code);

    [Fact]
    public void ADayThatIsNoneIsRefused() => Assert.Equal(2, Run.Command("prove", Run.Example("wherry-yard.press.yaml"), "--day", "soon").Code);
}
