using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Files;

/// <summary>A press file with its whole answer, or with everything that is in the answer's way.</summary>
/// <param name="Press">The file and its stock.</param>
/// <param name="Check">The answer; null when there are faults.</param>
/// <param name="Faults">What is wrong with the file, or with the press it describes.</param>
public sealed record CheckedPress(PressOnDisk Press, PressCheck? Check, IReadOnlyList<PlacedFault> Faults)
{
    /// <summary>Checks a press. Never throws for what its file says.</summary>
    public static CheckedPress Of(PressOnDisk press)
    {
        ArgumentNullException.ThrowIfNull(press);
        if (press.Rig is not { } rig)
            return new CheckedPress(press, null, press.Faults);
        string file = press.Reading.FileName;
        try
        {
            return new CheckedPress(press, PressCheck.Of(rig), []);
        }
        catch (PressFaultsException unbuildable)
        {
            return new CheckedPress(press, null, press.Reading.Placed(unbuildable.Faults));
        }
        catch (ArgumentException refused)
        {
            string why = refused.Message.Split(" (Parameter", 2)[0];
            return new CheckedPress(press, null, [new PlacedFault(file, 0, 0, 0, "", $"this press cannot be reckoned: {why}", "values that go together", null, "")]);
        }
        catch (FrameMovesException moves)
        {
            return new CheckedPress(press, null,
                [new PlacedFault(file, 0, 0, 0, "frame", $"this frame would fold up: {moves.Message}", "a joint that holds: weld or bolt it", null, "")]);
        }
    }
}
