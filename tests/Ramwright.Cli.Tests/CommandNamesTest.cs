namespace Ramwright.Tests.Cli;

/// <summary>Words that are no command.</summary>
public class CommandNamesTest
{
    [Theory]
    [InlineData("chekc", "check")]
    [InlineData("stok", "stock")]
    [InlineData("jobs", "job")]
    public void TheNearestCommandIsNamed(string typed, string meant)
    {
        (int code, string text) = Run.Command(typed);

        Assert.Equal(2, code);
        Assert.StartsWith($"there is no command \"{typed}\"; nearest: {meant}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileAloneIsAskedAbout() => Assert.Contains("ramwright check my.press.yaml", Run.Command("my.press.yaml").Text, StringComparison.Ordinal);

    [Fact]
    public void HelpMayBeAWord()
    {
        Assert.Equal(Run.Command("--help"), Run.Command("help"));
        Assert.Equal(Run.Command("check", "--help"), Run.Command("help", "check"));
    }
}
