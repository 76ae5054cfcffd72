using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Squeeze;

/// <summary>One heat of a job.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Squeezes">Squeezes in it.</param>
/// <param name="Time">From the fire until the last squeeze ended, s.</param>
/// <param name="FirstTouch">Mean temperature at its first touch, °C.</param>
/// <param name="LastTouch">Mean temperature at its last touch, °C.</param>
/// <param name="PeakForce">Greatest force in it, N.</param>
public sealed record HeatOfWork(int Number, int Squeezes, double Time, double FirstTouch, double LastTouch, double PeakForce);

/// <summary>All the squeezes of a hot job, each followed in time, with a new heat whenever the bar has gone cold.</summary>
/// <remarks>
/// The bar is kept as bites side by side, each at its own mean temperature. While one is squeezed the others cool in air. After a squeeze the
/// metal evens out, so that each begins at one temperature through its height; the dies keep theirs until the next heat. Heat that runs
/// along the bar from bite to bite is left out.
/// </remarks>
public sealed record WorkInHeats
{
    /// <summary>Between squeezes side by side, where the job does not say, s: to open, move the bar on and close again.</summary>
    public const double UsualBetween = 3;

    /// <summary>What is burnt away in each heat.</summary>
    public static readonly Citation ScaleSource = Citation.Practice("scale takes 1.5 to 3 % in each heat of a gas or coal fire, 0.5 to 1 % by induction");

    private const int MostSqueezes = 600, MostHeats = 60;

    /// <summary>The heats, in order.</summary>
    public required IReadOnlyList<HeatOfWork> Heats { get; init; }
    /// <summary>All squeezes done.</summary>
    public int Squeezes => Heats.Sum(h => h.Squeezes);
    /// <summary>Whether the job was done to its end.</summary>
    public required bool IsDone { get; init; }
    /// <summary>What stood in the way.</summary>
    public required StoppedBy StoppedBy { get; init; }
    /// <summary>Where it was given up: pass from 1 and squeeze in it from 1; null where it was done.</summary>
    public required (int Pass, int Squeeze)? StoppedAt { get; init; }
    /// <summary>Greatest force, N.</summary>
    public required double PeakForce { get; init; }
    /// <summary>Greatest pressure in the cylinder, Pa.</summary>
    public required double PeakPressure { get; init; }
    /// <summary>Free air taken, m³.</summary>
    public required double Air { get; init; }
    /// <summary>How many squeezes the first heat would have gone on for, on places side by side, had the bar been long enough.</summary>
    public required int InOneHeat { get; init; }
    /// <summary>Whether that count was broken off because nobody needs more.</summary>
    public bool OneHeatIsMore { get; init; }
    /// <summary>One round of it: the fire, then the squeezes.</summary>
    public required IReadOnlyList<WorkRound> Rounds { get; init; }
    /// <summary>Least and most of the weight that scale takes in all heats together, as shares.</summary>
    public (double Least, double Most) Scale => (1 - Math.Pow(1 - 0.015, Heats.Count), 1 - Math.Pow(1 - 0.03, Heats.Count));

    /// <summary>Follows a job through all its heats.</summary>
    /// <param name="job">The job.</param>
    /// <param name="press">The press.</param>
    /// <param name="care">How closely; null for the usual.</param>
    /// <exception cref="InvalidOperationException">A squeeze could not be followed.</exception>
    public static WorkInHeats Of(RigHotSqueeze job, SqueezePress press, SqueezeCare? care = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(press);
        SqueezeCare close = (care ?? new SqueezeCare(2e-4)) with { Points = 0 };
        var smith = new Smith(job, press, close);
        if (job.DrawingOut is null)
        {
            HotBite bite = HotBite.Of(job);
            int places = bite.Whole ? 1 : Math.Max(1, (int)(job.Length / bite.Bite));
            smith.Pass(bite, places, 1);
            WorkInHeats done = smith.Made();
            if (done.IsDone && bite.Whole)
                return done with { InOneHeat = 1 };
            var on = new Smith(job, press, close);
            return done with { InOneHeat = on.UntilCold(bite), OneHeatIsMore = on.Squeezes >= Smith.EnoughInAHeat };
        }

        smith.DrawOut();
        return smith.Made() with { InOneHeat = smith.FirstHeat };
    }

