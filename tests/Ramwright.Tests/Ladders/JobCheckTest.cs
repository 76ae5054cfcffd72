using CsCheck;
using Ramwright.Files;
using Ramwright.Jobs;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

public class JobCheckTest
{
    private static readonly string[] Names = ["wherry-yard", "railing-shop", "drainage-mill-puller", "salvage"];

    private static readonly Lazy<Dictionary<string, PressCheck>> Checked = new(() =>
        Names.ToDictionary(n => n, n => CheckedPress.Of(PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), n + PressFile.Ending))).Check!));

    public static TheoryData<string, string> Jobs()
    {
        var jobs = new TheoryData<string, string>();
        foreach ((string press, PressCheck check) in Checked.Value)
        {
            foreach (RigJob job in check.Rig.Jobs)
                jobs.Add(press, job.Name);
        }

        return jobs;
    }

    private static JobCheck Of(string press, string job) =>
        JobCheck.Of(Checked.Value[press], Checked.Value[press].Rig.Jobs.Single(j => j.Name == job));

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    [InlineData("drainage-mill-puller")]
    [InlineData("salvage")]
    public void EachDemoHasWorkItCanDoAndWorkItCannot(string press)
    {
        IReadOnlyList<JobCheck> all = JobCheck.All(Checked.Value[press]);

        Assert.True(all.Count >= 4);
        Assert.Contains(all, j => j.Verdict == Verdict.Holds);
        JobCheck cannot = all.First(j => j.Verdict == Verdict.DoesNotHold);
        Assert.StartsWith("This press cannot ", JobHeadline.Of(cannot), StringComparison.Ordinal);
        Assert.Contains(cannot.Worst!.Why.Text(), JobHeadline.Of(cannot), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Jobs))]
    public void TheWorkingComesToWhatTheTextSays(string press, string job)
    {
        var working = new Working();
        JobCheck check = Of(press, job);
        check.Work(working);

        if (working.Steps.Any(s => s.Formula.Length > 0))
            WorkingCheck.Holds(working);
        else
            Assert.NotEmpty(working.Steps);
    }

    [Theory, MemberData(nameof(Jobs))]
    public void TheNumbersHangTogether(string press, string job)
    {
        JobCheck check = Of(press, job);
        Demand d = check.Demand;

        Assert.True(d.Peak.Low > 0 && d.Peak.Low <= d.Peak.Likely && d.Peak.Likely <= d.Peak.High);
        Near.Relative(d.PeakAt.Force, d.Peak.Likely, check.Job is RigCrushTimber or RigCrushConcrete or RigCrush ? 0.3 : 1e-6);
        Assert.Equal(0, d.Curve[0].Travel);
        for (int i = 1; i < d.Curve.Count; i++)
            Assert.True(d.Curve[i].Travel > d.Curve[i - 1].Travel && d.Curve[i].Force >= 0);
        Assert.InRange(d.Energy, 1e-3, d.Travel * d.PeakAt.Force);
        Near.Relative(d.Resistance.Travel, d.Travel, 1e-9);
        Assert.Equal(check.Verdict, check.Limits.Max(l => l.Verdict));
        Assert.NotEmpty(d.Cautions);
        Assert.True(check.Time is null or > 0);
        // the pump reaches every force of a job that holds
        if (check.Verdict == Verdict.Holds)
            Assert.True(check.Time > 0 && check.GaugeAtPeak <= check.Press.Power.TruePressure);
    }

    [Fact]
    public void TheShockOfAPunchIsThePressesOwnAtThatForce()
    {
        // the boatyard's own punching stalls the pump before it breaks through; a smaller hole does not
        Assert.Null(Of("wherry-yard", "bolt holes in the chain plate").SnapThrough);
        PressCheck press = Checked.Value["wherry-yard"];
        JobCheck punch = JobCheck.Of(press, (RigCut)press.Rig.Jobs.Single(j => j is RigCut) with { Edge = Math.PI * 0.012, Hole = 0.012 });
        SnapThrough own = SnapThrough.Of(punch.Demand.LetsGo!.Value.Likely, punch.Press.Response.DaylightGrowth, 2 * punch.Press.SnapThrough.InOil / Math.Pow(punch.Press.SnapThrough.Force, 2), punch.Press.SnapThrough.RamMass);

        Near.Relative(own.Energy, punch.SnapThrough!.Energy, 1e-9);
        Assert.True(punch.SnapThrough is not null);
        Near.Relative(own.GreatestReversal, punch.SnapThrough.GreatestReversal, 1e-9);
        Assert.Contains(punch.Limits, l => l.Id == "shock" && l.Verdict == Verdict.Marginal);
    }

    [Fact]
    public void AFitByHand()
    {
        // bronze bush 60/50 of 70 mm in a steel hub of 95, H7/p6: 2 to 51 µm, 26.5 in the middle; friction 0.12
        double g_o = ((95.0 * 95 + 60 * 60) / (95.0 * 95 - 60 * 60) + 0.3) / 207e9, g_i = ((60.0 * 60 + 50 * 50) / (60.0 * 60 - 50 * 50) - 0.34) / 110e9;
        double p = 26.5e-6 / (0.06 * (g_o + g_i));

        new Reference("JC-1", "Lamé by hand for the boatyard's bush", Trust.OwnNumbers)
            .Near("F, kN", 0.12 * p * Math.PI * 0.06 * 0.07 / 1e3, Of("wherry-yard", "cutless bush into the stern tube").Demand.Peak.Likely / 1e3, 1e-6);
    }

    [Fact]
    public void WhatStandsInTheWayIsSaid()
    {
        PressCheck press = Checked.Value["railing-shop"];
        var leaf = (RigHotSqueeze)press.Rig.Jobs.Single(j => j.Name == "leaf blank");
        JobLimit Limit(RigJob job, string id) => JobCheck.Of(press, job).Limits.Single(l => l.Id == id);

        Assert.Equal(Verdict.Holds, Limit(leaf, "heat").Verdict);
        Assert.Equal(Verdict.DoesNotHold, Limit(leaf with { Transfer = 200 }, "heat").Verdict);
        Assert.Contains("has cooled to", JobHeadline.Of(JobCheck.Of(press, leaf with { Transfer = 200 })), StringComparison.Ordinal);
        // 320 mm of daylight, 160 mm of stroke
        Assert.Equal(Verdict.Holds, Limit(leaf with { Tools = 0.2 }, "stroke").Verdict);
        Assert.Contains("short", Limit(leaf with { Tools = 0.05 }, "stroke").Why.Text(), StringComparison.Ordinal);
        Assert.Equal(Verdict.DoesNotHold, Limit(leaf with { Tools = 0.31 }, "daylight").Verdict);
    }

    [Fact]
    public void APressThatNamesNoJobsHasNone()
    {
        Press press = PressFile.Read(Starter.Text("closed"), "closed", StockTables.Built).Press!;
        Assert.Empty(JobCheck.All(PressCheck.Of(Resolver.Resolve(press, StockTables.Built))));
    }

    [Fact]
    public void SpeedFallsWithForceAndEndsAtTheTrueForce()
    {
        foreach (PressCheck press in Checked.Value.Values)
        {
            PressSpeed speed = PressSpeed.Of(press.Rig, press.Power);
            Near.Relative(press.Power.ApproachSpeed, speed.At(0), 1e-9);
            Near.Relative(press.Power.Speeds[4].Speed, speed.At(press.Power.Speeds[4].Load), 1e-6);
            Assert.Equal(0, speed.At(press.Power.TrueForce));
            Gen.Select(Gen.Double[0, 1.2], Gen.Double[0, 1.2]).Sample((a, b) =>
                Assert.True(speed.At(Math.Min(a, b) * press.Power.TrueForce) >= speed.At(Math.Max(a, b) * press.Power.TrueForce)), iter: 200);
        }
    }

    [Fact]
    public void ABiggerBarTakesMoreOnTheSamePress()
    {
        PressCheck press = Checked.Value["wherry-yard"];
        PressSpeed speed = PressSpeed.Of(press.Rig, press.Power);
        RigHotSqueeze any = (RigHotSqueeze)Checked.Value["railing-shop"].Rig.Jobs.First(j => j.Name == "newel cap");
        Gen.Select(Gen.Double[10, 50], Gen.Double[1.05, 1.4], Gen.Double[950, 1150], Gen.Double[10, 50]).Sample((size, bigger, heat, hotter) =>
        {
            RigHotSqueeze job = any with { Height = size / 1e3, Width = size / 1e3, TargetHeight = size / 2e3, Heat = heat, Transfer = 0, DieWidth = 0.03 };
            RigHotSqueeze big = job with { Height = job.Height * bigger, Width = job.Width * bigger, TargetHeight = job.TargetHeight * bigger };
            double F = HotSqueezeDemand.Of(job, speed.At).Peak.Likely;
            Assert.True(HotSqueezeDemand.Of(big, speed.At).Peak.Likely > F);
            Assert.True(HotSqueezeDemand.Of(job with { Heat = heat + hotter }, speed.At).Peak.Likely < F);
        }, iter: 100);
    }

    [Fact]
    public void ABlankLowerThanTheUsualPartMakesALowerPart()
    {
        var press = new Press
        {
            Wanted = 200e3,
            Cylinder = new DoubleActing { Bore = 0.1 },
            Pump = new ElectricPack { Motor = 2200 },
            Frame = new ClosedFrame { Daylight = 0.6, Width = 0.5, Section = "HEB 160" },
            Jobs = [new ClosedDie { Area = 0.01, Blank = 0.01 }, new ClosedDie { Area = 0.01, Blank = 0.01, Height = 0.005 }, new ClosedDie { Area = 0.01, Blank = 0.01, Height = 0.0025 }],
        };
        JobCheck[] all = [.. JobCheck.All(PressCheck.Of(Resolver.Resolve(press, StockTables.Built)))];
        JobCheck job = all[0];

        Assert.Equal(0.005, ((RigClosedDie)job.Job).Height, 1e-12);
        // the same demand as of a part that is said to be so low; one of half that is pressed further
        Assert.Equal(all[1].Demand.Peak.Likely, job.Demand.Peak.Likely);
        Assert.Equal(0.005, job.Demand.Travel, 1e-12);
        Assert.Equal(0.0075, all[2].Demand.Travel, 1e-12);
    }
}
