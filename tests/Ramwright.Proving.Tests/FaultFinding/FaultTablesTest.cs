using Ramwright.FaultFinding;
using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Tests.Proving;

namespace Ramwright.Tests.FaultFinding;

public sealed class FaultTablesTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-faults").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void TheShippedTablesHangTogether()
    {
        FaultTables tables = FaultFiles.Built;
        Assert.Equal(tables.Causes.Count, tables.Causes.Select(c => c.Id).Distinct().Count());
        Assert.Equal(tables.Signs.Count, tables.Signs.Select(s => s.Id).Distinct().Count());
        Assert.All(tables.Links, l => Assert.True(tables.Causes.Any(c => c.Id == l.Cause) && tables.Signs.Any(s => s.Id == l.Sign), $"{l.Cause} {l.Sign}"));
        Assert.All(tables.Causes, c => Assert.True(tables.Links.Count(l => l.Cause == c.Id) >= 2, c.Id));
        Assert.All(tables.Causes, c => Assert.Equal("practice", c.Standing));
        Assert.All(tables.Causes, c => Assert.NotEqual("", c.Do));
        // every cause brings about something that a person comes with
        Assert.All(tables.Causes, c => Assert.Contains(tables.Links, l => l.Cause == c.Id && tables.Signs.Single(s => s.Id == l.Sign).IsSymptom));
    }

    [Theory]
    [InlineData("railing-shop", "pump-check", "suction-blocked")]
    [InlineData("wherry-yard", "suction-blocked", "pump-check")]
    [InlineData("drainage-mill-puller", "hand-check", "relief-dirt-none")]
    public void OnlyPartsThatThePressHasAreSuspected(string example, string there, string not)
    {
        var network = FaultNetwork.Of(ProvedPress.Press(example).Rig, FaultFiles.Built);
        Assert.Contains(network.Causes, c => c.Id == there);
        Assert.DoesNotContain(network.Causes, c => c.Id == not);
    }

    [Theory]
    [InlineData("railing-shop", "air-low", "low-pressure=yes, slow-under-load=yes, air-running=yes")]
    [InlineData("railing-shop", "silencer-ice", "slow=yes, frost=yes, air-running=no")]
    [InlineData("railing-shop", "pump-check", "never-stops=yes, sinks=yes, pump-alone=yes, exhaust-blows=no")]
    [InlineData("railing-shop", "air-in-oil", "jerks=yes, bubbles=yes, level=no")]
    [InlineData("wherry-yard", "piston-seal", "sinks=yes, past-piston=yes")]
    [InlineData("wherry-yard", "suction-blocked", "howls=yes, suction-hose=yes, level=no")]
    [InlineData("wherry-yard", "relief-low", "low-pressure=yes, relief-answers=yes, second-gauge=no")]
    [InlineData("wherry-yard", "rotation", "no-pressure=yes, turns-right=yes")]
    [InlineData("wherry-yard", "coupler", "no-return=yes, coupler-loose=yes")]
    [InlineData("wherry-yard", "oil-cools", "sinks=yes, cooler-later=yes, drips-at-line=no, drips-at-gland=no")]
    [InlineData("drainage-mill-puller", "spring-weak", "no-return=yes, spring-pulls=yes, moves-by-hand=no, coupler-loose=no")]
    public void WhatAFitterWouldSuspectComesFirst(string example, string cause, string signs)
    {
        Seen[] seen = [.. signs.Split(", ").Select(s => new Seen(s.Split('=')[0], s.EndsWith("yes", StringComparison.Ordinal)))];
        FaultSearch search = FaultSearch.Of(ProvedPress.Press(example).Rig, FaultFiles.Built, seen);
        Assert.Equal(cause, search.Suspects[0].Cause.Id);
        Assert.True(search.Suspects[0].Chance > 0.5, $"{search.Suspects[0].Chance}");
        Assert.Equal(seen.Length, search.Seen.Count);
    }

    [Fact]
    public void SafetyStandsBeforeOpeningALine()
    {
        FaultSearch air = FaultSearch.Of(ProvedPress.Press("railing-shop").Rig, FaultFiles.Built, [new Seen("low-pressure", true)]);
        Assert.Contains(air.BeforeOpening, s => s.Contains("air off", StringComparison.Ordinal));
        Assert.Contains(air.BeforeOpening, s => s.Contains("prop", StringComparison.Ordinal));
        Assert.Contains(air.BeforeOpening, s => s.Contains("zero", StringComparison.Ordinal));
        FaultSearch held = FaultSearch.Of(ProvedPress.Press("wherry-yard").Rig, FaultFiles.Built, [new Seen("sinks", true)]);
        Assert.Contains(held.BeforeOpening, s => s.Contains("holding valve", StringComparison.Ordinal));
        Assert.Contains(held.BeforeOpening, s => s.Contains("isolator", StringComparison.Ordinal));
    }

    [Fact]
    public void APersonsOwnRowsStandInTheirStead()
    {
        string press = Path.Combine(_folder, "mine.press.yaml");
        File.WriteAllText(Path.Combine(_folder, "mine.fault-causes.csv"), "id,needs,prior,opens,says,do,standing\nair-low,air,0.5,no,the yard's air is weak,buy a bigger one,own count\nmice,,0.01,no,mice,a cat,own count\n");
        (FaultTables tables, IReadOnlyList<TableFault> faults) = FaultFiles.For(press);
        Assert.Empty(faults);
        Assert.Equal(0.5, tables.Causes.Single(c => c.Id == "air-low").Prior);
        Assert.Contains(tables.Causes, c => c.Id == "mice");
        Assert.Equal(FaultFiles.Built.Causes.Count + 1, tables.Causes.Count);
    }

    [Fact]
    public void ABadRowIsSaidWithItsLine()
    {
        File.WriteAllText(Path.Combine(_folder, "mine.fault-causes.csv"), "id,needs,prior,opens,says,do,standing\nair-low,air,1.5,no,x,y,z\nmice,stable,0.1,no,x,y,z\nok,,0.1,no,x,y,z\n");
        (FaultTables tables, IReadOnlyList<TableFault> faults) = FaultFiles.For(Path.Combine(_folder, "mine.press.yaml"));
        Assert.Equal([2, 3], faults.Select(f => f.Line));
        Assert.Contains(tables.Causes, c => c.Id == "ok");
    }
}
