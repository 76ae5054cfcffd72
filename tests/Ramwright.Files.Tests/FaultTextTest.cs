using System.Text.Json;

namespace Ramwright.Files.Tests;

public sealed class FaultTextTest
{
    private static readonly PlacedFault Steel = new(
        "wherry-yard.press.yaml", 14, 10, 7, "frame.steel", "no steel is called \"S275JRR\"",
        "a steel from stock, such as S275", "S275JR", "  steel: S275JRR");

    [Fact]
    public void ShowsPlaceLineMarkAndRemedy() => Assert.Equal(
        """
        wherry-yard.press.yaml:14:10  no steel is called "S275JRR"
            steel: S275JRR
                   ^^^^^^^
            wanted: a steel from stock, such as S275; nearest: S275JR

        """.ReplaceLineEndings("\n"), FaultText.Of(Steel));

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(80)]
    public void NoLineIsWiderThanAsked(int width)
    {
        foreach (string file in Directory.GetFiles(TestFiles.Of("Bad"), "*" + PressFile.Ending))
        {
            PressReading reading = PressFile.Read(File.ReadAllBytes(file), "a.press.yaml", _ => TestShelf.Shelf);
            foreach (string line in FaultText.All(reading.Faults, width).Split('\n'))
                Assert.True(line.Length <= width, $"{line.Length} columns: {line}");
        }
    }

    [Theory]
    [InlineData(40)]
    [InlineData(100)]
    public void TheMarkStandsUnderWhatItMarksInALongLine(int width)
    {
        string line = "oil: { " + string.Concat(Enumerable.Repeat("grade: VG 46, ", 12)) + "colour: red }";
        int at = line.IndexOf("colour", StringComparison.Ordinal);

        string[] shown = FaultText.Of(Steel with { Source = line, Column = at + 1, Length = 6 }, width).Split('\n');

        int source = Array.FindIndex(shown, l => l.Contains("colour"));
        Assert.Equal(shown[source].IndexOf("colour", StringComparison.Ordinal), shown[source + 1].IndexOf("^^^^^^", StringComparison.Ordinal));
    }

    [Fact]
    public void NothingFromTheFileCanDisturbATerminal()
    {
        var fault = Steel with { Found = "found \u001b[31m", Wanted = "a\u202Eb", Source = "  steel: \u001b[2JS275", File = "a\nb" };

        string text = FaultText.Of(fault);

        Assert.DoesNotContain('\u001b', text);
        Assert.DoesNotContain('\u202E', text);
        Assert.Equal(4, text.Split('\n').Length - 1);
    }

    [Fact]
    public void TheJsonFormHasStableNames() => Assert.Equal(
        """{"File":"wherry-yard.press.yaml","Line":14,"Column":10,"Length":7,"Path":"frame.steel","Found":"no steel is called \u0022S275JRR\u0022","Wanted":"a steel from stock, such as S275","Nearest":"S275JR","Source":"  steel: S275JRR"}""",
        JsonSerializer.Serialize(Steel));
}
