using System.Text.Json;

namespace Ramwright.Tests.Cli;

public class OffsetCommandTest
{
    [Theory]
    [InlineData("wherry-yard", "metric")]
    [InlineData("wherry-yard", "imperial")]
    [InlineData("railing-shop", "metric")]
    public void TheWholeTableIsAsApprovedAndFitsTheScreen(string example, string units)
    {
        (int code, string text) = Run.Command("offset", Run.Example(example + ".press.yaml"), "--units", units);

        Assert.Equal(0, code);
        Assert.All(text.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Approved.Matches(text, $"offset-{example}-{units}.txt");
    }

    [Fact]
    public void TheJsonIsReadyForAChartAndTheSameAsInCheck()
    {
        JsonElement own = JsonDocument.Parse(Run.Command("offset", Run.Example("wherry-yard.press.yaml"), "--json").Text).RootElement;
        JsonElement check = JsonDocument.Parse(Run.Command("check", Run.Example("wherry-yard.press.yaml"), "--json").Text).RootElement;

        Assert.True(own.GetProperty("wantedUpToMm").GetProperty("deep").GetDouble() > 0);
        Assert.Equal(own.GetProperty("offCentre").GetRawText(), check.GetProperty("offCentre").GetRawText());
        Assert.All(own.GetProperty("offCentre").EnumerateArray(), p =>
        {
            Assert.Contains(p.GetProperty("direction").GetString(), new[] { "across", "deep" });
            Assert.True(p.GetProperty("offsetMm").GetDouble() >= 0 && p.GetProperty("safeToKN").GetDouble() > 0);
            Assert.NotEmpty(p.GetProperty("governing").GetString()!);
        });
    }

    [Fact]
    public void AMissingFileIsTheInputsFault() => Assert.Equal(2, Run.Command("offset", "nowhere.press.yaml").Code);
}
