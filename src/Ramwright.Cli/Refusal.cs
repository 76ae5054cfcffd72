using Ramwright.Files;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>What cannot be done and what to write instead, for a person or for a script.</summary>
internal static class Refusal
{
    /// <summary>Why a file was not written, in plain words.</summary>
    /// <param name="file">As it was named.</param>
    /// <param name="fault">What the system said.</param>
    public static string NotWritten(string file, Exception fault) => $"{file} could not be written: " + fault switch
    {
        DirectoryNotFoundException => $"there is no folder {Path.GetDirectoryName(file)}; make it first",
        UnauthorizedAccessException when Directory.Exists(file) => "that is a folder; name a file",
        UnauthorizedAccessException => "you may not write there",
        _ => fault.Message,
    };

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
