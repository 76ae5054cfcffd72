using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>What can stand in a job's way: the pump, the frame, the opening, the stroke, the heat, the shock.</summary>
internal static class JobLimits
{
    public static IReadOnlyList<JobLimit> Of(PressCheck press, RigJob job, Demand demand, double? time, DrawingOut? drawn)
    {
        var limits = new List<JobLimit>
        {
            Pump(press, demand.Peak),
            Rating(press, demand.Peak),
        };
        // a puller stands on the work; nothing goes into its opening
        if (job is not RigPull { ByRod: true })
            limits.Add(Daylight(press, job, demand));
        limits.Add(job is RigPull ? Pulls(press, demand) : Stroke(press, job, demand));
        if (job is RigHotSqueeze hot)
            limits.Add(Heat(hot, demand, time));
        if (drawn is { Passes.Count: > 0 })
            limits.Add(EndOfHeat(press, drawn));
        if (job is RigPull { ByRod: true })
            limits.Add(Rod(press, demand));
        if (demand.LetsGo is { } letsGo && demand.Peak.Likely <= press.Power.TrueForce)
            limits.Add(Shock(press, letsGo));
        return limits;
    }

    /// <summary>A force against what the pump gives.</summary>
    internal static JobLimit Pump(PressCheck press, Band peak)
    {
        double has = press.Power.TrueForce;
        Verdict verdict = Against(peak, has);
        string words = verdict == Verdict.DoesNotHold ? $"there is no more than {{0}}: {press.Power.TrueForceLimitedBy}" : "the ram has {0}";
        return new JobLimit("pump", verdict, new Remark(words, Remark.Of(has, Dimension.Force)));
    }

    /// <summary>A force against what the press is safe to.</summary>
    internal static JobLimit Rating(PressCheck press, Band peak)
    {
        Rung weakest = press.Ladder.Governing;
        double safe = press.Ladder.SafeRating;
        Verdict verdict = Against(peak, safe);
        return new JobLimit("rating", verdict, verdict == Verdict.Holds
            ? new Remark("the press is safe to {0}", Remark.Of(safe, Dimension.Force))
            : new Remark($"the press is safe to {{0}}; beyond that the {weakest.Part} {weakest.Saying}", Remark.Of(safe, Dimension.Force)));
    }

    private static JobLimit Daylight(PressCheck press, RigJob job, Demand demand)
    {
        double daylight = press.Rig.Frame.Daylight, high = demand.WorkHeight + (job.Tools ?? 0);
        bool fits = high <= daylight;
        string what = job.Tools is null ? "the work" : "work and tools";
        string room = job.Tools is null ? "the work of {0} goes into the opening of {1}; how high the tools may be, the stroke says" : "work and tools of {0} go into the opening of {1}";
        return new JobLimit("daylight", fits ? Verdict.Holds : Verdict.DoesNotHold, fits
            ? new Remark(room, Remark.Of(high, Dimension.Length), Remark.Of(daylight, Dimension.Length))
            : new Remark($"{what} {(job.Tools is null ? "is" : "are")} {{0}} high, and the opening is {{1}}", Remark.Of(high, Dimension.Length), Remark.Of(daylight, Dimension.Length)));
    }

    private static JobLimit Stroke(PressCheck press, RigJob job, Demand demand)
    {
        double stroke = press.Rig.Cylinder.Stroke, travel = demand.Travel;
        if (travel > stroke)
            return new JobLimit("stroke", Verdict.DoesNotHold, new Remark("the work takes {0} of travel, and the ram has {1}", Remark.Of(travel, Dimension.Length), Remark.Of(stroke, Dimension.Length)));
        double gap = Math.Max(0, press.Rig.Frame.Daylight - demand.WorkHeight - (job.Tools ?? 0));
        if (gap + travel <= stroke)
            return new JobLimit("stroke", Verdict.Holds, new Remark("{0} of approach and {1} of work are within the stroke of {2}", Remark.Of(gap, Dimension.Length), Remark.Of(travel, Dimension.Length), Remark.Of(stroke, Dimension.Length)));
        double blocks = gap + travel - stroke;
        return job.Tools is null
            ? new JobLimit("stroke", Verdict.Holds, new Remark("the work takes {0} of the stroke; it must stand on at least {1} of dies and blocks to be reached", Remark.Of(travel, Dimension.Length), Remark.Of(blocks, Dimension.Length)))
            : new JobLimit("stroke", Verdict.DoesNotHold, new Remark("the ram ends {0} short: put so much more under the work", Remark.Of(blocks, Dimension.Length)));
    }

