using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What the press will really do, and what gives first.</summary>
internal sealed class CheckCommand(IAnsiConsole screen) : Command<CheckSettings>
{
    public override int Execute(CommandContext context, CheckSettings settings, CancellationToken cancellationToken)
    {
        if (PressLoad.Open(settings, screen) is not var (press, check, units))
            return ExitCode.WrongInput;
        if (settings.Guesses)
            return Guessed(press, check, settings, units);
        if (settings.Json)
            JsonOut.Write(screen, CheckJson.Text(check));
        else
            CheckView.Show(check, units, settings.File, settings.All, () => Guesses.Of(press.Reading.Press!, press.Shelf, check, press.Joints), screen);
        return Code(check);
    }

    private int Guessed(PressOnDisk press, PressCheck check, CheckSettings settings, UnitSystem units)
    {
        IReadOnlyList<Guess> guesses = Guesses.Of(press.Reading.Press!, press.Shelf, check, press.Joints);
        if (settings.Json)
            JsonOut.Write(screen, GuessJson.Text(check, guesses));
        else
            GuessView.Show(check, guesses, units, screen);
        return Code(check);
    }

    private static int Code(PressCheck check) => check.Verdict != Verdict.DoesNotHold && check.MeetsWanted ? ExitCode.Holds : ExitCode.DoesNotHold;
}
