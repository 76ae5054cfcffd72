using CsCheck;
using Ramwright.Files;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class ThreadFatigueTest
{
    private static readonly FatigueFactors Severe = new();
    private static readonly ScrewThread M24 = Thread("M24");
    private static readonly PropertyClass Class88 = Class("8.8", M24);

    private static ScrewThread Thread(string name) => StockTables.Built.TryThread(name, out ScrewThread? thread) ? thread : throw new ArgumentException(name);

    private static PropertyClass Class(string name, ScrewThread thread) =>
        StockTables.Built.TryClass(name, thread.D, out PropertyClass? found) ? found : throw new ArgumentException(name);

    [Fact]
    public void ARodThatIsNotTightened()
    {
        var r = new Reference("G-24", "EN 1993-1-9, category 50: M24, 0 to 80 kN, γ_Mf 1.35", Trust.OwnNumbers);
        r.Near("Δσ, MPa", 226.6, 80e3 / M24.As / 1e6, 0.003);
        r.Near("cycles", 8730, ThreadFatigue.Life(M24, Class88, 40e3, 40e3, Severe)!.Value, 0.01);
    }

    [Fact]
    public void TheSameTightened()
    {
        var r = new Reference("G-25", "EN 1993-1-9, category 50: M24, range 20 kN, γ_Mf 1.35", Trust.OwnNumbers);
        r.Near("cycles", 558_700, ThreadFatigue.Life(M24, Class88, 110e3, 10e3, Severe)!.Value, 0.01);
        new Reference("T-15", "trap: bolts in tension without preload", Trust.Recomputed)
            .Near("times as many", 64, ThreadFatigue.Life(M24, Class88, 110e3, 10e3, Severe)!.Value / ThreadFatigue.Life(M24, Class88, 40e3, 40e3, Severe)!.Value, 0.01);
    }

    [Fact]
    public void ForceAndLifeAgree() =>
        Gen.Select(Gen.Double[4, 7.5], Gen.Double[0.1, 1], Gen.Double[0, 150e3], Gen.Double[0, 0.9]).Sample((lg, f, Fi, C) =>
        {
            double N = Math.Pow(10, lg);
            Limit limit = ThreadFatigue.Pulled(f, M24, Class88, N, Severe, Fi, C)!.Value;
            double P = f * limit.SafeTo, pull = Preload.BoltForce(Fi, C, P);

            // the pull of the joint as another room reckons it, swinging between preload and that
            if (pull <= M24.As * Class88.Sp)
                Near.Relative(N, ThreadFatigue.Life(M24, Class88, (pull + Fi) / 2, (pull - Fi) / 2, Severe)!.Value, 1e-6, "cycles");
            Assert.True(limit.SafeTo <= limit.GivesAt);
        });

    [Fact]
    public void MorePreloadNeverLowersTheForce() =>
        Gen.Select(Gen.Double[0, 9], Gen.Double[0, 150e3], Gen.Double[0, 50e3], Gen.Double[0, 0.9]).Sample((lg, Fi, more, C) =>
        {
            double Safe(double preload) => ThreadFatigue.Pulled(0.5, M24, Class88, Math.Pow(10, lg), Severe, preload, C)!.Value.SafeTo;
            Assert.True(Safe(Fi + more) >= Safe(Fi) * (1 - 1e-12));
        });

    [Fact]
    public void WhatIsNoMatterOfFatigueIsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadFatigue.Life(M24, Class88, 200e3, 50e3, Severe));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadFatigue.Pulled(0.5, M24, Class88, 1e4, Severe, 1e5, 1));
        Assert.Null(ThreadFatigue.Pulled(-1, M24, Class88, 1e4, Severe));
        Assert.Null(ThreadFatigue.Life(M24, Class88, 100e3, 1e3, Severe));
    }

    [Theory]
    [InlineData(0, 0), InlineData(150e3, 0.2), InlineData(20e3, 0.2), InlineData(60e3, 0.6)]
    public void WorkingFollowsFromItsText(double Fi, double C)
    {
        var w = new Working();
        Limit limit = ThreadFatigue.Pulled(0.5, Thread("M36"), Class88, 2e4, Severe, Fi, C, w)!.Value;
        ThreadFatigue.Life(Thread("M36"), Class88, 100e3, 60e3, Severe, w);
        WorkingCheck.Holds(w);
        Assert.Contains(w.Steps, s => s.Si == limit.SafeTo);
        Assert.Contains(w.Steps, s => s.Si == limit.GivesAt);
    }
}
