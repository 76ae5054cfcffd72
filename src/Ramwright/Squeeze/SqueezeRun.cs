using Ramwright.Jobs;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Squeeze;

/// <summary>How closely a squeeze is followed.</summary>
/// <param name="Tolerance">Error allowed in a step relative to each unknown, above 0, at most 0.1.</param>
/// <param name="Points">Most points kept; 0 for none.</param>
/// <param name="Patience">Longest pressing, s.</param>
public sealed record SqueezeCare(double Tolerance = 5e-5, int Points = 240, double Patience = 180);

/// <summary>Follows one squeeze from the start of the approach to the ram being up again. Pure: the same input gives the same result, from any thread.</summary>
public sealed class SqueezeRun
{
    /// <summary>Speed at which a ram stands still to the eye, m/s.</summary>
    public const double StandsStill = 5e-5;

    private readonly SqueezePress _press;
    private readonly SqueezeWork _work;
    private readonly SqueezeCare _care;
    private readonly SqueezeSystem _system;
    private readonly TimeStepper _stepper;
    private readonly double[] _y;
    private readonly List<SqueezePoint> _points = [];
    private readonly Dictionary<SqueezePhase, double> _times = [];
    private double _t;
    private double _step;
    private double _peakForce, _peakPressure, _peakSpeed, _fastest;

    private SqueezeRun(SqueezePress press, SqueezeWork work, SqueezeCare care)
    {
        (_press, _work, _care) = (press, work, care);
        _system = new SqueezeSystem(press, work);
        _stepper = new TimeStepper(_system, care.Tolerance);
        _y = new double[_system.Size + _system.Sums];
    }

    /// <summary>Follows a squeeze.</summary>
    /// <param name="press">The press.</param>
    /// <param name="work">What it is put to.</param>
    /// <param name="care">How closely.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <exception cref="InvalidOperationException">It could not be followed.</exception>
    public static SqueezeResult Of(SqueezePress press, SqueezeWork work, SqueezeCare? care = null) => Of(press, work, care ?? new SqueezeCare(), null, null);

