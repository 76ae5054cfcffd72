using Ramwright.Jobs;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Squeeze;

/// <summary>A job on a press, by its force at the touch and followed in time, and what the two say together.</summary>
/// <param name="Check">What it asks with the work as it comes, against what the press has.</param>
/// <param name="Time">The same followed in time; null where it could not be.</param>
public sealed record JobAnswer(JobCheck Check, JobInTime? Time)
{
    /// <summary>Greatest force of the whole job as the bar cools under the dies, N; null for cold work, whose force does not wait, and where even the first squeeze ends early.</summary>
    public double? AsItCools => Time is { Heats: { } heats, First: { IsDone: true } first } ? Math.Max(first.PeakForce, heats.PeakForce) : null;

    /// <summary>The same with all that is uncertain about the force against it, N.</summary>
    public double? AsItCoolsAtMost => AsItCools * Check.Demand.Peak.High / Check.Demand.Peak.Likely;

    /// <summary>The force that counts, likely: that of the whole job as the bar cools, or of the work as it comes, N.</summary>
    public double Likely => AsItCools ?? Check.Demand.Peak.Likely;

    /// <summary>What it needs against what there is; a job followed as it cools is held against pump and rating with the force it comes to then.</summary>
    public IReadOnlyList<JobLimit> Limits
    {
        get
        {
            if (AsItCools is not { } likely || AsItCoolsAtMost is not { } most)
                return Time is { Heats: not null } && Followed > Check.Verdict
                    ? [.. Check.Limits, new JobLimit("in time", Followed, SqueezeWords.Why(Time))] : Check.Limits;
            var peak = new Band(Math.Min(likely, Check.Demand.Peak.Low), likely, most);
            // passes are reckoned by cooling in air alone: followed in time is nearer, and there is one force
            JobLimit[] limits = [.. Check.Limits.Where(l => l.Id != "passes" || Check.Verdict > Followed).Select(l => l.Id switch
            {
                "pump" => JobLimits.Pump(Check.Press, peak),
                "rating" => JobLimits.Rating(Check.Press, peak),
                _ => l,
            })];
            return Time!.Heats!.IsDone ? limits : [.. limits, new JobLimit("in time", Followed, SqueezeWords.Why(Time))];
        }
    }

    /// <summary>All that the file does not say of this job and the press it is followed on.</summary>
    public IReadOnlyList<Assumed> Assumed => [.. Check.Job.Assumed, .. Time?.First.Assumed ?? []];

    /// <summary>Whether the press can: the worse of the two answers.</summary>
    public Verdict Verdict => Followed > Check.Verdict ? Followed : Check.Verdict;

    private Verdict Followed =>
        Time is not { Heats: { } heats } ? Verdict.Holds
        : !Time.First.IsDone || !heats.IsDone || AsItCools > Check.Available ? Verdict.DoesNotHold
        : AsItCoolsAtMost > Check.Available ? Verdict.Marginal
        : Verdict.Holds;

    /// <summary>Checks a job and follows it.</summary>
    public static JobAnswer Of(PressCheck press, RigJob job) => With(JobCheck.Of(press, job));

    /// <summary>Checks and follows every job of a press, in the order of its file.</summary>
    public static IReadOnlyList<JobAnswer> All(PressCheck press) => [.. JobCheck.All(press).Select(With)];

    /// <summary>The answer as one tradesman would tell another.</summary>
    public string Saying(UnitSystem units = UnitSystem.Metric)
    {
        // where both refuse for want of force, the greater one is said
        bool byForce = Check.Worst?.Id is "pump" or "rating" && AsItCools is not null && Followed == Verdict.DoesNotHold;
        if (Check.Verdict == Verdict.DoesNotHold && !byForce || Check.Verdict > Followed || Time is not { Heats: { } heats })
            return JobHeadline.Of(Check, units);
        if (AsItCools is not { } likely || AsItCoolsAtMost is not { } most)
            return $"This press cannot {Check.Demand.Doing}. {SqueezeWords.Of(Time.First, units)}";
        string doing = Check.Demand.Doing, good = $"the press is good for {ForceText.Of(Check.Available, units)}";
        string takes = $"it takes about {ForceText.Of(likely, units)} by the time the bar has cooled under the dies, {ForceText.Of(most, units)} at the most";
        if (Followed == Verdict.Holds)
            return $"This press can {doing}: {takes}, and {good}.";
        if (Followed == Verdict.Marginal)
            return $"This press can probably {doing}: {takes}, and {good}. Go gently, watch the gauge, and stop in time.";
        return !heats.IsDone
            ? $"This press cannot {doing}: it is given up in heat {Math.Max(1, heats.Heats.Count)}. {SqueezeWords.Short(heats.StoppedBy)}".TrimEnd()
            : $"This press cannot {doing}: {takes}, and {good}.";
    }

    private static JobAnswer With(JobCheck check)
    {
        try
        {
            return new JobAnswer(check, JobInTime.Of(check.Press, check.Job, check.Demand));
        }
        catch (InvalidOperationException)
        {
            return new JobAnswer(check, null);      // said by the views; the rest of the answer stands
        }
    }
}
