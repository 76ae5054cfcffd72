using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Proving;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>How far the proving of a press has come: proof, force, stiffness, service, and what stands in the way.</summary>
internal static class ProveView
{
    public static void Show(Proof proof, string file, IAnsiConsole screen)
    {
        screen.Heading(proof.Check.Rig.Name, " proving");
        screen.WriteLine();
        foreach (string stop in proof.Stops)
            screen.Loud($"STOP: {stop}.");
        if (proof.Stops.Count > 0)
            screen.WriteLine();
        ProofForce p = proof.Plan.Proof;
        screen.Fact("proof", Force.Text(p.Force, proof.Units), p.Reason(proof.Units));
        PlanStep top = proof.Plan.ProofStep;
        screen.Fact("at the gauge", Readout.Text(top.Pressure, Dimension.Pressure, proof.Units), $"whole marks, never above: {DialText.Forces(top, proof.Units)}");
        screen.Fact("steps", Readout.Number(proof.Plan.Steps.Count), $"{proof.Closed.Count(c => c.Value == "held")} closed in the log");
        if (proof.Force is { } force)
            screen.Fact("true force", force.Saying(proof.Units).Split(';')[0], ProveForceView.Remark(force, proof.Units));
        else
            screen.Fact("true force", proof.Untold is null ? "not measured" : "none", proof.Untold ?? "wants top-pressure: ram dead against a block, five times");
        foreach (Stiffness s in proof.Stiffness)
        {
            screen.Fact(s.Point.Name, s.Measured is { } m ? UncertainText.Of(m.Value, m.Expanded, Dimension.Stiffness, proof.Units) : "too few readings",
                $"reckoned {DialText.Reckoned(s, proof.Units)}{(s.IsSofter ? "; SOFTER: see --stiffness" : "")}");
        }

        ServiceState service = proof.Service;
        screen.Fact("squeezes", Readout.Number(service.Squeezes, 6), service.Lives.Count > 0 && service.Lives[0].Used > 0
            ? $"most life used: {service.Lives[0].Life.Spot}, {Readout.Text(service.Lives[0].Used, Dimension.Ratio)}" : "");
        foreach (ServiceDue due in service.Due.Where(d => d.IsDue(proof.Today)))
            screen.Fact("due", due.What, $"since {due.Due:yyyy-MM-dd}: {due.Why}");
        screen.WriteLine();
        LogFaults(proof.Log, screen);
        screen.Bullet("!", "First pressure can kill. Read the plan through before you start; --sheet FILE.html prints it:");
        screen.Line($"    ramwright prove {file} --plan");
        screen.Paragraph($"Readings: {System.IO.Path.GetFileName(proof.Log.Path)}, {proof.Log.Readings.Count} read. Add one:");
        screen.Line($"    ramwright prove {file} --add \"bore {(proof.Units == UnitSystem.Imperial ? "4.998 in" : "125.04 mm")}\"");
    }

    /// <summary>Lines of the log that could not be read.</summary>
    public static void LogFaults(ReadingLog log, IAnsiConsole screen)
    {
        if (log.Faults.Count == 0)
            return;
        screen.Loud(log.Faults.Count == 1 ? "One line of the log could not be read, or cannot be so, and is not counted:" : $"{log.Faults.Count} lines of the log could not be read, or cannot be so, and are not counted:");
        foreach (PlacedFault fault in log.Faults)
            screen.Paragraph(FaultText.Of(fault, Math.Max(60, screen.Profile.Width - 2)).TrimEnd('\n'), margin: 2);
        screen.WriteLine();
    }
}
