using Ramwright.Files;
using Ramwright.Power;
using Ramwright.Presses;

namespace Ramwright.Tests.Power;

/// <summary>What a raised ram does when power fails: the valves' own logic, and nothing guessed safe.</summary>
public class PowerFailingTest
{
    private static IReadOnlyList<PowerFailure> Fails(string cylinder, string more = "", string pump = "{ kind: electric, motor: 2.2 kW }")
    {
        PressReading reading = PressFile.Read($$"""
            wanted: 10 t
            cylinder: { bore: 100 mm, rod: 56 mm, stroke: 300 mm, {{cylinder}} }
            pump: {{pump}}
            frame: { kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160 }
            {{more}}
            """, "test.press.yaml", StockTables.Built);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        Rig rig = Resolver.Resolve(reading.Press!, StockTables.Built);
        return PowerFailing.Of(rig, PowerStudy.Of(rig.Cylinder, rig.Pump, rig.Lines, rig.Oil));
    }

    private const string Down = "kind: double-acting, pushes: down, moving-mass: 60 kg", Up = "kind: double-acting, pushes: up, moving-mass: 60 kg";
    private const string TwoHoses = "lines: [ { duty: pressure, bore: 9.5 mm }, { duty: return, bore: 12.7 mm } ]";

    [Fact]
    public void NothingSaidIsNamedAsMissingAndNeverSafe()
    {
        IReadOnlyList<PowerFailure> fails = Fails("kind: double-acting");

        Assert.Equal(["electricity", "hose"], fails.Select(f => f.Lost));
        Assert.Equal([RamFate.Unknown, RamFate.Drops], fails.Select(f => f.Fate));
        foreach (string key in new[] { "cylinder.pushes", "cylinder.moving-mass", "valves.centre", "valves.handle", "valves.holding" })
            Assert.Contains(fails[0].Missing, m => m.StartsWith(key, StringComparison.Ordinal));
        Assert.Contains(fails[1].Missing, m => m.StartsWith("valves.holding-at-cylinder", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("centre: float, handle: spring-centred, holding: pilot-check", RamFate.Holds)]
    [InlineData("centre: open, handle: spring-centred, holding: pilot-check", RamFate.Holds)]
    [InlineData("centre: tandem, handle: spring-centred, holding: pilot-check", RamFate.Creeps)]
    [InlineData("centre: closed, handle: spring-centred, holding: pilot-check", RamFate.Creeps)]
    [InlineData("centre: tandem, handle: spring-centred, holding: counterbalance", RamFate.Holds)]
    [InlineData("centre: tandem, handle: spring-centred, holding: none", RamFate.Creeps)]
    [InlineData("centre: closed, handle: spring-centred", RamFate.Creeps)]
    [InlineData("centre: float, handle: spring-centred, holding: none", RamFate.Drops)]
    [InlineData("centre: open", RamFate.Drops)]
    [InlineData("centre: closed, handle: detent, holding: none", RamFate.Drops)]
    [InlineData("centre: closed", RamFate.Unknown)]
    [InlineData("handle: spring-centred", RamFate.Unknown)]
    public void ElectricityLost(string valves, RamFate fate) => Assert.Equal(fate, Fails(Down, $"valves: {{ {valves} }}")[0].Fate);

    [Theory]
    [InlineData("holding: pilot-check, holding-at-cylinder: yes", RamFate.Holds)]
    [InlineData("holding: counterbalance, holding-at-cylinder: yes", RamFate.Holds)]
    [InlineData("holding: counterbalance, holding-at-cylinder: no", RamFate.Drops)]
    [InlineData("holding: counterbalance", RamFate.Drops)]
    [InlineData("hose-burst: yes", RamFate.Creeps)]
    [InlineData("holding: none", RamFate.Drops)]
    public void HoseLost(string valves, RamFate fate) => Assert.Equal(fate, Fails(Down, $"valves: {{ {valves} }}")[1].Fate);

    [Fact]
    public void OnlyTheHoseOfTheSideThatHoldsLetsTheRamDown()
    {
        Assert.Equal(["electricity", "return hose 2"], Fails(Down, TwoHoses).Select(f => f.Lost));
        Assert.Equal(["electricity", "hose 1"], Fails(Up, TwoHoses).Select(f => f.Lost));
        Assert.Equal(["electricity", "hose 1", "return hose 2"], Fails("kind: double-acting", TwoHoses).Select(f => f.Lost));
    }

    [Fact]
    public void ABurstHoseLetsItDownByTorricelli()
    {
        double a = Math.PI / 4 * (0.1 * 0.1 - 0.056 * 0.056), port = Math.PI / 4 * 0.0127 * 0.0127;
        double v = port / a * Math.Sqrt(2 * 60 * 9.80665 / a / Density());
        Near.Relative(v, Fails(Down, TwoHoses)[1].What.Numbers[0].Si, 1e-9);
    }

    [Fact]
    public void AHeavyRamFallsNoFasterThanFree() =>
        new Reference("CM-F1", "free fall over 0.3 m, √(2 g s)", Trust.Recomputed)
            .Near("speed, m/s", 2.4257, RamFall.FromOpenPort(1e6, 0.005, 0.05, 0.3, 870), 1e-4);

    [Fact]
    public void AnOpenCentreLetsItDownThroughItsLine()
    {
        double v = Fails(Up, TwoHoses + "\nvalves: { centre: open, handle: spring-centred }")[0].What.Numbers[0].Si;

        // laminar through 3 m of 9.5 mm, ends left out, is a little faster: p = 128 μ L Q/(π d⁴)
        double A = Math.PI / 4 * 0.01, p = 60 * 9.80665 / A, mu = OilViscosity.Of(Oil()) * Density();
        double laminar = p * Math.PI * Math.Pow(0.0095, 4) / (128 * mu * 3) / A;
        Assert.InRange(v, 0.8 * laminar, laminar);
    }

    [Fact]
    public void ASpringHoldsWhatIsLighterThanItself()
    {
        const string Spring = "kind: single-acting, pushes: down, return: spring, spring-preload: 0.9 kN";
        Assert.All(Fails(Spring + ", moving-mass: 60 kg"), f => Assert.Equal(RamFate.Holds, f.Fate));
        Assert.All(Fails(Spring + ", moving-mass: 100 kg"), f => Assert.Equal(RamFate.Drops, f.Fate));
        Assert.All(Fails(Spring), f => Assert.Equal(RamFate.Unknown, f.Fate));
        // an assumed spring holds nothing up
        Assert.All(Fails("kind: single-acting, pushes: down, return: spring, moving-mass: 1 kg"), f => Assert.Equal(RamFate.Unknown, f.Fate));
        Assert.All(Fails(Spring.Replace("down", "up") + ", moving-mass: 60 kg"), f => Assert.NotEqual(RamFate.Holds, f.Fate));
    }

    [Fact]
    public void AirAndHandAreNamedForWhatTheyAre()
    {
        Assert.Equal("air", Fails("kind: double-acting", pump: "{ kind: air, ratio: 100, air-pressure: 6 bar }")[0].Lost);
        Assert.Equal("the hand on the pump", Fails("kind: double-acting", pump: "{ kind: hand, per-stroke: 2.5 mL }")[0].Lost);
    }

    [Fact]
    public void ALevelRamDoesNotFall() => Assert.All(Fails("kind: double-acting, pushes: sideways"), f => Assert.Equal(RamFate.Holds, f.Fate));

    private static RigOil Oil()
    {
        Assert.True(StockTables.Built.TryOil("VG 46", out var grade));
        return new RigOil(grade, 20);
    }

    private static double Density() => Oil().Grade.Density;
}
