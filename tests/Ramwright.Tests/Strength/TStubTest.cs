using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class TStubTest
{
    // 254x254x107 UC column flange, M24 8.8 at 100 mm across: m = (100 - 12.8 - 2 · 0.8 · 12.7)/2
    private static readonly TStub Column = new(0.03344, 0.075, 2 * Math.PI * 0.03344, 0.2331, 0.0205, 265e6) { Washer = 0.03955 };

    [Fact]
    public void ColumnFlange()
    {
        var r = new Reference("P-01", "SCI P398, bolted end plate example: 254x254x107 UC flange in S275, M24 8.8, row 1", Trust.FromMemoryAndRecomputed);
        double Ft = 2 * 203.3e3 * 1.25;
        r.Near("n, mm", 41.8, Column.N * 1e3, 0.002);
        r.Near("mode 1, kN", 898, Column.Mode1() / 1e3, 0.003);
        r.Near("mode 2, kN", 398, Column.Mode2(Ft, 1, 1.25) / 1e3, 0.005);
        r.Near("mode 3, kN", 406, Ft / 1.25 / 1e3, 0.003);
        (TStubMode mode, double R) = Column.Design(Ft, PartialFactors.Recommended);
        r.Exactly("governs", TStubMode.Prying, mode);
        r.Near("row 1, kN", 398, R / 1e3, 0.005);
        (double one, double two) = TStub.Lengths(0.03344, 0.0794, 1);
        r.Near("l_eff,1, mm", 210, one * 1e3, 0.002);
        r.Near("l_eff,2, mm", 233, two * 1e3, 0.002);
    }

    [Fact]
    public void TheThreeModesMeet()
    {
        // statics by hand: t for which mode 1 (4 M/m) equals mode 2, and mode 2 equals the bolts: M = F_t m/2 when 2 M = F_t m
        var r = new Reference("P-02", "EN 1993-1-8 table 6.2: m 40, n 50, l 100, 2 M20 8.8, fy 275", Trust.OwnNumbers);
        double Ft = 2 * 0.9 * 800e6 * 244.8e-6;
        double Stiff(double t) => new TStub(0.04, 0.05, 0.1, 0.1, t, 275e6).Design(Ft, new PartialFactors(1, 1, 1, 1)).Resistance;
        r.Near("t 10 mm, mode 1, kN", 68.75, Stiff(0.010) / 1e3, 1e-4);
        r.Near("t 20 mm, mode 2, kN", 256.96, Stiff(0.020) / 1e3, 1e-3);
        r.Near("t 40 mm, mode 3, kN", 352.5, Stiff(0.040) / 1e3, 1e-3);
    }

    [Fact]
    public void OneLegHoldsHalf() =>
        Gen.Select(Gen.Double[0.02, 0.08], Gen.Double[0.02, 0.08], Gen.Double[0.005, 0.05]).Sample((m, e, t) =>
        {
            var two = new TStub(m, e, 0.1, 0.12, t, 275e6);
            var one = two with { Legs = 1 };
            Near.Relative(two.Mode1() / 2, one.Mode1(), 1e-12);
            Near.Relative(two.Mode2(200e3) / 2, one.Mode2(100e3), 1e-12);
            // a washer only ever helps
            Assert.True((two with { Washer = 0.03 }).Mode1() >= two.Mode1() * (1 - 1e-12));
        }, iter: 200);

    [Fact]
    public void AThickerFlangeNeverHoldsLess() =>
        Gen.Select(Gen.Double[0.02, 0.08], Gen.Double[0.02, 0.08], Gen.Double[0.005, 0.05], Gen.Double[1, 2]).Sample((m, e, t, k) =>
        {
            double F(double x) => new TStub(m, e, 0.1, 0.12, x, 275e6).Gives(0.5, 200e3, PartialFactors.Recommended)!.Value.SafeTo;
            Assert.True(F(t * k) >= F(t) * (1 - 1e-12));
            Assert.True(F(t) <= 200e3 / 0.5 / 1.25 / 1.5 * (1 + 1e-12));
        }, iter: 200);

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        Column.Gives(0.25, 508e3, PartialFactors.Recommended, w);
        (Column with { Washer = 0, Legs = 1 }).Gives(0.25, 254e3, PartialFactors.Recommended, w);
        TStub.Lengths(0.03, 0.04, 0.09, w);
        WorkingCheck.Holds(w);
        Assert.Null(Column.Gives(0, 508e3, PartialFactors.Recommended));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TStub(0, 0.05, 0.1, 0.1, 0.02, 275e6));
    }
}
