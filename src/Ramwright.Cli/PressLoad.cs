using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>From a file name to a checked press, or to faults on the screen.</summary>
internal static class PressLoad
{
    /// <summary>Reads and checks a press; prints every fault and gives null when there are any.</summary>
    public static (PressOnDisk Press, PressCheck Check, UnitSystem Units)? Open(PressSettings settings, IAnsiConsole screen)
    {
        CheckedPress press = CheckedPress.Of(PressOnDisk.Open(settings.File));
        if (press.Check is { } check)
            return (press.Press, check, settings.UnitsOf(press.Press));
        FaultView.Show(press.Faults, settings.Json, screen);
        return null;
    }
}