    /// <summary>The smith at the press, with the bar in hand.</summary>
    private sealed class Smith(RigHotSqueeze job, SqueezePress press, SqueezeCare care)
    {
        public const int EnoughInAHeat = 60;

        private readonly List<HeatOfWork> _heats = [];
        private readonly List<WorkRound> _rounds = [];
        private readonly HotSurface _surface = new();
        private readonly double _between = job.DrawingOut?.Between ?? UsualBetween;
        private double[] _bites = [];
        private double[]? _dies;
        private double _heatTime, _firstTouch, _lastTouch, _heatPeak, _peak, _pressure, _air, _idle;
        private int _inHeat;
        private StoppedBy _stopped = StoppedBy.Nothing;
        private (int, int)? _stoppedAt;

        public int Squeezes { get; private set; }
        public int FirstHeat => _heats.Count > 0 ? _heats[0].Squeezes : 0;

        public WorkInHeats Made()
        {
            EndHeat();
            return new WorkInHeats
            {
                Heats = _heats,
                IsDone = _stopped == StoppedBy.Nothing,
                StoppedBy = _stopped,
                StoppedAt = _stoppedAt,
                PeakForce = _peak,
                PeakPressure = _pressure,
                Air = _air,
                InOneHeat = 0,
                Rounds = _rounds,
            };
        }

        /// <summary>Squeezes place after place until the bar is too cold or the press cannot.</summary>
        public int UntilCold(HotBite bite)
        {
            _bites = [job.Heat];
            Fire();
            int done = 0;
            while (done < EnoughInAHeat && _bites[0] > job.Steel.Coldest)
            {
                // each place has been in the air as long as the bar
                double air = _bites[0];
                if (!Squeeze(bite, air, out SqueezeResult r))
                    break;
                done++;
                _bites[0] = Cooled(bite, air, r.Time + _idle);
            }

            return done;
        }

        /// <summary>One pass along the bar.</summary>
        /// <returns>Whether it was done.</returns>
        public bool Pass(HotBite bite, int places, int pass)
        {
            Spread(places);
            for (int i = 0; i < places; i++)
            {
                bool fresh = false;
                while (true)
                {
                    if (_heats.Count == 0 && _inHeat == 0 && _heatTime == 0 || _bites[i] <= job.Steel.Coldest + 1)
                    {
                        EndHeat();
                        if (_heats.Count >= MostHeats)
                            return Stop(StoppedBy.Cold, pass, i + 1);
                        Fire();
                        fresh = true;
                    }

                    if (_bites[i] <= job.Steel.Coldest + 1)
                        return Stop(StoppedBy.Cold, pass, i + 1);
                    bool done = Squeeze(bite, _bites[i], out SqueezeResult r);
                    if (done)
                    {
                        double time = r.Time + _idle;
                        for (int k = 0; k < places; k++)
                            _bites[k] = k == i ? Cooled(bite, Math.Max(r.After!.Value, HotSteel.Coldest + 1), _idle) : Cooled(bite, _bites[k], time);
                        break;
                    }

                    // a stale heat may be to blame: once more out of the fire, then it is given up
                    if (fresh || Squeezes >= MostSqueezes)
                        return Stop(r.StoppedBy, pass, i + 1);
                    _bites[i] = job.Steel.Coldest;
                }
            }

            return true;
        }

        /// <summary>Drawing out: pass after pass, as the schedule has them.</summary>
        public void DrawOut()
        {
            DrawingSchedule schedule = DrawingSchedule.Of(job);
            foreach (SchedulePass pass in schedule.Passes)
            {
                if (!Pass(pass.Bite, pass.Squeezes, pass.Number))
                    return;
            }

            if (!schedule.Reached)
                Stop(StoppedBy.Force, DrawingOut.MostPasses, 1);
        }

