using Ramwright.Files;
using Ramwright.Ladders;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>The allowed ram force against how far off centre the work stands.</summary>
internal sealed class OffsetCommand(IAnsiConsole screen) : Command<PressSettings>
{
    public override int Execute(CommandContext context, PressSettings settings, CancellationToken cancellationToken)
    {
        if (PressLoad.Open(settings, screen) is not var (_, check, units))
            return ExitCode.WrongInput;
        if (settings.Json)
            JsonOut.Write(screen, OffCentreJson.Text(check, check.OffCentre()));
        else
            OffsetView.Show(check, check.OffCentre(units), units, screen);
        return ExitCode.Holds;
    }
}
