using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>Names the bench in the list of commands. The script beside the sources starts it: it is a program of its own.</summary>
internal sealed class OpenCommand(IAnsiConsole screen) : Command<OpenSettings>
{
    public override int Execute(CommandContext context, OpenSettings settings, CancellationToken cancellationToken)
    {
        screen.WriteLine("The bench is a program of its own, Ramwright.Web; the script ./ramwright (ramwright.cmd on Windows) builds and starts it.");
        return ExitCode.WrongInput;
    }
}
