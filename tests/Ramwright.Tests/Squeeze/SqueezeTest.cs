using CsCheck;
using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

public class SqueezeTest
{
    private const double Bar = Presses.Bar, Lpm = Presses.Lpm;

    private static void Closes(SqueezeResult r, string what)
    {
        foreach (SqueezeBalance balance in r.Balances)
            Assert.True(balance.Error < 1e-3, $"{what}: {balance.Name} in {balance.In}, out {balance.Out}, {balance.Error:P3} missing");
        Assert.All(r.Times, t => Assert.True(t.Value >= 0, $"{what}: {t.Key} takes {t.Value} s"));
        Assert.True(double.IsFinite(r.PeakForce) && double.IsFinite(r.Time) && double.IsFinite(r.Work));
        for (int i = 1; i < r.Points.Count; i++)
            Assert.True(r.Points[i].Time >= r.Points[i - 1].Time, what);
    }

    [Fact]
    public void BalancesCloseAndTimeRunsForwardWhateverTheSqueeze() =>
        Gen.Select(Gen.Double[0.012, 0.06], Gen.Double[900, 1200], Gen.Double[0.001, 0.008], Gen.Double[0.35, 0.9], Gen.Bool).Sample((side, T, carbon, to, electric) =>
        {
            SqueezePress press = SqueezePress.Of(electric ? Presses.Electric : Presses.Air);
            SqueezeResult r = SqueezeRun.Of(press, Presses.Square(side, T, carbon, to));

            Closes(r, $"{side * 1e3} mm, {T} °C, {carbon} C, to {to}, {(electric ? "electric" : "air")}");
            Assert.True(r.PeakForce <= 1.01 * press.Power.MostPossibleForce);
            Assert.InRange(r.Height!.Value, to * side * (1 - 1e-6), side);
        }, iter: 60, threads: 1);

    [Fact]
    public void HotterTakesLessForceAndThickerMore() =>
        // up to what this press can do at the coldest of these heats: a bar of 24.7 mm at 1003 °C stops it
        Gen.Select(Gen.Double[0.015, 0.022], Gen.Double[1000, 1150]).Sample((side, T) =>
        {
            SqueezePress press = SqueezePress.Of(Presses.Electric);
            SqueezeResult here = SqueezeRun.Of(press, Presses.Square(side, T)), hotter = SqueezeRun.Of(press, Presses.Square(side, T + 40)),
                thicker = SqueezeRun.Of(press, Presses.Square(side * 1.1, T));

            Assert.True(here.IsDone, $"{side} m at {T}: {here.End}");
            Assert.True(hotter.PeakForce < here.PeakForce, $"{side} m: {here.PeakForce} N at {T}, {hotter.PeakForce} N hotter");
            Assert.True(thicker.PeakForce > here.PeakForce, $"{side} m: {here.PeakForce} N, thicker {thicker.PeakForce} N");
        }, iter: 30, threads: 1);

    [Fact]
    public void AColderBarGivesLessAtTheSamePress()
    {
        SqueezePress press = SqueezePress.Of(Presses.Air);

        double? cold = SqueezeRun.Of(press, Presses.Square(0.03, 1000)).Height, hot = SqueezeRun.Of(press, Presses.Square(0.03, 1200)).Height;

        Assert.True(hot < cold);
    }

    [Fact]
    public void TheSameInputGivesTheSameResultFromAnyThread()
    {
        SqueezePress press = SqueezePress.Of(Presses.Electric);
        SqueezeWork work = Presses.Square(0.03, 1100);
        SqueezeResult first = SqueezeRun.Of(press, work);
        var all = new SqueezeResult[16];

        Parallel.For(0, all.Length, i => all[i] = SqueezeRun.Of(press, work));

        Assert.All(all, r => Assert.Equal((first.Time, first.PeakForce, first.Work, first.AtEnd), (r.Time, r.PeakForce, r.Work, r.AtEnd)));
    }

    [Fact]
    public void ACloserLookChangesLittle()
    {
        SqueezePress press = SqueezePress.Of(Presses.Electric);
        SqueezeWork work = Presses.Square(0.03, 1100);

        SqueezeResult usual = SqueezeRun.Of(press, work), close = SqueezeRun.Of(press, work, new SqueezeCare(2e-6)), rough = SqueezeRun.Of(press, work, new SqueezeCare(2e-4));

        foreach ((SqueezeResult r, double off) in new[] { (usual, 0.003), (rough, 0.01) })
        {
            Near.Relative(close.Times[SqueezePhase.Pressing], r.Times[SqueezePhase.Pressing], off, "s");
            Near.Relative(close.PeakForce, r.PeakForce, off, "N");
            Near.Absolute(close.AtEnd!.Value.Mean, r.AtEnd!.Value.Mean, 0.5, "°C");
        }
    }

