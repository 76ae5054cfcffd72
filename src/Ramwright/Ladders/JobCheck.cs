using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>A job on a press: what it asks, and whether the press can.</summary>
/// <remarks>The ram is taken to move as fast as pump and load let it at every moment; how air, oil and heat change on the way is not in it.</remarks>
public sealed class JobCheck
{
    private readonly PressSpeed _speed;

    private JobCheck(PressCheck press, RigJob job, PressSpeed speed, Demand demand)
    {
        (Press, Job, _speed, Demand) = (press, job, speed, demand);
        DrawingOut = job is RigHotSqueeze { DrawingOut: not null } drawn ? Jobs.DrawingOut.Of(drawn, speed.At) : null;
        Time = TimeOf(speed, demand);
        Limits = JobLimits.Of(press, job, demand, Time, DrawingOut);
        foreach (JobLimit limit in Limits)
        {
            if (limit.Verdict > Verdict)
                (Verdict, Worst) = (limit.Verdict, limit);
        }

        // a pump that stalls before the work gives way never lets it go
        SnapThrough = demand.LetsGo is { Likely: > 0 } lets && demand.Peak.Likely <= press.Power.TrueForce ? press.SnapThrough.At(lets.Likely) : null;
        Chart = job is RigVBend bend ? BendChart.Of(bend, Has(press)) : [];
    }

    /// <summary>The press.</summary>
    public PressCheck Press { get; }
    /// <summary>The job.</summary>
    public RigJob Job { get; }
    /// <summary>What it asks.</summary>
    public Demand Demand { get; }
    /// <summary>What it needs against what there is.</summary>
    public IReadOnlyList<JobLimit> Limits { get; }
    /// <summary>Whether the press can: holds, can with care, cannot.</summary>
    public Verdict Verdict { get; }
    /// <summary>What stands in the way most; null where nothing does.</summary>
    public JobLimit? Worst { get; }
    /// <summary>What is let go where the work gives way at once; null where it does not.</summary>
    public SnapThrough? SnapThrough { get; }
    /// <summary>The schedule of a bar that is drawn out; null for any other job.</summary>
    public DrawingOut? DrawingOut { get; }
    /// <summary>The chart of a V-bend; empty for any other job.</summary>
    public IReadOnlyList<BendChartPlace> Chart { get; }

    /// <summary>What the press is safe to and has, N: the lower of its rating and its true force.</summary>
    public double Available => Has(Press);
    /// <summary>Pressure on the gauge at the likely peak, Pa; null where the pump does not reach it.</summary>
    public double? GaugeAtPeak => GaugeAt(Demand.Peak.Likely);

    /// <summary>Pressure on the gauge at a force, Pa; null where the pump does not reach it.</summary>
    /// <param name="force">At the ram, N.</param>
    public double? GaugeAt(double force) => force <= Press.Power.TrueForce ? Press.Power.TruePressure * force / Press.Power.TrueForce : null;

    /// <summary>Time from the touch to the end, s; null where the pump stalls before.</summary>
    public double? Time { get; }

    /// <summary>Checks every job of a press, in the order of its file.</summary>
    public static IReadOnlyList<JobCheck> All(PressCheck press)
    {
        ArgumentNullException.ThrowIfNull(press);
        if (press.Rig.Jobs.Count == 0)
            return [];
        PressSpeed speed = PressSpeed.Of(press.Rig, press.Power);
        return [.. press.Rig.Jobs.Select(job => Of(press, job, speed))];
    }

    /// <summary>Checks one.</summary>
    public static JobCheck Of(PressCheck press, RigJob job)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(job);
        return Of(press, job, PressSpeed.Of(press.Rig, press.Power));
    }

    private static JobCheck Of(PressCheck press, RigJob job, PressSpeed speed) => new(press, job, speed, JobDemand.Of(job, speed.At));

    /// <summary>Writes the working of the force down.</summary>
    public void Work(Working w) => JobDemand.Of(Job, _speed.At, w);

    internal static double Has(PressCheck press) => Math.Min(press.Ladder.SafeRating, press.Power.TrueForce);

    private static double? TimeOf(PressSpeed speed, Demand demand)
    {
        double time = 0;
        for (int i = 1; i < demand.Curve.Count; i++)
        {
            double v = speed.At((demand.Curve[i].Force + demand.Curve[i - 1].Force) / 2);
            if (!(v > 1e-9))
                return null;
            time += (demand.Curve[i].Travel - demand.Curve[i - 1].Travel) / v;
        }

        return time;
    }
}
