using CsCheck;
using Ramwright.Jobs;
using Ramwright.Power;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Jobs;

public sealed class FitsTest
{
    private const double E = 207e9, ν = 0.3;

    [Theory]
    [InlineData(10, 0, 24, 8, 32)]
    [InlineData(16, 0, 29, 10, 39)]
    [InlineData(25, 1, 35, 14, 48)]
    [InlineData(30, 1, 35, 14, 48)]
    [InlineData(40, 1, 42, 18, 59)]
    [InlineData(50, 1, 42, 18, 59)]
    [InlineData(60, 2, 51, 23, 72)]
    [InlineData(70, 2, 51, 29, 78)]
    [InlineData(80, 2, 51, 29, 78)]
    [InlineData(100, 2, 59, 36, 93)]
    [InlineData(120, 2, 59, 44, 101)]
    public void FitsByIso286(double d, double p6, double p6Most, double s6, double s6Most)
    {
        var reference = new Reference("W7-01", "ISO 286-2:2010; s6, and p6 but for Ø50, from memory", d == 50 ? Trust.Found : Trust.FromMemory);
        IsoFit light = IsoFit.Of("H7/p6", d / 1e3)!.Value, firm = IsoFit.Of("H7/s6", d / 1e3)!.Value;
        reference.Within($"H7/p6 least, µm, Ø{d}", p6, light.Least * 1e6, 1e-6);
        reference.Within($"H7/p6 most, µm, Ø{d}", p6Most, light.Most * 1e6, 1e-6);
        reference.Within($"H7/s6 least, µm, Ø{d}", s6, firm.Least * 1e6, 1e-6);
        reference.Within($"H7/s6 most, µm, Ø{d}", s6Most, firm.Most * 1e6, 1e-6);
        Assert.Null(IsoFit.Of("H7/g6", d / 1e3));
        Assert.Null(IsoFit.Of("H7/p6", 0.15));
    }

    [Theory]
    [InlineData(50, 100, 50, 1, 1.55, 1.46, 2.59)]
    [InlineData(50, 100, 50, 42, 65.20, 61.45, 108.7)]
    [InlineData(50, 100, 50, 18, 27.95, 26.34, 46.6)]
    [InlineData(50, 100, 50, 59, 91.60, 86.33, 152.7)]
    [InlineData(25, 50, 30, 48, 149.0, 42.14, 248)]
    [InlineData(25, 50, 30, 14, 43.5, 12.29, 72.5)]
    public void PressureForceAndHoop(double d, double outside, double L, double δ, double p, double F, double hoop)
    {
        var w = new Working();
        double found = LameFit.Pressure(δ / 1e6, d / 1e3, outside / 1e3, 0, E, ν, E, ν, w);
        var reference = new Reference(d == 50 ? "W7-10" : "W7-11", "Budynas and Nisbett, press fits", Trust.FromMemoryAndRecomputed);
        reference.Near($"p, MPa, Ø{d}, δ {δ} µm", p, found / 1e6, 0.005);
        reference.Near($"F, kN, Ø{d}, δ {δ} µm", F, LameFit.Force(0.12, found, d / 1e3, L / 1e3, w) / 1e3, 0.003);
        reference.Near($"hoop, MPa, Ø{d}, δ {δ} µm", hoop, LameFit.HubHoop(found, d / 1e3, outside / 1e3, w) / 1e6, 0.003);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void ABronzeBush()
    {
        double p = LameFit.Pressure(42e-6, 0.04, 0.08, 0.03, E, ν, 110e9, 0.34);
        var reference = new Reference("W7-12", "Lamé, both parts", Trust.Recomputed);
        reference.Near("p, MPa", 27.0, p / 1e6, 0.005);
        reference.Near("F, kN", 16.3, LameFit.Force(0.12, p, 0.04, 0.04) / 1e3, 0.005);
        reference.Near("bore closes, µm", 33.7, LameFit.BoreCloses(p, 0.04, 0.03, 110e9) * 1e6, 0.005);
        reference.Near("hoop at the bush's bore, MPa", -123.5, LameFit.BushHoop(p, 0.04, 0.03) / 1e6, 0.005);
    }

    [Fact]
    public void RoughnessHeatAndBearings()
    {
        new Reference("W7-14", "DIN 7190", Trust.FromMemoryAndRecomputed).Within("δ left, µm", 52.6, LameFit.Effective(59e-6, 4e-6, 4e-6) * 1e6, 1e-6);
        new Reference("W7-15", "growth by heat", Trust.FromMemoryAndRecomputed).Near("ΔT, K", 148, LameFit.ShrinkBy(59e-6, 30e-6, 0.05), 0.005);
        (double D, double δ) = LameFit.BearingRing(0.03, 0.062, 25e-6);
        double p = LameFit.Pressure(δ, 0.03, D, 0, E, ν, E, ν);
        var reference = new Reference("W7-16", "ring as a hub", Trust.FromMemoryAndRecomputed);
        reference.Near("δ left, µm", 23.4, δ * 1e6, 0.01);
        reference.Near("p, MPa", 30.5, p / 1e6, 0.01);
        reference.Near("F, kN, μ 0.12", 5.5, LameFit.Force(0.12, p, 0.03, 0.016) / 1e3, 0.01);
        reference.Near("F, kN, μ 0.16", 7.3, LameFit.Force(0.16, p, 0.03, 0.016) / 1e3, 0.01);
        new Reference("W7-18", "friction over the length that is in", Trust.Recomputed).Near("half in, half the force", 0.5, LameFit.Force(0.12, p, 0.03, 0.008) / LameFit.Force(0.12, p, 0.03, 0.016), 1e-12);
    }

    [Fact]
    public void SameMetalSolidShaftHasAShortForm() =>
        Gen.Select(Gen.Double[0.01, 0.1], Gen.Double[1.2, 4], Gen.Double[1e-6, 1e-4]).Sample((d, ratio, δ) =>
        {
            double D = ratio * d;
            Near.Relative(E * δ / (2 * d) * (1 - 1 / (ratio * ratio)), LameFit.Pressure(δ, d, D, 0, E, ν, E, ν), 1e-9);
        });

    [Fact]
    public void ThreadsOfAPullRod()
    {
        var reference = new Reference("W9-02", "stress area; ISO 898-1 prints 157/245/353/561", Trust.FromMemoryAndRecomputed);
        foreach ((double d, double P, double A) in new[] { (16.0, 2.0, 156.7), (20, 2.5, 244.8), (24, 3, 352.5), (30, 3.5, 560.6) })
            reference.Near($"A_s, mm², M{d}", A, new ScrewThread(d / 1e3, P / 1e3) { Name = "a" }.As * 1e6, 0.001);
        new Reference("W9-01", "area of a ring", Trust.Recomputed).Near("F, kN, 90/54 at 70 MPa", 285.0, RamForce.Thrust(70e6, new CircularHollow(0.09, 0.018) { Name = "plunger", Source = SectionText.AsGiven }.Properties.A) / 1e3, 0.001);
    }
}
