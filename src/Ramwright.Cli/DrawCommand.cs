using Ramwright.Files;
using Ramwright.Files.Drawings;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>Front and side of the press as a dimensioned drawing, or as it bends.</summary>
internal sealed class DrawCommand(IAnsiConsole screen) : Command<DrawSettings>
{
    public override int Execute(CommandContext context, DrawSettings settings, CancellationToken cancellationToken)
    {
        double? at = null;
        if (settings.At is { } said)
        {
            if (!QuantityText.TryRead(said, Dimension.Force, out Quantity force, out ReadingFault? fault))
                return screen.Refuse(settings.Json, $"--at {said}: {fault.Found}", fault.Wanted);

            at = force.Si;
        }

        if (PressLoad.Open(settings, screen) is not var (_, check, units))
            return ExitCode.WrongInput;
        if (at is <= 0)
            return screen.Refuse(settings.Json, $"--at {settings.At}: a force above zero is wanted");

        string drawing = SvgSheet.Write(settings.Bent
            ? BentDrawing.Of(check, at ?? check.Rig.Wanted, units: units)
            : PressDrawing.Of(check, units, at));
        if (settings.Out is null)
        {
            JsonOut.Write(screen, settings.Json ? DrawingJson.Text(check.Rig.Name, null, drawing) : drawing);
            return ExitCode.Holds;
        }

        try
        {
            File.WriteAllText(settings.Out, drawing);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return screen.Refuse(settings.Json, Refusal.NotWritten(settings.Out, fault));
        }

        if (settings.Json)
            JsonOut.Write(screen, DrawingJson.Text(check.Rig.Name, settings.Out, null));
        else
            screen.Paragraph($"{settings.Out} is drawn. Print it at full size on A4.");
        return ExitCode.Holds;
    }
}