    private static JobLimit Pulls(PressCheck press, Demand demand)
    {
        double stroke = press.Rig.Cylinder.Stroke;
        return demand.Travel <= stroke
            ? new JobLimit("stroke", Verdict.Holds, new Remark("one stroke of {0} does it", Remark.Of(stroke, Dimension.Length)))
            : new JobLimit("stroke", Verdict.Marginal, new Remark("{0} of travel takes more than one stroke of {1}: go back and put packing in between", Remark.Of(demand.Travel, Dimension.Length), Remark.Of(stroke, Dimension.Length)));
    }

    private static JobLimit Heat(RigHotSqueeze job, Demand demand, double? time)
    {
        double T = demand.Temperature;
        if (T < job.Steel.Coldest)
            return new JobLimit("heat", Verdict.DoesNotHold, new Remark("the bar has cooled to {0} before the dies touch it, and may be forged down to {1}", Remark.Of(T, Dimension.Temperature), Remark.Of(job.Steel.Coldest, Dimension.Temperature)));
        double window = BarCooling.Time(HotSqueezeDemand.VolumeOverSurface(job), T, job.Steel.Coldest, HotSurface.InTheWorkshop);
        if (time is not { } takes)
            return new JobLimit("heat", Verdict.Holds, new Remark("the bar can be forged for {0} in air", Remark.Of(window, Dimension.Time)));
        // cold dies take far more than air: a squeeze that fills half the time in air is late
        Verdict verdict = takes > window ? Verdict.DoesNotHold : takes > window / 2 ? Verdict.Marginal : Verdict.Holds;
        return new JobLimit("heat", verdict, verdict == Verdict.DoesNotHold
            ? new Remark("the squeeze takes {0}, and the bar is too cold to forge after {1} in air", Remark.Of(takes, Dimension.Time), Remark.Of(window, Dimension.Time))
            : new Remark("the squeeze takes {0} of the {1} the bar can be forged for in air; cold dies shorten that", Remark.Of(takes, Dimension.Time), Remark.Of(window, Dimension.Time)));
    }

    private static JobLimit EndOfHeat(PressCheck press, DrawingOut drawn)
    {
        double cold = drawn.Passes.Max(p => p.ColdForce), hot = drawn.Passes.Max(p => p.Force), has = JobCheck.Has(press);
        if (hot > has)
            return new JobLimit("passes", Verdict.DoesNotHold, new Remark("its hardest pass takes {0}, and the press is good for {1}: take a narrower bite or less at a time", Remark.Of(hot, Dimension.Force), Remark.Of(has, Dimension.Force)));
        return cold > has
            ? new JobLimit("passes", Verdict.Marginal, new Remark("towards the end of a heat its hardest pass takes {0}, and the press is good for {1}: reheat sooner", Remark.Of(cold, Dimension.Force), Remark.Of(has, Dimension.Force)))
            : new JobLimit("passes", Verdict.Holds, new Remark("its hardest pass takes {0}, {1} towards the end of a heat", Remark.Of(hot, Dimension.Force), Remark.Of(cold, Dimension.Force)));
    }

    private static JobLimit Rod(PressCheck press, Demand demand)
    {
        Rung? first = press.Ladder.Rungs.FirstOrDefault(r => r.Id.StartsWith("pull-", StringComparison.Ordinal));
        if (first is null)
            return new JobLimit("rod", Verdict.Marginal, new Remark("nothing is said of the pull rod: its thread and class under pull: decide, by their proof load"));
        Verdict verdict = Against(demand.Peak, first.SafeTo);
        return new JobLimit("rod", verdict, new Remark($"the {first.Part} {first.Saying} at {{0}} and is safe to {{1}}", Remark.Of(first.GivesAt, Dimension.Force), Remark.Of(first.SafeTo, Dimension.Force)));
    }

    private static JobLimit Shock(PressCheck press, Band letsGo)
    {
        double usual = SnapThrough.UsualReversal * Math.Min(press.Rig.Wanted, press.Ladder.SafeRating);
        bool small = letsGo.Likely <= usual;
        return new JobLimit("shock", small ? Verdict.Holds : Verdict.Marginal, small
            ? new Remark("it gives way by {0}, no more than the {1} a press is commonly built to take backwards", Remark.Of(letsGo.Likely, Dimension.Force), Remark.Of(usual, Dimension.Force))
            : new Remark("it gives way by {0} all at once, and the frame recoils with as much; presses are commonly built for {1} backwards: let a stop or damper catch the ram, and look at bolts and mount often", Remark.Of(letsGo.Likely, Dimension.Force), Remark.Of(usual, Dimension.Force)));
    }

    private static Verdict Against(Band peak, double has) =>
        peak.Likely > has * (1 + 1e-9) ? Verdict.DoesNotHold : peak.High > has * (1 + 1e-9) ? Verdict.Marginal : Verdict.Holds;
}
