using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What to change so that the press carries what is wanted.</summary>
internal sealed class LiftCommand(IAnsiConsole screen) : Command<LiftSettings>
{
    public override int Execute(CommandContext context, LiftSettings settings, CancellationToken cancellationToken)
    {
        if (PressLoad.Open(settings, screen) is not ({ Reading.Press: { } press } open, _, var units))
            return ExitCode.WrongInput;
        if (settings.Newtons is { } newtons)
            press = press with { Wanted = newtons };
        Lift lift = Search(press, open, settings);
        if (settings.Json)
            JsonOut.Write(screen, LiftJson.Text(lift));
        else
            LiftView.Show(lift, units, settings.File, screen);
        return lift.IsEnough || lift.Ways.Count > 0 ? ExitCode.Holds : ExitCode.DoesNotHold;
    }

    private Lift Search(Press press, PressOnDisk open, LiftSettings settings)
    {
        if (settings.Json || !screen.Profile.Capabilities.Interactive)
            return Lift.Of(press, open.Shelf, open.Reading.Units, null, open.Joints);
        Lift? lift = null;
        screen.Status().Start("trying changes...", status =>
            lift = Lift.Of(press, open.Shelf, open.Reading.Units, looked => status.Status($"trying changes... {looked} presses checked"), open.Joints));
        return lift!;
    }
}
