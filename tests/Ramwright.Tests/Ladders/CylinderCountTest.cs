using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

/// <summary>Cylinders side by side, regeneration, gauge and bends on the ladder and in the cautions.</summary>
public class CylinderCountTest
{
    private static PressCheck Check(string cylinder, string more = "")
    {
        PressReading reading = PressFile.Read($$"""
            wanted: 10 t
            cylinder: { kind: double-acting, bore: 80 mm, rod: 56 mm, stroke: 400 mm, barrel-outside: 95 mm, rod-thread: M36x2, rated-pressure: 250 bar, {{cylinder}} }
            pump: { kind: electric, motor: 4 kW, relief: 210 bar }
            frame: { kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160 }
            {{more}}
            """, "test.press.yaml", StockTables.Built);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        return PressCheck.Of(Resolver.Resolve(reading.Press!, StockTables.Built));
    }

    private static Rung Rung(PressCheck check, string id) => check.Ladder.Rungs.Single(r => r.Id == id);

    [Theory]
    [InlineData("rod-buckling"), InlineData("rod-yield"), InlineData("rod-thread"), InlineData("barrel-yield"), InlineData("cylinder-rating"), InlineData("relief")]
    public void ThreeCylindersStandThreeTimesAsMuch(string id)
    {
        Rung one = Rung(Check("count: 1"), id), three = Rung(Check("count: 3"), id);
        Near.Relative(3 * one.SafeTo, three.SafeTo, 1e-9, id);
        Near.Relative(3 * one.GivesAt, three.GivesAt, 1e-9, id);
        var w = new Working();
        three.Work(w);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void SideBySideIsToldThatTheyDoNotKeepInStep()
    {
        Assert.Contains(Check("count: 2").Cautions(), c => c.Contains("do not keep in step"));
        Assert.DoesNotContain(Check("count: 1").Cautions(), c => c.Contains("do not keep in step"));
    }

    [Fact]
    public void ARegenerativePressIsWeighedByItsRod()
    {
        PressCheck plain = Check("regeneration: never"), always = Check("regeneration: always");
        double share = 56.0 * 56 / (80 * 80);
        foreach (string id in new[] { "relief", "cylinder-rating", "barrel-yield" })
            Near.Relative(share * Rung(plain, id).SafeTo, Rung(always, id).SafeTo, 1e-9, id);
        Near.Relative(Rung(plain, "rod-buckling").SafeTo, Rung(always, "rod-buckling").SafeTo, 1e-12, "the rod is the same");
        Assert.Contains(always.Cautions(), c => c.Contains("only the rod's area pushes"));
    }

    [Theory]
    [InlineData("gauge: { range: 400 bar, class: 1.6 }", "gauge", false)]
    [InlineData("gauge: { range: 600 bar }", "35 % of the gauge's range", true)]
    [InlineData("gauge: { range: 250 bar }", "84 % of the gauge's range", true)]
    [InlineData("gauge: { range: 160 bar }", "The gauge ends at 160 bar", true)]
    [InlineData("", "No gauge is stated", true)]
    public void GaugeCautions(string gauge, string words, bool told)
    {
        bool said = Check("count: 1", gauge).Cautions().Any(c => c.Contains(words, StringComparison.OrdinalIgnoreCase) && c.Contains("gauge", StringComparison.OrdinalIgnoreCase)
            && !c.Contains("Prove the press") && !c.Contains("prove the setting") && !c.Contains("shocks"));
        Assert.Equal(told, said);
    }

    [Theory]
    [InlineData("closed", true), InlineData("float", true), InlineData("tandem", false), InlineData("open", false)]
    public void ABlockedPumpHeatsTheOilBetweenStrokes(string centre, bool told) =>
        Assert.Equal(told, Check("count: 1", $"valves: {{ centre: {centre} }}").Cautions().Any(c => c.Contains("blocks the pump")));

    [Theory]
    [InlineData(120, true), InlineData(130, false)]
    public void AHoseBentTooTightIsTold(double bend, bool told) =>
        Assert.Equal(told, Check("count: 1", $"lines: [ {{ bore: 9.5 mm, type: EN 853 2SN, bend-radius: {bend} mm }} ]").Cautions().Any(c => c.Contains("bent to")));

    [Theory]
    [InlineData("NPT", true), InlineData("NPTF", false)]
    public void PlainNptIsNotTrustedAtFullPressure(string family, bool told) =>
        Assert.Equal(told, Check("count: 1", $"lines: [ {{ bore: 9.5 mm, rating: 330 bar, inlet: {{ thread: {family} 3/8, port: {family} 3/8, seal: sealant }} }} ]")
            .Cautions().Any(c => c.Contains("plain NPT")));
}
