using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
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
        PressOnDisk press = PressOnDisk.Open(settings.File);
        if (press.Rig is not { } rig)
        {
            FaultView.Show(press.Faults, settings.Json, screen);
            return null;
        }

        try
        {
            return (press, PressCheck.Of(rig));
        }
        catch (PressFaultsException unbuildable)
        {
            FaultView.Show(press.Reading.Placed(unbuildable.Faults), settings.Json, screen);
            return null;
        }
        catch (ArgumentException refused)
        {
            string why = refused.Message.Split(" (Parameter", 2)[0];
            FaultView.Show([new PlacedFault(settings.File, 0, 0, 0, "", $"this press cannot be reckoned: {why}", "values that go together", null, "")], settings.Json, screen);
            return null;
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
