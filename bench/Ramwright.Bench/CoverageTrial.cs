using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Bench;

/// <summary>
/// Made-up presses, each a little otherwise, read with made-up instruments: how often do the stated intervals hold what is true? Errors are drawn as the budget takes
/// them: within bounds where only bounds are known, normal where readings scatter.
/// </summary>
internal static class CoverageTrial
{
    private const double GaugeRange = 250e5, GaugeClass = 1, GaugeStep = 0.5e5, BoreLimit = 5e-5, CellLimit = 1e3, DialLimit = 1e-5, DialStep = 2e-6;
    private static readonly DateOnly Day = new(2026, 5, 9);

    /// <summary>The true force.</summary>
    /// <param name="check">The press that the file describes.</param>
    /// <param name="from">How friction is found.</param>
    /// <param name="trials">How many.</param>
    /// <param name="seed">Which row of numbers.</param>
    public static (int Inside, int All) Force(PressCheck check, FrictionFrom from, int trials, ulong seed)
    {
        var draws = new SeededDraws(seed);
        int inside = 0;
        for (int i = 0; i < trials; i++)
        {
            var press = new MadeUp(check, draws, from);
            TrueForce found = TrueForce.Of(check, new ReadingBook(check, press.Readings(from)), most: 30_000)!;
            if (Math.Abs(found.Value - press.Force(press.Top)) <= found.Stated)
                inside++;
        }

        return (inside, trials);
    }

    /// <summary>The stiffness at the opening.</summary>
    /// <inheritdoc cref="Force"/>
    public static (int Inside, int All) Stiffness(PressCheck check, int trials, ulong seed)
    {
        var draws = new SeededDraws(seed);
        double give = DialPoint.Of(check.Response)[0].PerNewton;
        int inside = 0, all = 0;
        for (int i = 0; i < trials; i++)
        {
            var press = new MadeUp(check, draws, FrictionFrom.SeveralLoads);
            double k = 1 / (give * (0.7 + 0.6 * draws.Even()));
            List<Reading> log = [.. press.Readings(FrictionFrom.SeveralLoads), .. press.Dials(k)];
            Stiffness found = Ramwright.Proving.Stiffness.Of(check, new ReadingBook(check, log)).Single();
            if (found.Measured is not { } m)
                continue;
            all++;
            if (Math.Abs(m.Value - k) <= m.Expanded)
                inside++;
        }

        return (inside, all);
    }

    /// <summary>The pump's flow, at a pressure between those that were timed.</summary>
    /// <inheritdoc cref="Force"/>
    public static (int Inside, int All) Pump(PressCheck check, int trials, ulong seed)
    {
        var draws = new SeededDraws(seed);
        int inside = 0, all = 0;
        double top = 0.85 * check.Power.Curve.Ends, A = check.Power.Areas.Push;
        double low = check.Rig.Pump is Presses.RigElectricPack { LowStage: not null } pack ? pack.UnloadAt * 1.1 : 0;
        top = Math.Min(top, check.Power.TruePressure);
        for (int i = 0; i < trials; i++)
        {
            double scale = 0.8 + 0.4 * draws.Even(), slip = 0.2 * draws.Even();
            double True(double p) => scale * check.Power.Curve.Flow(p) * (check.Rig.Pump is Presses.RigElectricPack ? 1 - slip * p / top : 1);
            List<Reading> log = [];
            for (int n = 0; n < 8; n++)
            {
                double p = low + (top - low) * n / 7, way = 0.1, t = A * way / (True(p) * (1 + 0.012 * draws.Normal()));
                log.Add(new Reading(n + 1, Day, null, "x", ReadingKind.TimeOut) { Value = t, Travel = way, Pressure = p });
            }

            PumpFit fit = PumpFit.Of(check, new ReadingBook(check, log))[^1];
            double at = low + (top - low) * (0.1 + 0.6 * draws.Even());
            if (fit.FlowAt(at) is not { } flow)
                continue;
            all++;
            if (Math.Abs(flow.Value - True(at)) <= StudentT.Coverage(StudentT.TwoSigma, flow.Dof) * flow.U)
                inside++;
        }

        return (inside, all);
    }

    /// <summary>One press as it really is, and its readings.</summary>
    private sealed class MadeUp
    {
        private readonly SeededDraws _draws;
        private readonly double _D, _boreError, _gaugeLow, _gaugeHigh, _cellError, _f0, _m, _dialLow, _dialHigh;
        private int _line;

