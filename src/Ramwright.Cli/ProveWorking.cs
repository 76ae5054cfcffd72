using Ramwright.Files.Readings;
using Ramwright.Proving;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The working behind the answers of proving, on a terminal.</summary>
internal static class ProveWorking
{
    public static void Plan(Proof proof, IAnsiConsole screen)
    {
        Show("proof force", proof, screen, w => ProofForce.Of(proof.Check, w: w));
        foreach (SafetyDistance distance in proof.Plan.Distances)
            Show(distance.What, proof, screen, distance.Work);
    }

    public static void Force(Proof proof, IAnsiConsole screen)
    {
        if (proof.Force is { } force)
            Show("true force", proof, screen, force.Work);
        foreach (FrictionPair pair in FrictionPair.Of(proof.Book))
            Show("seal friction", proof, screen, w => pair.Force(OilToRam.Of(proof.Check, proof.Book).Area, w));
    }

    public static void Stiffness(Proof proof, IAnsiConsole screen)
    {
        foreach (Stiffness s in proof.Stiffness.Where(s => s.Line is not null))
            Show($"stiffness at the {s.Point.Name}", proof, screen, s.Work);
    }

    public static void Service(Proof proof, IAnsiConsole screen)
    {
        if (proof.Service is { Lives: [{ Used: > 0 } most, ..] } service)
            Show($"life used, {most.Life.Spot}", proof, screen, w => most.Show(proof.Check, service.Blocks, w));
    }

    private static void Show(string title, Proof proof, IAnsiConsole screen, Action<Workings.Working> work) =>
        WorkingView.Show(title, proof.Check.Rig.Wanted, proof.Units, screen, work);
}
