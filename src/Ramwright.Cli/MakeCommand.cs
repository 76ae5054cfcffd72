using Ramwright.Fabrication.Nesting;
using Ramwright.Files;
using Ramwright.Files.Making;
using Ramwright.Ladders;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What is carried to the saw, the table, the drill and the welder.</summary>
internal sealed class MakeCommand(IAnsiConsole screen) : Command<MakeSettings>
{
    public override int Execute(CommandContext context, MakeSettings settings, CancellationToken cancellationToken)
    {
        if (PressLoad.Open(settings, screen) is not var (press, check, units))
            return ExitCode.WrongInput;
        var watch = new NestWatch(screen, settings);
        var of = new MakeOf(press, check, units, new NestEffort(settings.Rounds, (ulong)(uint)settings.Seed, watch.GoesOn)) { Day = settings.Day };
        IReadOnlyList<OutFile> files = Makers.Files(of);
        watch.Done();
        if (settings.Out is { } folder && OutFolder.Write(folder, files, settings.Force) is { } fault)
        {
            if (settings.Json)
                FaultView.Show([new PlacedFault(folder, 0, 0, 0, "", fault, "a folder that files can be written into", null, "")], true, screen);
            else
                screen.WriteLine(fault);
            return ExitCode.WrongInput;
        }

        if (settings.Json)
            JsonOut.Write(screen, MakeJson.Text(of, settings.Out is null ? [] : files));
        else
            MakeView.Show(of, files, settings, screen);
        return check.Verdict != Verdict.DoesNotHold && check.MeetsWanted ? ExitCode.Holds : ExitCode.DoesNotHold;
    }
}
