using CsCheck;
using Ramwright.Presses;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class FittingLimitsTest
{
    private static readonly PartialFactors One = new(1, 1, 1, 1);

    // Roark's K for a line load at the inner edge: M = K w a
    [Theory]
    [InlineData(0.1, 0.3374)]
    [InlineData(0.3, 0.6210)]
    [InlineData(0.5, 0.7757)]
    [InlineData(0.7, 0.8814)]
    [InlineData(0.9, 0.9638)]
    public void RingPlateUnderALineLoad(double ratio, double K)
    {
        const double a = 0.1, w = 1e5;
        double b = ratio * a;
        new Reference("P-03", "Roark 7th ed. table 11.2 case 1a, line load at the inner edge, ν 0.3", Trust.FromMemoryAndRecomputed)
            .Near($"K_M, b/a {ratio}", K, AnnularPlate.MomentAtHole(w * 2 * Math.PI * b, a, b, b) / (w * a), 0.001);
    }

    [Fact]
    public void RingPlateAgainstTimoshenkosForm()
    {
        // Timoshenko and Woinowsky-Krieger, art. 17: edge forces P along the hole of a supported ring plate
        const double a = 0.1, b = 0.03, P = 1e5, nu = 0.3;
        double Mt = P / (4 * Math.PI) * (1 + nu) * (2 * a * a / (a * a - b * b) * Math.Log(a / b) + (1 - nu) / (1 + nu));
        new Reference("P-04", "Timoshenko, Theory of Plates and Shells, art. 17: ring plate, force along its hole", Trust.FromMemoryAndRecomputed)
            .Near("M_t at the hole, N", Mt, AnnularPlate.MomentAtHole(P, a, b, b), 1e-9);
        Assert.Null(AnnularPlate.Yields(1, a, b, a, 0.02, 235e6, One));
        Assert.Throws<ArgumentOutOfRangeException>(() => AnnularPlate.MomentAtHole(1, a, b, 0.02));
    }

    [Fact]
    public void RodPushedAndBent()
    {
        var r = new Reference("P-05", "round bar 60, A 2827.43 mm², W 21 205.75 mm³ (S-21): 100 kN at 20 mm off centre", Trust.Recomputed);
        r.Near("σ, MPa", 35.3678 + 94.3140, 235e6 * 100e3 / RoundBar.Yields(1, 0.020, 0.06, 0, 235e6, One)!.Value.GivesAt / 1e6, 1e-5);
        // a tube 100/50 loses a quarter of its area and a sixteenth of its modulus
        double full = RoundBar.Yields(1, 0, 0.1, 0, 1e6, One)!.Value.GivesAt, bent = RoundBar.Yields(0, 1, 0.1, 0, 1e6, One)!.Value.GivesAt;
        Near.Relative(0.75, RoundBar.Yields(1, 0, 0.1, 0.05, 1e6, One)!.Value.GivesAt / full, 1e-12);
        Near.Relative(15.0 / 16, RoundBar.Yields(0, 1, 0.1, 0.05, 1e6, One)!.Value.GivesAt / bent, 1e-12);
    }

    [Fact]
    public void RodOfPlainSteel()
    {
        var r = new Reference("P-06", "EN 1993-1-1 6.2.3 on A_s of M36 (817 mm²) in C45+QT, 370/630", Trust.OwnNumbers);
        Limit rod = RoundBar.Pulls(1, 817e-6, 370e6, 630e6, PartialFactors.Recommended)!.Value;
        r.Near("yields, kN", 302.3, rod.GivesAt / 1e3, 0.001);
        r.Near("safe, kN", 302.3 / 1.5, rod.SafeTo / 1e3, 0.001);
        // S355 (470), half a newton for one, γ_M0 1.1: 355/1.1 = 322.7 and 0.9·470/1.25 = 338.4; γ_M2 1.5: 282
        r.Near("S355, γ_M0 1.1, kN", 322.727 * 817e-3 / 0.5, RoundBar.Pulls(0.5, 817e-6, 355e6, 470e6, new PartialFactors(M0: 1.1, Load: 1))!.Value.SafeTo / 1e3, 1e-5);
        r.Near("S355, γ_M2 1.5, kN", 282 * 817e-3 / 0.5, RoundBar.Pulls(0.5, 817e-6, 355e6, 470e6, new PartialFactors(M2: 1.5, Load: 1))!.Value.SafeTo / 1e3, 1e-9);
        r.Near("brittle, 900 (950), gives at, kN", 0.9 * 950 * 817e-3 / 0.5, RoundBar.Pulls(0.5, 817e-6, 900e6, 950e6, One)!.Value.GivesAt / 1e3, 1e-9);
    }

    [Fact]
    public void SideForcesOfAFlagpole()
    {
        var r = new Reference("P-07", "simple statics: 5 kN at 300 mm from the gland, piston 100 mm above it", Trust.Recomputed);
        r.Near("gland, kN", 20, RamGuides.AtGland(5, 0, 0.3, 0.1), 1e-12);
        r.Near("piston, kN", 15, RamGuides.AtPiston(5, 0, 0.3, 0.1), 1e-12);
        r.Near("couple of 2 kNm, kN", 20, RamGuides.AtGland(0, 2, 0.3, 0.1), 1e-12);
        r.Near("the same, end held, kN", 2 / 0.3, RamGuides.AtGlandHeld(2, 0.3), 1e-12);
    }

    [Fact]
    public void GuideRingWidth()
    {
        // the page's answer is the housing, which also holds the ring's rounded ends: 15 % more than the bare width
        double bare = 20e3 / RamGuides.Presses(1, 0.1, 1, RamGuides.Rated(GuideRing.Phenolic).Pressure)!.Value.SafeTo;
        new Reference("P-08", "SKF guide rings, calculating the guide width: PF, D 100, 20 kN, factor 2, 80 °C: housing 15.3 mm", Trust.Found)
            .Near("width, mm", 15.3, bare * 1e3, 0.15);
        new Reference("P-08b", "the same by F f / (D p)", Trust.OwnNumbers).Near("width, mm", 13.33, bare * 1e3, 0.001);
        Assert.True(bare < 0.0153);
    }

    [Fact]
    public void SetScrewsHold()
    {
        var r = new Reference("P-09", "Shigley 9th ed. table 7-4, socket set screws", Trust.FromMemory);
        r.Near("1/2 in, lbf", 3000, SetScrew.Holds(0.0127) / 4.448222, 1e-6);
        r.Near("3/4 in, lbf", 5000, SetScrew.Holds(0.01905) / 4.448222, 1e-6);
        Near.Relative(2 * SetScrew.Holds(0.012) / 0.1, SetScrew.Slips(0.1, 0.012, 2)!.Value.GivesAt, 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => SetScrew.Holds(0.005));
        Near.Relative(0.00635, SetScrew.Range.From, 1e-12);
        Near.Relative(0.0254, SetScrew.Range.UpTo, 1e-12);
        double[] pounds = [1000, 1500, 2000, 2500, 3000, 3500, 4000, 5000, 6000, 7000], sixteenths = [4, 5, 6, 7, 8, 9, 10, 12, 14, 16];
        for (int i = 0; i < pounds.Length; i++)
            r.Near($"{sixteenths[i]}/16 in, lbf", pounds[i], SetScrew.Holds(sixteenths[i] / 16 * 0.0254) / 4.448222, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => SetScrew.Slips(0.1, 0.012, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SetScrew.Slips(0.1, 0.012, 2, 0.9));
    }

    [Fact]
    public void PlateUnderARing()
    {
        var r = new Reference("P-10", "beam on two supports, FL/4; load spread over its whole ring", Trust.Recomputed);
        r.Near("point", 0.05, PlateOverGap.Moment(0.2, 0), 1e-12);
        // numerically: the mean over the ring of the moment that each point force makes in the middle
        double sum = 0;
        const int n = 20_000;
        for (int i = 0; i < n; i++)
            sum += (0.1 - 0.075 * Math.Abs(Math.Cos(2 * Math.PI * (i + 0.5) / n))) / 2;
        r.Near("ring of 150 mm over 200 mm", sum / n, PlateOverGap.Moment(0.2, 0.15), 1e-6);
        Assert.Equal(0, PlateOverGap.Moment(0.2, 1));
    }

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        AnnularPlate.Yields(1, 0.1, 0.03, 0.06, 0.02, 235e6, PartialFactors.Recommended, w);
        RoundBar.Yields(1, 0.02, 0.06, 0.01, 305e6, PartialFactors.Recommended, w);
        RoundBar.Pulls(1, 817e-6, 370e6, 630e6, PartialFactors.Recommended, w);
        RamGuides.Presses(RamGuides.AtGland(0.03, 0.01, 0.3, 0.1, w), 0.07, 0.03, 30e6, 2, w);
        RamGuides.Presses(RamGuides.AtPiston(0.03, 0.01, 0.3, 0.1, w), 0.1, 0.03, 30e6, 2, w);
        RamGuides.AtGlandHeld(0.02, 0.3, w);
        SetScrew.Slips(0.1, 0.012, 2, 2, w);
        PlateOverGap.Moment(0.2, 0.15, w);
        WorkingCheck.Holds(w);
    }
}
