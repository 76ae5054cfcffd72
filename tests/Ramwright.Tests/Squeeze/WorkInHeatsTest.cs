using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Squeeze;
using Ramwright.Stock;

namespace Ramwright.Tests.Squeeze;

public class WorkInHeatsTest
{
    private static readonly RigHotSqueeze Plain = new()
    {
        Name = "made up",
        Kind = "hot-squeeze",
        Path = "jobs.0",
        Assumed = [],
        Height = 0.025,
        Width = 0.025,
        Length = 0.3,
        IsRound = false,
        OnEnd = false,
        Steel = ForgingSteel.Find("mild")!,
        Heat = 1150,
        Lift = 0.005,
        InTheFire = 180,
        Transfer = 5,
        DieWidth = 0.03,
        DieLength = 0.1,
        DieHeat = 100,
        Friction = 0.4,
        TargetHeight = 0.02,
    };

    private static readonly RigHotSqueeze Drawn = Plain with { DrawingOut = new RigDrawingOut(0.018, 0.018, 0.08, 0.025, 0.2, true, 3) };

    [Fact]
    public void DrawingOutTakesTheScheduleOfTheStaticReckoning()
    {
        WorkInHeats heats = WorkInHeats.Of(Drawn, SqueezePress.Of(Presses.Electric));
        DrawingOut schedule = DrawingOut.Of(Drawn, _ => 0.01);

        Assert.True(heats.IsDone, $"{heats.StoppedBy} at {heats.StoppedAt}");
        Assert.Equal(schedule.Squeezes, heats.Squeezes);
        Assert.True(heats.Heats.Count >= schedule.Heats, "dies take heat that the schedule leaves out");
        Assert.All(heats.Heats, h => Assert.True(h.LastTouch > Drawn.Steel.Coldest && h.FirstTouch >= h.LastTouch));
        Assert.Equal(heats.Heats.Count, heats.Rounds.Count(r => r.Time >= Drawn.InTheFire));
    }

    [Fact]
    public void AHotterBarIsSqueezedMoreOftenInAHeat()
    {
        SqueezePress press = SqueezePress.Of(Presses.Electric);

        int hot = WorkInHeats.Of(Plain, press).InOneHeat, cold = WorkInHeats.Of(Plain with { Heat = 1000 }, press).InOneHeat;

        Assert.True(hot > cold && cold > 0, $"{hot} and {cold}");
    }

    [Fact]
    public void WhatIsTooMuchForThePressIsGivenUpAndSaid()
    {
        WorkInHeats heats = WorkInHeats.Of(Plain with { Height = 0.09, Width = 0.09, DieWidth = 0.09, DieLength = 0.2, TargetHeight = 0.045 }, SqueezePress.Of(Presses.Electric));

        Assert.False(heats.IsDone);
        Assert.Equal(StoppedBy.Force, heats.StoppedBy);
        Assert.Equal((1, 1), heats.StoppedAt);
    }

    [Fact]
    public void ASweepIsTheSameSqueezesOneByOne()
    {
        SqueezePress press = SqueezePress.Of(Presses.Electric);
        RigHotSqueeze job = Plain with { TargetHeight = 0.0125 };
        var across = new SweepAxis(SweepOf.Heat, 900, 1200, 4);
        var up = new SweepAxis(SweepOf.Bar, 0.015, 0.16, 5);
        int told = 0;

        SqueezeSweep sweep = SqueezeSweep.Of(job, press, across, up, n => Interlocked.Increment(ref told));

        Assert.Equal(20, told);
        double[] greatest = [.. sweep.Done().Select(d => d?.Greatest ?? 0)];
        for (int i = 1; i < greatest.Length; i++)
            Assert.True(greatest[i] >= greatest[i - 1], "the hotter, the larger");
        Assert.All(sweep.Done(), d => Assert.True(d is null || d.Value.Least <= d.Value.Greatest));
        Assert.True(greatest[3] is > 0.02 and < 0.16, string.Join(", ", greatest) + string.Join(", ", sweep.Points));
        RigHotSqueeze one = job with { Heat = across.At(2), Height = up.At(1), Width = up.At(1), TargetHeight = up.At(1) / 2 };
        SqueezeResult alone = SqueezeRun.Of(press, SqueezeWork.Of(one, press), new SqueezeCare(2e-4, 0, 60));
        Near.Relative(alone.PeakForce, sweep.At(2, 1).PeakForce, 1e-12, "the same point alone");
    }

    [Fact]
    public void TheColdIsNotEvenBegun()
    {
        SqueezeSweep sweep = SqueezeSweep.Of(Plain, SqueezePress.Of(Presses.Electric), new SweepAxis(SweepOf.Heat, 700, 750, 2), new SweepAxis(SweepOf.Bar, 0.02, 0.03, 2));

        Assert.All(sweep.Points, p => Assert.Null(p.Ends));
        Assert.All(sweep.Done(), d => Assert.Null(d));
        Assert.Throws<ArgumentException>(() => SqueezeSweep.Of(Plain, SqueezePress.Of(Presses.Electric), sweep.Up, sweep.Up));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SweepAxis(SweepOf.Bar, 0.02, 0.01, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SweepAxis(SweepOf.Bar, 0.01, 0.02, 1));
    }
}
