using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Squeeze;

/// <summary>A stretch of a round of work.</summary>
/// <param name="Time">s, 0 or more.</param>
/// <param name="Air">Free air taken in it, m³, 0 or more.</param>
/// <param name="Presses">Whether it presses, which needs the air at its pressure.</param>
public readonly record struct WorkRound(double Time, double Air, bool Presses);

/// <summary>What an hour of the same work, over and over, does to the receiver.</summary>
public sealed record HourOfWork
{
    /// <summary>Time between one piece and the next of cold work, s.</summary>
    public const double BetweenPieces = 20;

    /// <summary>The length of an hour, s.</summary>
    public const double Hour = 3600;

    /// <summary>Air in a vessel, at one temperature.</summary>
    public static readonly Citation Balance = Receiver.GasLaw;

    /// <summary>Rounds done in the hour.</summary>
    public required double Rounds { get; init; }
    /// <summary>Time of a round without waiting, s.</summary>
    public required double RoundTime { get; init; }
    /// <summary>Lowest pressure in the receiver, Pa.</summary>
    public required double Lowest { get; init; }
    /// <summary>Pressure at the end, Pa.</summary>
    public required double AtEnd { get; init; }
    /// <summary>Time spent waiting for air, s.</summary>
    public required double Waiting { get; init; }
    /// <summary>When it first had to be waited for, s; null where it never had.</summary>
    public required double? FirstWait { get; init; }
    /// <summary>Share of the hour the compressor ran.</summary>
    public required double CompressorRuns { get; init; }
    /// <summary>How often it started.</summary>
    public required int Starts { get; init; }
    /// <summary>Free air taken, m³.</summary>
    public required double Taken { get; init; }
    /// <summary>Free air made, m³.</summary>
    public required double Made { get; init; }
    /// <summary>Air the work needs in the receiver while it presses, Pa.</summary>
    public required double Needs { get; init; }
    /// <summary>Pressure in the receiver against time, s and Pa.</summary>
    public required IReadOnlyList<(double Time, double Pressure)> Curve { get; init; }

    /// <summary>Whether the hour ended because there was no air and no compressor to make more.</summary>
    public bool Starved { get; init; }

    /// <summary>An hour of rounds; null where the press needs no air.</summary>
    /// <param name="press">The press.</param>
    /// <param name="round">The stretches of one round.</param>
    /// <param name="peak">Greatest oil pressure of a squeeze, Pa.</param>
    /// <exception cref="ArgumentException">A round that takes no time.</exception>
    public static HourOfWork? Of(SqueezePress press, IReadOnlyList<WorkRound> round, double peak)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(round);
        Check.NotNegative(peak);
        if (press.Air is not { } side || press.Rig.Pump is not RigAirPump pump)
            return null;
        foreach (WorkRound stretch in round)
        {
            Check.NotNegative(stretch.Time, "Time");
            Check.NotNegative(stretch.Air, "Air");
        }

        double length = round.Sum(r => r.Time);
        if (!(length > 0))
            throw new ArgumentException("a round must take time", nameof(round));
        double needs = Math.Min(pump.AirPressure, AirPumpCurve.AirFor(peak, pump.EffectiveRatio));
        return new Reckoning(side, needs).Run(round, length);
    }

    private sealed class Reckoning(AirSide side, double needs)
    {
        private readonly List<(double, double)> _curve = [];
        private readonly double _volume = side.Compressor.Receiver / Atmosphere.Pressure;     // m³ of free air for each Pa
        private double _p = side.Compressor.CutOut, _lowest = side.Compressor.CutOut, _t, _ran, _made, _taken;
        private bool _on;
        private int _starts;

        public HourOfWork Run(IReadOnlyList<WorkRound> round, double length)
        {
            double waiting = 0, rounds = 0;
            double? first = null;
            bool starved = false;
            _curve.Add((0, _p));
            while (_t < Hour && !starved)
            {
                double began = _t, waited = 0;
                foreach (WorkRound stretch in round)
                {
                    if (stretch.Presses && _p < needs)
                    {
                        if (!(side.Delivered > 0))
                        {
                            first ??= _t;
                            starved = true;
                            break;
                        }

                        // below cut-in it runs by itself; above it the smith must wait no longer than to the pressure needed
                        first ??= _t;
                        double from = _t;
                        Start();
                        Go(Math.Min(Hour - _t, (needs - _p) * _volume / side.Delivered), 0);
                        waited += _t - from;
                        if (_t >= Hour)
                            break;
                    }

                    Go(Math.Min(stretch.Time, Hour - _t), stretch.Time > 0 ? stretch.Air / stretch.Time : 0);
                    if (_t >= Hour)
                        break;
                }

                waiting += waited;
                rounds += Math.Min(1, (_t - began - waited) / length);
            }

            return new HourOfWork
            {
                Rounds = rounds,
                RoundTime = length,
                Lowest = _lowest,
                AtEnd = _p,
                Waiting = waiting,
                FirstWait = first,
                CompressorRuns = _ran / Math.Max(_t, 1e-9),
                Starts = _starts,
                Taken = _taken,
                Made = _made,
                Needs = needs,
                Curve = _curve,
                Starved = starved,
            };
        }

        private void Start()
        {
            if (_on)
                return;
            _on = true;
            _starts++;
        }

        /// <summary>A stretch of steady taking: straight lines between the switchings of the compressor.</summary>
        private void Go(double time, double takes)
        {
            while (time > 1e-12)
            {
                if (_p <= side.Compressor.CutIn && side.Delivered > 0)
                    Start();
                double slope = ((_on ? side.Delivered : 0) - takes) / _volume, part = time;
                if (_on && slope > 0 && _p < side.Compressor.CutOut)
                    part = Math.Min(part, (side.Compressor.CutOut - _p) / slope);
                else if (!_on && slope < 0 && side.Delivered > 0 && _p > side.Compressor.CutIn)
                    part = Math.Min(part, (_p - side.Compressor.CutIn) / -slope);
                else if (slope < 0 && _p > 0)
                    part = Math.Min(part, _p / -slope);
                double before = _p;
                _p = Math.Max(0, _p + slope * part);
                if (_p <= 0 && slope < 0 && part <= 0)
                    part = time;                                    // empty: nothing more to take
                _ran += _on ? part : 0;
                _made += _on ? side.Delivered * part : 0;
                _taken += (_on ? side.Delivered * part : 0) - (_p - before) * _volume;
                _t += part;
                time -= part;
                _lowest = Math.Min(_lowest, _p);
                if (_on && _p >= side.Compressor.CutOut * (1 - 1e-12))
                    _on = false;
                else if (!_on && _p <= side.Compressor.CutIn * (1 + 1e-12) && side.Delivered > 0)
                    Start();
                _curve.Add((_t, _p));
            }
        }
    }
}
