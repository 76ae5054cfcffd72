using Ramwright.Quantities;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Workings;
using static Ramwright.Tests.Power.Rigs;

namespace Ramwright.Tests.Power;

/// <summary>Heat into the oil, its give, and letting it off.</summary>
public class OilWarmthTest
{
    [Fact]
    public void TimeToWarmIsTheRiseTurnedRound()
    {
        // 40 L and 25 kg of steel on 1 m² at 12 W/(m² K), 0.6 kW
        double C = OilHeat.Capacity(0.040, 870, 25), UA = 12;
        var row = new Reference("LN-31", "first order", Trust.FromMemoryAndRecomputed);
        row.Near("time to rise by 21.2 K of 50 K, s", 3600, OilHeat.TimeToRise(21.2, 50, C, UA)!.Value, 0.01);
        Assert.Null(OilHeat.TimeToRise(50, 50, C, UA));
        Near.Relative(30, OilHeat.RiseAfter(50, C, UA, OilHeat.TimeToRise(30, 50, C, UA)!.Value), 1e-12);
    }

    [Fact]
    public void APackHeldAtItsReliefTurnsItsWholeShaftPowerIntoHeat()
    {
        PowerReport report = PowerStudy.Of(Double(0.100, 0.056), Electric, PackHoses, Vg46);

        HeatCase held = report.Heat[0];
        // 1 L/min at 210 bar and 0.80 overall
        Near.Relative(210e5 * 1e-3 / 60 / 0.8, held.Power, 1e-9);
        Near.Relative(20 + held.Power / (12 * 0.3), held.SettlesAt, 1e-9);
        double steady = held.Power / (12 * 0.3), C = 16e-3 * 870 * 1900;
        Near.Relative(-C / 3.6 * Math.Log(1 - 40 / steady), held.ToWarm!.Value, 1e-9);
    }

    [Fact]
    public void StrokesHeatByWhatTheWorkDoesNotTake()
    {
        PowerReport light = PowerStudy.Of(Double(0.100, 0.056), Electric, PackHoses, Vg46, new PressStroke(0.05, 0)),
            heavy = PowerStudy.Of(Double(0.100, 0.056), Electric, PackHoses, Vg46, new PressStroke(0.05, 150e3));

        // no work is taken out: all that the shaft puts in is heat
        double E = 0;
        foreach ((double p, double t) in new[] { (light.Speeds[0].PumpPressure, light.Times.Approach), (light.Pressing.PumpPressure, light.Times.Pressing!.Value) })
            E += p * 8e-3 / 60 / 0.8 * t;
        Assert.True(light.Heat[1].Power > E / light.Times.Whole!.Value, "the return adds to it");
        Assert.InRange(heavy.Heat[1].Power, light.Heat[1].Power, heavy.Heat[0].Power);
        // of a press without losses only the work is taken out
        RigElectricPack sound = Electric with { HighStage = new RigStage(1e-6, 1, 1), LowStage = null, Motor = 5000 };
        HeatCase none = PowerStudy.Of(Double(0.100, 0.056) with { SealFriction = 0 }, sound, [], Vg46, new PressStroke(0.05, 100e3)).Heat[1];
        Assert.InRange(none.Power, 0, 1e-6);
    }

    [Fact]
    public void PumpsThatStopDoNotHeatTheOil()
    {
        Assert.Empty(PowerStudy.Of(Single(0.110), Air, Hoses, Vg46).Heat);
        Assert.Empty(PowerStudy.Of(Single(0.110), Hand, Hoses, Vg46).Heat);
    }

    [Fact]
    public void TheOilPressedTogetherCostsTravel()
    {
        var row = new Reference("LN-24", "elastic energy p² V/(2 K)", Trust.FromMemoryAndRecomputed);
        double dV = BulkModulus.Compression(3e-3, 700 * Bar);
        LettingOff off = LettingOff.Of(dV, 5026.5e-6, StoredEnergy.InOil(700 * Bar, 3e-3), Hoses);
        row.Near("3 L at 700 bar, travel lost in a bore of 80 mm, mm", 0.140e6 / 5026.5, off.LostTravel * 1e3, 0.002);
        row.Near("energy, J", 4900, off.Energy, 0.002);
        // 0.14 L through 6.4 mm at the 10 m/s of a pressure line
        Near.Relative(0.140e-3 / (10 * Math.PI / 4 * 0.0064 * 0.0064), off.LeastTime!.Value, 1e-9);
        Assert.True(off.Slowly);
        Assert.False(LettingOff.Of(1e-6, 5026.5e-6, 1, Hoses).Slowly);
        Assert.Null(LettingOff.Of(dV, 5026.5e-6, 1, []).LeastTime);
    }

    [Theory]
    [InlineData(250, 1.6, 0.84, GaugeVerdict.High), InlineData(315, 1.6, 0.667, GaugeVerdict.Well)]
    [InlineData(400, 1.6, 0.525, GaugeVerdict.Well), InlineData(600, 1.6, 0.35, GaugeVerdict.Low), InlineData(160, 1.6, 1.3125, GaugeVerdict.Beyond)]
    public void GaugeRangeAtTwoHundredTenBar(double range, double cls, double share, GaugeVerdict verdict)
    {
        GaugeCheck check = GaugeCheck.Of(new RigGauge(range * Bar, cls), 210 * Bar);
        var row = new Reference("LN-38", "gauge pages: half to three quarters of the range; EN 837-2 from memory", Trust.FoundAndRecomputed);
        row.Near($"share of {range} bar", share, check.Share, 0.002);
        row.Exactly($"verdict on {range} bar", verdict, check.Verdict);
    }

    [Theory]
    [InlineData(1.0, 400, 1.90), InlineData(1.6, 400, 3.05), InlineData(2.5, 400, 4.76), InlineData(1.0, 250, 1.19), InlineData(1.6, 1000, 7.62)]
    public void GaugeClassIsAShareOfTheSpan(double cls, double range, double percent) =>
        new Reference("UP-08", "class times span over reading; EN 837-1", Trust.FoundAndRecomputed)
            .Within($"class {cls} on {range} bar at 210 bar, %", percent, 100 * GaugeCheck.Of(new RigGauge(range * Bar, cls), 210 * Bar).ErrorOfReading, 0.01);

    [Theory]
    [InlineData(210, 400), InlineData(187.5, 250), InlineData(600, 1000), InlineData(190, 400)]
    public void TheNextRangeAGaugeIsMadeIn(double p, double range) => Near.Relative(range * Bar, GaugeCheck.RangeFor(p * Bar), 1e-12);

    [Theory]
    [InlineData(2800, 5000)]
    [InlineData(2200, 3000)]
    [InlineData(9000, 15_000)]
    public void TheNextRangeInPsi(double p, double range)
    {
        const double psi = 6894.757293168;

        Near.Relative(range * psi, GaugeCheck.RangeFor(p * psi, UnitSystem.Imperial), 1e-9);
    }

    [Fact]
    public void WorkingHoldsForAGauge()
    {
        var w = new Working();
        GaugeCheck.Of(new RigGauge(400 * Bar, 1.6), 210 * Bar, w);
        RamFall.FromOpenPort(60, 0.005, 0.01, 0.3, 870, w);
        RamFall.ThroughLines(60, 0.005, 0.3, PackHoses, LineDuty.Return, 46e-6, 870, w);
        LettingOff.Of(1e-4, 0.005, 1, PackHoses, w);
        WorkingCheck.Holds(w);
    }
}
