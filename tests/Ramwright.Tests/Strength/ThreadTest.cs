using CsCheck;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class ThreadTest
{
    private static readonly Citation Iso898 = new("ISO 898-1:2013", "table 3");
    private static ScrewThread M(double d, double p) => new(d / 1e3, p / 1e3) { Name = $"M{d}" };
    private static readonly ScrewThread M20 = M(20, 2.5);
    private static readonly PropertyClass C46 = new("4.6", 0, 1, 225e6, 240e6, 400e6, Iso898) { AlphaV = 0.6 };
    private static readonly PropertyClass C88 = new("8.8", 0.016, 1, 600e6, 640e6, 800e6, Iso898) { AlphaV = 0.6, Re = 660e6, Rm = 830e6 };
    private static readonly PropertyClass C109 = new("10.9", 0, 1, 830e6, 900e6, 1000e6, Iso898) { AlphaV = 0.5, Re = 940e6, Rm = 1040e6 };
    private static readonly PropertyClass C129 = new("12.9", 0, 1, 970e6, 1100e6, 1220e6, Iso898);

    [Theory]
    [InlineData("F-07", 20, 2.5, 55.1, 98.0, 147, 203, 203, 255, 238, 299)]
    [InlineData("F-09", 24, 3, 79.4, 141, 212, 293, 293, 367, 342, 431)]
    [InlineData("F-11", 30, 3.5, 126, 224, 337, 466, 466, 583, 544, 684)]
    [InlineData("F-13", 36, 4, 184, 327, 490, 678, 678, 850, 792, 997)]
    public void ProofAndBreakingLoads(string id, double d, double p, double p46, double m46, double p88, double m88, double p109, double m109, double p129, double m129)
    {
        var r = new Reference(id, $"ISO 898-1:2013 tables 4 to 7, M{d} coarse", Trust.FoundAndRecomputed);
        const double tol = 0.008;
        ScrewThread t = M(d, p);
        foreach ((PropertyClass c, double proof, double breaking) in (ReadOnlySpan<(PropertyClass, double, double)>)[(C46, p46, m46), (C88, p88, m88), (C109, p109, m109), (C129, p129, m129)])
        {
            r.Near($"{c.Name} proof, kN", proof, RodThread.ProofLoad(t, c) / 1e3, tol);
            r.Near($"{c.Name} breaking, kN", breaking, RodThread.BreakingLoad(t, c) / 1e3, tol);
        }
    }

    [Fact]
    public void PullingRigRatedByItsRod()
    {
        var r = new Reference("T-01", "trap: a 10 t jack on M20 4.6 rod", Trust.Recomputed);
        r.Near("M20 4.6 proof, tonnes-force", 5.62, RodThread.Stretches(1, M20, C46, PartialFactors.Recommended)!.Value.GivesAt / 9806.65, 0.008);
        r.Near("M24 8.8 proof, tonnes-force", 21.6, RodThread.ProofLoad(M(24, 3), C88) / 9806.65, 0.008);
        r.Near("10 t over its proof load", 1.78, 98066.5 / RodThread.ProofLoad(M20, C46), 0.008);
        new Reference("T-02", "trap: unmarked studding taken for 8.8", Trust.Recomputed)
            .Near("proof falls to", 55.1 / 147, RodThread.ProofLoad(M20, C46) / RodThread.ProofLoad(M20, C88), 0.008);
    }

    [Fact]
    public void SafeToTheLowerOfProofLoadAndCode()
    {
        // 8.8: 0.9·800/1.25 = 576 < 600; 4.6: 0.9·400/1.25 = 288 > 225; 12.9 has no code resistance.
        Limit eight = RodThread.Stretches(1, M20, C88, PartialFactors.Recommended)!.Value;
        Near.Relative(576e6 * M20.As / 1.5, eight.SafeTo, 1e-9);
        Limit four = RodThread.Stretches(1, M20, C46, PartialFactors.Recommended)!.Value;
        Near.Relative(225e6 * M20.As / 1.5, four.SafeTo, 1e-9);
        Near.Relative(1.5, RodThread.Stretches(1, M20, C129, PartialFactors.Recommended)!.Value.Factor, 1e-12);
        Assert.Null(RodThread.Stretches(-1, M20, C88, PartialFactors.Recommended));
    }

    [Fact]
    public void AreasOfBasicThread()
    {
        var r = new Reference("F-14", "FED-STD-H28/2, M20x2.5, 16 mm in mesh, basic sizes", Trust.OwnNumbers);
        r.Near("rod, mm²", 652.0, NutAndThread.OuterArea(ThreadFit.Basic(M20), 0.016) * 1e6, 0.0005);
        r.Near("nut, mm²", 879.6, NutAndThread.InnerArea(ThreadFit.Basic(M20), 0.016) * 1e6, 0.0005);
    }

    [Fact]
    public void AreasOfTheLoosestThread()
    {
        var r = new Reference("F-14b", "M20x2.5 6H/6g, ISO 965 limits, 16 mm in mesh", Trust.FromMemoryAndRecomputed);
        var printed = new ThreadFit(0.0025, 0.019623, 0.018164, 0.017744, 0.018600);
        r.Near("rod, mm²", 532, NutAndThread.OuterArea(printed, 0.016) * 1e6, 0.005);
        r.Near("nut, mm²", 726, NutAndThread.InnerArea(printed, 0.016) * 1e6, 0.005);
        // The tolerance formulas come within rounding of the printed limits.
        ThreadFit fit = ThreadFit.Loosest6H6g(M20);
        r.Within("d min, mm", 19.623, fit.D * 1e3, 0.02);
        r.Within("d2 min, mm", 18.164, fit.D2 * 1e3, 0.02);
        r.Within("D1 max, mm", 17.744, fit.NutD1 * 1e3, 0.02);
        r.Within("D2 max, mm", 18.600, fit.NutD2 * 1e3, 0.02);
        r.Near("rod by formula, mm²", 532, NutAndThread.OuterArea(fit, 0.016) * 1e6, 0.015);
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadFit.Loosest6H6g(M(5, 0.8)));
    }

    [Fact]
    public void TappedPlate()
    {
        ThreadFit fit = ThreadFit.Basic(M20);
        var one = new PartialFactors(1, 1, 1, 1);
        var r = new Reference("F-15", "tapped S235 (360), M20 8.8, 16 mm in mesh, 0.577 Rm", Trust.OwnNumbers);
        r.Near("plate strips, kN", 182.7, NutAndThread.Strips(1, fit, 0.016, 830e6, 360e6, one)!.Value.GivesAt / 1e3, 0.005);
        r.Near("bolt breaks, kN", 203.4, RodThread.BreakingLoad(M20, C88) / 1e3, 0.005);
        r.Near("balance, mm", 17.8, NutAndThread.BalancedEngagement(RodThread.BreakingLoad(M20, C88), fit, 360e6, inner: true) * 1e3, 0.005);
        new Reference("F-16", "the same in S355 (470)", Trust.OwnNumbers)
            .Near("balance, mm", 13.6, NutAndThread.BalancedEngagement(RodThread.BreakingLoad(M20, C88), fit, 470e6, inner: true) * 1e3, 0.005);
        new Reference("F-17", "the screw's own thread", Trust.OwnNumbers)
            .Near("strips, kN", 312, NutAndThread.Strips(1, fit, 0.016, 830e6, 2000e6, one)!.Value.GivesAt / 1e3, 0.005);
        new Reference("F-18", "handbook rule: shear area twice the stress area, equal materials", Trust.Recomputed)
            .Near("length, mm", 12.0, 2 * M20.As / NutAndThread.OuterArea(fit, 1) * 1e3, 0.005);
        new Reference("T-03", "trap: tapped plate too thin", Trust.Recomputed)
            .Near("S235 needs, mm", 17.8, NutAndThread.BalancedEngagement(203.4e3, fit, 360e6, inner: true) * 1e3, 0.005);
    }

    [Fact]
    public void MoreThreadOrStrongerNutNeverHoldsLess() =>
        Gen.Select(Gen.Double[0.005, 0.04], Gen.Double[1, 2], Gen.Double[300e6, 900e6]).Sample((Le, k, fu) =>
        {
            ThreadFit fit = ThreadFit.Loosest6H6g(M20);
            double F = NutAndThread.Strips(0.5, fit, Le, 830e6, fu, PartialFactors.Recommended)!.Value.SafeTo;
            Assert.True(NutAndThread.Strips(0.5, fit, Le * k, 830e6, fu, PartialFactors.Recommended)!.Value.SafeTo >= F);
            Assert.True(NutAndThread.Strips(0.5, fit, Le, 830e6, fu * k, PartialFactors.Recommended)!.Value.SafeTo >= F);
            Assert.True(NutAndThread.Strips(0.5, ThreadFit.Basic(M20), Le, 830e6, fu, PartialFactors.Recommended)!.Value.SafeTo >= F);
            Near.Relative(F / k, NutAndThread.Strips(0.5 * k, fit, Le, 830e6, fu, PartialFactors.Recommended)!.Value.SafeTo, 1e-9);
        }, iter: 100);

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        NutAndThread.Strips(0.5, ThreadFit.Loosest6H6g(M20), 0.016, 830e6, 360e6, PartialFactors.Recommended, w);
        RodThread.Stretches(0.5, M20, C88, PartialFactors.Recommended, w);
        RodThread.Stretches(0.5, M20, C129, PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }

    // inches: least major and pitch diameter of the 2A bolt, greatest minor and pitch diameter of the 2B nut
    [Theory]
    [InlineData("1/2-13 UNC", 0.5, 13, 0.4876, 0.4435, 0.434, 0.4565)]
    [InlineData("3/4-10 UNC", 0.75, 10, 0.7353, 0.6773, 0.663, 0.6927)]
    [InlineData("1-8 UNC", 1, 8, 0.9830, 0.9100, 0.890, 0.9276)]
    public void InchThreadsAreAsLooseAsTheirClassAllows(string name, double d, double tpi, double major, double pitch, double nutMinor, double nutPitch)
    {
        const double inch = 0.0254, rounded = 0.0006;
        var r = new Reference("ASME B1.1", $"{name}: limits of size of classes 2A and 2B", Trust.FromMemoryAndRecomputed);
        ThreadFit fit = ThreadFit.Loosest(new ScrewThread(d * inch, inch / tpi) { Name = name, Form = ThreadForm.Unified });

        r.Within("least major diameter, in", major, fit.D / inch, rounded);
        r.Within("least pitch diameter, in", pitch, fit.D2 / inch, rounded);
        r.Within("greatest minor diameter of the nut, in", nutMinor, fit.NutD1 / inch, rounded);
        r.Within("greatest pitch diameter of the nut, in", nutPitch, fit.NutD2 / inch, rounded);
        Assert.Equal(ThreadFit.Loosest6H6g(M20), ThreadFit.Loosest(M20));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadFit.Loosest(new ScrewThread(0.19 * inch, inch / 24) { Name = "#10", Form = ThreadForm.Unified }));
    }
}