    [Fact]
    public void TheLargeStageIsUnloadedOnTheWay()
    {
        SqueezePress press = SqueezePress.Of(Presses.Electric);
        SqueezeResult r = SqueezeRun.Of(press, Presses.Square(0.04, 1150), new SqueezeCare(Points: 4000));

        Assert.True(r.Unloaded);
        double unload = ((RigElectricPack)press.Rig.Pump).UnloadAt;
        double before = r.Points.Last(p => p.Phase == SqueezePhase.Pressing && p.Pressure < 0.8 * unload && p.Travel < 0.003).Speed;
        double after = r.Points.First(p => p.Phase == SqueezePhase.Pressing && p.Pressure > 1.4 * unload).Speed;
        Assert.True(before > 2 * after, $"{before} m/s before, {after} m/s after");
    }

    [Fact]
    public void TheReliefValveStopsWhatIsTooStrongForIt()
    {
        SqueezeResult r = SqueezeRun.Of(SqueezePress.Of(Presses.Electric), Presses.Square(0.08, 1000));

        Assert.Equal((SqueezeEnd.ReliefOpened, StoppedBy.Force), (r.End, r.StoppedBy));
        Assert.True(r.Balances[0].Parts.First(p => p.Name == "relief valve").Value > 0);
        Assert.True(r.PeakPressure <= 215 * Bar * 1.0001);
        Closes(r, "relief");
    }

    [Fact]
    public void ASlowPressLosesToTheCold()
    {
        // force enough at the heat of the touch: what is short is speed
        SqueezePress slow = Presses.With(Presses.Air, r => r with { Pump = (RigAirPump)r.Pump with { FreeFlow = 0.1 * Lpm, FullFlow = 0.02 * Lpm } }, 1e-8);
        SqueezeResult r = SqueezeRun.Of(slow, Presses.Square(0.02, 1150) with { Gap = 0.001 });

        Assert.False(r.IsDone);
        Assert.Equal(StoppedBy.Cold, r.StoppedBy);
    }

    [Fact]
    public void StrokeOilAndAirEndIt()
    {
        SqueezeWork work = Presses.Square(0.03, 1150);
        SqueezePress electric = SqueezePress.Of(Presses.Electric);
        SqueezeResult stroke = SqueezeRun.Of(electric, work with { OutAtTouch = electric.Rig.Cylinder.Stroke - 0.004 });
        Assert.Equal((SqueezeEnd.OutOfStroke, StoppedBy.Reach), (stroke.End, stroke.StoppedBy));
        Assert.InRange(stroke.Travel, 0.0035, 0.004);            // the frame springs, so the tool lags behind the rod

        double A = Math.PI / 4 * 0.075 * 0.075;
        SqueezePress dry = Presses.With(Presses.Air, r => r with { Pump = r.Pump with { UsableOil = A * 0.083 } }, 1e-8);
        SqueezeResult oil = SqueezeRun.Of(dry, work);
        Assert.Equal((SqueezeEnd.OutOfOil, StoppedBy.Reach), (oil.End, oil.StoppedBy));

        SqueezePress breathless = Presses.With(Presses.Air, r => r with
        {
            Pump = (RigAirPump)r.Pump with { Compressor = new RigCompressor(0.02, 2 * Bar, 6.4 * Bar, 1e-5, null) },
        }, 1e-8);
        SqueezeResult air = SqueezeRun.Of(breathless, work);
        Assert.Equal((SqueezeEnd.AirRanOut, StoppedBy.Air), (air.End, air.StoppedBy));
        Closes(stroke, "stroke");
        Closes(oil, "oil");
        Closes(air, "air");
    }

    [Fact]
    public void TheCompressorCutsInAndOut()
    {
        SqueezePress press = Presses.With(Presses.Air, r => r with
        {
            Pump = (RigAirPump)r.Pump with { Compressor = new RigCompressor(0.09, 7.9 * Bar, 8.1 * Bar, 20e-3, null) },
        }, 1e-8);
        SqueezeResult r = SqueezeRun.Of(press, Presses.Square(0.03, 1200), new SqueezeCare(Points: 4000));

        double least = r.Points.Min(p => p.Receiver)!.Value, later = r.Points.SkipWhile(p => p.Receiver > 7.9 * Bar).Max(p => p.Receiver) ?? 0;
        Near.Relative(7.9 * Bar, least, 0.001, "it is caught at cut-in");
        Assert.True(later > 8 * Bar, "and filled again");
        Closes(r, "compressor");
    }

    [Fact]
    public void WhatBreaksThroughLetsTheRamJump()
    {
        // punching: up to 120 kN, then nothing over the last third of a millimetre and some way beyond
        var punch = new CurveResistance(new ForceAt(0, 0), new ForceAt(0.0005, 120e3), new ForceAt(0.004, 110e3), new ForceAt(0.0043, 1e3), new ForceAt(0.02, 1e3));
        var work = new SqueezeWork { Resistance = punch, OutAtTouch = 0.1 };
        SqueezeResult soft = SqueezeRun.Of(SqueezePress.Of(Presses.Electric), work);

        Assert.True(soft.IsDone);
        double pumped = soft.Points.Where(p => p.Phase == SqueezePhase.Approach).Max(p => p.Speed);
        Assert.True(soft.PeakSpeed > 5 * pumped, $"{soft.PeakSpeed} m/s against {pumped} m/s on the approach");
        Closes(soft, "punch");
    }

