using Ramwright.Files;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>Writes a commented starter for one kind of frame.</summary>
internal sealed class NewCommand(IAnsiConsole screen) : Command<NewSettings>
{
    public override int Execute(CommandContext context, NewSettings settings, CancellationToken cancellationToken)
    {
        if (!Starter.Kinds.Contains(settings.Frame))
        {
            screen.WriteLine($"no starter for a frame called \"{settings.Frame}\"; there are: {string.Join(", ", Starter.Kinds)}");
            return ExitCode.WrongInput;
        }

        string text = Starter.Text(settings.Frame);
        if (settings.File is null)
        {
            JsonOut.Write(screen, text);
            return ExitCode.Holds;
        }

        try
        {
            // CreateNew: a file that is already there is someone's work
            using var stream = new FileStream(settings.File, FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(stream);
            writer.Write(text);
        }
        catch (IOException fault)
        {
            screen.WriteLine(System.IO.File.Exists(settings.File)
                ? $"{settings.File} is there already and is left as it is; name another file"
                : $"{settings.File} could not be written: {fault.Message}");
            return ExitCode.WrongInput;
        }
        catch (UnauthorizedAccessException)
        {
            screen.WriteLine($"{settings.File} could not be written: you may not write there");
            return ExitCode.WrongInput;
        }

        screen.WriteLine($"{settings.File} is written. Change what is wrong in it, then: ramwright check {settings.File}");
        return ExitCode.Holds;
    }
}
