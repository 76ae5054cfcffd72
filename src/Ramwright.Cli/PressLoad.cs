using Ramwright.Files;
using Ramwright.Ladders;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>From a file name to a checked press, or to faults on the screen.</summary>
internal static class PressLoad
{
    /// <summary>Reads and checks a press; prints every fault and gives null when there are any.</summary>
    public static PressCheck? Check(PressSettings settings, IAnsiConsole screen) => Open(settings, screen)?.Check;

    /// <summary>The same, with the file and its stock beside it.</summary>
    public static (PressOnDisk Press, PressCheck Check)? Open(PressSettings settings, IAnsiConsole screen)
    {
        CheckedPress press = CheckedPress.Of(PressOnDisk.Open(settings.File));
        if (press.Check is { } check)
            return (press.Press, check);
        FaultView.Show(press.Faults, settings.Json, screen);
        return null;
    }
}
