using System.Text;
using Ramwright.Presses;

namespace Ramwright.Files.Tests;

public sealed class PressFileTest
{
    private const string Minimal = """
        wanted: 20 t
        cylinder: { kind: double-acting, bore: 100 mm }
        pump: { kind: electric, motor: 3 hp }
        frame: { kind: closed, daylight: 600 mm,
                 width: 500 mm,
                 section: HEB 160 }
        """;

    [Fact]
    public void SixLinesAreAPress()
    {
        PressReading reading = Read(Minimal);

        Assert.Empty(reading.Faults);
        Press press = reading.Press!;
        Assert.Equal(20 * 9806.65, press.Wanted!.Value, 6);
        Assert.Equal(0.1, Assert.IsType<DoubleActing>(press.Cylinder).Bore);
        Assert.Equal(3 * 745.69987158227, Assert.IsType<ElectricPack>(press.Pump).Motor!.Value, 6);
        var frame = Assert.IsType<ClosedFrame>(press.Frame);
        Assert.Equal((0.6, 0.5, "HEB 160"), (frame.Daylight, frame.Width, frame.Section));
        Assert.Null(frame.Crown);
        Assert.Null(press.Lines);
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void AnyLineEndWillDo(string end) => IsThePress(Read(Minimal.ReplaceLineEndings(end)));

    [Fact]
    public void AByteOrderMarkIsPassedOver() => IsThePress(Read("\uFEFF" + Minimal));

    // records are the same where all that they say is
    private static void IsThePress(PressReading reading)
    {
        Assert.Empty(reading.Faults);
        Assert.Equal(Read(Minimal).Press, reading.Press);
    }

    [Fact]
    public void AnEmptyHeadingSaysNothing()
    {
        PressReading reading = Read(Minimal + "\nloading:\nlines:\noil:\n#  grade: VG 46\n");

        Assert.Empty(reading.Faults);
        Assert.Null(reading.Press!.Loading);
        Assert.Null(reading.Press.Lines);
    }

    [Fact]
    public void WithoutAShelfNamesAreLeftUnchecked()
    {
        string text = Minimal.Replace("HEB 160", "anything");
        PressReading loose = PressFile.Read(text, "x", shelf: null);

        Assert.Empty(loose.Faults);
        Assert.Equal("anything", Assert.IsType<ClosedFrame>(loose.Press!.Frame).Section);
        Assert.Equal("frame.section", Assert.Single(Read(text).Faults).Path);
    }

    [Fact]
    public void TheShelfIsAskedForWithTheTablesThatTheFileNames()
    {
        IReadOnlyList<string>? asked = null;

        PressFile.Read(Minimal + "\nstock: [mine.csv, \"yours.csv\"]", "x", names =>
        {
            asked = names;
            return TestShelf.Shelf;
        });

        Assert.Equal(["mine.csv", "yours.csv"], asked);
    }

    [Theory]
    [InlineData("wanted: 20 t", "wanted")]
    [InlineData("100 mm", "cylinder.bore")]
    [InlineData("HEB 160", "frame.section")]
    [InlineData("closed", "frame.kind")]
    public void EveryValueHasItsPlace(string written, string path)
    {
        PressReading reading = Read(Minimal);

        Assert.True(reading.Map.TryFind(path, out SourceMap.Spot? spot));
        string value = reading.Text.Substring(spot.Value.Offset, spot.Value.Length);
        Assert.Equal(written[(written.LastIndexOf(": ", StringComparison.Ordinal) is var i && i >= 0 ? i + 2 : 0)..], value);
        string line = reading.Text.Split('\n')[spot.Value.Line - 1];
        Assert.Equal(value, line.Substring(spot.Value.Column - 1, spot.Value.Length));
    }

    [Fact]
    public void AValueIsReplacedInItsPlaceAndCommentsStay()
    {
        PressReading reading = Read(Starter.Text("closed"));
        Assert.True(reading.Map.TryFind("cylinder.bore", out SourceMap.Spot? spot));

        string changed = reading.Text[..spot.Value.Offset] + "5 in" + reading.Text[(spot.Value.Offset + spot.Value.Length)..];

        Assert.Equal(0.127, Read(changed).Press!.Cylinder!.Bore!.Value, 12);
        Assert.Equal(Starter.Text("closed").Replace("bore: 125 mm  ", "bore: 5 in  "), changed);
    }

    [Fact]
    public void QuotedValuesHaveTheirQuotesInTheirPlace()
    {
        PressReading reading = Read(Minimal.Replace("600 mm", "\"24 in\""));

        Assert.True(reading.Map.TryFind("frame.daylight", out SourceMap.Spot? spot));
        Assert.Equal("\"24 in\"", reading.Text.Substring(spot.Value.Offset, spot.Value.Length));
        Assert.Equal(0.6096, reading.Press!.Frame!.Daylight!.Value, 12);
    }

    [Fact]
    public void ItemsOfListsHavePlacesByNumber()
    {
        PressReading reading = Read(Minimal + "\nlines:\n  - { bore: 9.5 mm }\n  - bore: 12.7 mm\n    length: 2 m\n");

        Assert.Equal(0.0127, reading.Press!.Lines![1].Bore);
        Assert.Equal((10, 13), (reading.Map.PointAt("lines.1.length").Line, reading.Map.PointAt("lines.1.length").Column));
    }

    [Fact]
    public void LaterFaultsFindTheirPlaces()
    {
        PressReading reading = Read(Minimal);

        IReadOnlyList<PlacedFault> placed = reading.Placed(
            [new Fault("frame.crown.openings.0", "too wide", "less"), new Fault("cylinder.bore", "too small", "more")]);

        Assert.Equal(("cylinder.bore", 2, 40, 6), (placed[0].Path, placed[0].Line, placed[0].Column, placed[0].Length));
        Assert.Equal((4, 1, 5), (placed[1].Line, placed[1].Column, placed[1].Length));
    }

    [Fact]
    public void AFaultOfAQuantityPointsIntoTheQuotedValue()
    {
        PlacedFault fault = Assert.Single(Read(Minimal.Replace("600 mm", "\"600 mn\"")).Faults);

        Assert.Equal("mn", fault.Source.Substring(fault.Column - 1, fault.Length));
    }

    [Fact]
    public void AFileThatIsNotThereIsAFault()
    {
        PlacedFault fault = Assert.Single(PressFile.Load("no-such.press.yaml", _ => null).Faults);

        Assert.Equal("there is no such file", fault.Found);
        Assert.Equal("this is a folder", Assert.Single(PressFile.Load(Path.GetTempPath(), _ => null).Faults).Found);
    }

    [Fact]
    public void AFileIsReadFromDisk()
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + PressFile.Ending);
        File.WriteAllText(file, Minimal);
        try
        {
            IsThePress(PressFile.Load(file, _ => TestShelf.Shelf));
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Theory]
    [InlineData('x', "too long")]
    [InlineData('[', "too long")]
    public void MoreThanAMegabyteIsNotRead(char c, string found)
    {
        string text = new(c, PressFile.LongestFile + 1);

        Assert.Contains(found, Assert.Single(Read(text).Faults).Found);
        Assert.Contains(found, Assert.Single(PressFile.Read(Encoding.UTF8.GetBytes(text), "x", _ => null).Faults).Found);
    }

    [Fact]
    public void ManyFaultsAreCutAtAHundred()
    {
        string text = Minimal + "\n" + string.Concat(Enumerable.Range(0, 300).Select(i => $"key{i}: 1\n"));

        Assert.Equal(100, Read(text).Faults.Count);
        Assert.EndsWith("100 faults; there may be more\n", FaultText.All(Read(text).Faults));
    }

    private static PressReading Read(string text) => PressFile.Read(text, "x" + PressFile.Ending, TestShelf.Shelf);
}
