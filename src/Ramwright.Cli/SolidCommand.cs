using Ramwright.Files;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Solids;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>The frame as solid steel: opening, stress at welds, the weakest place.</summary>
internal sealed class SolidCommand(IAnsiConsole screen) : Command<SolidSettings>
{
    /// <summary>Shortest and longest cell that is taken, m.</summary>
    private const double Least = 0.001, Most = 0.2;

    public override int Execute(CommandContext context, SolidSettings settings, CancellationToken cancellationToken)
    {
        double? cell = null;
        if (settings.Cell is { } said)
        {
            if (!QuantityText.TryRead(said, Dimension.Length, out Quantity length, out ReadingFault? fault))
                return Wrong($"--cell {said}: {fault.Found}; {fault.Wanted}");
            if (length.Si is < Least or > Most)
                return Wrong($"--cell {said}: from 1 mm to 200 mm");
            cell = length.Si;
        }

        (Vector From, Vector To)? line = null;
        if (settings.Line is { } along && (line = LineText.Read(along, out string why)) is null)
            return Wrong($"--line {along}: {why}");
        if (PressLoad.Open(settings, screen) is not var (_, check, units))
            return ExitCode.WrongInput;
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        ConsoleCancelEventHandler onBreak = (_, e) => (e.Cancel, _) = (true, stop.CancelAsync());
        Console.CancelKeyPress += onBreak;
        try
        {
            string joints = JointsFile.PathOf(settings.File);
            JointBook book = JointsFile.Read(joints, out _) ?? new JointBook();
            SolidCheck solid = Run(check.Rig, cell, settings, book, stop.Token);
            if (settings.Keep && solid.Springs is not null && JointsFile.Write(joints, book) is { } unwritten)
                return Wrong(unwritten);
            if (settings.Vtu is { } file && Write(file, solid) is { } wrong)
                return Wrong(wrong);
            if (settings.Json)
                JsonOut.Write(screen, SolidJson.Text(solid, check.Rig, line));
            else
                SolidView.Show(solid, check.Rig, units, settings.Vtu, settings.Keep ? joints : null, line, screen);
            return solid.Cases.Any(c => c.Weakest is { } weakest && weakest.GivesAt < check.Rig.Wanted) ? ExitCode.DoesNotHold : ExitCode.Holds;
        }
        catch (SolidFaultException fault)
        {
            return Wrong($"{settings.File}: {fault.Says.Text(units)}");
        }
        catch (OperationCanceledException)
        {
            return Wrong("stopped before it was solved; nothing was written");
        }
        finally
        {
            Console.CancelKeyPress -= onBreak;
        }
    }

    private int Wrong(string message)
    {
        screen.WriteLine(message);
        return ExitCode.WrongInput;
    }

    private SolidCheck Run(Rig rig, double? cell, SolidSettings settings, JointBook book, CancellationToken stop)
    {
        if (settings.Json || !screen.Profile.Capabilities.Interactive)
            return SolidCheck.Of(rig, cell, settings.All, null, book, settings.Tied, stop);
        SolidCheck? solid = null;
        screen.Progress().AutoClear(true).Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn()).Start(bar =>
        {
            ProgressTask task = bar.AddTask("cutting into cells", maxValue: 1);
            solid = SolidCheck.Of(rig, cell, settings.All, p => (task.Description, task.Value) = (p.Stage, p.Share), book, settings.Tied, stop);
        });
        return solid!;
    }

    private static string? Write(string file, SolidCheck solid)
    {
        try
        {
            WholeWrite.Replace(file, stream => SolidVtu.Write(solid, stream));
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return $"{file} could not be written: {fault.Message}";
        }
    }
}
