using Ramwright.Files;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>What cannot be done and what to write instead, for a person or for a script.</summary>
internal static class Refusal
{
    /// <summary>Says it.</summary>
    /// <returns>The exit code that goes with it.</returns>
    public static int Refuse(this IAnsiConsole screen, bool json, string found, string wanted = "")
    {
        if (json)
        {
            JsonOut.Write(screen, FaultJson.Text(found, wanted));
        }
        else
        {
            screen.Paragraph(found);
            if (wanted.Length > 0)
                screen.Paragraph(wanted);
        }

        return ExitCode.WrongInput;
    }
}
