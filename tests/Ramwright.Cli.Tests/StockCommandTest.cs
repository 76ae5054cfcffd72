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
    [InlineData("L 80x80x8")]
    [InlineData("T 100")]
    [InlineData("half IPE 200")]
    [InlineData("3/4 UNC")]
    [InlineData("grade 5")]
    [InlineData("spring")]
    public void ANameIsFound(string name)
    {
        (int code, string text) = Run.Command("stock", name, "--json");

        Assert.Equal(0, code);
        Assert.NotEmpty(JsonDocument.Parse(text).RootElement.GetProperty("stock").EnumerateArray());
    }

    [Theory]
    [InlineData("angle", "L 80x80x8")]
    [InlineData("100x50 channel", "UPN 100")]
    [InlineData("100x50 channel", "PFC 100x50x10")]
    [InlineData("UPN", "UPN 200")]
    [InlineData("UB 203", "UB 203x133x30")]
    [InlineData("square tube 100", "SHS 100x100x6")]
    [InlineData("100 tee", "T 100")]
    public void AKindAndASizeListWhatFits(string words, string one)
    {
        (int code, string text) = Run.Command("stock", words, "--json");

        Assert.Equal(0, code);
        Assert.Contains(JsonDocument.Parse(text).RootElement.GetProperty("stock").EnumerateArray(), item => item.GetProperty("name").GetString() == one);
        Assert.DoesNotContain("HEB", text);
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
