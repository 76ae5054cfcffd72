using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>Prints JSON as it is: no wrapping at the screen's edge, no markup.</summary>
internal static class JsonOut
{
    public static void Write(IAnsiConsole screen, string json)
    {
        screen.Profile.Out.Writer.WriteLine(json);
        screen.Profile.Out.Writer.Flush();
    }
}
