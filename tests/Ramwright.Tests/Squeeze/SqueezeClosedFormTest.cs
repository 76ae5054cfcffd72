using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using Ramwright.Jobs;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>The parts of a squeeze against closed forms, and the whole against another integrator on a simpler set of equations.</summary>
public class SqueezeClosedFormTest
{
    private const double Bar = Presses.Bar, Lpm = Presses.Lpm;

    // A pump that droops in a straight line: its stated point lies on the line.
    private static readonly RigAirPump Droops = new()
    {
        EffectiveRatio = 100,
        AreaRatio = 100,
        AirPressure = 6 * Bar,
        RatedAir = 6 * Bar,
        FreeFlow = 0.5 * Lpm,
        FullFlow = 0.25 * Lpm,
        FullFlowAt = 300 * Bar,
        UsableOil = 5e-3,
        Compressor = new RigCompressor(1, 6 * Bar, 8 * Bar, 1e-3, null),
    };

    // Steady flow whatever the pressure, up to a relief valve.
    private static readonly RigElectricPack Steady = new()
    {
        Motor = 20e3,
        Speed = 24,
        HighStage = new RigStage(4 * Lpm / 24, 1, 1),
        Relief = 700 * Bar,
        UsableOil = 5e-3,
        TankOil = 10e-3,
        TankWalls = 0.3,
    };

    private static double TimeAt(SqueezeResult r, double p)
    {
        double start = r.Points.First(q => q.Phase == SqueezePhase.Pressing).Time;
        for (int i = 1; i < r.Points.Count; i++)
        {
            (SqueezePoint a, SqueezePoint b) = (r.Points[i - 1], r.Points[i]);
            if (a.Phase == SqueezePhase.Pressing && b.Pressure >= p && a.Pressure < p)
                return a.Time + (b.Time - a.Time) * (p - a.Pressure) / (b.Pressure - a.Pressure) - start;
        }

        throw new InvalidOperationException($"never reached: {r.End}, {r.PeakPressure / Bar} bar, {string.Join(", ", r.Times)}, {r.Travel}");
    }

    [Fact]
    public void TrappedOilIsPumpedUpAsTheClosedFormSays()
    {
        var row = new Reference("PU-13", "first-order fill: V/K · p_s/Q_0 · ln 10 to nine tenths of the stall", Trust.FromMemoryAndRecomputed);
        SqueezePress press = Presses.With(Presses.Air, r => Presses.Bare(r) with { Pump = Droops }, 0);
        // work that hardly gives: it counts as so much softer oil
        const double k = 1e10;
        var work = new SqueezeWork { Resistance = new CurveResistance(new ForceAt(0, 0), new ForceAt(1e-4, k * 1e-4)), Gap = 0.001, OutAtTouch = 0.1 };

        SqueezeResult r = SqueezeRun.Of(press, work, new SqueezeCare(1e-5, 5000));

        double A = Math.PI / 4 * 0.075 * 0.075, V = A * (0.1 + SqueezePress.DeadShare * 0.16), K = press.Rig.Oil.BulkModulus;
        double t(double share) => (V / K + A * A / k) * 600 * Bar / (0.5 * Lpm) * -Math.Log(1 - share);
        row.Near("to half the stall, s", t(0.5), TimeAt(r, 300 * Bar), 0.005);
        row.Near("to nine tenths of the stall, s", t(0.9), TimeAt(r, 540 * Bar), 0.005);
        Assert.Equal(SqueezeEnd.PumpStalled, r.End);
        Assert.Equal(StoppedBy.Force, r.StoppedBy);
    }

