using System.Text.Json;

namespace Ramwright.Tests.Cli;

public class CheckCommandTest
{
    [Theory]
    [InlineData("wherry-yard.press.yaml", "metric")]
    [InlineData("wherry-yard.press.yaml", "imperial")]
    [InlineData("railing-shop.press.yaml", "metric")]
    [InlineData("drainage-mill-puller.press.yaml", "metric")]
    public void TheWholeAnswerIsAsApproved(string example, string units)
    {
        (int code, string text) = Run.Command("check", Run.Example(example), "--units", units);

        Assert.True(code is 0 or 1, text);
        Approved.Matches(text.Replace(Repository.Folder("examples"), "examples"), $"check-{example.Split('.')[0]}-{units}.txt");
    }

    [Theory]
    [InlineData("wherry-yard.press.yaml", 0)]
    [InlineData("railing-shop.press.yaml", 1)]
    [InlineData("drainage-mill-puller.press.yaml", 0)]
    public void TheExitCodeSaysWhetherItHolds(string example, int expected) =>
        Assert.Equal(expected, Run.Command("check", Run.Example(example)).Code);

    [Theory]
    [InlineData("wherry-yard.press.yaml")]
    [InlineData("railing-shop.press.yaml")]
    [InlineData("drainage-mill-puller.press.yaml")]
    public void NothingRunsPastEightyColumns(string example)
    {
        string text = Run.Command("check", Run.Example(example)).Text;

        Assert.All(text.Split('\n').Where(l => !l.Contains(": ramwright ", StringComparison.Ordinal)), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void TheJsonHasTheNamesThatScriptsRelyOn()
    {
        (int code, string text) = Run.Command("check", Run.Example("wherry-yard.press.yaml"), "--json");

        Assert.Equal(0, code);
        JsonElement json = JsonDocument.Parse(text).RootElement;
        string[] top = ["press", "verdict", "force", "speeds", "strokeSeconds", "rungs", "safeRatingKN", "wantedKN", "governing",
            "daylightGrowthMm", "openingMmPerM", "assumed", "cautions"];
        Assert.All(top, name => Assert.True(json.TryGetProperty(name, out _), name));
        Assert.All(new[] { "trueKN", "mostPossibleKN", "pressureBar", "limitedBy" }, name => Assert.True(json.GetProperty("force").TryGetProperty(name, out _), name));
        Assert.All(new[] { "id", "part", "mode", "group", "givesAtKN", "safeToKN", "factor", "source" },
            name => Assert.All(json.GetProperty("rungs").EnumerateArray(), rung => Assert.True(rung.TryGetProperty(name, out _), name)));
        Assert.All(json.GetProperty("speeds").EnumerateArray(), s => Assert.True(s.TryGetProperty("loadKN", out _) && s.TryGetProperty("mmPerS", out _)));
        Assert.All(json.GetProperty("assumed").EnumerateArray(), a => Assert.True(a.TryGetProperty("what", out _) && a.TryGetProperty("value", out _) && a.TryGetProperty("why", out _)));
        Assert.NotEmpty(json.GetProperty("cautions").EnumerateArray());
    }

    [Fact]
    public void AMissingFileIsTheInputsFault()
    {
        (int code, string text) = Run.Command("check", "nowhere.press.yaml");

        Assert.Equal(2, code);
        Assert.Contains("nowhere.press.yaml", text);
    }

    [Fact]
    public void ASpringTheOilCannotPushOutIsTheInputsFault()
    {
        string file = Path.Combine(Path.GetTempPath(), $"strong-spring-{Environment.ProcessId}.press.yaml");
        File.WriteAllText(file, File.ReadAllText(Run.Example("railing-shop.press.yaml")).Replace("  return: spring\n", "  return: spring\n  spring-preload: 900 kN\n"));
        try
        {
            (int code, string text) = Run.Command("check", file);

            Assert.Equal(2, code);
            Assert.Contains(".press.yaml:15", text);
            Assert.Contains("the ram does not come out", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void AnUnknownCommandIsTheInputsFault() => Assert.Equal(2, Run.Command("chekc").Code);

    [Fact]
    public void UnknownUnitsAreTheInputsFault()
    {
        (int code, string text) = Run.Command("check", Run.Example("wherry-yard.press.yaml"), "--units", "cubits");

        Assert.Equal(2, code);
        Assert.Contains("metric", text);
    }

    [Theory]
    [InlineData("24 in", "20 in", "US ton")]
    [InlineData("600 mm", "500 mm", "kN")]
    public void TheAnswerComesInTheUnitsOfTheFilesTape(string daylight, string width, string force)
    {
        string folder = Directory.CreateTempSubdirectory("ramwright-units-").FullName;
        try
        {
            string file = Path.Combine(folder, "six.press.yaml");
            File.WriteAllText(file, $"wanted: 20 t\ncylinder: {{ kind: double-acting, bore: 100 mm }}\npump: {{ kind: electric, motor: 3 hp }}\nframe: {{ kind: closed, daylight: {daylight}, width: {width}, section: HEB 160 }}\n");

            Assert.Contains($"Ladder in {force},", Run.Command("check", file).Text);
            Assert.Contains("Ladder in kN,", Run.Command("check", file, "--units", "metric").Text);
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }
}
