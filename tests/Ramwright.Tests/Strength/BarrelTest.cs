using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class BarrelTest
{
    [Fact]
    public void TwoPressures()
    {
        var r = new Reference("CM-06", "Lamé, ri 30, ro 50 mm, 20 MPa inside, 5 MPa outside", Trust.FoundAndRecomputed);
        WallStress inner = Barrel.Lame(0.03, 0.05, 20e6, 5e6, 0.03), outer = Barrel.Lame(0.03, 0.05, 20e6, 5e6, 0.05);
        r.Within("axial, MPa", 3.4375, inner.Axial / 1e6, 0.001);
        r.Within("hoop inside, MPa", 26.875, inner.Hoop / 1e6, 0.001);
        r.Within("hoop outside, MPa", 11.875, outer.Hoop / 1e6, 0.001);
        r.Within("radial inside, MPa", -20, inner.Radial / 1e6, 0.001);
        r.Within("radial outside, MPa", -5, outer.Radial / 1e6, 0.001);
    }

    [Fact]
    public void HundredByHundredTwentyFive()
    {
        var r = new Reference("CM-07", "Lamé, barrel 100/125 mm, 25 MPa, closed ends", Trust.FoundAndRecomputed);
        WallStress bore = Barrel.Lame(0.05, 0.0625, 25e6, 0, 0.05);
        r.Near("hoop inside, MPa", 113.9, bore.Hoop / 1e6, 0.002);
        r.Near("hoop outside, MPa", 88.9, Barrel.Lame(0.05, 0.0625, 25e6, 0, 0.0625).Hoop / 1e6, 0.002);
        r.Near("axial, MPa", 44.4, bore.Axial / 1e6, 0.002);
        r.Near("von Mises, MPa", 120.3, bore.VonMises / 1e6, 0.002);
        r.Near("Tresca, MPa", 138.9, bore.Tresca / 1e6, 0.002);
        r.Near("bore growth, µm", 51.5, Barrel.BoreGrowth(0.1, 0.125, 25e6) * 1e6, 0.002);
    }

    [Fact]
    public void HighPressureJack()
    {
        var r = new Reference("CM-08", "Lamé, barrel 110/160 mm, 70 MPa, closed ends", Trust.FoundAndRecomputed);
        WallStress bore = Barrel.Lame(0.055, 0.08, 70e6, 0, 0.055);
        r.Near("hoop, MPa", 195.5, bore.Hoop / 1e6, 0.002);
        r.Near("axial, MPa", 62.7, bore.Axial / 1e6, 0.002);
        r.Near("von Mises, MPa", 229.9, bore.VonMises / 1e6, 0.002);
        r.Near("Tresca, MPa", 265.5, bore.Tresca / 1e6, 0.002);
        r.Near("bore growth, µm", 103.5, Barrel.BoreGrowth(0.11, 0.16, 70e6) * 1e6, 0.002);
    }

    [Fact]
    public void ThinBarrel()
    {
        var r = new Reference("CM-09", "Lamé, barrel 80/95 mm, 21 MPa, closed ends", Trust.FoundAndRecomputed);
        WallStress bore = Barrel.Lame(0.04, 0.0475, 21e6, 0, 0.04);
        r.Near("hoop, MPa", 123.4, bore.Hoop / 1e6, 0.002);
        r.Near("von Mises, MPa", 125.1, bore.VonMises / 1e6, 0.002);
    }

    [Fact]
    public void HalfTheYieldStrength()
    {
        var r = new Reference("CM-16", "ASME B30.1-2015 1-2.1.2(c): at most half the yield strength at rated load", Trust.FoundAndRecomputed);
        // At the safe force the stress at the bore is half of 355 MPa.
        double perNewton = 1 / (Math.PI / 4 * 0.11 * 0.11);
        Limit limit = Barrel.Yields(perNewton, 0.11, 0.16, 355e6)!.Value;
        WallStress at = Barrel.Lame(0.055, 0.08, limit.SafeTo * perNewton, 0, 0.055);
        r.Near("stress at rated load, MPa", 177.5, at.VonMises / 1e6, 1e-9);
        WallStress gives = Barrel.Lame(0.055, 0.08, limit.GivesAt * perNewton, 0, 0.055);
        r.Near("stress where it gives, MPa", 355, gives.VonMises / 1e6, 1e-9);
    }

    [Fact]
    public void TrescaAndMisesDoNotMindTheOrder()
    {
        foreach ((double a, double b, double c) in (ReadOnlySpan<(double, double, double)>)[(1, 2, 4), (1, 4, 2), (2, 1, 4), (2, 4, 1), (4, 1, 2), (4, 2, 1)])
        {
            Assert.Equal(3, new WallStress(a, b, c).Tresca);
            Near.Relative(Math.Sqrt(7), new WallStress(a, b, c).VonMises, 1e-12);       // (1 + 4 + 9)/2
        }
    }

    [Fact]
    public void AThickerWallNeverYieldsSooner() =>
        Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[1.05, 2], Gen.Double[1, 1.3]).Sample((bore, k, more) =>
            Assert.True(Barrel.YieldPressure(bore, bore * k * more, 355e6) >= Barrel.YieldPressure(bore, bore * k, 355e6)), iter: 200);

    [Fact]
    public void WorkingHoldsAndNonsenseIsRefused()
    {
        var w = new Working();
        Barrel.Yields(150, 0.1, 0.125, 355e6, 2, w);
        WorkingCheck.Holds(w);
        Assert.Null(Barrel.Yields(0, 0.1, 0.125, 355e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => Barrel.Yields(150, 0.125, 0.1, 355e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => Barrel.Lame(0.03, 0.05, 20e6, 0, 0.06));
    }
}
