using System.Text.Json;

namespace Ramwright.Tests.Cli;

public class StockCommandTest
{
    [Theory]
    [InlineData("UPN 200")]
    [InlineData("2 x UPN 200")]
    [InlineData("flat 200x40")]
    [InlineData("S275")]
    [InlineData("M24")]
    [InlineData("8.8")]
    [InlineData("VG 46")]
    [InlineData("2SN")]
    public void ANameIsFound(string name)
    {
        (int code, string text) = Run.Command("stock", name, "--json");

        Assert.Equal(0, code);
        Assert.NotEmpty(JsonDocument.Parse(text).RootElement.GetProperty("stock").EnumerateArray());
    }

    [Fact]
    public void AWrongNameNamesTheNearest()
    {
        (int code, string text) = Run.Command("stock", "UPM 200");

        Assert.Equal(2, code);
        Assert.Contains("UPN 200", text);
    }

    [Fact]
    public void WithoutANameItSaysWhatThereIs() => Assert.Contains("UPN", Run.Command("stock").Text);
}
