using System.Text.Json;

namespace Ramwright.Tests.Cli;

public class LiftCommandTest
{
    [Fact]
    public void TheWholeAnswerIsAsApprovedAndFitsTheScreen()
    {
        (int code, string text) = Run.Command("lift", Run.Example("railing-shop.press.yaml"));

        Assert.Equal(0, code);
        text = text.Replace(Repository.Folder("examples"), "examples");
        Assert.All(text.Split('\n').Where(l => !l.Contains(": ramwright ", StringComparison.Ordinal)), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Approved.Matches(text, "lift-railing-shop-metric.txt");
    }

    [Fact]
    public void TheJsonNamesEachKeyOldAndNew()
    {
        JsonElement json = JsonDocument.Parse(Run.Command("lift", Run.Example("railing-shop.press.yaml"), "--json").Text).RootElement;

        Assert.False(json.GetProperty("isEnough").GetBoolean());
        JsonElement[] ways = [.. json.GetProperty("ways").EnumerateArray()];
        Assert.NotEmpty(ways);
        Assert.All(ways, way =>
        {
            Assert.True(way.GetProperty("safeRatingKN").GetDouble() >= json.GetProperty("wantedKN").GetDouble());
            Assert.NotEmpty(way.GetProperty("governing").GetString()!);
            Assert.True(way.TryGetProperty("addedKg", out _));
            Assert.All(way.GetProperty("changes").EnumerateArray(),
                c => Assert.True(c.TryGetProperty("key", out _) && c.TryGetProperty("old", out _) && c.TryGetProperty("new", out _)));
        });
    }

    [Fact]
    public void NothingToLiftIsWell()
    {
        (int code, string text) = Run.Command("lift", Run.Example("wherry-yard.press.yaml"));

        Assert.Equal(0, code);
        Assert.Contains("Nothing has to change", text);
    }

    [Fact]
    public void OutOfReachIsSaidWithTheNearest()
    {
        (int code, string text) = Run.Command("lift", Run.Example("wherry-yard.press.yaml"), "--to", "900 t");

        Assert.Equal(1, code);
        Assert.Contains("nearest", text);
    }

    [Theory]
    [InlineData("soon")]
    [InlineData("30 mm")]
    [InlineData("-5 t")]
    public void AForceThatIsNoneIsTheInputsFault(string to) =>
        Assert.Equal(2, Run.Command("lift", Run.Example("wherry-yard.press.yaml"), "--to", to).Code);

    [Fact]
    public void AMissingFileIsTheInputsFault() => Assert.Equal(2, Run.Command("lift", "nowhere.press.yaml").Code);
}