    /// <summary>Follows a squeeze that begins where another ended.</summary>
    internal static SqueezeResult Of(SqueezePress press, SqueezeWork work, SqueezeCare care, double[]? heat, (double N, double E, bool Compressing)? air)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(care);
        Check.Positive(care.Tolerance, "Tolerance");
        Check.Positive(care.Patience, "Patience");
        Check.NotNegative(work.Gap, "Gap");
        Check.AtLeast(work.OutAtTouch, work.Gap, "OutAtTouch");
        Check.NotNegative(work.Dwell, "Dwell");
        Check.Positive(work.Resistance.Travel, "Travel");
        var run = new SqueezeRun(press, work, care);
        run.Start(heat, air);
        return run.Follow();
    }

    private void Start(double[]? heat, (double N, double E, bool Compressing)? air)
    {
        if (_work.Hot is { } hot)
        {
            if (!(hot.Temperature >= HotSteel.Coldest && hot.Temperature <= HotSteel.Hottest))
                Check.Refuse("Temperature", hot.Temperature, $"from {HotSteel.Coldest} to {HotSteel.Hottest} °C");
            if (heat is null)
                _system.Column!.Start(_y, hot.Temperature, hot.DieTemperature);
            else
                heat.AsSpan(0, HeatColumn.Cells).CopyTo(_y);
        }

        _system.Regenerates = _press.Rig.Cylinder is { PullsByOil: true, Regeneration: Regeneration.Always or Regeneration.Approach };
        if (_press.Air is { } side)
        {
            (double N, double E, bool on) = air ?? (side.At(side.Compressor.CutOut), side.At(side.Compressor.CutOut), false);
            (_y[_system.Air], _y[_system.AirHeat], _system.Compressing) = (N, E, on);
        }
        else
        {
            _y[_system.Air] = _y[_system.AirHeat] = 1;
        }

        _y[_system.Pressure] = _system.PressureAtRest(0);
        _system.Phase = SqueezePhase.Approach;
        _y[_system.Speed] = _system.Flow(_y).Flow / _system.Fill;
    }

    private SqueezeResult Follow()
    {
        double held0 = _system.Held(_y), oil0 = _system.OilHeld(_y), air0 = _y[_system.Air], heat0 = _system.Column?.Heat(_y) ?? 0;
        Keep();
        SqueezeEnd? end = Go(SqueezePhase.Approach, double.PositiveInfinity);
        double? touch = MeanHeat();
        double offset = 0;
        if (end is null)
        {
            offset = Take();
            end = Go(SqueezePhase.Pressing, _care.Patience) ?? SqueezeEnd.TooSlow;
        }

        (double, double, double)? atEnd = null;
        if (_system.Column is not null)
        {
            (double coldest, double hottest) = HeatColumn.Range(_y);
            atEnd = (coldest, HeatColumn.MeanTemperature(_y), hottest);
        }

        double travel = Math.Max(0, _system.Travel(_y));
        StoppedBy why = Why(end.Value, touch);
        if (_work.Dwell > 0)
            Go(SqueezePhase.Dwell, _work.Dwell);
        travel = Math.Min(_work.Resistance.Travel, Math.Max(travel, _system.Travel(_y)));
        _stopped = _system.InMotion(_y[_system.Speed]);      // of hot work that of the approach, next to nothing
        _y[_system.Speed] = 0;
        Go(SqueezePhase.LetOff, 60);
        IReadOnlyList<SqueezeBalance> balances = Balances(held0 - offset, oil0);
        Go(SqueezePhase.Return, double.PositiveInfinity);
        return new SqueezeResult
        {
            End = end.Value,
            StoppedBy = why,
            Times = _times,
            Travel = travel,
            Height = _work.Resistance is HotBite bite ? bite.Height - travel : null,
            PeakForce = _peakForce,
            PeakPressure = _peakPressure,
            PeakSpeed = _peakSpeed,
            Work = Sum(SqueezeSystem.WorkDone),
            AtTouch = touch,
            AtEnd = atEnd,
            After = MeanHeat(),
            Rate = _system.Column is not null && _fastest > 0 && _work.Resistance is HotBite squeezed
                ? (squeezed.At(travel).Strain / Math.Max(_times[SqueezePhase.Pressing], 1e-9), _fastest) : null,
            AirTaken = Sum(SqueezeSystem.AirTaken),
            Oil = Sum(SqueezeSystem.OilIn),
            Receiver = _press.Air?.Pressure(_y[_system.AirHeat]),
            Unloaded = _system.Unloaded,
            Points = Thinned(),
            Balances = [.. balances, .. OfHeatAndAir(heat0, air0)],
            Assumed = [.. _press.Assumed, .. _work.Assumed],
            Steps = _stepper.Tried,
            HeatState = _system.Column is null ? null : _y[..HeatColumn.Cells],
            AirState = (_y[_system.Air], _y[_system.AirHeat], _system.Compressing),
        };
    }

    /// <summary>The touch: a circuit that regenerates on the approach alone lets its ring go. Gives the energy that is set aside with it.</summary>
    private double Take()
    {
        if (!_system.Regenerates || _press.Rig.Cylinder.Regeneration == Regeneration.Always)
            return 0;
        double before = _system.Held(_y), oil = _system.OilHeld(_y);
        _system.Regenerates = false;
        _y[_system.Pressure] = _system.PressureAtRest(_y[_system.Way]);
        _y[_system.Speed] = Math.Min(_y[_system.Speed], _system.Flow(_y).Flow / _system.Fill);
        // the oil of the ring is no longer reckoned as held, nor is what it gave
        _oilMoved += oil - _system.OilHeld(_y);
        return before - _system.Held(_y);
    }

    private (double Time, double Way) _before;
    private double _oilMoved;
    private double _stopped;

    /// <summary>One phase: until an event that ends it or a time. Switches of pump and compressor are passed on the way.</summary>
    private SqueezeEnd? Go(SqueezePhase phase, double atMost)
    {
        _system.Phase = phase;
        double from = _t, longest = phase switch { SqueezePhase.Return => 2, SqueezePhase.Approach => 0.5, _ => 1 };
        _step = phase == SqueezePhase.Approach ? 1e-3 : 1e-4;
        var events = new Events(this);
        events.Aim();
        double until = from + Math.Min(atMost, 3600);
        SqueezeEnd? end = null;
        while (true)
        {
            SqueezeEnd? already = events.Already();
            if (already is not null)
            {
                end = already;
                break;
            }

            if (events.IsOver())
                break;
            int hit = _stepper.Run(_y, ref _t, until, ref _step, longest, events, (_, _) => Keep());
            if (hit < 0)
                break;
            if (events.Switch(hit))
            {
                _step = Math.Min(_step, 1e-3);
                continue;
            }

            end = events.Means(hit);
            break;
        }

        _times[phase] = _t - from;
        return phase is SqueezePhase.Approach && end is null && !events.IsOver() ? SqueezeEnd.TooSlow : end;
    }

    private double Sum(int which) => _y[_system.Sum(which)];

    private double? MeanHeat() => _system.Column is null ? null : HeatColumn.MeanTemperature(_y);

    private void Keep()
    {
        double F = _system.Phase == SqueezePhase.Return ? 0 : _system.Force(_y), p = Math.Max(0, _y[_system.Pressure]);
        double way = _y[_system.Way], v = _t > _before.Time ? (way - _before.Way) / (_t - _before.Time) : _y[_system.Speed];
        _before = (_t, way);
        _peakPressure = Math.Max(_peakPressure, p);
        if (_system.Phase is SqueezePhase.Pressing or SqueezePhase.Dwell)
        {
            _peakForce = Math.Max(_peakForce, F);
            _peakSpeed = Math.Max(_peakSpeed, v);
            if (_system.Column is not null && _work.Resistance is HotBite bite && _system.Phase == SqueezePhase.Pressing)
            {
                double rate = Math.Max(0, v) / bite.At(_system.Travel(_y)).Height;
                _fastest = Math.Max(_fastest, rate);
            }
        }

        if (_care.Points <= 0)
            return;
        double? cold = null, mean = null, hot = null;
        if (_system.Column is not null)
        {
            (cold, hot) = HeatColumn.Range(_y);
            mean = HeatColumn.MeanTemperature(_y);
        }

        _points.Add(new SqueezePoint(_t, _system.Phase, _system.Travel(_y), v, F, p, cold, mean, hot, _press.Air?.Pressure(_y[_system.AirHeat])));
    }

    /// <summary>No more points than wanted: the first and last of each phase, and every so manieth.</summary>
    private List<SqueezePoint> Thinned()
    {
        if (_points.Count <= _care.Points)
            return _points;
        var kept = new List<SqueezePoint>();
        double each = (double)_points.Count / _care.Points, next = 0;
        for (int i = 0; i < _points.Count; i++)
        {
            bool edge = i == 0 || i == _points.Count - 1 || _points[i].Phase != _points[i - 1].Phase || _points[i].Phase != _points[i + 1].Phase;
            if (!edge && i < next)
                continue;
            kept.Add(_points[i]);
            next = i + each;
        }

        return kept;
    }

    /// <summary>Whether the press or the steel was too weak: the force at the end of the job, at the heat of the touch, against the most the oil gives.</summary>
    private StoppedBy Why(SqueezeEnd end, double? touch)
    {
        switch (end)
        {
            case SqueezeEnd.Done:
                return StoppedBy.Nothing;
            case SqueezeEnd.AirRanOut:
                return StoppedBy.Air;
            case SqueezeEnd.OutOfStroke or SqueezeEnd.OutOfOil:
                return StoppedBy.Reach;
        }

        if (_work.Hot is null || touch is not { } T)
            return end == SqueezeEnd.TooSlow ? StoppedBy.Speed : StoppedBy.Force;
        double most = 0, slow = 10 * StandsStill;
        for (int i = 1; i <= 40; i++)
            most = Math.Max(most, _work.Resistance.Force(_work.Resistance.Travel * i / 40, slow, T));
        if (most > _press.Power.TrueForce)
            return StoppedBy.Force;
        return end == SqueezeEnd.TooSlow ? StoppedBy.Speed : StoppedBy.Cold;
    }

    private SqueezeBalance[] Balances(double held0, double oil0)
    {
        double held = _system.Held(_y) - held0, pump = Sum(SqueezeSystem.PumpWork);
        (string, double)[] energy =
        [
            ("work on the piece", Sum(SqueezeSystem.WorkDone)), ("relief valve", Sum(SqueezeSystem.ReliefLoss)), ("pressure lines", Sum(SqueezeSystem.LineLoss)),
            ("return lines", Sum(SqueezeSystem.BackLoss)), ("seals and guides", Sum(SqueezeSystem.SealLoss) + Sum(SqueezeSystem.Damped)), ("let off", Sum(SqueezeSystem.LetOffLoss)),
            ("stopping the ram", _stopped), ("still held by oil, frame and spring", held),
        ];
        double inside = _system.OilHeld(_y) + _oilMoved - oil0, came = Sum(SqueezeSystem.OilIn);
        (string, double)[] oil = [("let off", Sum(SqueezeSystem.OilOut)), ("in the cylinder", inside)];
        return
        [
            new("energy", pump, energy.Sum(e => e.Item2), pump, energy),
            new("oil", came, oil.Sum(e => e.Item2), came, oil),
        ];
    }

    private List<SqueezeBalance> OfHeatAndAir(double heat0, double air0)
    {
        var balances = new List<SqueezeBalance>();
        if (_system.Column is { } column)
        {
            double comes = Sum(SqueezeSystem.WorkDone) * _work.Hot!.WorkIntoHeat, less = heat0 - column.Heat(_y);
            (string, double)[] heat =
                [("radiated", Sum(SqueezeSystem.Radiated)), ("into the air", Sum(SqueezeSystem.Convected)), ("into the dies", Sum(SqueezeSystem.IntoDies))];
            double lost = heat.Sum(h => h.Item2);
            balances.Add(new("heat of the bar", less + comes, lost, Math.Max(lost, comes), heat));
        }

        if (_press.Air is not null)
        {
            double taken = Sum(SqueezeSystem.AirTaken), made = Sum(SqueezeSystem.AirMade);
            balances.Add(new("air", air0 - _y[_system.Air] + made, taken, Math.Max(taken, made), [("taken by the pump", taken)]));
        }

        return balances;
    }

    /// <summary>What can end a phase or switch something in it.</summary>
    private sealed class Events(SqueezeRun run) : IEvents
    {
        private enum Kind { Arrived, Still, Stroke, Oil, Cold, Compressor, Unload }

        private readonly List<Kind> _kinds = [];
        private double _letOffTo;

        public int Count => _kinds.Count;

        public void Aim()
        {
            SqueezeSystem system = run._system;
            _kinds.Clear();
            _kinds.Add(Kind.Arrived);
            if (system.Phase is SqueezePhase.Approach or SqueezePhase.Pressing)
            {
                _kinds.Add(Kind.Still);
                _kinds.Add(Kind.Stroke);
                _kinds.Add(Kind.Oil);
                if (run._work.Hot is not null)
                    _kinds.Add(Kind.Cold);
                if (run._press.Flow.HasTwoStages)
                    _kinds.Add(Kind.Unload);
            }

            if (run._press.Air is { Delivered: > 0 })
                _kinds.Add(Kind.Compressor);
            _letOffTo = 1.02 * system.PressureAtRest(run._y[system.Way]) + 0.005 * run._y[system.Pressure] + 1e3;
        }

        public double Value(int which, ReadOnlySpan<double> y)
        {
            SqueezeSystem system = run._system;
            switch (_kinds[which])
            {
                case Kind.Arrived:
                    return system.Phase switch
                    {
                        SqueezePhase.Approach => y[system.Way] - run._work.Gap,
                        SqueezePhase.Pressing => system.Travel(y) - run._work.Resistance.Travel,
                        SqueezePhase.LetOff => (_letOffTo - y[system.Pressure]) / 1e8,
                        SqueezePhase.Return => -y[system.Way],
                        _ => -1,
                    };
                case Kind.Still:
                    return StandsStill - system.Flow(y).Flow / system.Fill;
                case Kind.Stroke:
                    return system.Out(y) - run._press.Stroke;
                case Kind.Oil:
                    {
                        // what the tank has given since the ram was in; the ring gives its own back
                        double fill = run._press.Rig.Cylinder.PullsByOil ? system.Fill - (system.Regenerates ? 0 : run._press.Ring) : system.Fill;
                        return system.Out(y) * fill - run._press.Rig.Pump.UsableOil;
                    }
                case Kind.Cold:
                    return (run._work.Hot!.Coldest - HeatColumn.MeanTemperature(y)) / 1000;
                case Kind.Unload:
                    return system.Unloaded ? -1 : (system.Flow(y).PumpPressure - run._press.Flow.UnloadAt) / 1e8;
                default:
                    {
                        double p = run._press.Air!.Pressure(y[system.AirHeat]);
                        return (system.Compressing ? p - run._press.Air.Compressor.CutOut : run._press.Air.Compressor.CutIn - p) / 1e5;
                    }
            }
        }

        /// <summary>An end that was there before the phase began.</summary>
        public SqueezeEnd? Already()
        {
            for (int i = 0; i < _kinds.Count; i++)
            {
                if (!(Value(i, run._y) >= 0))
                    continue;
                if (_kinds[i] is Kind.Compressor or Kind.Unload)
                {
                    Switch(i);
                    continue;
                }

                if (_kinds[i] is not Kind.Arrived)
                    return Means(i);
            }

            return null;
        }

        /// <summary>Whether the phase has come to its end.</summary>
        public bool IsOver() => Value(0, run._y) >= 0;

        /// <summary>Whether it only switches something, which it then does.</summary>
        public bool Switch(int which)
        {
            switch (_kinds[which])
            {
                case Kind.Compressor:
                    run._system.Compressing = !run._system.Compressing;
                    return true;
                case Kind.Unload:
                    run._system.Unloaded = true;
                    return true;
                default:
                    return false;
            }
        }

        public SqueezeEnd? Means(int which)
        {
            switch (_kinds[which])
            {
                case Kind.Arrived:
                    return run._system.Phase == SqueezePhase.Pressing ? SqueezeEnd.Done : null;
                case Kind.Stroke:
                    return SqueezeEnd.OutOfStroke;
                case Kind.Oil:
                    return SqueezeEnd.OutOfOil;
                case Kind.Cold:
                    return SqueezeEnd.TooCold;
                default:
                    double air = run._system.AirAtPump(run._y[run._system.AirHeat]);
                    if (run._press.Rig.Pump is RigAirPump pump && air < 0.98 * pump.AirPressure)
                        return SqueezeEnd.AirRanOut;
                    return run._press.Flow.ReliefEnds(air) ? SqueezeEnd.ReliefOpened : SqueezeEnd.PumpStalled;
            }
        }
    }
}
