using Ramwright.Fabrication.Welding;
using Ramwright.Presses;

namespace Ramwright.Tests.Welding;

public class DepositTest
{
    [Theory]
    [InlineData(3, .0353), InlineData(4, .0628), InlineData(5, .0981), InlineData(6, .1413), InlineData(8, .2512), InlineData(10, .3925), InlineData(12, .5652), InlineData(15, .8831), InlineData(20, 1.570)]
    public void MassOfAFlatFillet(double leg, double kg) =>
        new Reference("WD-42", "filler handbook pages: half the leg squared at 7850 kg/m³", Trust.FoundAndRecomputed)
            .Near($"leg {leg} mm, kg/m", kg, WeldDeposit.Mass(WeldDeposit.Fillet(leg / 1000), 1), 2e-3);

    [Theory]
    [InlineData(6, .1554), InlineData(8, .2763), InlineData(10, .4317)]
    public void MassWithItsCrown(double leg, double kg) =>
        new Reference("WD-43", "calculator page: 8 mm with a tenth of crown 0.276 kg/m", Trust.FoundAndRecomputed)
            .Near($"leg {leg} mm, kg/m", kg, WeldDeposit.Mass(WeldDeposit.Crown * WeldDeposit.Fillet(leg / 1000), 1), 2e-3);

    [Fact]
    public void HalfInchFillet() =>
        new Reference("WD-44", "filler handbook, table in kg/m for 1/2 in", Trust.FoundAndRecomputed)
            .Near("kg/m", 0.632, WeldDeposit.Mass(WeldDeposit.Fillet(.0127), 1), 5e-3);

    [Fact]
    public void Throats()
    {
        var r = new Reference("WD-46", "a = z/√2", Trust.FromMemoryAndRecomputed);
        foreach ((double z, double a) in ((double, double)[])[(6, 4.24), (8, 5.66), (10, 7.07)])
            r.Within($"leg {z}, mm", a, 1000 * Ramwright.Strength.WeldSegment.ThroatOfLeg(z / 1000), 0.005);
    }

    [Fact]
    public void EfficiencyLiesInPublishedRanges()
    {
        var r = new Reference("WD-47", "estimator page: share of the filler that ends in the seam", Trust.Found);
        foreach ((WeldingProcess p, double least, double most) in ((WeldingProcess, double, double)[])
            [(WeldingProcess.Wire, .92, .98), (WeldingProcess.CoredWire, .80, .85), (WeldingProcess.Stick, .55, .65), (WeldingProcess.LowHydrogenStick, .55, .65)])
            r.Exactly($"{p} within {least} to {most}", true, WeldDeposit.Efficiency(p) >= least && WeldDeposit.Efficiency(p) <= most);
    }

    [Fact]
    public void ATenMetreJob()
    {
        var r = new Reference("WD-50", "mass over rate and share of burning arc", Trust.FoundAndRecomputed);
        double m = WeldDeposit.Mass(WeldDeposit.Crown * WeldDeposit.Fillet(.008), 10);
        r.Near("10 m of 8 mm fillet, kg", 2.763, m, 5e-3);
        r.Near("wire bought, kg", 2.91, m / WeldDeposit.Efficiency(WeldingProcess.Wire), 5e-3);
        r.Near("rods bought, kg", 4.61, m / WeldDeposit.Efficiency(WeldingProcess.Stick), 5e-3);
        r.Near("wire at 2.5 kg/h, h", 3.68, m / 2.5 / WeldDeposit.ArcShare(WeldingProcess.Wire), 5e-3);
        r.Near("rods at 1.2 kg/h, h", 9.21, m / 1.2 / WeldDeposit.ArcShare(WeldingProcess.Stick), 5e-3);
    }

    [Theory]
    [InlineData(6, 1), InlineData(8, 2), InlineData(10, 3), InlineData(12, 4)]
    public void RunsOfAFillet(double leg, int runs) =>
        new Reference("WD-52", "estimate by 25 mm² a run", Trust.FromMemoryAndRecomputed)
            .Exactly($"leg {leg} mm", runs, WeldDeposit.Runs(WeldDeposit.Crown * WeldDeposit.Fillet(leg / 1000), 25e-6));

    [Fact]
    public void AreaOfARunByWireAndTravel() =>
        // 1.2 mm wire at 8 m/min, 0.95 of it laid down, 5 mm/s
        new Reference("WD-53", "volume of the wire over travel", Trust.FromMemoryAndRecomputed)
            .Near("mm²", 28.7, 1e6 * WeldDeposit.RunArea(.95 * Math.PI / 4 * 1.2e-3 * 1.2e-3 * 8 / 60 * 7850, 5e-3), 5e-3);

    [Fact]
    public void SharedShapesOfButts()
    {
        // 60° V of 10 mm, gap 2, face 2: 20 + 64·tan 30° = 56.95 mm²
        new Reference("MW-04", "geometry of a V butt; the area of WD-64", Trust.FoundAndRecomputed)
            .Near("V of 60°, 10 mm, gap 2, face 2, mm²", 56.95, 1e6 * WeldDeposit.Vee(.010, .002, .002, Math.PI / 3), 1e-4);
        new Reference("MW-05", "geometry of a half V", Trust.Recomputed)
            .Near("45°, 12 mm, gap 2, face 2, mm²", 24 + 50, 1e6 * WeldDeposit.Bevel(.012, .002, .002, Math.PI / 4), 1e-9);
        Assert.True(ButtEdges.Of(.030).Area < WeldDeposit.Bevel(.030, .002, .002, Math.PI / 4), "two bevels take less than one");
    }

    [Fact]
    public void WhatWeldsPullOutOfTrue()
    {
        new Reference("WD-64", "Blodgett, Design of Welded Structures; formula in a method statement", Trust.FoundAndRecomputed)
            .Near("across a butt of 10 mm, mm", 0.570, 1000 * Shrinkage.Across(56.95e-6, .010), 5e-3);
    }

    [Theory]
    [InlineData(6, 3), InlineData(12, 5), InlineData(20, 6), InlineData(25, 8)]
    public void LeastFilletByThickness(double t, double leg) =>
        new Reference("WD-58", "AWS D1.1 table of minimum fillets", Trust.FromMemory).Near($"{t} mm plate, mm", leg, 1000 * MinimumFillet.Leg(t / 1000), 1e-12);
}
