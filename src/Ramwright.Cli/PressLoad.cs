using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Stock;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>From a file name to a checked press, or to faults on the screen.</summary>
internal static class PressLoad
{
    /// <summary>Reads and checks a press; prints every fault and gives null when there are any.</summary>
    public static PressCheck? Check(PressSettings settings, IAnsiConsole screen)
    {
        PressReading reading = PressFile.Load(settings.File);
        if (reading.Faults.Count > 0 || reading.Press is null)
        {
            FaultView.Show(reading.Faults, settings.Json, screen);
            return null;
        }

        try
        {
            return PressCheck.Of(Resolver.Resolve(reading.Press, reading.Shelf));
        }
        catch (FrameMovesException moves)
        {
            screen.WriteLine($"{settings.File}  the frame would not stand: {moves.Message}");
            return null;
        }
    }
}
