using Ramwright.Jobs;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Squeeze;

/// <summary>How closely a squeeze is followed.</summary>
/// <param name="Tolerance">Error allowed in a step relative to each unknown, above 0, at most 0.1.</param>
/// <param name="Points">Most points kept; 0 for none.</param>
/// <param name="Patience">Longest pressing, s.</param>
public sealed record SqueezeCare(double Tolerance = 2.5e-5, int Points = 240, double Patience = 180);

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
    private readonly SqueezeTrace _trace;
    private readonly Dictionary<SqueezePhase, double> _times = [];
    private double _t;
    private double _step;

    private SqueezeRun(SqueezePress press, SqueezeWork work, SqueezeCare care)
    {
        (_press, _work, _care) = (press, work, care);
        _system = new SqueezeSystem(press, work);
        _stepper = new TimeStepper(_system, care.Tolerance);
        _y = new double[_system.Size + _system.Sums];
        _trace = new SqueezeTrace(_system, press, work, care.Points);
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
        _trace.Keep(_t, _y);
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
        SqueezeBooks books = new(_system, _work, _y);
        IReadOnlyList<SqueezeBalance> balances = books.EnergyAndOil(held0 - offset, oil0, _stopped, _oilMoved);
        Go(SqueezePhase.Return, double.PositiveInfinity);
        return new SqueezeResult
        {
            End = end.Value,
            StoppedBy = why,
            Times = _times,
            Travel = travel,
            Height = _work.Resistance is HotBite bite ? bite.Height - travel : null,
            PeakForce = _trace.PeakForce,
            PeakPressure = _trace.PeakPressure,
            PeakSpeed = _trace.PeakSpeed,
            Work = Sum(SqueezeSystem.WorkDone),
            AtTouch = touch,
            AtEnd = atEnd,
            After = MeanHeat(),
            Rate = _system.Column is not null && _trace.Fastest > 0 && _work.Resistance is HotBite squeezed
                ? (squeezed.At(travel).Strain / Math.Max(_times[SqueezePhase.Pressing], 1e-9), _trace.Fastest) : null,
            AirTaken = Sum(SqueezeSystem.AirTaken),
            Oil = Sum(SqueezeSystem.OilIn),
            Receiver = _press.Air?.Pressure(_y[_system.AirHeat]),
            Unloaded = _system.Unloaded,
            Points = _trace.Points(),
            Balances = [.. balances, .. books.HeatAndAir(heat0, air0, _press.Air is not null)],
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

    private double _oilMoved;
    private double _stopped;

    /// <summary>One phase: until an event that ends it or a time. Switches of pump and compressor are passed on the way.</summary>
    private SqueezeEnd? Go(SqueezePhase phase, double atMost)
    {
        _system.Phase = phase;
        double from = _t, longest = phase switch { SqueezePhase.Return => 2, SqueezePhase.Approach => 0.5, _ => 1 };
        _step = phase == SqueezePhase.Approach ? 1e-3 : 1e-4;
        var events = new SqueezeEvents(_system, _press, _work, _y);
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
            int hit = _stepper.Run(_y, ref _t, until, ref _step, longest, events, (_, _) => _trace.Keep(_t, _y));
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
}