        private bool Stop(StoppedBy why, int pass, int squeeze)
        {
            (_stopped, _stoppedAt) = (why == StoppedBy.Nothing ? StoppedBy.Cold : why, (pass, squeeze));
            return false;
        }

        private void Fire()
        {
            _rounds.Add(new WorkRound(job.InTheFire + job.Transfer, 0, false));
            for (int i = 0; i < _bites.Length; i++)
                _bites[i] = SqueezeWork.AtApproach(job, press);
            _dies = null;
            (_heatTime, _inHeat, _heatPeak) = (job.Transfer, 0, 0);
        }

        private void EndHeat()
        {
            if (_inHeat > 0)
                _heats.Add(new HeatOfWork(_heats.Count + 1, _inHeat, _heatTime, _firstTouch, _lastTouch, _heatPeak));
            (_inHeat, _heatTime) = (0, 0);
        }

        private bool Squeeze(HotBite bite, double T, out SqueezeResult r)
        {
            SqueezeWork work = SqueezeWork.Of(job, bite, Math.Min(T, HotSteel.Hottest), press);
            if (_inHeat > 0)
                work = work with { Gap = Math.Min(job.Lift, work.OutAtTouch) };
            r = SqueezeRun.Of(press, work, care, State(bite, T), null);
            Squeezes++;
            _dies = r.HeatState;
            _heatTime += r.Time;
            _air += r.AirTaken;
            _rounds.Add(new WorkRound(r.Time, r.AirTaken, true));
            // the time between squeezes is to open, move on and close: what the ram itself takes for that is in it
            _idle = Math.Max(0, _between - r.Times.GetValueOrDefault(SqueezePhase.Return) - r.Times.GetValueOrDefault(SqueezePhase.Approach));
            _rounds.Add(new WorkRound(_idle, 0, false));
            _peak = Math.Max(_peak, r.PeakForce);
            _pressure = Math.Max(_pressure, r.PeakPressure);
            _heatPeak = Math.Max(_heatPeak, r.PeakForce);
            if (r.IsDone)
            {
                _lastTouch = r.AtTouch!.Value;
                if (_inHeat++ == 0)
                    _firstTouch = _lastTouch;
                _heatTime += _idle;
            }

            return r.IsDone;
        }

        /// <summary>The bar at one temperature between dies as the last squeeze left them.</summary>
        private double[]? State(HotBite bite, double T)
        {
            if (_dies is null)
                return null;
            var state = (double[])_dies.Clone();
            for (int i = 0; i < HeatColumn.BarCells; i++)
                state[HeatColumn.DieCells + i] = HotSteel.Enthalpy(T);
            return state;
        }

        private double Cooled(HotBite bite, double T, double time)
        {
            BiteShape end = bite.At(bite.Travel);
            double VA = bite.Whole
                ? HotSqueezeDemand.VolumeOverSurface(job)
                : end.Height * end.Width / (2 * (end.Height + end.Width));
            if (T <= HotSteel.Coldest + 2)
                return T;
            // heat lost step by step, a few kelvin each
            double e = HotSteel.Enthalpy(T), left = time;
            while (left > 0)
            {
                double now = HotSteel.At(e), q = _surface.Flux(now) / (HotSteel.Density * VA);
                if (!(q > 0))
                    break;
                double step = Math.Min(left, 2000 / q), middle = HotSteel.At(e - q * step / 2);
                e -= _surface.Flux(middle) / (HotSteel.Density * VA) * step;
                left -= step;
            }

            return HotSteel.At(e);
        }

        private void Spread(int places)
        {
            var next = new double[places];
            for (int i = 0; i < places; i++)
            {
                double at = _bites.Length == 0 ? 0 : (i + 0.5) * _bites.Length / places - 0.5;
                int k = Math.Clamp((int)Math.Floor(at), 0, Math.Max(0, _bites.Length - 1));
                int l = Math.Min(k + 1, _bites.Length - 1);
                next[i] = _bites.Length == 0 ? job.Heat : _bites[k] + (_bites[l] - _bites[k]) * Math.Clamp(at - k, 0, 1);
            }

            _bites = next;
        }
    }
}
