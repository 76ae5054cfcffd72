using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Tests.Proving;

namespace Ramwright.Tests.Readings;

/// <summary>What cannot be so on the press is never worked into a result.</summary>
public sealed class ReadingGateTest
{
    private static PressCheck Yard => ProvedPress.Press("wherry-yard");

    private static readonly string[] Sound = ["top-pressure 213 bar", "top-pressure 214 bar", "top-pressure 213 bar", "top-pressure 212 bar"];

    [Theory]
    [InlineData("top-pressure 2130 bar", "the press's gauge can show, which ends at 400 bar", null)]
    [InlineData("pressure 9000 bar", "can show", null)]
    [InlineData("dial 0.4 mm at=opening pressure=1040 bar", "1040 bar is more than", null)]
    [InlineData("squeezes 100 pressure=1200 bar", "can show", null)]
    [InlineData("dial 0.4 mm at=openning pressure=104 bar", "no place called \"openning\"", "opening")]
    [InlineData("bore 1250 mm", "nowhere near", null)]
    [InlineData("load 1800 kN pressure=104 bar", "more than the oil can push", null)]
    [InlineData("sign yes at=low-presure", "no sign called", "low-pressure")]
    [InlineData("look ok at=relif", "nothing to look at", "relief")]
    [InlineData("strike 9", "no reading stands on line 9", null)]
    public void ALineThatCannotBeSoIsRefusedInWords(string reading, string found, string? nearest)
    {
        PlacedFault? fault = ReadingGate.Refuses(Yard, ProvedPress.Log(Sound), "2026-05-09 Ines " + reading, "--add", UnitSystem.Metric);
        Assert.NotNull(fault);
        Assert.Contains(found, fault.Found, StringComparison.Ordinal);
        Assert.Equal(nearest, fault.Nearest);
        Assert.NotEmpty(fault.Wanted);
    }

    [Theory]
    [InlineData("top-pressure 215 bar")]
    [InlineData("pressure 260 bar")]
    [InlineData("dial 0.4 mm at=opening pressure=104 bar")]
    [InlineData("bore 125.04 mm")]
    [InlineData("look not-ok at=paint")]
    [InlineData("strike 2")]
    public void ALineThatMayBeSoIsNot(string reading) =>
        Assert.Null(ReadingGate.Refuses(Yard, ProvedPress.Log(Sound), "2026-05-09 Ines " + reading, "--add", UnitSystem.Metric));

    [Fact]
    public void AnInstrumentOfTheLogSetsWhatCanBeShown()
    {
        ReadingLog log = ProvedPress.Log("instrument G2 measures=pressure range=250 bar class=1");
        Assert.Contains("G2 can show", ReadingGate.Refuses(Yard, log, "2026-05-09 Ines top-pressure 260 bar instrument=G2", "", UnitSystem.Metric)!.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutAGaugeThePumpSetsTheLimit()
    {
        PressCheck bare = ProvedPress.Press("wherry-yard", "gauge: { range: 400 bar, class: 1.6 }", "");
        Assert.Contains("far more than this pump", ReadingGate.Refuses(bare, ProvedPress.Log(), "2026-05-09 Ines top-pressure 2130 bar", "", UnitSystem.Metric)!.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void ASlippedDigitInTheLogStopsAndIsNotCounted()
    {
        Proof clean = ProvedPress.Proof(Yard, Sound), slipped = ProvedPress.Proof(Yard, [.. Sound, "top-pressure 2130 bar"]);
        string stop = Assert.Single(slipped.Stops);
        Assert.StartsWith("line 5: 2130 bar", stop, StringComparison.Ordinal);
        Assert.Contains("strike 5", stop, StringComparison.Ordinal);
        Assert.Equal(clean.Force!.Value, slipped.Force!.Value, 1e-9);
        Assert.Contains("NOT PASSED: line 5", Certificate.Html(slipped), StringComparison.Ordinal);
    }

    [Fact]
    public void AStruckLineStandsInTheLogAndDoesNotCount()
    {
        Proof struck = ProvedPress.Proof(Yard, [.. Sound, "top-pressure 2130 bar", "strike 5 note=\"213\""]);
        Assert.Empty(struck.Stops);
        Assert.Empty(struck.Log.Faults);
        Assert.Equal(4, struck.Book.All.Count);
        StruckLine line = Assert.Single(struck.Log.Struck);
        Assert.Equal("line 5, \"2026-05-09 Ines top-pressure 2130 bar\", struck out by Ines on 2026-05-09: 213", line.ToString());
        Assert.Contains("struck out by Ines", Certificate.Html(struck), StringComparison.Ordinal);
        Assert.Contains("already", ReadingGate.Refuses(Yard, struck.Log, "2026-05-09 Ines strike 5", "", UnitSystem.Metric)!.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void AStrikeThatStrikesNothingIsAFault()
    {
        var log = ReadingLog.Read("2026-05-09 Ines bore 125 mm\n2026-05-09 Ines strike 3\nnonsense\n2026-05-09 Ines strike 3\n", "x");
        Assert.Equal([2], log.Faults.Select(f => f.Line));
        Assert.Equal([3], log.Struck.Select(s => s.Line));
    }

    [Fact]
    public void PressureBeyondProofAndPumpStops()
    {
        Proof proof = ProvedPress.Proof(Yard, [.. Sound, "pressure 330 bar"]);
        Assert.Contains("line 5: 330 bar is beyond the proof", Assert.Single(proof.Stops), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("top-pressure 21.3 bar")]
    [InlineData("top-pressure 313 bar")]
    public void ReadingsThatDoNotBelongTogetherTellNoForce(string slip)
    {
        Proof proof = ProvedPress.Proof(Yard, [.. Sound, slip]);
        Assert.Null(proof.Force);
        Assert.Contains("line 5", proof.Untold, StringComparison.Ordinal);
        Assert.Contains(proof.Stops, s => s.StartsWith("no true force", StringComparison.Ordinal));
        Assert.Contains("None: the readings", Certificate.Html(proof), StringComparison.Ordinal);
    }

    [Fact]
    public void AnIntervalThatReachesDownToNothingTellsNoForce()
    {
        Proof proof = ProvedPress.Proof(Yard, "instrument G3 measures=pressure limit=300 bar", "top-pressure 213 bar instrument=G3");
        Assert.Null(proof.Force);
        Assert.Contains("no force at all", proof.Untold, StringComparison.Ordinal);
    }
}
