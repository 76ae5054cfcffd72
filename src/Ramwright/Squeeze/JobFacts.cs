using Ramwright.Jobs;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Squeeze;

/// <summary>What is said of a job in figures, in the same words on every face.</summary>
public static class JobFacts
{
    /// <summary>Force, gauge, travel, work and time.</summary>
    public static IEnumerable<SaidFact> Forces(JobAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        JobCheck check = answer.Check;
        Demand demand = check.Demand;
        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        if (answer.AsItCools is { } cooled && answer.AsItCoolsAtMost is { } most)
            yield return new("force", ForceText.Of(cooled, units), $"likely, the hardest squeeze of the whole job, each followed in time as the bar cools; {Show(most, Dimension.Force)} with all that is uncertain against it");
        yield return new(answer.AsItCools is null ? "force" : "hot, at first", ForceText.Of(demand.Peak.Likely, units),
            $"{(answer.AsItCools is null ? "" : "at its full heat, before the dies chill it; ")}{Show(demand.Peak.Low, Dimension.Force)} to {Show(demand.Peak.High, Dimension.Force)}: {demand.Spread}");
        yield return new("gauge shows", check.GaugeAt(answer.Likely) is { } gauge ? Show(gauge, Dimension.Pressure) : "more", check.GaugeAt(answer.Likely) is null
            ? $"than this pump gives: it stops at {Show(check.Press.Power.TruePressure, Dimension.Pressure)}" : $"at the likely force of {Show(answer.Likely, Dimension.Force)}");
        yield return new("travel", Show(demand.Travel, Dimension.Length), $"from the touch; force greatest at {Show(demand.PeakAt.Travel, Dimension.Length)}");
        yield return new("work", Show(demand.Energy, Dimension.Energy), "the area under the curve");
        yield return new("time", check.Time is { } time ? Show(time, Dimension.Time) : "stalls", "at the speed pump and load allow");
    }

    /// <summary>What is let go where the work gives way at once; nothing where it does not.</summary>
    public static IEnumerable<SaidFact> LettingGo(JobCheck check, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(check);
        if (check.SnapThrough is not { } snap)
            yield break;
        yield return new("force let go", ForceText.Of(snap.Force, units), "the frame recoils with as much");
        yield return new("stored", Readout.Text(snap.Energy, Dimension.Energy, units, 2), "in frame and oil");
        yield return new("ram jumps", Readout.Text(snap.FreeTravel, Dimension.Length, units, 2), "at most");
        yield return new("reversal", Readout.Text(snap.GreatestReversal, Dimension.Force, units, 2), "at most, on mount and bolts");
    }

    /// <summary>The first squeeze in time: its phases, force, height, heat and air.</summary>
    public static IEnumerable<SaidFact> InTime(SqueezeResult r, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(r);
        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        foreach ((SqueezePhase phase, double t) in r.Times)
        {
            string remark = phase switch
            {
                SqueezePhase.Approach => "from just above the work to the touch",
                SqueezePhase.Pressing => r.Unloaded ? "the pump's large stage is unloaded on the way" : "",
                SqueezePhase.Return => "the ram up again",
                _ => "",
            };
            yield return new(SqueezeWords.Name(phase), Show(t, Dimension.Time), remark);
        }

        yield return new("force up to", Show(r.PeakForce, Dimension.Force), $"at {Show(r.PeakPressure, Dimension.Pressure)} in the cylinder");
        if (r.Height is { } h)
            yield return new("height", Show(h, Dimension.Length), $"{Show(r.Travel, Dimension.Length)} taken off");
        if (r.AtEnd is { } end && r.AtTouch is { } touch)
        {
            yield return new("heat", Show(end.Mean, Dimension.Temperature),
                $"on the mean at the end, {Show(touch, Dimension.Temperature)} at the touch; {Show(end.Coldest, Dimension.Temperature)} at the skin to {Show(end.Hottest, Dimension.Temperature)} inside");
        }

        if (r.Receiver is { } p)
            yield return new("receiver", Show(p, Dimension.Pressure), $"after it; {Show(r.AirTaken, Dimension.Volume)} of free air taken");
    }

