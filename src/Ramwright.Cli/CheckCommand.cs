using Ramwright.Files;
using Ramwright.Ladders;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What the press will really do, and what gives first.</summary>
internal sealed class CheckCommand(IAnsiConsole screen) : Command<CheckSettings>
{
    public override int Execute(CommandContext context, CheckSettings settings, CancellationToken cancellationToken)
    {
        if (PressLoad.Open(settings, screen) is not var (_, check, units))
            return ExitCode.WrongInput;
        if (settings.Json)
            JsonOut.Write(screen, CheckJson.Text(check));
        else
            CheckView.Show(check, units, settings.File, settings.All, screen);
        return check.Verdict != Verdict.DoesNotHold && check.MeetsWanted ? ExitCode.Holds : ExitCode.DoesNotHold;
    }
}
