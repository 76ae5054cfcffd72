using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Workings;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>The full working of one rung.</summary>
internal sealed class ExplainCommand(IAnsiConsole screen) : Command<ExplainSettings>
{
    public override int Execute(CommandContext context, ExplainSettings settings, CancellationToken cancellationToken)
    {
        PressCheck? check = PressLoad.Check(settings, screen);
        if (check is null)
            return ExitCode.WrongInput;
        Rung? rung = settings.Rung is null ? check.Ladder.Governing : Find(check.Ladder, settings.Rung);
        if (rung is null)
        {
            string nearest = NearestWord.Ranked(settings.Rung!, check.Ladder.Rungs.Select(r => r.Id), 1)[0];
            screen.WriteLine($"no rung is called \"{settings.Rung}\"; nearest: {nearest}");
            screen.WriteLine("This press has: " + string.Join(", ", check.Ladder.Rungs.Select(r => r.Id)));
            return ExitCode.WrongInput;
        }

        var working = new Working();
        rung.Work(working);
        if (settings.Json)
            JsonOut.Write(screen, ExplainJson.Text(rung, working));
        else
            ExplainView.Show(check, rung, working, settings.System, screen);
        return ExitCode.Holds;
    }

    private static Rung? Find(Ladder ladder, string id) =>
        ladder.Rungs.FirstOrDefault(r => r.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
