using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Squeeze;

/// <summary>A squeeze in plain words.</summary>
public static class SqueezeWords
{
    /// <summary>How it went, in one or two sentences.</summary>
    public static string Of(SqueezeResult r, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(r);
        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        string time = Show(r.Times.GetValueOrDefault(SqueezePhase.Pressing), Dimension.Time), force = Show(r.PeakForce, Dimension.Force);
        string where = r.Height is { } h ? $"at {Show(h, Dimension.Length)}" : $"{Show(r.Travel, Dimension.Length)} in";
        if (r.IsDone)
            return r.Height is { } to ? $"Done: {Show(to, Dimension.Length)} high after {time} under load, {force} at most." : $"Done after {time} under load, {force} at most.";
        return $"Not done: it ends {where}, because {Ended(r.End)}. {Short(r.StoppedBy, r.AtTouch is not null)}".TrimEnd();
    }

    /// <summary>Why a job followed in time is not done, as a clause.</summary>
    public static Remark Why(JobInTime time)
    {
        ArgumentNullException.ThrowIfNull(time);
        if (!time.First.IsDone)
            return new Remark("the first squeeze is not done: " + Ended(time.First.End));
        return time.Heats is { IsDone: false } heats
            ? new Remark($"given up in heat {Math.Max(1, heats.Heats.Count)}: {(heats.StoppedBy == StoppedBy.Cold ? "the bar is cold before it is done" : "the press has too little for it")}")
            : new Remark("followed in time it takes more than the press is good for");
    }

    /// <summary>What ended the pressing, as a clause.</summary>
    public static string Ended(SqueezeEnd end) => end switch
    {
        SqueezeEnd.Done => "the job is done",
        SqueezeEnd.ReliefOpened => "the relief valve takes all the oil",
        SqueezeEnd.PumpStalled => "the pump stalls",
        SqueezeEnd.AirRanOut => "the receiver's air has run down",
        SqueezeEnd.TooCold => "the steel has fallen below its forging range",
        SqueezeEnd.OutOfStroke => "the ram is at the end of its stroke",
        SqueezeEnd.OutOfOil => "the tank has no more oil to give",
        _ => "it goes on longer than anybody waits",
    };

    /// <summary>What is short, as a sentence; empty where nothing is.</summary>
    /// <param name="by">What stood in the way.</param>
    /// <param name="hot">Whether the work is hot.</param>
    public static string Short(StoppedBy by, bool hot = true) => by switch
    {
        StoppedBy.Force when hot => "It is the press: even at the heat of the touch the job wants more force than it has.",
        StoppedBy.Force => "It is the press: the job wants more force than it has.",
        StoppedBy.Cold => "It is the steel: the press has force enough while the bar is hot, but the bar is cold before it is done. Quicker, hotter, warmer dies or a smaller bite.",
        StoppedBy.Reach => "It is the reach: put more under the work, or fill the tank.",
        StoppedBy.Air => "It is the air: a larger receiver or compressor.",
        StoppedBy.Speed => "It is the pump's flow: force enough, but too slow.",
        _ => "",
    };

    /// <summary>A phase, as it heads a line.</summary>
    public static string Name(SqueezePhase phase) => phase switch
    {
        SqueezePhase.Approach => "approach",
        SqueezePhase.Pressing => "under load",
        SqueezePhase.Dwell => "held",
        SqueezePhase.LetOff => "letting off",
        _ => "return",
    };

    /// <summary>What a sweep changes, as it heads an axis.</summary>
    public static string Name(SweepOf of) => of switch
    {
        SweepOf.Bar => "bar",
        SweepOf.Heat => "heat",
        SweepOf.DieWidth => "die width",
        SweepOf.DieHeat => "die heat",
        _ => "transfer",
    };

    /// <summary>What the chart of a sweep shows.</summary>
    public static string Title(SqueezeSweep sweep)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        string how = Math.Abs(sweep.Target - 0.5) < 0.005 ? "half its thickness" : $"{sweep.Target * 100:0} % of its thickness";
        return sweep.Up.Of == SweepOf.Bar
            ? $"Largest bar I can take to {how} in one heat"
            : $"Greatest {Name(sweep.Up.Of)} at which I can take the bar to {how} in one heat";
    }

    /// <summary>How far to trust the map of a sweep.</summary>
    public static IEnumerable<string> Notes(SqueezeSweep sweep, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        double thick = 3 * sweep.Job.DieWidth;
        if (sweep.Up.Of == SweepOf.Bar && sweep.Job.DieWidth < sweep.Job.Length && sweep.Up.To > thick)
            yield return $"Above {Readout.Text(thick, Dimension.Length, units)} a bite as wide as the dies is less than a third of the height: it works the skin and pulls the middle.";
        yield return "The flow stress is known to 20 %, the chill of the dies to a third: keep away from the edges of the map.";
    }
}
