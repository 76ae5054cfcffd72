using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>One thing to do in a test.</summary>
/// <param name="Name">Its word in the log.</param>
/// <param name="What">What to do or look at.</param>
/// <param name="Stop">What means stop; empty where nothing does.</param>
public sealed record PlanTask(string Name, string What, string Stop = "");

/// <summary>One step of pressure. SI.</summary>
/// <param name="Number">From 1.</param>
/// <param name="What">In words: <c>half the rating</c>.</param>
/// <param name="Way">Going up or coming down.</param>
/// <param name="Pressure">Gauge pressure to go to, Pa.</param>
/// <param name="Thrust">The most that the frame can feel then, N: nothing lost.</param>
/// <param name="RamForce">What the ram is reckoned to push with, N: seals and spring taken off.</param>
/// <param name="Dwell">How long to hold, s.</param>
/// <param name="Dials">What each dial should show more than at the start, and what means stop, m; none while the parts are seated.</param>
/// <param name="Setting">How the pressure is made to stop there.</param>
public sealed record PlanStep(
    int Number, string What, Way Way, double Pressure, double Thrust, double RamForce, double Dwell, IReadOnlyList<DialForecast> Dials, string Setting);

/// <summary>What a dial should show at a step.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Expected">m.</param>
/// <param name="StopAt">A reading beyond this means stop, m.</param>
public sealed record DialForecast(string Place, double Expected, double StopAt);

/// <summary>How a press is tried, step by step, before it is used: plain facts, ready for a sheet or a screen.</summary>
public sealed record TestPlan
{
    /// <summary>The press's name.</summary>
    public required string Press { get; init; }
    /// <summary>The proof.</summary>
    public required ProofForce Proof { get; init; }
    /// <summary>Where dials are set.</summary>
    public required IReadOnlyList<DialPoint> Points { get; init; }
    /// <summary>What is looked at before any pressure.</summary>
    public required IReadOnlyList<PlanTask> Looks { get; init; }
    /// <summary>What is done with the ram free: bleeding, leaks, strokes, relief.</summary>
    public required IReadOnlyList<PlanTask> Unloaded { get; init; }
    /// <summary>The loaded steps, up to the proof, down again, and the rating once more.</summary>
    public required IReadOnlyList<PlanStep> Steps { get; init; }
    /// <summary>What is measured besides.</summary>
    public required IReadOnlyList<PlanTask> Measures { get; init; }
    /// <summary>What is done after.</summary>
    public required IReadOnlyList<PlanTask> After { get; init; }
    /// <summary>Where to stand and what to keep away.</summary>
    public required IReadOnlyList<string> Stand { get; init; }
    /// <summary>What means stop, at every step.</summary>
    public required IReadOnlyList<string> Stops { get; init; }
    /// <summary>Safety distances of guards, where the press has any.</summary>
    public required IReadOnlyList<SafetyDistance> Distances { get; init; }

    /// <summary>Draws up the plan of a press.</summary>
    /// <param name="check">The press.</param>
    /// <param name="units">Units that its texts speak in.</param>
    /// <param name="factor">Wished proof over safe rating.</param>
    public static TestPlan Of(PressCheck check, UnitSystem units = UnitSystem.Metric, double factor = ProofForce.Usual)
    {
        ArgumentNullException.ThrowIfNull(check);
        var proof = ProofForce.Of(check, factor);
        IReadOnlyList<DialPoint> points = DialPoint.Of(check.Response);
        return new TestPlan
        {
            Press = check.Rig.Name,
            Proof = proof,
            Points = points,
            Looks = PlanLooks.Of(check, units),
            Unloaded = PlanUnloaded.Of(check, units),
            Steps = PlanSteps.Of(check, proof, points, units),
            Measures = PlanMeasures.Of(check, proof, units),
            After = PlanMeasures.After(check, units),
            Stand = PlanStand.Of(check, proof, units),
            Stops = PlanStand.Stops(check, units),
            Distances = SafetyDistance.Of(check, units),
        };
    }

    /// <summary>The step of the proof: what the gauge is really brought to, whole marks of it and never above.</summary>
    public PlanStep ProofStep => Steps.Where(s => s.Way == Way.Up).MaxBy(s => s.Pressure)!;

    /// <summary>The step that a pressure belongs to: the nearest on the same way.</summary>
    /// <param name="pressure">Pa.</param>
    /// <param name="way">Up or down.</param>
    public PlanStep? StepAt(double pressure, Way way = Way.Up) =>
        Steps.Where(s => s.Way == way && s.Dials.Count > 0).MinBy(s => Math.Abs(s.Pressure - pressure));
}
