using Ramwright.Jobs;
using Ramwright.Presses;

namespace Ramwright.Squeeze;

/// <summary>One point of a sweep.</summary>
/// <param name="Ends">What ended the squeeze; null where it could not be begun, the bar being too cold or too hot.</param>
/// <param name="StoppedBy">What stood in the way.</param>
/// <param name="Left">Height left over the height before.</param>
/// <param name="PeakForce">N.</param>
/// <param name="Time">Pressing, s.</param>
/// <param name="EndHeat">Mean temperature when the pressing ended, °C.</param>
public readonly record struct SweepPoint(SqueezeEnd? Ends, StoppedBy StoppedBy, double Left, double PeakForce, double Time, double EndHeat)
{
    /// <summary>Whether the job was done.</summary>
    public bool IsDone => Ends == SqueezeEnd.Done;
}

/// <summary>The same squeeze over a grid of two of its conditions, each point followed in time, on all cores.</summary>
public sealed record SqueezeSweep
{
    /// <summary>The job.</summary>
    public required RigHotSqueeze Job { get; init; }
    /// <summary>Across the chart.</summary>
    public required SweepAxis Across { get; init; }
    /// <summary>Up the chart.</summary>
    public required SweepAxis Up { get; init; }
    /// <summary>Height to which the bar is to be taken, over the height before.</summary>
    public required double Target { get; init; }
    /// <summary>The points, row by row: all of <see cref="Across"/> for the first of <see cref="Up"/>, and so on.</summary>
    public required IReadOnlyList<SweepPoint> Points { get; init; }

    /// <summary>A point.</summary>
    public SweepPoint At(int across, int up) => Points[up * Across.Count + across];

    /// <summary>For each value across, the greatest that is done, and how far below it all are done too; null where none is.</summary>
    /// <remarks>A thin bar goes cold where a thick one does not, so that there may be a least one as well.</remarks>
    public IReadOnlyList<(double Least, double Greatest)?> Done()
    {
        var done = new (double, double)?[Across.Count];
        for (int i = 0; i < Across.Count; i++)
        {
            int top = Up.Count - 1;
            while (top >= 0 && !At(i, top).IsDone)
                top--;
            if (top < 0)
                continue;
            int low = top;
            while (low > 0 && At(i, low - 1).IsDone)
                low--;
            done[i] = (Up.At(low), Up.At(top));
        }

        return done;
    }

    /// <summary>Follows every point.</summary>
    /// <param name="job">The squeeze, its first where it is drawn out.</param>
    /// <param name="press">The press.</param>
    /// <param name="across">Across the chart.</param>
    /// <param name="up">Up the chart.</param>
    /// <param name="done">Told after each point how many are done; may be called from several threads.</param>
    /// <param name="cancel">Breaks it off.</param>
    /// <exception cref="ArgumentException">The same thing swept twice.</exception>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static SqueezeSweep Of(RigHotSqueeze job, SqueezePress press, SweepAxis across, SweepAxis up, Action<int>? done = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(across);
        ArgumentNullException.ThrowIfNull(up);
        if (across.Of == up.Of)
            throw new ArgumentException("a sweep needs two different things to change", nameof(up));
        var points = new SweepPoint[across.Count * up.Count];
        var care = new SqueezeCare(2e-4, 0, 60);
        int count = 0;
        // the slow ones lie together: single points, dealt out as cores come free
        Parallel.For(0, points.Length, new ParallelOptions { CancellationToken = cancel }, n =>
        {
            RigHotSqueeze here = With(With(job, across.Of, across.At(n % across.Count)), up.Of, up.At(n / across.Count));
            points[n] = Point(here, press, care);
            done?.Invoke(Interlocked.Increment(ref count));
        });
        return new SqueezeSweep { Job = job, Across = across, Up = up, Target = job.TargetHeight / job.Height, Points = points };
    }

    private static SweepPoint Point(RigHotSqueeze job, SqueezePress press, SqueezeCare care)
    {
        double T = job.Heat <= HotSteel.Hottest ? SqueezeWork.AtApproach(job, press) : double.NaN;
        if (!(T > job.Steel.Coldest))
            return new SweepPoint(null, StoppedBy.Cold, 1, 0, 0, double.IsNaN(T) ? job.Heat : T);
        SqueezeResult r = SqueezeRun.Of(press, SqueezeWork.Of(job, press), care);
        return new SweepPoint(r.End, r.StoppedBy, 1 - r.Travel / job.Height, r.PeakForce, r.Times.GetValueOrDefault(SqueezePhase.Pressing), r.AtEnd!.Value.Mean);
    }

    private static RigHotSqueeze With(RigHotSqueeze job, SweepOf of, double value)
    {
        switch (of)
        {
            case SweepOf.Bar:
                double k = value / job.Height;
                return job with
                {
                    Height = value,
                    Width = job.Width * k,
                    Length = job.OnEnd ? job.Length * k : job.Length,
                    TargetHeight = job.TargetHeight * k,
                    DieLength = Math.Max(job.DieLength, 2 * job.Width * k),
                };
            case SweepOf.Heat:
                return job with { Heat = value };
            case SweepOf.DieWidth:
                return job with { DieWidth = value, DrawingOut = null };
            case SweepOf.DieHeat:
                return job with { DieHeat = value };
            default:
                return job with { Transfer = value };
        }
    }
}
