using Ramwright.Files;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>Everything that is wrong with a file, for a person or for a script.</summary>
internal static class FaultView
{
    public static void Show(IReadOnlyList<PlacedFault> faults, bool json, IAnsiConsole screen)
    {
        // plain text, unwrapped: the line and its caret must stay under each other
        JsonOut.Write(screen, json ? FaultJson.Text(faults) : FaultText.All(faults, screen.Profile.Width));
    }
}
