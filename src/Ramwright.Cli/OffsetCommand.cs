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
        OffCentre curve = check.OffCentre();
        if (settings.Json)
            JsonOut.Write(screen, OffCentreJson.Text(check, curve));
        else
            OffsetView.Show(check, curve, units, screen);
        return ExitCode.Holds;
    }
}
