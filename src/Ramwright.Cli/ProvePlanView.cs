using Ramwright.Files.Readings;
using Ramwright.Proving;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The test plan on a terminal.</summary>
internal static class ProvePlanView
{
    public static void Show(Proof proof, IAnsiConsole screen)
    {
        TestPlan plan = proof.Plan;
        screen.Heading("Test plan", " " + plan.Press);
        screen.WriteLine();
        screen.Fact("proof", Force.Text(plan.Proof.Force, proof.Units), plan.Proof.Reason(proof.Units));
        screen.Fact("at the gauge", Readout.Text(plan.ProofStep.Pressure, Dimension.Pressure, proof.Units), $"whole marks, never above: {DialText.Forces(plan.ProofStep, proof.Units)}");
        screen.WriteLine();
        Bullets("Where to stand", plan.Stand, "!", screen);
        Bullets("What means stop, at every step", plan.Stops, "!", screen);
        foreach (SafetyDistance d in plan.Distances)
            screen.Fact(d.What, Readout.Text(d.S, Dimension.Length, proof.Units, 4), $"least distance from the dies; {SafetyDistance.Source}");
        if (plan.Distances.Count > 0)
            screen.WriteLine();
        Tasks("Look at, before any pressure", plan.Looks, screen);
        Tasks("With nothing under the ram", plan.Unloaded, screen);
        screen.Heading("Dials");
        foreach (DialPoint point in plan.Points)
            screen.Bullet("-", $"{point.Name}: {point.Says}");
        screen.WriteLine();
        Steps(plan, proof, screen);
        Tasks("Measure besides", plan.Measures, screen);
        Tasks("After", plan.After, screen);
    }

    private static void Steps(TestPlan plan, Proof proof, IAnsiConsole screen)
    {
        screen.Heading("Steps", "  one block, centred; wait the dwell out, then read; by area: pressure times area, nothing lost; dials: expected, and in brackets the one that means stop");
        foreach (PlanStep step in plan.Steps)
        {
            string closed = proof.Closed.TryGetValue(step.Number, out string? word) ? $"  [{word}]" : "";
            screen.Loud($"{step.Number}. {step.What}{closed}", margin: 1);
            screen.Paragraph(
                $"{Readout.Text(step.Pressure, Dimension.Pressure, proof.Units)} on the gauge{(step.Pressure > 0 ? $": {Force.Text(step.Thrust, proof.Units)} by area, {Force.Text(step.RamForce, proof.Units)} at the ram" : "")}; hold {Readout.Text(step.Dwell, Dimension.Time, proof.Units)}; {step.Setting}", margin: 4);
            if (step.Way == Way.Up && step.Dials.Count > 0)
            {
                screen.Paragraph(string.Join("; ", step.Dials.Select(d =>
                    $"{d.Place} {DialText.Of(d.Expected, proof.Units)} ({DialText.Of(d.StopAt, proof.Units)})")), margin: 4);
            }
        }

        screen.WriteLine();
    }

    private static void Tasks(string title, IReadOnlyList<PlanTask> tasks, IAnsiConsole screen)
    {
        screen.Heading(title);
        foreach (PlanTask task in tasks)
            screen.Bullet("-", $"{task.Name}: {task.What}{(task.Stop.Length > 0 ? $". Stop: {task.Stop}" : "")}");
        screen.WriteLine();
    }

    private static void Bullets(string title, IReadOnlyList<string> lines, string mark, IAnsiConsole screen)
    {
        screen.Heading(title);
        foreach (string line in lines)
            screen.Bullet(mark, line);
        screen.WriteLine();
    }
}
