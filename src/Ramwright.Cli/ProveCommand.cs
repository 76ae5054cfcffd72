using Ramwright.FaultFinding;
using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>Proving a press: the plan, what was read, what follows from it.</summary>
internal sealed class ProveCommand(IAnsiConsole screen) : Command<ProveSettings>
{
    public override int Execute(CommandContext context, ProveSettings settings, CancellationToken cancellationToken)
    {
        if (PressLoad.Open(settings, screen) is not var (_, check, units))
            return ExitCode.WrongInput;
        string path = ReadingLog.PathFor(settings.File);
        DateTime now = settings.Now;
        if (!ReadingsAdd.All(settings, path, check, units, now, screen))
            return ExitCode.WrongInput;
        var proof = new Proof(check, ReadingLog.Load(path, units), units, DateOnly.FromDateTime(now));
        if (settings.Fault is { } signs)
            return Faults(proof, signs, settings);
        if (!Written(settings, proof, out bool wrote))
            return ExitCode.WrongInput;
        if (settings.Json)
            JsonOut.Write(screen, ProveJson.Text(proof));
        else if (!wrote || settings.Plan || settings.TrueForce || settings.Stiffness || settings.Service)
            Show(proof, settings);
        return proof.Stops.Count == 0 ? ExitCode.Holds : ExitCode.DoesNotHold;
    }

    private void Show(Proof proof, ProveSettings settings)
    {
        bool any = settings.Plan || settings.TrueForce || settings.Stiffness || settings.Service;
        if (settings.Plan)
            ProvePlanView.Show(proof, screen);
        if (settings.Plan && settings.Working)
            ProveWorking.Plan(proof, screen);
        if (settings.TrueForce)
            ProveForceView.Show(proof, screen);
        if (settings.TrueForce && settings.Working)
            ProveWorking.Force(proof, screen);
        if (settings.Stiffness)
            ProveStiffnessView.Show(proof, screen);
        if (settings.Stiffness && settings.Working)
            ProveWorking.Stiffness(proof, screen);
        if (settings.Service)
            ProveServiceView.Show(proof, screen);
        if (settings.Service && settings.Working)
            ProveWorking.Service(proof, screen);
        if (!any)
            ProveView.Show(proof, settings.File, screen);
    }

    private int Faults(Proof proof, string signs, ProveSettings settings)
    {
        (FaultTables tables, IReadOnlyList<TableFault> bad) = FaultFiles.For(settings.File);
        foreach (TableFault fault in bad)
            screen.WriteLine($"{fault.File}:{fault.Line}  {fault.Found}; wanted: {fault.Wanted}");
        if (signs.Trim() is "?" or "")
        {
            if (settings.Json)
                JsonOut.Write(screen, ProveJson.Text(FaultNetwork.Of(proof.Check.Rig, tables)));
            else
                ProveFaultView.List(proof.Check, tables, screen);
            return ExitCode.Holds;
        }

        var seen = new List<Seen>();
        foreach (string word in signs.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            string[] parts = word.Split('=', 2, StringSplitOptions.TrimEntries);
            Sign[] known = [.. FaultNetwork.Of(proof.Check.Rig, tables).Signs];
            if (!known.Any(s => s.Id == parts[0]) || parts.Length > 1 && parts[1] is not ("yes" or "no"))
            {
                return screen.Refuse(settings.Json, $"--fault {word}: {(known.Any(s => s.Id == parts[0]) ? "=yes or =no" : $"this press has no such sign; nearest: {NearestWord.Ranked(parts[0], known.Select(s => s.Id), 1)[0]}")}",
                    "Signs: " + string.Join(", ", known.Select(s => s.Id)));
            }

            seen.Add(new Seen(parts[0], parts.Length < 2 || parts[1] == "yes"));
        }

        FaultSearch search;
        try
        {
            search = proof.Faults(tables, seen);
        }
        catch (ArgumentException cannot)
        {
            return screen.Refuse(settings.Json, $"--fault {signs}: {cannot.Message.Split(" (Parameter", 2)[0]}");
        }

        if (settings.Json)
            JsonOut.Write(screen, ProveJson.Text(search));
        else
            ProveFaultView.Show(search, settings.File, signs, screen);
        return ExitCode.Holds;
    }

    private bool Written(ProveSettings settings, Proof proof, out bool any)
    {
        any = false;
        foreach ((string? file, Func<string> text, string what) in new (string?, Func<string>, string)[]
        {
            (settings.Sheet, () => PlanSheet.Html(proof), "the test sheet"),
            (settings.Certificate, () => Certificate.Html(proof), "the record of the test"),
        })
        {
            if (file is null)
                continue;
            any = true;
            if (file == settings.Certificate && proof.Untold is { } why)
            {
                screen.Refuse(settings.Json, $"No record is written, for there is no true force to record: {why}.");
                return false;
            }

            try
            {
                File.WriteAllText(file, text());
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                screen.Refuse(settings.Json, Refusal.NotWritten(file, fault));
                return false;
            }

            if (!settings.Json)
                screen.WriteLine($"{file} is {what}. Open it in a browser and print it.");
        }

        return true;
    }
}