        public MadeUp(PressCheck check, SeededDraws draws, FrictionFrom from)
        {
            _draws = draws;
            double mu = check.Rig.Cylinder.SealFriction, limit = GaugeClass / 100 * GaugeRange;
            _D = check.Rig.Cylinder.Bore + Bound(1e-4);
            _boreError = Bound(BoreLimit);
            _gaugeLow = Bound(limit);
            // for the force one error all along, as the budget has it; for the slope of a dial one at each end
            _gaugeHigh = from == FrictionFrom.SeveralLoads ? Bound(limit) : _gaugeLow;
            _cellError = Bound(CellLimit);
            (_dialLow, _dialHigh) = (Bound(DialLimit), Bound(DialLimit));
            _m = 2 * mu * draws.Even();
            _f0 = from == FrictionFrom.File ? 0 : 1.5e5 * draws.Even();
            Top = (0.9 + 0.1 * draws.Even()) * Math.Min(210e5, check.Power.TruePressure);
        }

        public double Top { get; }

        private double Area => Math.PI / 4 * _D * _D;

        public double Force(double p) => Area * (p - _f0 - _m * p);

        public IEnumerable<Reading> Readings(FrictionFrom from)
        {
            yield return Instrument("G", Dimension.Pressure, GaugeClass / 100 * GaugeRange, GaugeStep);
            yield return Instrument("M", Dimension.Length, BoreLimit, 1e-5);
            yield return Instrument("C", Dimension.Force, CellLimit, 100);
            yield return Instrument("D", Dimension.Length, DialLimit, DialStep);
            for (int i = 0; i < 5; i++)
                yield return Read(ReadingKind.TopPressure, Gauge(Top + 0.8e5 * _draws.Normal()), "G");
            for (int i = 0; i < 3; i++)
                yield return Read(ReadingKind.Bore, Step(_D + _boreError + 1e-5 * _draws.Normal(), 1e-5), "M");
            double[] levels = from switch { FrictionFrom.OneLoad => [14e5], FrictionFrom.SeveralLoads => [20e5, 55e5, 90e5, 125e5, 160e5], _ => [] };
            foreach (double level in levels)
            {
                for (int i = 0; i < 3; i++)
                {
                    double back = (level - 2 * _f0 - _m * level) / (1 + _m);
                    yield return Read(ReadingKind.SlowOut, Gauge(level + 0.4e5 * _draws.Normal()), "G") with { OnRam = level };
                    yield return Read(ReadingKind.SlowBack, Gauge(back + 0.4e5 * _draws.Normal()), "G") with { OnRam = level };
                }
            }

            if (from != FrictionFrom.LoadCell)
                yield break;
            for (int i = 0; i < 8; i++)
            {
                double p = Top * (0.3 + 0.1 * i);
                yield return Read(ReadingKind.Load, Step(Force(p) + _cellError + 400 * _draws.Normal(), 100), "C") with { Pressure = Gauge(p + 0.3e5 * _draws.Normal()) };
            }
        }

        public IEnumerable<Reading> Dials(double k)
        {
            double most = Force(Top) / k;
            for (int i = 0; i <= 10; i++)
            {
                double p = Top * i / 10, x = i == 0 ? 0 : Math.Max(0, Force(p)) / k + 3e-5;
                x += 2e-6 * _draws.Normal() + _dialLow + (_dialHigh - _dialLow) * x / most;
                yield return Read(ReadingKind.Dial, Step(x, DialStep), "D") with { At = "opening", Pressure = i == 0 ? 0 : Gauge(p + 0.3e5 * _draws.Normal()), Way = Way.Up };
            }
        }

        private double Gauge(double p) => Math.Max(0, Step(p + _gaugeLow + (_gaugeHigh - _gaugeLow) * p / Top, GaugeStep));

        private double Bound(double a) => a * (2 * _draws.Even() - 1);

        private static double Step(double x, double step) => Math.Round(x / step) * step;

        private Reading Instrument(string name, Dimension measures, double limit, double step) =>
            Read(ReadingKind.Instrument, 0, "") with { Word = name, Measures = measures, Limit = limit, Resolution = step };

        private Reading Read(ReadingKind kind, double value, string by) => new(++_line, Day, null, "x", kind) { Value = value, Instrument = by };
    }
}
