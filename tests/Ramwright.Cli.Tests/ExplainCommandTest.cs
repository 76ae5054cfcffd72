using System.Text.Json;

namespace Ramwright.Tests.Cli;

public class ExplainCommandTest
{
    [Fact]
    public void TheWholeWorkingIsAsApproved()
    {
        (int code, string text) = Run.Command("explain", Run.Example("wherry-yard.press.yaml"), "crown-bending");

        Assert.Equal(0, code);
        Approved.Matches(text, "explain-wherry-yard-crown-bending.txt");
    }

    [Fact]
    public void WithoutARungItExplainsTheLowest()
    {
        JsonElement check = JsonDocument.Parse(Run.Command("check", Run.Example("railing-shop.press.yaml"), "--json").Text).RootElement;
        JsonElement working = JsonDocument.Parse(Run.Command("explain", Run.Example("railing-shop.press.yaml"), "--json").Text).RootElement;

        Assert.Equal(check.GetProperty("governing").GetString(), working.GetProperty("rung").GetProperty("id").GetString());
        Assert.NotEmpty(working.GetProperty("steps").EnumerateArray());
    }

    [Fact]
    public void AnUnknownRungNamesTheNearest()
    {
        (int code, string text) = Run.Command("explain", Run.Example("wherry-yard.press.yaml"), "crown-bendin");

        Assert.Equal(2, code);
        Assert.Contains("crown-bending", text);
    }

    [Fact]
    public void ThePartsNameListsItsRungs()
    {
        (int code, string text) = Run.Command("explain", Run.Example("wherry-yard.press.yaml"), "crown");

        Assert.Equal(2, code);
        Assert.Contains("crown-bending", text);
        Assert.Contains("crown-tipping", text);
        Assert.DoesNotContain("bed-tipping", text);
    }
}
