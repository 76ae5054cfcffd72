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

    private static void Approves(string text, string name)
    {
        text = text.Replace(Repository.Folder("examples"), "examples");
        // the last line is a command to be copied, and is not broken
        Assert.All(text.Split('\n').Where(l => !l.Contains("ramwright job", StringComparison.Ordinal)), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Approved.Matches(text, name);
    }
}
