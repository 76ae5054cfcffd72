using Ramwright.Fabrication.Welding;
using Ramwright.Presses;

namespace Ramwright.Tests.Welding;

public class HeatTest
{
    [Theory]
    [InlineData("WD-33", WeldingProcess.Wire, 24, 200, 5, .768)]
    [InlineData("WD-35", WeldingProcess.Stick, 24, 120, 2.5, .922)]
    [InlineData("WD-35", WeldingProcess.Tig, 12, 150, 1.5, .720)]
    [InlineData("WD-35", WeldingProcess.CoredWire, 28, 260, 6.5, .896)]
    public void HeatOfARun(string id, WeldingProcess process, double u, double i, double v, double expected) =>
        new Reference(id, "EN 1011-1:2009 table 1, k 0.8 and 0.6", Trust.FoundAndRecomputed)
            .Within($"Q of {process}, {u} V, {i} A, {v} mm/s, kJ/mm", expected, HeatInput.Of(HeatInput.Efficiency(process), u, i, v), 1e-3);

    [Theory]
    [InlineData(20, 5.288, 11.36), InlineData(100, 6.643, 16.29), InlineData(150, 7.846, 21.19), InlineData(200, 9.500, 28.67)]
    public void CoolingOfThickAndThinPlate(double t0, double thick, double thin)
    {
        new Reference("WD-36", "EN 1011-2:2001 annex D; SEW 088; Q 1 kJ/mm", Trust.FoundAndRecomputed).Near($"thick plate from {t0} °C, s", thick, CoolingTime.Thick(1, t0), 1e-3);
        new Reference("WD-37", "EN 1011-2:2001 annex D; SEW 088; Q 1 kJ/mm, 10 mm", Trust.FoundAndRecomputed).Near($"thin plate from {t0} °C, s", thin, CoolingTime.Thin(1, t0, 10), 1e-3);
    }

    [Fact]
    public void TheLongerOfTheTwoHolds()
    {
        var r = new Reference("WD-38", "EN 1011-2:2001 annex D", Trust.FoundAndRecomputed);
        r.Near("15 mm, s", 7.240, CoolingTime.Thin(1, 100, 15), 1e-3);
        r.Near("20 mm, s", 4.072, CoolingTime.Thin(1, 100, 20), 1e-3);
        r.Near("20 mm, the longer, s", 6.643, CoolingTime.Of(1, 100, 20, RunPlace.OnPlate), 1e-3);
    }

    [Theory]
    [InlineData(1, 20, 14.66), InlineData(1, 100, 15.66), InlineData(1, 200, 17.37), InlineData(2, 20, 20.73), InlineData(2, 100, 22.15)]
    public void WhereThinBecomesThick(double q, double t0, double d)
    {
        new Reference("WD-39", "both formulas set equal", Trust.FoundAndRecomputed).Near($"Q {q}, {t0} °C, mm", d, CoolingTime.Transition(q, t0), 1e-3);
        double at = CoolingTime.Transition(q, t0);
        Near.Relative(CoolingTime.Thick(q, t0), CoolingTime.Thin(q, t0, at), 1e-9);
    }

    [Fact]
    public void SeamsCoolFasterThanRunsOnPlate()
    {
        var f = new Reference("WD-40", "EN 1011-2:2001 table D.1", Trust.FromMemory);
        f.Exactly("run on plate", (1.0, 1.0), CoolingTime.Factors(RunPlace.OnPlate));
        f.Exactly("butt", (0.9, 0.9), CoolingTime.Factors(RunPlace.Butt));
        f.Exactly("corner fillet", (0.9, 0.67), CoolingTime.Factors(RunPlace.Corner));
        f.Exactly("tee fillet, the faster end of its range", (0.45, 0.67), CoolingTime.Factors(RunPlace.Tee));
        var r = new Reference("WD-41", "EN 1011-2:2001 annex D with F3 0.67", Trust.FoundAndRecomputed);
        r.Near("Q 1.5 from 100 °C, s", 6.676, CoolingTime.Thick(1.5, 100, 0.67), 2e-3);
        r.Near("Q 0.768 from 20 °C, s", 2.721, CoolingTime.Thick(0.768, 20, 0.67), 2e-3);
    }

    [Fact]
    public void HeatingAMass()
    {
        var r = new Reference("WD-54", "m c ΔT, c 0.49 kJ/(kg K)", Trust.FromMemoryAndRecomputed);
        r.Near("40 kg by 130 K, kJ", 2548, HeatUp.HeatOf(40, 130) / 1e3, 1e-2);
        r.Near("kWh", 0.708, HeatUp.HeatOf(40, 130) / 3.6e6, 1e-2);
        r.Near("10 kW torch at 30 %, s", 849, HeatUp.HeatOf(40, 130) / (HeatUp.TorchShare * 10e3), 1e-2);
        double plate = .4 * .3 * .04 * 7850;
        var p = new Reference("WD-55", "m c ΔT of a plate of 400 x 300 x 40 mm", Trust.FromMemoryAndRecomputed);
        p.Near("kg", 37.68, plate, 1e-4);
        p.Near("by 80 K, kWh", 0.410, HeatUp.HeatOf(plate, 80) / 3.6e6, 1e-2);
    }

    [Fact]
    public void WhereTheTemperatureIsTaken()
    {
        var r = new Reference("WD-56", "EN ISO 13916", Trust.FromMemory);
        r.Near("10 mm plate, mm", 40, 1000 * HeatUp.MeasureAt(.010), 1e-12);
        r.Near("30 mm plate, mm", 50, 1000 * HeatUp.MeasureAt(.030), 1e-12);
        r.Near("60 mm plate, mm", 75, 1000 * HeatUp.MeasureAt(.060), 1e-12);
        r.Near("wait for 50 mm, s", 240, HeatUp.WaitFor(.050), 1e-12);
    }

    [Fact]
    public void ATorchWarmsAJointWithItsLossesAndItsTails()
    {
        HeatUp heat = HeatUp.Of(0.05, [6e-3, 7.8e-3, 7.8e-3], [.46, 1.1, 1.1], 120, 10, 20e3)!;
        // the balance by hand: what the torch gives is what the steel keeps and the air takes
        Near.Relative(HeatUp.TorchShare * 20e3 * heat.Time, heat.Heat + heat.Lost, 1e-9, "balance of heat");
        Near.Relative(20e3 * heat.Time, heat.Fuel, 1e-12);
        Assert.True(heat.Time > HeatUp.HeatOf(7850 * 21.6e-3 * 0.05, 110) / (HeatUp.TorchShare * 20e3), "longer than the zone alone would take");
        Assert.InRange(heat.Lost / heat.Heat, 0.001, 0.3);
        Assert.Null(HeatUp.Of(0.05, [6e-3], [.46], 200, 10, 50));
    }

    [Fact]
    public void LossOfAHotFace()
    {
        // own numbers: 6·130 + 0.7·5.670374e-8·(423.15⁴ − 293.15⁴)
        new Reference("MW-03", "still air and radiation by Stefan and Boltzmann, by hand", Trust.OwnNumbers)
            .Near("150 °C in a room of 20 °C, W/m²", 6 * 130 + 0.7 * 5.670374e-8 * (Math.Pow(423.15, 4) - Math.Pow(293.15, 4)), HeatUp.LossOf(150, 20), 1e-9);
    }
}
