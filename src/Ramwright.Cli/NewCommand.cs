using Ramwright.Files;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>Writes a starter for one kind of frame.</summary>
internal sealed class NewCommand(IAnsiConsole screen) : Command<NewSettings>
{
    public override int Execute(CommandContext context, NewSettings settings, CancellationToken cancellationToken)
    {
        if (!Starter.Kinds.Contains(settings.Frame))
            return screen.Refuse(settings.Json, $"no starter for a frame called \"{settings.Frame}\"; there are: {string.Join(", ", Starter.Kinds)}");

        string text = settings.Full ? Starter.Text(settings.Frame) : Starter.First(settings.Frame, UnitsOption.Read(settings.Units));
        if (settings.File is { } file)
        {
            if (!file.EndsWith(PressFile.Ending, StringComparison.OrdinalIgnoreCase))
                return screen.Refuse(settings.Json, $"a press file is called NAME{PressFile.Ending}, not {file}");
            if (NotWritten(file, text) is { } why)
                return screen.Refuse(settings.Json, why);
        }

        if (settings.Json)
            JsonOut.Write(screen, NewJson.Text(settings.Frame, settings.File, text));
        else if (settings.File is null)
            JsonOut.Write(screen, text);
        else
        {
            screen.Line($"{settings.File} is written. Put your own values in place of those in it, then: ramwright check {settings.File}");
            screen.Paragraph(Starter.NotYet);
        }

        return ExitCode.Holds;
    }

    private static string? NotWritten(string file, string text)
    {
        try
        {
            // CreateNew: a file that is already there is someone's work
            using var stream = new FileStream(file, FileMode.CreateNew, FileAccess.Write);
            using var writer = new StreamWriter(stream);
            writer.Write(text);
            return null;
        }
        catch (IOException fault)
        {
            return File.Exists(file)
                ? $"{file} is there already and is left as it is; name another file"
                : Refusal.NotWritten(file, fault);
        }
        catch (UnauthorizedAccessException fault)
        {
            return Refusal.NotWritten(file, fault);
        }
    }
}
