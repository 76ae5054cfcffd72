using Ramwright.Files;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Tests.Ladders;

/// <summary>What does not fit, or can hardly be meant, is spoken of.</summary>
public class MountRoomTest
{
    private static PressReading Read(string cylinder, string frame) => PressFile.Read($$"""
        wanted: 25 t
        cylinder: { kind: double-acting, bore: 125 mm, {{cylinder}} }
        pump: { kind: electric, motor: 3 kW }
        frame: { {{frame}} }
        """, "test.press.yaml", StockTables.Built);

    private static string Cautions(string cylinder, string frame)
    {
        PressReading reading = Read(cylinder, frame);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        return string.Join('\n', Resolver.Resolve(reading.Press!, StockTables.Built).Cautions.Select(c => c.Text()));
    }

    private static string Flange(double circle, int count) => $"barrel-outside: 150 mm, mount: {{ kind: flange, thread: M20, class: 8.8, count: {count}, circle: {circle:0} mm, plate: 40 mm }}";

    private static string Closed(string crown, string more = "") => $"kind: closed, daylight: 600 mm, width: 500 mm, section: 2 x UPN 200, crown: {{ {crown} }}{more}";

    [Fact]
    public void ABarrelWiderThanTheGapIsSpokenOf()
    {
        const string said = "Say frame.crown.apart: 152 mm or more";

        Assert.Contains(said, Cautions(Flange(200, 8), Closed("section: 2 x UPN 260, apart: 130 mm")), StringComparison.Ordinal);
        Assert.DoesNotContain(said, Cautions(Flange(200, 8), Closed("section: 2 x UPN 260, apart: 152 mm")), StringComparison.Ordinal);
        // a cylinder that hangs below with all its stroke does not stand in the gap
        Assert.DoesNotContain(said, Cautions("stroke: 250 mm, " + Flange(200, 8), Closed("section: 2 x UPN 260, apart: 130 mm", ", ram-drop: 250 mm")), StringComparison.Ordinal);
    }

    [Fact]
    public void BoltsThatRunIntoAWebAreSpokenOf()
    {
        const string said = "run into the webs of the crown";
        // eight on 200 mm: the second stands 70.7 mm out, webs from 65 to 75 mm
        string cautions = Cautions(Flange(200, 8), Closed("section: 2 x UPN 260, apart: 130 mm"));

        Assert.Contains(said, cautions, StringComparison.Ordinal);
        Assert.Contains("70.7 mm", cautions, StringComparison.Ordinal);
        Assert.Contains("Turn the ring", cautions, StringComparison.Ordinal);
        // six on 210 mm stand at 52.5 and 105 mm, the webs of UPN 220 from 80 to 89 mm
        Assert.DoesNotContain(said, Cautions(Flange(210, 6), Closed("section: 2 x UPN 220, apart: 160 mm")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bore: 700 mm, rod: 50 mm", "less than a quarter of it")]
    [InlineData("bore: 70 mm, rod: 66 mm", "leaves a ring of 2 mm")]
    [InlineData("bore: 125 mm, rod: 70 mm", null)]
    [InlineData("bore: 50 mm, rod: 45 mm", null)]
    public void ARodThatCanHardlyBeMeantIsAskedAbout(string cylinder, string? said)
    {
        PressReading reading = PressFile.Read($$"""
            wanted: 10 t
            cylinder: { kind: double-acting, {{cylinder}} }
            pump: { kind: electric, motor: 3 kW }
            frame: { {{Closed("section: 2 x UPN 220")}} }
            """, "test.press.yaml", StockTables.Built);
        string all = string.Join('\n', Resolver.Resolve(reading.Press!, StockTables.Built).Cautions.Select(c => c.Text()));

        if (said is null)
            Assert.DoesNotContain("cylinders are", all, StringComparison.Ordinal);
        else
            Assert.Contains(said, all, StringComparison.Ordinal);
    }

    [Fact]
    public void ARingTooThinToBeMadeIsRefused()
    {
        PlacedFault fault = Assert.Single(Read("rod: 124.9 mm", Closed("section: 2 x UPN 220")).Faults);

        Assert.Equal("cylinder.rod", fault.Path);
        Assert.Contains("no room for a shoulder", fault.Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("60 in", true)]
    [InlineData("700 mm", false)]
    public void AStrokeFarBeyondTheDaylightIsAskedAbout(string stroke, bool said) =>
        Assert.Equal(said, Cautions("stroke: " + stroke, Closed("section: 2 x UPN 220")).Contains("no more than that of the stroke", StringComparison.Ordinal));

    [Theory]
    [InlineData(80, true)]
    [InlineData(20, false)]
    public void AFilletFarThickerThanItsSteelIsAskedAbout(double leg, bool said) => Assert.Equal(said,
        Cautions("rod: 70 mm", $"kind: closed, daylight: 600 mm, width: 500 mm, section: flat 200x30, crown-joint: {{ kind: weld, weld: {{ leg: {leg:0} mm }} }}")
            .Contains("frame.crown-joint.weld: a fillet", StringComparison.Ordinal));

    [Fact]
    public void AnArmsGapIsNamedWhereItsSlotLeavesNoFlange()
    {
        PressReading reading = Read("rod: 70 mm",
            "kind: open-front, daylight: 400 mm, throat: 250 mm, column: { section: HEB 300 }, upper-arm: { section: 2 x flat 200x30, apart: 240 mm }, lower-arm: { section: 2 x flat 200x30, apart: 240 mm }, arm-joint: { kind: slot }");

        var refused = Assert.Throws<PressFaultsException>(() => Resolver.Resolve(reading.Press!, StockTables.Built));
        Fault fault = refused.Faults[0];
        Assert.Equal("frame.upper-arm.apart", fault.Path);
        // 300 less two bars of 30 and two plays of 1
        Assert.StartsWith("less than 238 mm", fault.Wanted.Text(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    [InlineData("drainage-mill-puller")]
    public void NothingOfTheExamplesIsAskedAbout(string example)
    {
        string path = Path.Combine(Repository.Folder("examples"), example + ".press.yaml");
        PressOnDisk press = PressOnDisk.Read(File.ReadAllText(path), path, example);

        Assert.DoesNotContain(press.Rig!.Cautions, c => c.Text().Contains("as you mean them", StringComparison.Ordinal)
            || c.Text().Contains("run into the webs", StringComparison.Ordinal) || c.Text().Contains("does not go through a gap", StringComparison.Ordinal));
    }
}
