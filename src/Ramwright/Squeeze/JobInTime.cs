using Ramwright.Jobs;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Squeeze;

/// <summary>A job done in time: one squeeze followed, all the squeezes and heats it takes, and what an hour of it does to the air.</summary>
public sealed record JobInTime
{
    /// <summary>The job.</summary>
    public required RigJob Job { get; init; }
    /// <summary>The first squeeze.</summary>
    public required SqueezeResult First { get; init; }
    /// <summary>Squeezes and heats; null for cold work.</summary>
    public required WorkInHeats? Heats { get; init; }
    /// <summary>An hour of it on the receiver; null for a press that needs no air.</summary>
    public required HourOfWork? Hour { get; init; }
    /// <summary>How far to trust it.</summary>
    public required IReadOnlyList<Remark> Flags { get; init; }

    /// <summary>What the reckoning in time leans on, and where that comes from.</summary>
    public IReadOnlyList<(string What, Citation Source)> Sources
    {
        get
        {
            List<(string, Citation)> sources =
            [
                ("flow of the pump against load and lines", RamMotion.Balance),
                ("give of the oil", BulkModulus.Source),
            ];
            if (Hour is not null)
                sources.Add(("air in the receiver", Receiver.GasLaw));
            if (Heats is not null)
            {
                sources.Add(("specific heat of the bar", HotSteel.HeatSource));
                sources.Add(("its conductivity", HotSteel.ConductivitySource));
                sources.Add(("radiation", HotSurface.Radiation));
                sources.Add(("emissivity and still air", HotSurface.Usual));
                sources.Add(("heat into the dies", DieContact.ConductanceSource));
                sources.Add(("work into heat", BarCooling.WorkSource));
                sources.Add(("scale", WorkInHeats.ScaleSource));
            }

            return sources;
        }
    }

    /// <summary>Follows a job.</summary>
    /// <param name="check">The press.</param>
    /// <param name="job">The job.</param>
    /// <param name="demand">What it asks of the ram.</param>
    /// <exception cref="InvalidOperationException">It could not be followed.</exception>
    public static JobInTime Of(PressCheck check, RigJob job, Demand demand)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(demand);
        SqueezePress press = SqueezePress.Of(check);
        if (job is RigHotSqueeze hot)
        {
            SqueezeResult first = SqueezeRun.Of(press, SqueezeWork.Of(hot, press));
            WorkInHeats heats = WorkInHeats.Of(hot, press);
            return new JobInTime
            {
                Job = hot,
                First = first,
                Heats = heats,
                Hour = HourOfWork.Of(press, heats.Rounds, Math.Max(first.PeakPressure, heats.PeakPressure)),
                Flags = [.. Bounds(hot, first), new Remark(ContactWords)],
            };
        }

        SqueezeResult cold = SqueezeRun.Of(press, SqueezeWork.Of(new CurveResistance(demand.Curve), job, press, demand.WorkHeight), new SqueezeCare(Patience: ColdPatience));
        return new JobInTime
        {
            Job = job,
            First = cold,
            Heats = null,
            Hour = HourOfWork.Of(press, [new WorkRound(cold.Time, cold.AirTaken, true), new WorkRound(HourOfWork.BetweenPieces, 0, false)], cold.PeakPressure),
            Flags = job is RigClosedDie ? [new Remark("The blank's cooling in the impression is not followed: its force is that of the heat it comes with.")] : [],
        };
    }

    // a hand pump takes minutes; nothing goes cold
    private const double ColdPatience = 1800;

    private const string ContactWords =
        "How well the dies take the heat is the least certain number here (5000 to 10 000 W/(m²·K) under load, 7500 taken): the losses to the dies may be a third more or less.";

    private static IEnumerable<Remark> Bounds(RigHotSqueeze job, SqueezeResult r)
    {
        FlowRange range = HotBite.LawFor(job).Range;
        if (r.Rate is { } rate && rate.Mean < range.Slowest)
        {
            yield return new Remark($"It is pressed at {Readout.Number(rate.Mean, 2)} /s on the mean, slower than the {Readout.Number(range.Slowest, 2)} /s where the flow stress was measured: "
                + "the value there is taken, which is high.");
        }

        if (r.AtEnd is { } end && end.Coldest < range.Coldest)
            yield return new Remark("The skin falls to {0}, colder than the {1} where the flow stress was measured: the value there is taken, which is low.",
                Remark.Of(end.Coldest, Dimension.Temperature), Remark.Of(range.Coldest, Dimension.Temperature));
    }
}
