namespace Ramwright.Squeeze;

/// <summary>Something that ends a stretch of time: its value comes from below zero to zero.</summary>
internal interface IEvents
{
    /// <summary>How many.</summary>
    int Count { get; }

    /// <summary>The value of one of them; at or above zero it has happened.</summary>
    double Value(int which, ReadOnlySpan<double> y);
}

/// <summary>Carries a system on until something happens, and finds the moment.</summary>
internal sealed class TimeStepper
{
    private const int MostSteps = 200_000;

    private readonly Rosenbrock _method;
    private readonly double[] _next;
    private readonly double[] _tried;

    public TimeStepper(StiffSystem system, double tolerance)
    {
        _method = new Rosenbrock(system, tolerance);
        _next = new double[system.Size + system.Sums];
        _tried = new double[_next.Length];
    }

    /// <summary>Steps tried so far.</summary>
    public int Tried => _method.Tried;

    /// <summary>Carries a state on.</summary>
    /// <param name="y">The state, in and out.</param>
    /// <param name="t">Its time, in and out.</param>
    /// <param name="until">Time at which to stop.</param>
    /// <param name="first">First step tried, s; out: the step that would be tried next.</param>
    /// <param name="longest">Longest step, s.</param>
    /// <param name="events">What ends it before.</param>
    /// <param name="seen">Called after each step kept.</param>
    /// <returns>Which event ended it, or −1 for the time.</returns>
    /// <exception cref="InvalidOperationException">The steps became too short or too many.</exception>
    public int Run(double[] y, ref double t, double until, ref double first, double longest, IEvents? events, Action<double, double[]>? seen)
    {
        double h = Math.Min(first, longest);
        int steps = 0;
        while (until - t > 1e-12 * Math.Max(1, Math.Abs(until)))
        {
            _method.From(y);
            while (true)
            {
                if (++steps > MostSteps || h < 1e-14)
                    throw new InvalidOperationException($"The squeeze could not be followed past {t} s: {steps} steps, the last {h} s.");
                double error = _method.Step(y, Math.Min(h, until - t), _next);
                double used = Math.Min(h, until - t), grow = Rosenbrock.Next(error);
                if (error <= 1)
                {
                    int hit = events is null ? -1 : Hit(events, y, ref used, ref steps);
                    _next.CopyTo(y, 0);
                    t += used;
                    if (hit < 0 || used >= h * 0.999)
                        h = Math.Min(longest, used * grow);
                    seen?.Invoke(t, y);
                    if (hit >= 0)
                    {
                        first = h;
                        return hit;
                    }

                    break;
                }

                h = used * Math.Min(grow, 0.9);
            }
        }

        first = h;
        return -1;
    }

    /// <summary>Whether anything happened in the step just made; if so the step is made again, shorter, to end at it.</summary>
    private int Hit(IEvents events, double[] y, ref double used, ref int steps)
    {
        int hit = -1;
        double earliest = used;
        for (int i = 0; i < events.Count; i++)
        {
            double before = events.Value(i, y), after = events.Value(i, _next);
            if (before >= 0 || after < 0)
                continue;
            (double at, double[] state) = Locate(events, i, y, used, before, after, ref steps);
            if (hit < 0 || at < earliest)
            {
                hit = i;
                earliest = at;
                state.CopyTo(_tried, 0);
            }
        }

        if (hit >= 0)
        {
            used = earliest;
            _tried.CopyTo(_next, 0);
        }

        return hit;
    }

    /// <summary>False position of the Illinois kind on the length of the step, ending just past the event.</summary>
    private (double At, double[] State) Locate(IEvents events, int which, double[] y, double h, double before, double after, ref int steps)
    {
        double lo = 0, hi = h, flo = before, fhi = after;
        double[] best = (double[])_next.Clone(), trial = new double[y.Length];
        double small = 1e-10 * Math.Max(Math.Abs(before), Math.Abs(after));
        int side = 0;
        for (int i = 1; i <= 60 && hi - lo > 1e-9 * h && fhi > small; i++)
        {
            double x = i % 4 == 0 ? 0.5 * (lo + hi) : lo + (hi - lo) * flo / (flo - fhi);
            if (!(x > lo && x < hi))
                x = 0.5 * (lo + hi);
            steps++;
            if (!double.IsFinite(_method.Step(y, x, trial)))
                break;
            double fx = events.Value(which, trial);
            if (fx >= 0)
            {
                (hi, fhi) = (x, fx);
                trial.CopyTo(best, 0);
                if (side == -1)
                    flo /= 2;
                side = -1;
            }
            else
            {
                (lo, flo) = (x, fx);
                if (side == 1)
                    fhi /= 2;
                side = 1;
            }
        }

        return (hi, best);
    }
}