    [Fact]
    public void SteadyFlowAgainstASpringMovesSteadily()
    {
        // Q = (A + C k/A) v with C = V/K + A² c: frame and oil lengthen the way
        const double k = 20e6, c = 2e-8, travel = 0.01;
        var row = new Reference("ram on a spring", "conservation of oil: Q = A v + (V/K + A² c) dp/dt, p = k x/A", Trust.Recomputed);
        SqueezePress press = Presses.With(Presses.Air, r => Presses.Bare(r) with { Pump = Steady }, c);
        var work = new SqueezeWork { Resistance = new CurveResistance(new ForceAt(0, 0), new ForceAt(travel, k * travel)), Gap = 0.001, OutAtTouch = 0.1 };

        SqueezeResult r = SqueezeRun.Of(press, work, new SqueezeCare(1e-5));

        double A = Math.PI / 4 * 0.075 * 0.075, K = press.Rig.Oil.BulkModulus, Q = 4 * Lpm, V0 = A * (0.1 + SqueezePress.DeadShare * 0.16);
        double F = k * travel, p = F / A, x = travel + c * F;
        double oil = (V0 + A * x) * (1 + p / K) - V0;            // all the oil that must come in
        row.Near("time under load, s", oil / Q, r.Times[SqueezePhase.Pressing], 0.002);
        row.Near("work on it, J", k * travel * travel / 2, r.Work, 0.002);
        row.Near("pressure, bar", p / Bar, r.PeakPressure / Bar, 0.002);
        double letOff = r.Balances[0].Parts.First(q => q.Name == "let off").Value;
        row.Near("energy let off: oil and frame, J", p * p * (V0 + A * x) / (2 * K) + c * F * F / 2, letOff, 0.05);
    }

    [Fact]
    public void AReceiverBetweenItsTwoLimits()
    {
        var isothermal = new Reference("receiver", "gas law at one temperature: p falls with the air", Trust.Recomputed);
        var adiabatic = new Reference("receiver", "adiabatic discharge: p/p_0 = (N/N_0)^1.4", Trust.Recomputed);
        const double q = 5e-3, t = 30;
        foreach ((Reference row, double walls, double exponent) in new[] { (isothermal, 1e6, 1.0), (adiabatic, 0.0, 1.4) })
        {
            var side = new AirSide(Droops with { Compressor = new RigCompressor(0.1, 6 * Bar, 8 * Bar, null, null) }, 0, walls);
            double N0 = side.At(8 * Bar);
            var system = new Vessel(side, q);
            double[] y = [N0, N0];
            double time = 0, first = 1e-4;
            new TimeStepper(system, 1e-6).Run(y, ref time, t, ref first, 1, null, null);
            double p = side.Pressure(y[1]) + Atmosphere.Pressure, expected = (8 * Bar + Atmosphere.Pressure) * Math.Pow((N0 - q * t) / N0, exponent);
            row.Near($"after {t} s, exponent {exponent}, bar absolute", expected / Bar, p / Bar, 0.0005);
        }
    }

    private sealed class Vessel(AirSide side, double takes) : StiffSystem
    {
        private double _slope, _a, _cross;

        public override int Size => 2;

        public override void Rates(ReadOnlySpan<double> y, Span<double> f) => (f[0], f[1]) = side.Rates(y[0], y[1], takes, false);

        public override void Linearise(ReadOnlySpan<double> y, ReadOnlySpan<double> f)
        {
            double d = 1e-6;
            _slope = (side.Rates(y[0], y[1] + d, takes, false).E - f[1]) / d;
            _cross = (side.Rates(y[0] + d, y[1], takes, false).E - f[1]) / d;
        }

        public override void Factor(double a) => _a = a;

        public override void Solve(Span<double> x)
        {
            x[0] /= _a;
            x[1] = (x[1] + _cross * x[0]) / (_a - _slope);
        }

        public override double Small(int i) => 1e-9;
    }

