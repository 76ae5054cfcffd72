using CsCheck;
using Ramwright.Jobs;
using Ramwright.Stock;

namespace Ramwright.Tests.Jobs;

public sealed class BarCoolingTest
{
    [Theory]
    [InlineData(800, 59.8)]
    [InlineData(900, 85.6)]
    [InlineData(1000, 118.8)]
    [InlineData(1100, 160.9)]
    [InlineData(1200, 213.3)]
    public void Radiation(double T, double kW) =>
        new Reference("W4-10", "Stefan-Boltzmann, emissivity 0.8", Trust.Recomputed).Near($"q, kW/m², {T} °C", kW, new HotSurface(Convection: 0).Loses(T) / 1e3, 0.003);

    [Theory]
    [InlineData(20, 57.5)]
    [InlineData(30, 86.2)]
    [InlineData(50, 143.7)]
    public void ByRadiationAlone(double d, double t) =>
        new Reference("W4-11", "integral of εσT⁴", Trust.Recomputed).Near($"1200 to 900 °C, s, {d} mm", t, BarCooling.ByRadiation(d / 4000, 1200, 900), 0.003);

    [Theory]
    [InlineData(10, 26.7, 15.1, 6.5, 34.3)]
    [InlineData(20, 53.4, 30.2, 13.0, 68.5)]
    [InlineData(30, 80.1, 45.3, 19.5, 102.8)]
    [InlineData(50, 133.5, 75.5, 32.5, 171.3)]
    public void InStillAir(double d, double to900, double to1000, double to1100, double to850)
    {
        var reference = new Reference("W4-12", "radiation and 10 W/m²K, lumped", Trust.Recomputed);
        reference.Near($"to 900 °C, s, {d} mm", to900, BarCooling.Time(d / 4000, 1200, 900, HotSurface.InTheWorkshop), 0.005);
        reference.Near($"to 1000 °C, s, {d} mm", to1000, BarCooling.Time(d / 4000, 1200, 1000, HotSurface.InTheWorkshop), 0.005);
        reference.Near($"to 1100 °C, s, {d} mm", to1100, BarCooling.Time(d / 4000, 1200, 1100, HotSurface.InTheWorkshop), 0.008);
        reference.Near($"to 850 °C, s, {d} mm", to850, BarCooling.Time(d / 4000, 1200, 850, HotSurface.InTheWorkshop), 0.005);
    }

    [Theory]
    [InlineData(20, 439.8)]
    [InlineData(100, 487.6)]
    [InlineData(200, 529.8)]
    [InlineData(400, 605.9)]
    [InlineData(600, 760.2)]
    [InlineData(700, 1008.2)]
    [InlineData(735, 5000)]
    [InlineData(750, 1482.9)]
    [InlineData(800, 803.3)]
    [InlineData(1000, 650)]
    public void SpecificHeat(double T, double c) =>
        new Reference("W4-01", "EN 1993-1-2:2005, 3.4.1.2", Trust.FromMemoryAndRecomputed).Near($"c, J/kgK, {T} °C", c, HotSteel.SpecificHeat(T), 0.0005);

    [Fact]
    public void TheRuleThatFollows()
    {
        var reference = new Reference("W4-13", "2.67 s a millimetre of bar", Trust.Recomputed);
        reference.Near("flat 50×10, s", 44.5, BarCooling.Time(50.0 * 10 / (2 * 60) / 1e3, 1200, 900, HotSurface.InTheWorkshop), 0.005);
        reference.Near("cube 30 mm, s", 53.4, BarCooling.Time(0.005, 1200, 900, HotSurface.InTheWorkshop), 0.005);
        reference = new Reference("W4-14", "the same, other windows", Trust.Recomputed);
        reference.Near("20 mm, 1250 to 900, s", 58.7, BarCooling.Time(0.005, 1250, 900, HotSurface.InTheWorkshop), 0.005);
        reference.Near("30 mm, 1100 to 850, s", 83.3, BarCooling.Time(0.0075, 1100, 850, HotSurface.InTheWorkshop), 0.005);
        new Reference("W4-20", "short piece", Trust.Recomputed).Near("Ø30 × 45, s", 60.0, BarCooling.Time(0.03 * 0.045 / (4 * 0.045 + 2 * 0.03), 1200, 900, HotSurface.InTheWorkshop), 0.005);
    }

    [Fact]
    public void ThereAndBack() =>
        Gen.Select(Gen.Double[0.002, 0.02], Gen.Double[900, 1250], Gen.Double[0, 60])
            .Sample((VA, T, t) =>
            {
                double after = BarCooling.After(VA, T, t, HotSurface.InTheWorkshop);
                Assert.True(after <= T);
                if (after > 100)
                    Near.Absolute(t, BarCooling.Time(VA, T, after, HotSurface.InTheWorkshop), 1e-3);
            }, iter: 200);

    [Theory]
    [InlineData(0.0020, 1250, 800)]
    [InlineData(0.0045, 1200, 800)]
    public void BeginningAndEndOfForging(double carbon, double hottest, double coldest)
    {
        var reference = new Reference("W4-42", "trade table of forging temperatures by grade", Trust.Found);
        reference.Exactly($"begins, °C, C {carbon * 100} %", hottest, ForgingSteel.Plain(carbon).Hottest);
        reference.Exactly($"ends, °C, C {carbon * 100} %", coldest, ForgingSteel.Plain(carbon).Coldest);
    }

    [Fact]
    public void AlloyedSteelsEndSooner()
    {
        var reference = new Reference("W4-42", "trade table of forging temperatures by grade", Trust.Found);
        reference.Exactly("42CrMo4 begins", 1150.0, ForgingSteel.Find("4140")!.Hottest);
        reference.Exactly("42CrMo4 ends", 850.0, ForgingSteel.Find("42 CrMo4")!.Coldest);
        Assert.Null(ForgingSteel.Find("unobtainium"));
    }
}
