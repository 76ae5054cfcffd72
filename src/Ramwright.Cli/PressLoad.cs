using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Ladders;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>From a file name to a checked press, or to faults on the screen.</summary>
internal static class PressLoad
{
    /// <summary>Reads and checks a press; prints every fault and gives null when there are any.</summary>
    public static PressCheck? Check(PressSettings settings, IAnsiConsole screen)
    {
        PressOnDisk press = PressOnDisk.Open(settings.File);
        if (press.Rig is not { } rig)
        {
            FaultView.Show(press.Faults, settings.Json, screen);
            return null;
        }

        try
        {
            return PressCheck.Of(rig);
        }
        catch (FrameMovesException moves)
        {
            FaultView.Show(
                [new PlacedFault(settings.File, 0, 0, 0, "frame", $"this frame would fold up: {moves.Message}", "a joint that holds: weld or bolt it", null, "")],
                settings.Json, screen);
            return null;
        }
    }
}