    // Pressing alone, no heat lost or made, no inertia, no lines: the speed at each moment from the force by halving, way and pressure by
    // Runge and Kutta's fourth order in very small steps (Math.NET). Nothing of it is shared with the squeeze but the work's force.
    [Theory]
    [InlineData(0.03, 1100, 4), InlineData(0.04, 1000, 4), InlineData(0.025, 1150, 8)]
    public void AgreesWithAnotherIntegrator(double side, double T, double flow)
    {
        const double c = 1.5e-8, outAtTouch = 0.08;
        RigElectricPack pump = Steady with { HighStage = new RigStage(flow * Lpm / 24, 1, 1), Relief = null, Motor = 60e3 };
        SqueezePress press = Presses.With(Presses.Air, r => Presses.Bare(r) with { Pump = pump }, c);
        SqueezeWork work = Presses.Square(side, T) with
        {
            OutAtTouch = outAtTouch,
            Hot = new HotWork(T, T, 700) { Surface = new HotSurface(1e-12, 0), Resting = 1e-9, UnderLoad = 1e-9, WorkIntoHeat = 1e-12 },
        };

        SqueezeResult r = SqueezeRun.Of(press, work, new SqueezeCare(1e-5));

        var bite = (HotBite)work.Resistance;
        double A = Math.PI / 4 * 0.075 * 0.075, K = press.Rig.Oil.BulkModulus, Q = flow * Lpm, V0 = A * SqueezePress.DeadShare * 0.16, most = Q / A * 3;
        double Speed(double s, double p)
        {
            double slowest = bite.Law.Range.Slowest * (bite.Height - s), lo = 0, hi = most;
            for (int i = 0; i < 45; i++)
            {
                double v = 0.5 * (lo + hi);
                double F = bite.Force(s, v, T) * (1 - Math.Exp(-s / Hardness.Bedding)) * Math.Pow(Math.Min(1, v / slowest), Hardness.HeldRate);
                if (F > p * A)
                    hi = v;
                else
                    lo = v;
            }

            return 0.5 * (lo + hi);
        }

        double end = r.Times[SqueezePhase.Pressing], reachedBefore = 0;
        const int n = 10_000;
        Vector<double>[] y = RungeKutta.FourthOrder(Vector<double>.Build.Dense([1e-7, 0]), 0, end * 1.02, n, (_, u) =>
        {
            double s = Math.Clamp(u[0], 1e-9, bite.Travel), p = Math.Max(0, u[1]), v = Speed(s, p);
            double x = outAtTouch + s + c * p * A, z = 1 + p / K;
            double rise = (Q - A * z * v) / ((V0 + A * x) / K + A * z * c * A);
            return Vector<double>.Build.Dense([v, rise]);
        });
        for (int i = 1; i < n && reachedBefore == 0; i++)
        {
            if (y[i][0] >= bite.Travel)
                reachedBefore = end * 1.02 * (i - 1 + (bite.Travel - y[i - 1][0]) / (y[i][0] - y[i - 1][0])) / (n - 1);
        }

        var row = new Reference("squeeze", "the same squeeze without inertia by Runge and Kutta's fourth order (Math.NET Numerics), 10 000 steps", Trust.Recomputed);
        string what = $"{side * 1e3:0} mm at {T} °C, {flow} L/min";
        Assert.Equal(SqueezeEnd.Done, r.End);
        row.Near(what + ", time under load, s", reachedBefore, end, 0.003);
        double force = y.Where((u, _) => u[0] <= bite.Travel).Max(u => u[1]) * A;
        row.Near(what + ", peak force, kN", force / 1e3, r.PeakForce / 1e3, 0.003);
    }

    [Fact]
    public void ABarThatLosesNothingAndIsWorkedWarmsByTheWork()
    {
        SqueezePress press = Presses.With(Presses.Electric, r => r, Presses.Electric.Response.DaylightGrowth);
        SqueezeWork work = Presses.Square(0.03, 1000);
        work = work with { Hot = work.Hot! with { Surface = new HotSurface(1e-12, 0), Resting = 1e-9, UnderLoad = 1e-9 } };

        SqueezeResult r = SqueezeRun.Of(press, work);

        double mass = 7850 * 0.03 * 0.03 * 0.04, rise = 0.95 * r.Work / (mass * 650);
        new Reference("W4-21", "energy: β W/(m c)", Trust.Recomputed).Near("warming by the work, K", rise, r.AtEnd!.Value.Mean - 1000, 0.01);
    }
}
