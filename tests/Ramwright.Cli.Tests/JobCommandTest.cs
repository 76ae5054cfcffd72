using System.Text.Json;

namespace Ramwright.Tests.Cli;

public class JobCommandTest
{
    [Theory]
    [InlineData("wherry-yard", "metric")]
    [InlineData("railing-shop", "metric")]
    [InlineData("railing-shop", "imperial")]
    [InlineData("drainage-mill-puller", "metric")]
    [InlineData("salvage", "metric")]
    public void AllJobsInBriefAreAsApproved(string example, string units)
    {
        (int code, string text) = Run.Command("job", Run.Example(example + ".press.yaml"), "--units", units);

        Assert.Equal(1, code);          // each has one it cannot do
        Approves(text, $"jobs-{example}-{units}.txt");
    }

    [Theory]
    [InlineData("railing-shop", "draw out the spear", 0)]
    [InlineData("railing-shop", "newel cap", 1)]
    [InlineData("railing-shop", "maker's mark", 0)]
    [InlineData("wherry-yard", "chain plate", 0)]
    [InlineData("wherry-yard", "propeller shaft", 0)]
    [InlineData("wherry-yard", "cutless bush into the stern tube", 0)]
    [InlineData("wherry-yard", "bolt holes in the chain plate", 1)]
    [InlineData("drainage-mill-puller", "taper key out", 0)]
    [InlineData("salvage", "hoop of water pipe", 0)]
    [InlineData("salvage", "firewood", 0)]
    [InlineData("salvage", "flatten pipe ends", 0)]
    public void OneJobAtLengthIsAsApproved(string example, string job, int expected)
    {
        (int code, string text) = Run.Command("job", Run.Example(example + ".press.yaml"), job);

        Assert.Equal(expected, code);
        Approves(text, $"job-{example}-{job.Replace(' ', '-').Replace("'", "")}.txt");
    }

    [Theory]
    [InlineData("railing-shop", "leaf blank")]
    [InlineData("wherry-yard", "propeller shaft")]
    [InlineData("salvage", "gate brackets")]
    public void TheWorkingStandsUnderTheJob(string example, string job)
    {
        (int code, string text) = Run.Command("job", Run.Example(example + ".press.yaml"), job, "--working");

        Assert.Equal(0, code);
        Approves(text, $"job-{example}-{job.Replace(' ', '-')}-working.txt");
    }

    [Fact]
    public void TheJsonHasTheNamesThatScriptsRelyOn()
    {
        (int code, string text) = Run.Command("job", Run.Example("railing-shop.press.yaml"), "draw out the spear", "--json");

        Assert.Equal(0, code);
        JsonElement json = JsonDocument.Parse(text).RootElement;
        Assert.All(new[] { "name", "kind", "verdict", "saying", "peakKN", "travelMm", "energyJ", "seconds", "curve", "limits", "facts", "drawingOut", "flags", "assumed", "cautions", "working" },
            name => Assert.True(json.TryGetProperty(name, out _), name));
        Assert.True(json.GetProperty("drawingOut").GetProperty("passes").GetArrayLength() > 5);
        JsonElement all = JsonDocument.Parse(Run.Command("job", Run.Example("railing-shop.press.yaml"), "--json").Text).RootElement;
        Assert.Equal(5, all.GetProperty("jobs").GetArrayLength());
        Assert.Contains(all.GetProperty("jobs").EnumerateArray(), j => j.GetProperty("verdict").GetString() == "cannot");
    }

    [Fact]
    public void AJobThatIsNotThereIsTheInputsFault()
    {
        (int code, string text) = Run.Command("job", Run.Example("railing-shop.press.yaml"), "leaf blanc");

        Assert.Equal(2, code);
        Assert.Contains("nearest: leaf blank", text, StringComparison.Ordinal);
        Assert.Contains("nearest: leaf blank", Run.Command("job", Run.Example("railing-shop.press.yaml"), "blnk").Text, StringComparison.Ordinal);
        Assert.Equal(2, Run.Command("job", "nowhere.press.yaml").Code);
    }

    [Fact]
    public void APressWithoutJobsSaysSo()
    {
        string path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.press.yaml");
        try
        {
            Assert.Equal(0, Run.Command("new", path, "--frame", "closed").Code);
            (int code, string text) = Run.Command("job", path);
            Assert.Equal(2, code);
            Assert.Contains("names no jobs", text, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void TheSqueezeInTimeIsInTheJson()
    {
        (_, string text) = Run.Command("job", Run.Example("railing-shop.press.yaml"), "leaf blank", "--json");

        JsonElement time = JsonDocument.Parse(text).RootElement.GetProperty("time");
        Assert.All(new[] { "saying", "done", "ended", "stoppedBy", "phasesS", "travelMm", "heightMm", "peakKN", "peakBar", "workJ", "touchC", "endMeanC", "receiverBar", "points", "balances", "heats", "hour", "flags", "assumed" },
            name => Assert.True(time.TryGetProperty(name, out JsonElement _), name));
        Assert.All(time.GetProperty("balances").EnumerateArray(), b => Assert.True(b.GetProperty("missing").GetDouble() < 1e-3));
    }

    [Fact]
    public void ASweepIsAMapAndAChart()
    {
        string chart = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".svg");
        try
        {
            (int code, string text) = Run.Command("job", Run.Example("railing-shop.press.yaml"), "leaf blank", "--sweep", "heat=1000..1200 °C/3, bar=12..36 mm/3", "--out", chart);

            Assert.Equal(0, code);
            Assert.Contains("Largest bar I can take to half its thickness in one heat", text, StringComparison.Ordinal);
            Assert.Contains("9 squeezes followed", text, StringComparison.Ordinal);
            Assert.Contains("data-part=\"sweep\"", File.ReadAllText(chart), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(chart);
        }
    }

    [Fact]
    public void ASweepAsJsonHasEveryPoint()
    {
        (int code, string text) = Run.Command("job", Run.Example("railing-shop.press.yaml"), "leaf blank", "--sweep", "bar=1/2..1 in/2, die-heat=100..300 °C/2", "--json");

        Assert.Equal(0, code);
        JsonElement json = JsonDocument.Parse(text).RootElement;
        Assert.Equal(4, json.GetProperty("points").GetArrayLength());
        Assert.Equal(0.0127, json.GetProperty("across").GetProperty("from").GetDouble(), 6);
    }

    [Theory]
    [InlineData("leaf blank", "heat=900..1200 °C", "two things")]
    [InlineData("leaf blank", "heat=900..1200 °C, heet=1..2", "nearest: heat")]
    [InlineData("leaf blank", "heat=900..1200 °C, bar=10 mm", "two ends")]
    [InlineData("leaf blank", "heat=900..1200 °C/1, bar=10..20 mm", "2 to 1000")]
    [InlineData("leaf blank", "heat=900..1200 °C/x, bar=10..20 mm", "no number")]
    [InlineData("leaf blank", "heat=900..1200 °C/1000, bar=10..20 mm/1000", "1000 × 1000 points")]
    [InlineData("leaf blank", "bar=30..20 mm, heat=900..1000 °C", "rising")]
    [InlineData("bottom rail's return", "usual", "no hot squeeze")]
    public void ASweepThatCannotBeIsSaid(string job, string grid, string says)
    {
        (int code, string text) = Run.Command("job", Run.Example("railing-shop.press.yaml"), job, "--sweep", grid);

        Assert.Equal(2, code);
        Assert.Contains(says, text.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    private static void Approves(string text, string name)
    {
        text = text.Replace(Repository.Folder("examples"), "examples");
        // the last line is a command to be copied, and is not broken
        Assert.All(text.Split('\n').Where(l => !l.Contains("ramwright job", StringComparison.Ordinal)), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Approved.Matches(text, name);
    }
}