    /// <summary>Squeezes and heats of the whole job.</summary>
    public static IEnumerable<SaidFact> Heats(WorkInHeats heats, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(heats);
        yield return new("in one heat", heats.OneHeatIsMore ? $"{heats.InOneHeat} or more" : $"{heats.InOneHeat}", "squeezes before the bar is too cold or the press cannot");
        yield return new("the whole job", $"{heats.Squeezes} squeezes", heats.IsDone
            ? $"in {heats.Heats.Count} heats, {Readout.Text(heats.PeakForce, Dimension.Force, units)} at most"
            : $"in {heats.Heats.Count} heats, then given up at pass {heats.StoppedAt?.Pass}, squeeze {heats.StoppedAt?.Squeeze}. {SqueezeWords.Short(heats.StoppedBy)}");
        if (heats.Heats.Count > 0)
        {
            (double least, double most) = heats.Scale;
            yield return new("scale", $"{least * 100:0.#} to {most * 100:0.#} %", "of the weight burnt away in a gas or coal fire; leave that much more");
        }
    }

    /// <summary>An hour of it on the receiver.</summary>
    /// <param name="hour">The hour.</param>
    /// <param name="job">The job.</param>
    /// <param name="units">Which units.</param>
    public static IEnumerable<SaidFact> Hour(HourOfWork hour, RigJob job, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(hour);
        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        yield return new("done", $"{Readout.Number(hour.Rounds, 2)} times", $"each takes {Show(hour.RoundTime, Dimension.Time)}, " + (job is RigHotSqueeze hot
            ? $"{Show(hot.InTheFire, Dimension.Time)} of it in the fire for each heat"
            : $"{Show(HourOfWork.BetweenPieces, Dimension.Time)} of it to change the piece"));
        yield return new("lowest", Show(hour.Lowest, Dimension.Pressure), $"in the receiver; the work needs {Show(hour.Needs, Dimension.Pressure)} at the pump");
        yield return new("compressor", $"{hour.CompressorRuns * 100:0} % of it", $"runs, {hour.Starts} starts, {Show(hour.Made, Dimension.Volume)} of free air");
        yield return hour.Starved ? new("stops", Show(hour.FirstWait ?? 0, Dimension.Time), "from the start: the air is gone and no compressor fills it")
            : hour.FirstWait is { } first ? new("waits", Show(hour.Waiting, Dimension.Time), $"for air in all, first after {Show(first, Dimension.Time)}")
            : new("waits", "never", "the air keeps up");
    }

    /// <summary>What went in and where it is, one line for each balance.</summary>
    public static IEnumerable<string> Balances(SqueezeResult r, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(r);
        foreach (SqueezeBalance balance in r.Balances)
        {
            Dimension dimension = balance.Name is "oil" or "air" ? Dimension.Volume : Dimension.Energy;
            string parts = string.Join(", ", balance.Parts.Where(p => Math.Abs(p.Value) > 0.0005 * balance.Turnover).Select(p => $"{p.Name} {Readout.Text(p.Value, dimension, units)}"));
            string missing = balance.Error < 0.0001 ? "less than 0.01 % missing" : $"{balance.Error * 100:0.00} % missing";
            yield return $"{balance.Name}: {Readout.Text(balance.In, dimension, units)}: {parts}; {missing}";
        }
    }

    /// <summary>The schedule of a bar that is drawn out, in two sentences.</summary>
    public static string Schedule(DrawingOut drawn, bool quarterTurns, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        string Mm(double x) => Readout.Text(x, Dimension.Length, units);
        return $"{drawn.Squeezes} squeezes in {drawn.Passes.Count} passes, {(quarterTurns ? $"{drawn.Turns} quarter turns" : "not turned")}, about {drawn.Heats} "
            + $"{(drawn.Heats == 1 ? "heat" : "heats")} if it cooled in air alone. {Mm(drawn.LengthBefore)} of bar becomes {Mm(drawn.LengthAfter)}; the volume stays.";
    }

    /// <summary>What a schedule leaves out.</summary>
    public const string ScheduleNote = "Hot and cold: what a pass would take at the beginning of a heat, and at the coldest that the steel may be worked. Heats are counted by cooling in air alone; cold dies need "
        + "more of them. Where the job is followed in time, its force and its heats are those that count. Passes may be one pair more or less.";

    /// <summary>Said where a schedule does not reach its size.</summary>
    public const string NotReached = "The size wanted is not reached this way: turn the bar, take less at a time, or take a narrower bite.";
}