    [Fact]
    public void ColdWorkIsFollowedToo()
    {
        var bend = new CurveResistance(new ForceAt(0, 0), new ForceAt(0.001, 20e3), new ForceAt(0.02, 26e3));
        SqueezeResult r = SqueezeRun.Of(SqueezePress.Of(Presses.Electric), new SqueezeWork { Resistance = bend, OutAtTouch = 0.1 });

        Assert.True(r.IsDone);
        Assert.Null(r.AtEnd);
        Assert.True(r.Steps < 2000, $"{r.Steps} steps");
        Near.Relative(0.5 * 0.001 * 20e3 + 0.019 * 23e3, r.Work, 0.005, "J");
        Closes(r, "bend");
    }

    [Theory]
    [InlineData(Regeneration.Always), InlineData(Regeneration.Approach)]
    public void ARegenerativeCircuitComesDownFaster(Regeneration way)
    {
        double Time(Regeneration how)
        {
            SqueezePress press = Presses.With(Presses.Electric, r => r with { Cylinder = r.Cylinder with { Regeneration = how } }, 1e-8);
            SqueezeResult r = SqueezeRun.Of(press, Presses.Square(0.02, 1150));
            Closes(r, how.ToString());
            return r.Times[SqueezePhase.Approach];
        }

        Assert.True(Time(way) < 0.6 * Time(Regeneration.Never));
    }

    [Fact]
    public void HeldDownItGoesOnCoolingAndTheFrameGoesOnPressing()
    {
        SqueezePress press = SqueezePress.Of(Presses.Electric);
        SqueezeWork work = Presses.Square(0.03, 1100);

        SqueezeResult at = SqueezeRun.Of(press, work), held = SqueezeRun.Of(press, work with { Dwell = 2 });

        Near.Absolute(2, held.Times[SqueezePhase.Dwell], 1e-6, "s");
        Assert.True(held.After < at.After - 30, $"{held.After} against {at.After} °C");
        Closes(held, "held");
    }

    [Fact]
    public void WhatCannotBeIsRefused()
    {
        SqueezePress press = SqueezePress.Of(Presses.Electric);
        SqueezeWork work = Presses.Square(0.03, 1100);

        Assert.Throws<ArgumentOutOfRangeException>(() => SqueezeRun.Of(press, work, new SqueezeCare(double.NaN)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SqueezeRun.Of(press, work with { Gap = -1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => SqueezeRun.Of(press, work with { Hot = work.Hot! with { Temperature = 1500 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => SqueezeRun.Of(press, work with { Dwell = double.NaN }));
        Assert.Equal(SqueezeEnd.TooCold, SqueezeRun.Of(press, work with { Hot = work.Hot! with { Temperature = 790 } }).End);
    }

    [Theory]
    [InlineData(0.06, 0.01), InlineData(0.12, 0.01), InlineData(0.01, 0.02)]
    public void AnHourOfAirBalances(double made, double taken)
    {
        SqueezePress press = Presses.With(Presses.Air, r => r with
        {
            Pump = (RigAirPump)r.Pump with { Compressor = new RigCompressor(0.1, 6 * Bar, 8 * Bar, made / 60, null) },
        }, 1e-8);
        HourOfWork hour = HourOfWork.Of(press, [new WorkRound(10, taken, true), new WorkRound(20, 0, false)], 400 * Bar)!;

        Near.Absolute(hour.Taken, hour.Made + 0.1 * (8 * Bar - hour.AtEnd) / 101325, 1e-9, "m³");
        Assert.InRange(hour.Lowest, 0, 8 * Bar);
        Assert.Equal(hour.Waiting > 0, hour.FirstWait is not null);
        Assert.InRange(hour.Rounds * 30 + hour.Waiting, 3599, 3601);
        Assert.Equal(made / 60 < taken / 30, hour.Waiting > 0);
    }

    [Fact]
    public void ReceiverTimesAreTheHandbooks()
    {
        // PU-29: 100 L, 8 to 6 bar at a mean demand of 77.8 L/min, compressor at rest
        SqueezePress press = Presses.With(Presses.Air, r => r with
        {
            Pump = (RigAirPump)r.Pump with { Compressor = new RigCompressor(0.1, 6 * Bar, 8 * Bar, 258e-3 / 60, null) },
        }, 1e-8);
        HourOfWork hour = HourOfWork.Of(press, [new WorkRound(180, 0.350 * 40 / 60, false)], 0)!;
        var row = new Reference("PU-29", "receiver blow-down, t = V Δp/(p_atm Q), isothermal", Trust.FromMemoryAndRecomputed);
        (double Time, double Pressure) cutIn = hour.Curve.First(c => c.Pressure <= 6 * Bar * 1.000001);
        row.Near("8 to 6 bar, s", 152.2, cutIn.Time, 0.005);
        var duty = new Reference("PU-27", "mass balance: 350 L/min for 40 s of 180 s against 258 L/min", Trust.FromMemoryAndRecomputed);
        duty.Within("share of the hour the compressor runs", 0.301, hour.CompressorRuns, 0.03);
    }
}
