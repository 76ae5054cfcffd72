using CsCheck;
using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class BoltGroupTest
{
    private static readonly PartialFactors NoLoad = new(Load: 1);
    private static ScrewThread M(double d, double p) => new(d / 1e3, p / 1e3) { Name = $"M{d}" };
    private static readonly ScrewThread M20 = M(20, 2.5);

    internal static PropertyClass Class(string name)
    {
        Assert.True(StockTables.Built.TryClass(name, 0.02, out PropertyClass? found));
        return found;
    }

    [Theory]
    [InlineData("F-19", 12, 1.75, 16.2, 24.3, 32.4, 48.6, 43.4, 33.7, 60.7, 47.2, 59.0)]
    [InlineData("F-20", 16, 2, 30.1, 45.2, 60.3, 90.4, 77.2, 62.8, 113.0, 87.9, 109.9)]
    [InlineData("F-21", 20, 2.5, 47.0, 70.6, 94.1, 141.1, 120.6, 98.0, 176.4, 137.2, 171.5)]
    [InlineData("F-22", 24, 3, 67.8, 101.7, 135.6, 203.3, 173.7, 141.2, 254.2, 197.7, 247.1)]
    [InlineData("F-23", 30, 3.5, 107.7, 161.6, 215.4, 323.1, 271.4, 224.4, 403.9, 314.2, 392.7)]
    [InlineData("F-24", 36, 4, 156.9, 235.3, 313.7, 470.6, 390.9, 326.8, 588.2, 457.5, 571.9)]
    public void Table(string id, double d, double p, double v46, double t46, double v88, double t88, double shank88, double v109, double t109, double p88, double p109)
    {
        var r = new Reference(id, $"EN 1993-1-8 table 3.4, M{d}, γM2 1.25", d == 20 ? Trust.FoundAndRecomputed : Trust.OwnNumbers);
        ScrewThread t = M(d, p);
        const double tol = 0.003;
        r.Near("4.6 shear, kN", v46, new Bolt(t, Class("4.6")).Shear() / 1.25e3, tol);
        r.Near("4.6 tension, kN", t46, new Bolt(t, Class("4.6")).Tension() / 1.25e3, tol);
        r.Near("8.8 shear, kN", v88, new Bolt(t, Class("8.8")).Shear() / 1.25e3, tol);
        r.Near("8.8 tension, kN", t88, new Bolt(t, Class("8.8")).Tension() / 1.25e3, tol);
        r.Near("8.8 shank in shear, kN", shank88, new Bolt(t, Class("8.8"), ThreadSheared: false).Shear() / 1.25e3, tol);
        r.Near("10.9 shear, kN", v109, new Bolt(t, Class("10.9")).Shear() / 1.25e3, tol);
        r.Near("10.9 tension, kN", t109, new Bolt(t, Class("10.9")).Tension() / 1.25e3, tol);
        r.Near("8.8 preload, kN", p88, new Bolt(t, Class("8.8")).CodePreload() / 1e3, tol);
        r.Near("10.9 preload, kN", p109, new Bolt(t, Class("10.9")).CodePreload() / 1e3, tol);

        // The same through a group of one bolt.
        var one = new BoltGroup(new Bolt(t, Class("8.8")), [new BoltPlace(0, 0)]);
        Near.Relative(v88, one.Shear(new Actions(0, 0, 1, 0, 0, 0), NoLoad)!.Value.SafeTo / 1e3, tol);
        Near.Relative(t88, one.Tension(new Actions(1, 0, 0, 0, 0, 0), NoLoad)!.Value.SafeTo / 1e3, tol);
    }

    [Fact]
    public void ClassesOutsideTheCodeAreCountedNoHigherThanItsHighest()
    {
        Bolt hardest = new(M20, Class("10.9")), hard = new(M20, Class("12.9")), inch = new(M20, Class("SAE 5"));

        Assert.Equal((hardest.Shear(), hardest.Tension()), (hard.Shear(), hard.Tension()));
        Near.Relative(0.5 * 120 * 6894757.293 * M20.As, inch.Shear(), 1e-9);
        Assert.Throws<InvalidOperationException>(() => new Bolt(M20, Class("4.6")).CodePreload());
        Assert.Throws<InvalidOperationException>(() => hard.CodePreload());
    }

    [Fact]
    public void Bearing()
    {
        var r = new Reference("F-25", "EN 1993-1-8 table 3.4: M20 8.8, d0 22, e1 40, e2 40, t 12, fu 470", Trust.FoundAndRecomputed);
        var plate = new BoltedPlate(0.012, 470e6, 0.022, 0.040, 0.040);
        r.Near("Fb,Rd, kN", 136.7, new Bolt(M20, Class("8.8")).Bearing(plate) / 1.25e3, 0.003);
        Near.Relative(0.606, new Bolt(M20, Class("8.8")).Bearing(plate) / (2.5 * 470e6 * 0.02 * 0.012), 0.001);

        var s = new Reference("F-26", "EN 1993-1-8 table 3.4: M20, e1 30, e2 30, p1 70, t 10, fu 430", Trust.OwnNumbers);
        var small = new BoltedPlate(0.010, 430e6, 0.022, 0.030, 0.030, 0.070);
        s.Near("Fb,Rd, kN", 66.2, new Bolt(M20, Class("8.8")).Bearing(small) / 1.25e3, 0.003);
        s.Near("αb k1", 0.4545 * 2.118, new Bolt(M20, Class("8.8")).Bearing(small) / (430e6 * 0.02 * 0.010), 0.003);
        Assert.Throws<ArgumentException>(() => new Bolt(M20, Class("8.8")).Bearing(small with { E2 = 0.010 }));

        // soft bolt in hard plate: α_b = 400/510, so 2.5·400·20·12; closely spaced across: k_1 = 1.4·55/22 − 1.7 = 1.8
        var o = new Reference("MB-40", "EN 1993-1-8 table 3.4: M20 4.6, d0 22, e1 70, e2 50, t 12, fu 510", Trust.OwnNumbers);
        var hard = new BoltedPlate(0.012, 510e6, 0.022, 0.070, 0.050);
        o.Near("F_bR, kN", 240, new Bolt(M20, Class("4.6")).Bearing(hard) / 1e3, 1e-9);
        o.Near("F_bR at p2 55, kN", 240 * 1.8 / 2.5, new Bolt(M20, Class("4.6")).Bearing(hard with { P2 = 0.055 }) / 1e3, 1e-9);
        o.Near("F_bR at p1 55, kN", 2.5 * (55 / 66.0 - 0.25) * 510 * 0.24, new Bolt(M20, Class("4.6")).Bearing(hard with { P1 = 0.055 }) / 1e3, 1e-9);

        // the same through a group of one
        var one = new BoltGroup(new Bolt(M20, Class("8.8")), [new BoltPlace(0, 0)]);
        Near.Relative(136.7, one.Bearing(new Actions(0, 0, 1, 0, 0, 0), plate, NoLoad)!.Value.SafeTo / 1e3, 0.003);
        Assert.Null(one.Bearing(new Actions(1, 0, 0, 0, 0, 0), plate, NoLoad));
    }

    [Fact]
    public void TheShankOfAHardBolt() => new Reference("MB-41", "EN 1993-1-8 table 3.4: M20 10.9, the plane through the shank, α_v 0.6", Trust.OwnNumbers)
        .Near("F_v,Rd, kN", 0.6 * 1000 * Math.PI * 100 / 1.25e3, new Bolt(M20, Class("10.9"), ThreadSheared: false).Shear() / 1.25e3, 1e-9);

    [Fact]
    public void SlipOfPreloadedBolts()
    {
        // F-21: 137.2 kN preload; two bolts, two faces, μ 0.3: 2·2·0.3·137.2 = 164.6 kN
        BoltGroup g = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 2, 1, 0.1, 0, 2);
        Limit slips = g.Slips(new Actions(0, 0, 1, 0, 0, 0), 0.3)!.Value;
        var r = new Reference("MB-42", "EN 1993-1-8 3.9.1: two M20 8.8, two faces, μ 0.3", Trust.OwnNumbers);
        r.Near("slips at, kN", 164.6, slips.GivesAt / 1e3, 0.001);
        r.Near("γ_M3,ser", 1.1, slips.Factor, 1e-12);
        Assert.Null(g.Slips(new Actions(1, 0, 0, 0, 0, 0), 0.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => g.Slips(new Actions(0, 0, 1, 0, 0, 0), 0));
        // pushed askew the two shears add as a vector, 3:4:5
        Near.Relative(slips.GivesAt, g.Slips(new Actions(0, 0.6, 0.8, 0, 0, 0), 0.3)!.Value.GivesAt, 1e-12);
        Near.Relative(0.5, g.WorstShear(new Actions(0, 0.6, 0.8, 0, 0, 0)), 1e-12);
        Near.Relative(0.5 + 3 * 0.05 / 0.005, g.WorstPull(new Actions(1, 0, 0, 0, 0, 3)), 1e-12);
        Near.Relative(0.5 + 3 * 0.05 / 0.005, g.MostPulled(new Actions(1, 0, 0, 0, 0, 3)), 1e-12);
    }

    [Fact]
    public void OneSlantingLineOfBoltsHoldsTheMomentSquareToIt()
    {
        // Five bolts a distance s apart on a line through the origin at any angle: a moment M about the normal of the line pulls F = M s/Σs².
        Gen.Select(Gen.Double[-3.2, 3.2], Gen.Double[0.02, 0.2], Gen.Double[-3, 3]).Sample((angle, s, M) =>
        {
            double c = Math.Cos(angle), d = Math.Sin(angle);
            var g = new BoltGroup(new Bolt(M20, Class("8.8")), [.. from i in Enumerable.Range(-2, 5) select new BoltPlace(i * s * c, i * s * d)]);
            IReadOnlyList<(double Shear, double Pull)> f = g.Forces(new Actions(0, 0, 0, 0, M * d, -M * c));
            for (int i = -2; i <= 2; i++)
                Near.Absolute(M * i * s / (10 * s * s), f[i + 2].Pull, 1e-6 * (Math.Abs(M) / s + 1e-3));
            if (Math.Abs(M) > 0.01)
                Assert.Throws<ArgumentException>(() => g.Forces(new Actions(0, 0, 0, 0, M * c, M * d)));
        }, iter: 100);

        var alone = new BoltGroup(new Bolt(M20, Class("8.8")), [new BoltPlace(0, 0)]);
        Assert.Throws<ArgumentException>(() => alone.Forces(new Actions(0, 0, 0, 0, 1, -1)));
        Assert.Throws<ArgumentException>(() => alone.Forces(new Actions(0, 0, 0, 0, 1, 1)));
    }

    [Fact]
    public void ShearAndTensionTogether()
    {
        var group = new BoltGroup(new Bolt(M20, Class("8.8")), [new BoltPlace(0, 0)]);
        Limit limit = group.Combined(new Actions(80e3, 40e3, 0, 0, 0, 0), NoLoad)!.Value;
        new Reference("F-27", "EN 1993-1-8 table 3.4: M20 8.8, 40 kN shear, 80 kN tension", Trust.OwnNumbers).Near("use", 0.830, 1 / limit.SafeTo, 0.003);
    }

    [Fact]
    public void PunchingThroughThePlate() =>
        new Reference("F-28", "EN 1993-1-8 table 3.4: dm 32, tp 12, fu 430", Trust.OwnNumbers)
            .Near("Bp,Rd, kN", 249.0, Bolt.Punching(0.032, 0.012, 430e6) / 1.25e3, 0.003);

    [Fact]
    public void Spacings()
    {
        var r = new Reference("F-29", "EN 1993-1-8 table 3.3, d0 22", Trust.FoundAndRecomputed);
        r.Within("e1 and e2, mm", 26.4, BoltedPlate.LeastEdge(0.022) * 1e3, 1e-9);
        r.Within("p1, mm", 48.4, BoltedPlate.LeastPitch(0.022) * 1e3, 1e-9);
        r.Within("p2, mm", 52.8, BoltedPlate.LeastGauge(0.022) * 1e3, 1e-9);
        Assert.Empty(new BoltedPlate(0.01, 360e6, 0.022, 0.0264, 0.0264, 0.0484, 0.0528).TooClose());
        Assert.Equal(4, new BoltedPlate(0.01, 360e6, 0.022, 0.0263, 0.0263, 0.0483, 0.0527).TooClose().Count);
        Assert.Equal("end distance e1 is 20 mm, at least 26.4 mm is needed", Assert.Single(new BoltedPlate(0.01, 360e6, 0.022, 0.020, 0.0264).TooClose()));
        Near.Relative(0.022, new Bolt(M20, Class("8.8")).UsualHole, 1e-12);
    }

    [Fact]
    public void TorqueAndPreloadedJoint()
    {
        double F = 0.75 * M20.As * 600e6;
        var r = new Reference("F-30", "Shigley 8-8: T = K F d, M20 8.8, K 0.2, F = 0.75 Fp", Trust.FromMemoryAndRecomputed);
        r.Near("F, kN", 110, F / 1e3, 0.01);
        r.Near("T, N·m", 441, Preload.Torque(F, 0.020), 0.01);
        var j = new Reference("F-31", "Shigley 8-7: Fi 100, C 0.2, P 80 kN", Trust.FromMemoryAndRecomputed);
        j.Near("bolt, kN", 116, Preload.BoltForce(100e3, 0.2, 80e3) / 1e3, 1e-9);
        j.Near("separation, kN", 125, Preload.Separation(100e3, 0.2) / 1e3, 1e-9);
        j.Near("amplitude, kN", 8, (Preload.BoltForce(100e3, 0.2, 80e3) - Preload.BoltForce(100e3, 0.2, 0)) / 2e3, 1e-9);
        j.Near("opens at, ram with half on each, kN", 250, Preload.Opens(0.5, 100e3, 0.2)!.Value.GivesAt / 1e3, 1e-9);
        Assert.Null(Preload.Opens(0, 100e3, 0.2));
        var s = new Reference("F-32", "stretch of M36, 1500 mm, 100 kN", Trust.Recomputed);
        s.Near("threaded, mm", 0.874, Preload.Stretch(100e3, 1.5, 817e-6) * 1e3, 0.003);
        s.Near("plain, mm", 0.702, Preload.Stretch(100e3, 1.5, Math.PI / 4 * 0.036 * 0.036) * 1e3, 0.003);
    }

    [Fact]
    public void EccentricShearByHand()
    {
        // Four bolts on a 100 × 100 square, 10 kN down at 200 mm: direct 2.5 kN, torque 2 kN·m over 4·70.7 mm.
        BoltGroup g = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 2, 2, 0.1, 0.1);
        double twist = 2e3 * Math.Sqrt(0.005) / 0.02, worst = Math.Sqrt(Math.Pow(2500 + twist / Math.Sqrt(2), 2) + twist * twist / 2);
        IReadOnlyList<(double Shear, double Pull)> forces = g.Forces(new Actions(0, 0, -10e3, -2e3, 0, 0));
        new Reference("F-EX1", "elastic bolt group by hand: 4 bolts, 100 mm square, 10 kN at 200 mm", Trust.Recomputed).Near("worst bolt, N", worst, forces.Max(f => f.Shear), 1e-9);
        Near.Relative(0.02, g.Polar, 1e-12);

        // 5 kN·m stretching +z on two rows 100 apart: 25 kN in each upper bolt.
        forces = g.Forces(new Actions(0, 0, 0, 0, 5e3, 0));
        Near.Relative(25e3, forces.Max(f => f.Pull), 1e-9);
        Near.Relative(-25e3, forces.Min(f => f.Pull), 1e-9);
    }

    [Fact]
    public void TorqueAddsOnTheSideItShould()
    {
        // A torque about +x pushes what lies at +y up and what lies at +z to −y.
        BoltGroup sideBySide = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 2, 1, 0.1, 0);
        double[] shear = [.. sideBySide.Forces(new Actions(0, 0, 1, 0.02, 0, 0)).Select(f => f.Shear)];
        Near.Relative(0.5 + 0.02 * 0.05 / 0.005, shear[Array.FindIndex([.. sideBySide.Places], p => p.Y > 0)], 1e-9);
        Near.Relative(0.5 - 0.02 * 0.05 / 0.005, shear[Array.FindIndex([.. sideBySide.Places], p => p.Y < 0)], 1e-9);

        BoltGroup stacked = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 1, 2, 0, 0.1);
        shear = [.. stacked.Forces(new Actions(0, 1, 0, 0.02, 0, 0)).Select(f => f.Shear)];
        Near.Relative(0.5 - 0.02 * 0.05 / 0.005, shear[Array.FindIndex([.. stacked.Places], p => p.Z > 0)], 1e-9);
        Near.Relative(0.5 + 0.02 * 0.05 / 0.005, shear[Array.FindIndex([.. stacked.Places], p => p.Z < 0)], 1e-9);

        // The same group moved: a force at the origin turns it about its own centroid.
        var moved = new BoltGroup(new Bolt(M20, Class("8.8")), [new BoltPlace(0.25, 0), new BoltPlace(0.35, 0)]);
        Near.Relative(0.5 + 0.3 * 0.05 / 0.005, moved.Forces(new Actions(0, 0, 1, 0, 0, 0)).Max(f => f.Shear), 1e-9);
        Near.Relative(0.5, moved.Forces(new Actions(0, 0, 1, 0.3, 0, 0)).Max(f => f.Shear), 1e-9);
        var raised = new BoltGroup(new Bolt(M20, Class("8.8")), [new BoltPlace(0, 0.25), new BoltPlace(0, 0.35)]);
        Near.Relative(0.5, raised.Forces(new Actions(0, 1, 0, -0.3, 0, 0)).Max(f => f.Shear), 1e-9);
        var w = new Working();
        Near.Relative(0.5 + 0.3 * 0.05 / 0.005, raised.WorstShear(new Actions(0, 1, 0, 0, 0, 0), w), 1e-9);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void ForcesBalanceTheActionsOnAnyGroup() =>
        Gen.Select(MemberSectionTest.AnyActions, Gen.Select(Gen.Double[-0.2, 0.2], Gen.Double[-0.2, 0.2]).Select((y, z) => new BoltPlace(y, z)).List[3, 8]).Sample((a, places) =>
        {
            var g = new BoltGroup(new Bolt(M20, Class("8.8")), places);
            double spread = places.Max(p => places.Max(q => Math.Abs(p.Y * q.Z - p.Z * q.Y)));
            if (!(spread > 1e-3))
                return;
            IReadOnlyList<(double Shear, double Pull)> f;
            try
            {
                f = g.Forces(a);
            }
            catch (ArgumentException)
            {
                return;         // all in one line
            }

            double N = 0, My = 0, Mz = 0, scale = f.Max(x => Math.Abs(x.Pull)) + 1;
            for (int i = 0; i < places.Count; i++)
            {
                N += f[i].Pull;
                My += f[i].Pull * places[i].Z;
                Mz -= f[i].Pull * places[i].Y;
            }

            Near.Absolute(a.N, N, 1e-7 * scale);
            Near.Absolute(a.My, My, 1e-7 * scale);
            Near.Absolute(a.Mz, Mz, 1e-7 * scale);
        }, iter: 200);

    [Fact]
    public void LimitsScaleAndABiggerBoltNeverHoldsLess() => MemberSectionTest.AnyActions.Sample(a =>
    {
        BoltGroup g = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 2, 3, 0.1, 0.08), bigger = BoltGroup.Grid(new Bolt(M(24, 3), Class("8.8")), 2, 3, 0.1, 0.08);
        var plate = new BoltedPlate(0.012, 360e6, 0.022, 0.04, 0.04, 0.08, 0.1);
        foreach (Func<BoltGroup, Actions, Limit?> limit in (ReadOnlySpan<Func<BoltGroup, Actions, Limit?>>)[
            (x, b) => x.Shear(b, NoLoad), (x, b) => x.Tension(b, NoLoad), (x, b) => x.Combined(b, NoLoad), (x, b) => x.Bearing(b, plate, NoLoad)])
        {
            if (limit(g, a) is not { } once)
                continue;
            Near.Relative(once.SafeTo / 2, limit(g, 2 * a)!.Value.SafeTo, 1e-9);
            Assert.True(limit(bigger, a)!.Value.SafeTo >= once.SafeTo);
        }

        double one = g.Shear(a, NoLoad)?.SafeTo ?? 1;
        double two = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 2, 3, 0.1, 0.08, 2).Shear(a, NoLoad)?.SafeTo ?? 2;
        Near.Relative(2 * one, two, 1e-9);
    }, iter: 150);

    [Fact]
    public void ATinyGroupWorksLikeAGreatOne()
    {
        foreach (double size in (ReadOnlySpan<double>)[1e-4, 1, 1e4])
        {
            IReadOnlyList<(double Shear, double Pull)> f = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 2, 2, 0.1 * size, 0.08 * size).Forces(new Actions(0, 0, 0, 0, size, size));
            Near.Relative(1 / 0.16 + 1 / 0.2, f.Max(x => x.Pull), 1e-9);
        }
    }

    [Fact]
    public void OneLineOfBoltsHoldsOnlyWhatItCan()
    {
        BoltGroup line = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 1, 3, 0, 0.1);
        Near.Relative(1 / 0.2, line.Forces(new Actions(0, 0, 0, 0, 1, 0)).Max(f => f.Pull), 1e-9);
        Assert.Throws<ArgumentException>(() => line.Forces(new Actions(0, 0, 0, 0, 0, 1)));
        BoltGroup alone = BoltGroup.Grid(new Bolt(M20, Class("8.8")), 1, 1, 0, 0);
        Assert.Throws<ArgumentException>(() => alone.Forces(new Actions(0, 0, 0, 1, 0, 0)));
        Assert.Null(alone.Tension(new Actions(-1, 0, 0, 0, 0, 0), NoLoad));
        Assert.Null(alone.Shear(new Actions(1, 0, 0, 0, 0, 0), NoLoad));
    }

    [Fact]
    public void WorkingHolds() => MemberSectionTest.AnyActions.Sample(a =>
    {
        var w = new Working();
        BoltGroup g = BoltGroup.Grid(new Bolt(M20, Class("10.9")), 2, 3, 0.1, 0.08, 2);
        g.Shear(a, NoLoad, w);
        g.Bearing(a, new BoltedPlate(0.012, 360e6, 0.022, 0.04, 0.04, 0.08, 0.1), NoLoad, w);
        g.Bearing(a, new BoltedPlate(0.012, 360e6, 0.022, 0.04, 0.04), NoLoad, w);
        g.Tension(a, NoLoad, 1.2, w);
        g.Punching(a, 0.032, 0.012, 360e6, NoLoad, 1.1, w);
        g.Combined(a, NoLoad, 1.1, w);
        new BoltGroup(new Bolt(M20, Class("8.8")), [new BoltPlace(0, 0)]).Shear(a with { T = 0, My = 0, Mz = 0 }, NoLoad, w);
        Preload.Torque(1e5, 0.02, 0.2, w);
        Preload.Opens(0.5, 1e5, 0.2, w);
        Preload.Stretch(1e5, 1.5, 8e-4, 210e9, w);
        WorkingCheck.Holds(w);
    }, iter: 60);

    [Fact]
    public void WorkingShowsEveryStep()
    {
        var a = new Actions(1, 0.2, 0.4, 0.01, 0.1, 0.1);
        BoltGroup g = BoltGroup.Grid(new Bolt(M20, Class("10.9")), 2, 3, 0.1, 0.08, 2);
        Shows("T_c F_v F_vR u F_gives F_safe", w => g.Shear(a, NoLoad, w));
        Shows("T_c F_v F_pC u F_gives F_safe", w => g.Slips(a, 0.3, w));
        Shows("T_c F_v α_b k_1 F_bR u F_gives F_safe", w => g.Bearing(a, new BoltedPlate(0.012, 360e6, 0.022, 0.04, 0.04, 0.08, 0.1), NoLoad, w));
        Shows("T_c F_v α_b k_1 F_bR u F_gives F_safe", w => g.Bearing(a, new BoltedPlate(0.012, 360e6, 0.022, 0.04, 0.04), NoLoad, w));
        Shows("F_t F_tR u F_gives F_safe", w => g.Tension(a, NoLoad, 1.2, w));
        Shows("F_t B_pR u F_gives F_safe", w => g.Punching(a, 0.032, 0.012, 360e6, NoLoad, 1.1, w));
        Shows("T_c F_v F_t F_vR F_tR u F_gives F_safe", w => g.Combined(a, NoLoad, 1.1, w));
        Shows("F_t", w => g.WorstPull(a, w));
        Shows("F_t", w => g.MostPulled(a, w));

        static void Shows(string symbols, Action<Working> show)
        {
            var w = new Working();
            show(w);
            WorkingCheck.Holds(w);
            WorkingCheck.Shows(w, symbols);
        }
    }
}
