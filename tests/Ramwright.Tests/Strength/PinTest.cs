using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class PinTest
{
    private static readonly PartialFactors NoLoad = new(Load: 1);
    private static readonly Pin Forty = new(0.040, 430e6, 650e6, 0.030, 0.015, 0.002, 275e6, 275e6);

    [Fact]
    public void PinOfForty()
    {
        var r = new Reference("F-33", "EN 1993-1-8 3.13.2, pin d 40, C45+QT, b 30, a 15, c 2, S275, F 200 kN", Trust.OwnNumbers);
        r.Near("Fv,Rd, kN", 392.1, Forty.ShearResistance() / 1.25e3, 0.003);
        r.Near("Fb,Rd middle, kN", 495, Forty.BearingResistance(0.030, 275e6) / 1e3, 0.003);
        r.Near("Fb,Rd outer, kN", 247.5, Forty.BearingResistance(0.015, 275e6) / 1e3, 0.003);
        r.Near("replaceable, kN", 198, Forty.BearingToTakeOut(0.030, 275e6) / 1e3, 0.003);
        r.Near("MEd, kN·m", 1.70, Forty.Moment(200e3) / 1e3, 0.003);
        r.Near("Wel, mm³", 6283.2, Forty.ElasticModulus * 1e9, 0.003);
        r.Near("MRd, kN·m", 4.053, Forty.BendingResistance() / 1e3, 0.003);
        r.Near("MRd,ser, kN·m", 2.161, Forty.BendingToTakeOut / 1e3, 0.003);
        double multiplier = Forty.Bending(200e3, NoLoad)!.Value.SafeTo;
        r.Near("combined", 0.241, 1 / (multiplier * multiplier), 0.003);
    }

    [Fact]
    public void ContactStress()
    {
        var r = new Reference("F-34", "EN 1993-1-8 3.13.2(3), d0 41, F,ser 142.857 kN, t 30", Trust.OwnNumbers);
        r.Near("σh, MPa", 467.2, Forty.ContactStress(142.857e3, 0.041, 0.030) / 1e6, 0.003);
        // At the limit force the stress is 2.5 fy.
        double F = Forty.Contact(1, 0.041, 0.030, 275e6)!.Value.GivesAt;
        r.Near("limit, MPa", 687.5, Forty.ContactStress(F, 0.041, 0.030) / 1e6, 1e-9);
    }

    [Fact]
    public void Eyes()
    {
        var a = new Reference("F-35", "EN 1993-1-8 table 3.9 type A, t 30, fy 275, d0 41, F 200 kN", Trust.FromMemoryAndRecomputed);
        (double end, double side) = Pin.EyeEdges(200e3, 0.030, 275e6, 0.041);
        a.Near("a, mm", 39.45, end * 1e3, 0.003);
        a.Near("c, mm", 25.79, side * 1e3, 0.003);
        var b = new Reference("F-36", "EN 1993-1-8 table 3.9 type B, F 200 kN, fy 275", Trust.FromMemoryAndRecomputed);
        (double t, double hole) = Pin.EyeOfStandardShape(200e3, 275e6);
        b.Near("t, mm", 18.88, t * 1e3, 0.003);
        b.Near("d0, mm", 47.2, hole * 1e3, 0.003);
    }

    [Fact]
    public void BearingTakesTheWeakerPart()
    {
        // Outer parts 10 mm each carry half the force: 2·10 < 30, so they govern.
        Limit thin = (Forty with { Outer = 0.010 }).Bearing(1, NoLoad)!.Value;
        Near.Relative(2 * 1.5 * 0.010 * 0.040 * 275e6, thin.GivesAt, 1e-9);
        Limit soft = (Forty with { FyMiddle = 200e6 }).Bearing(1, NoLoad)!.Value;
        Near.Relative(1.5 * 0.030 * 0.040 * 200e6, soft.GivesAt, 1e-9);
        Near.Relative(2 * Forty.ShearResistance() / 1.25, Forty.Shear(1, NoLoad)!.Value.SafeTo, 1e-9);
    }

    [Fact]
    public void AThickerPinNeverHoldsLessAndLimitsScale() =>
        Gen.Select(Gen.Double[0.01, 0.1], Gen.Double[1, 2], Gen.Double[0.01, 5]).Sample((d, k, share) =>
        {
            Pin pin = Forty with { D = d }, thicker = Forty with { D = d * k };
            foreach (Func<Pin, double, Limit?> limit in (ReadOnlySpan<Func<Pin, double, Limit?>>)[
                (p, f) => p.Shear(f, PartialFactors.Recommended), (p, f) => p.Bearing(f, PartialFactors.Recommended), (p, f) => p.Bending(f, PartialFactors.Recommended)])
            {
                double F = limit(pin, share)!.Value.SafeTo;
                Assert.True(limit(thicker, share)!.Value.SafeTo >= F);
                Near.Relative(F / 2, limit(pin, 2 * share)!.Value.SafeTo, 1e-9);
                Near.Relative(F, limit(pin, -share)!.Value.SafeTo, 1e-12);
            }
        }, iter: 100);

    [Fact]
    public void NoForceDoesNotApplyAndNonsenseIsRefused()
    {
        Assert.Null(Forty.Bending(0, NoLoad));
        Assert.Null(Forty.Shear(0, NoLoad));
        Assert.Throws<ArgumentOutOfRangeException>(() => Forty.Contact(1, 0.040, 0.030, 275e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Pin(0, 1, 1, 1, 1, 1, 1, 1));
    }

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        Forty.Shear(0.5, PartialFactors.Recommended, w);
        Forty.Bearing(0.5, PartialFactors.Recommended, w);
        (Forty with { Outer = 0.01 }).Bearing(0.5, PartialFactors.Recommended, w);
        Forty.Bending(0.5, PartialFactors.Recommended, w);
        Forty.Contact(0.5, 0.041, 0.030, 275e6, 210e9, w);
        WorkingCheck.Holds(w);
    }
}
