using CsCheck;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class RodBucklingTest
{
    private static double I(double d) => Rod(d).Iy;
    private static double A(double d) => Rod(d).A;
    private static SectionProperties Rod(double d) => new Round(d) { Name = "rod", Source = SectionText.AsGiven }.Properties;

    [Fact]
    public void ShigleyEuler()
    {
        // Ex. 4-17: the diameter that just carries 4 times 22 kN.
        var r = new Reference("C-14", "Shigley 9th ed. Ex. 4-17: round, l 1.5 m, 88 kN, Sy 500 MPa, E 207 GPa, d 37.48 mm", Trust.FoundAndRecomputed);
        r.Near("critical load, kN", 88, RodBuckling.CriticalOfRound(207e9, 500e6, 0.03748, 1.5) / 1e3, 0.001);
        r.Near("l/k of d 40", 150, RodBuckling.Slenderness(A(0.04), I(0.04), 1.5), 0.001);
        r.Near("(l/k)₁", 90.4, RodBuckling.Transition(207e9, 500e6), 0.001);
    }

    [Fact]
    public void ShigleyJohnson()
    {
        var r = new Reference("C-15", "Shigley 9th ed. eq. 4-53, data of Ex. 4-17 with l 0.375 m: d 19.02 mm", Trust.FromMemoryAndRecomputed);
        r.Near("critical load, kN", 88, RodBuckling.CriticalOfRound(207e9, 500e6, 0.01902, 0.375) / 1e3, 0.001);
        r.Near("l/k", 78.9, RodBuckling.Slenderness(A(0.01902), I(0.01902), 0.375), 0.001);
        r.Near("Euler's load of that diameter, kN", 88, RodBuckling.Euler(207e9, I(0.01874), 0.375) / 1e3, 0.002);
    }

    [Fact]
    public void HalfTheYieldStrengthWhereTheCurvesMeet()
    {
        double d = 0.03, KL = RodBuckling.Transition(210e9, 355e6) * d / 4;
        new Reference("C-16", "Shigley 9th ed. 4-13: at the limit P/A = Sy/2", Trust.FoundAndRecomputed)
            .Near("Johnson, MPa", 177.5, RodBuckling.Johnson(210e9, 355e6, A(d), I(d), KL) / A(d) / 1e6, 1e-9);
        Near.Relative(RodBuckling.Euler(210e9, I(d), KL), RodBuckling.Johnson(210e9, 355e6, A(d), I(d), KL), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => RodBuckling.Johnson(210e9, 355e6, A(d), I(d), 1.01 * KL));
    }

    [Fact]
    public void EffectiveLengths()
    {
        var r = new Reference("C-17..22", "effective length factors, AISC 360 commentary table C-A-7.1", Trust.Found);
        r.Exactly("fixed, fixed: theory", 0.5, EffectiveLength.Theory(ColumnEnds.FixedFixed));
        r.Exactly("fixed, fixed: design", 0.65, EffectiveLength.Design(ColumnEnds.FixedFixed));
        r.Exactly("fixed, pinned: theory", 0.7, EffectiveLength.Theory(ColumnEnds.FixedPinned));
        r.Exactly("fixed, pinned: design", 0.80, EffectiveLength.Design(ColumnEnds.FixedPinned));
        r.Exactly("pinned, pinned: theory", 1.0, EffectiveLength.Theory(ColumnEnds.PinnedPinned));
        r.Exactly("pinned, pinned: design", 1.0, EffectiveLength.Design(ColumnEnds.PinnedPinned));
        r.Exactly("fixed, fixed, sway: theory", 1.0, EffectiveLength.Theory(ColumnEnds.FixedFixedSway));
        r.Exactly("fixed, fixed, sway: design", 1.2, EffectiveLength.Design(ColumnEnds.FixedFixedSway));
        r.Exactly("fixed, free: theory", 2.0, EffectiveLength.Theory(ColumnEnds.FixedFree));
        r.Exactly("fixed, free: design", 2.1, EffectiveLength.Design(ColumnEnds.FixedFree));
        r.Exactly("pinned, rotation fixed, sway: theory", 2.0, EffectiveLength.Theory(ColumnEnds.PinnedRotationFixedSway));
        r.Exactly("pinned, rotation fixed, sway: design", 2.0, EffectiveLength.Design(ColumnEnds.PinnedRotationFixedSway));
    }

    [Fact]
    public void RodOfFifty()
    {
        var r = new Reference("C-23", "Euler's formula of hydraulic handbooks, rod d 50, L 1000 mm", Trust.OwnNumbers);
        double i = I(0.05);
        r.Near("I, mm⁴", 306_796, i * 1e12, 0.001);
        r.Near("K 0.5, kN", 2543, RodBuckling.Euler(210e9, i, 0.5) / 1e3, 0.001);
        r.Near("K 0.7, kN", 1298, RodBuckling.Euler(210e9, i, 0.7) / 1e3, 0.001);
        r.Near("K 1, kN", 635.9, RodBuckling.Euler(210e9, i, 1) / 1e3, 0.001);
        r.Near("K 2, kN", 159.0, RodBuckling.Euler(210e9, i, 2) / 1e3, 0.001);
        Limit k2 = RodBuckling.Buckles(1, 210e9, 355e6, 0.05, 2)!.Value;
        r.Near("K 2 over 3.5, kN", 45.4, k2.SafeTo / 1e3, 0.001);
        r.Near("factor", 3.5, k2.Factor, 1e-9);
        new Reference("T-11", "trap: a rod fixed at one end and free at the other counted as pinned", Trust.Recomputed)
            .Near("ratio", 4, RodBuckling.Euler(210e9, i, 1) / RodBuckling.Euler(210e9, i, 2), 1e-9);
    }

    [Fact]
    public void RodOfForty()
    {
        var r = new Reference("C-24", "Euler's formula of hydraulic handbooks, rod d 40, L 1000 mm", Trust.OwnNumbers);
        r.Near("I, mm⁴", 125_664, I(0.04) * 1e12, 0.001);
        r.Near("K 1, kN", 260.5, RodBuckling.CriticalOfRound(210e9, 500e6, 0.04, 1) / 1e3, 0.001);
        r.Near("K 2, kN", 65.1, RodBuckling.CriticalOfRound(210e9, 500e6, 0.04, 2) / 1e3, 0.001);
    }

    [Fact]
    public void ShortRod()
    {
        var r = new Reference("C-25", "Johnson's formula, rod d 50, KL 1000 mm, Sy 305 MPa", Trust.OwnNumbers);
        r.Near("λ", 80, RodBuckling.Slenderness(A(0.05), I(0.05), 1), 0.001);
        r.Near("λ₁", 116.6, RodBuckling.Transition(210e9, 305e6), 0.001);
        double F = RodBuckling.CriticalOfRound(210e9, 305e6, 0.05, 1);
        r.Near("critical load, kN", 457.9, F / 1e3, 0.002);
        r.Near("critical stress, MPa", 233.2, F / A(0.05) / 1e6, 0.002);
        new Reference("T-10", "trap: Euler on a short rod", Trust.Recomputed).Within("too high by", 0.39, 635.9e3 / F - 1, 0.005);
    }

    [Fact]
    public void CylinderRod()
    {
        var r = new Reference("CM-01", "Euler's load, rod 36 mm, L 900 mm, E 210 GPa", Trust.FoundAndRecomputed);
        double i = I(0.036);
        r.Near("I, mm⁴", 82_448, i * 1e12, 0.002);
        foreach ((double K, double kN, double safe) in (ReadOnlySpan<(double, double, double)>)[(2, 52.7, 15.07), (1, 211.0, 60.28), (0.7, 430.5, 123.0), (0.5, 843.9, 241.1)])
        {
            double F = RodBuckling.Euler(210e9, i, K * 0.9);
            r.Near($"K {K}, kN", kN, F / 1e3, 0.002);
            r.Near($"K {K} over 3.5, kN", safe, F / 3.5e3, 0.002);
        }

        var s = new Reference("CM-02", "Johnson's correction of it, K 1, Sy 355 MPa", Trust.FromMemoryAndRecomputed);
        s.Near("slenderness", 100.0, RodBuckling.Slenderness(A(0.036), i, 0.9), 0.002);
        s.Near("transition", 108.06, RodBuckling.Transition(210e9, 355e6), 0.002);
        s.Near("stress, MPa", 203.0, RodBuckling.CriticalOfRound(210e9, 355e6, 0.036, 0.9) / A(0.036) / 1e6, 0.002);
        s.Near("load, kN", 206.6, RodBuckling.CriticalOfRound(210e9, 355e6, 0.036, 0.9) / 1e3, 0.002);
        new Reference("CM-03", "mounting: a ram without a guide has K = 2", Trust.FromMemory)
            .Exactly("K", 2.0, EffectiveLength.Theory(ColumnEnds.FixedFree));
    }

    [Fact]
    public void SquashLoad()
    {
        Limit limit = RodBuckling.Squashes(-1, 305e6, 0.05, PartialFactors.Recommended)!.Value;
        Near.Relative(305e6 * A(0.05), limit.GivesAt, 1e-12);
        Near.Relative(1.5, limit.Factor, 1e-12);
    }

    [Fact]
    public void APullDoesNotBuckle()
    {
        Assert.Null(RodBuckling.Buckles(-1, 210e9, 355e6, 0.05, 1));
        Assert.Null(RodBuckling.Buckles(0, 210e9, 355e6, 0.05, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RodBuckling.Buckles(1, 210e9, 355e6, 0.05, 1, bore: 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => RodBuckling.Buckles(1, 210e9, 355e6, double.NaN, 1));
    }

    [Fact]
    public void ThickerShorterAndStrongerNeverBuckleSooner() =>
        Gen.Select(Gen.Double[0.01, 0.1], Gen.Double[0.05, 4], Gen.Double[200e6, 900e6], Gen.Double[1, 1.6]).Sample((d, L, Sy, k) =>
        {
            double F = RodBuckling.CriticalOfRound(210e9, Sy, d, L);
            Assert.True(RodBuckling.CriticalOfRound(210e9, Sy, d * k, L) >= F);
            Assert.True(RodBuckling.CriticalOfRound(210e9, Sy, d, L / k) >= F);
            Assert.True(RodBuckling.CriticalOfRound(210e9, Sy * k, d, L) >= F * (1 - 1e-12));
            Assert.True(F <= Sy * Math.PI / 4 * d * d);
        }, iter: 300);

    [Theory]
    [InlineData(0.3)]
    [InlineData(2.0)]
    public void WorkingHolds(double KL)
    {
        var w = new Working();
        RodBuckling.Buckles(1, 210e9, 355e6, 0.05, KL, bore: 0.02, w: w);
        RodBuckling.Squashes(1, 355e6, 0.05, PartialFactors.Recommended, 0, w);
        WorkingCheck.Holds(w);
    }
}
