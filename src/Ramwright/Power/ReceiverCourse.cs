using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Power;

/// <summary>The receiver at a moment.</summary>
/// <param name="Time">Since the first squeeze began, s.</param>
/// <param name="Pressure">Pa above the atmosphere.</param>
/// <param name="Squeeze">Which squeeze, from 1.</param>
/// <param name="Running">Whether the compressor ran until then.</param>
public sealed record ReceiverMoment(double Time, double Pressure, int Squeeze, bool Running);

/// <summary>
/// The receiver's pressure over a series of squeezes that are alike, from full. While the ram comes out the pump draws its air; on the
/// way back and in the pause after it draws none. The compressor starts at cut-in and stops at cut-out.
/// </summary>
/// <remarks>
/// The gas law at one temperature, free air. The draw is taken as it is at the air pressure that was set, also when the receiver has
/// fallen below that: the cautious reading. The series ends where the pump would stall. An unknown delivery counts as none.
/// </remarks>
public sealed class ReceiverCourse
{
    /// <summary>Time to turn or move the work between squeezes, s, where nobody says otherwise.</summary>
    public const double UsualPause = 5;

    private readonly RigCompressor _compressor;
    private readonly double _delivered;
    private readonly List<ReceiverMoment> _moments = [];
    private double _t, _p;
    private bool _runs;

    private ReceiverCourse(RigCompressor compressor, double delivered)
    {
        (_compressor, _delivered, _p) = (compressor, delivered, compressor.CutOut);
        _moments.Add(new ReceiverMoment(0, _p, 1, false));
    }

    /// <summary>In the order of time, from the full receiver; straight between them.</summary>
    public IReadOnlyList<ReceiverMoment> Moments => _moments;

    /// <summary>The first squeeze in which the air falls too low for the wanted force; null where it never does.</summary>
    public int? TooLowIn { get; private set; }

    /// <summary>The squeeze in which the air no longer drives the pump against the pressing load, with which the series ends; null where it goes to its end.</summary>
    public int? StallsIn { get; private set; }

    /// <summary>Lowest pressure of the series, Pa.</summary>
    public double Lowest => _moments.Min(m => m.Pressure);

    /// <summary>Follows a series of squeezes of an air-driven press; null where it has no air pump, or where the load holds the ram.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="report">What was found for it.</param>
    /// <param name="squeezes">How many, 1 to 200.</param>
    /// <param name="pause">Between the ram being up again and the next squeeze, s, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static ReceiverCourse? Of(RigPump pump, PowerReport report, int squeezes, double pause = UsualPause)
    {
        ArgumentNullException.ThrowIfNull(pump);
        ArgumentNullException.ThrowIfNull(report);
        return pump is RigAirPump air && report.Air is { } supply
            ? Of(air.Compressor, supply, report.Times, AirPumpCurve.AirFor(report.Pressing.PumpPressure, air.EffectiveRatio), squeezes, pause)
            : null;
    }

    /// <summary>Follows a series of squeezes.</summary>
    /// <param name="compressor">The compressor.</param>
    /// <param name="air">What the pump takes and the compressor gives.</param>
    /// <param name="times">The times of one squeeze.</param>
    /// <param name="stall">Air pressure at which the pump stalls under the pressing load, Pa, 0 or more.</param>
    /// <param name="squeezes">How many, 1 to 200.</param>
    /// <param name="pause">Between the ram being up again and the next squeeze, s, 0 or more.</param>
    /// <returns>The course; null where the load holds the ram, so that no squeeze ends.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static ReceiverCourse? Of(RigCompressor compressor, AirSupply air, StrokeTimes times, double stall, int squeezes, double pause = UsualPause)
    {
        ArgumentNullException.ThrowIfNull(compressor);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(times);
        Check.Positive(compressor.Receiver, "Receiver");
        Check.NotNegative(compressor.CutIn, "CutIn");
        Check.Above(compressor.CutOut, compressor.CutIn, "CutOut");
        Check.NotNegative(stall);
        Check.NotNegative(pause);
        if (squeezes is < 1 or > 200)
            Check.Refuse(nameof(squeezes), squeezes, "1 to 200");
        if (times.Pressing is not { } pressing)
            return null;
        var course = new ReceiverCourse(compressor, air.Delivered ?? 0);
        for (int n = 1; n <= squeezes; n++)
        {
            course.Draw(air.Demand, times.Approach, n);
            course.Draw(air.PressingDemand, pressing, n);
            if (course.TooLowIn is null && course._p < air.AirForWanted)
                course.TooLowIn = n;
            if (course._p < stall)
            {
                course.StallsIn = n;
                break;
            }

            course.Draw(0, (times.Return ?? 0) + pause, n);
        }

        return course;
    }

    /// <summary>Draws air for a while; every start and stop of the compressor on the way is a moment of its own.</summary>
    private void Draw(double demand, double time, int squeeze)
    {
        double perPascal = _compressor.Receiver / Atmosphere.Pressure;
        while (time > 0)
        {
            double rate = ((_runs ? _delivered : 0) - demand) / perPascal;
            double until = rate < 0 ? _runs ? 0 : Math.Min(_compressor.CutIn, _p) : _compressor.CutOut;
            // drawn empty: what the compressor gives goes straight through
            bool still = rate == 0 || (rate < 0 && _p <= 0 && _runs);
            double step = still ? time : Math.Min(time, (until - _p) / rate);
            _t += step;
            _p = Math.Max(0, still ? _p : step < time ? until : _p + rate * step);
            time -= step;
            if (step > 0)
                _moments.Add(new ReceiverMoment(_t, _p, squeeze, _runs));
            if (!_runs && _p <= _compressor.CutIn)
                _runs = true;
            else if (_runs && _p >= _compressor.CutOut)
                _runs = false;
        }
    }
}
