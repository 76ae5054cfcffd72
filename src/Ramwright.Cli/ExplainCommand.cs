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
        if (PressLoad.Open(settings, screen) is not var (_, check, units))
            return ExitCode.WrongInput;
        Rung? rung = settings.Rung is null ? check.Ladder.Governing : Find(check.Ladder, settings.Rung);
        if (rung is null && OfPart(check.Ladder, settings.Rung!) is { Count: > 0 } rungs)
        {
            if (settings.Json)
                return screen.Refuse(true, $"{settings.Rung} is a part with {rungs.Count} rungs", string.Join(", ", rungs.Select(r => r.Id)));
            screen.Paragraph($"{settings.Rung} is a part with {rungs.Count} rungs, the lowest first; ask for one of them:");
            foreach (Rung one in rungs)
                screen.Write(new Lines(new Cell(2, one.Id, 34), new Cell(37, $"{one.Brief} at {Force.Text(one.GivesAt, units)}")));
            return ExitCode.WrongInput;
        }

        if (rung is null)
        {
            string nearest = NearestWord.Ranked(settings.Rung!, check.Ladder.Rungs.Select(r => r.Id), 1)[0];
            return screen.Refuse(settings.Json, $"no rung is called \"{settings.Rung}\"; nearest: {nearest}",
                "This press has: " + string.Join(", ", check.Ladder.Rungs.Select(r => r.Id)));
        }

        var working = new Working();
        rung.Work(working);
        if (settings.Json)
            JsonOut.Write(screen, ExplainJson.Text(rung, working));
        else
            ExplainView.Show(check, rung, working, units, screen);
        return ExitCode.Holds;
    }

    /// <summary>The rungs of a part, or of all parts whose name holds the word.</summary>
    private static List<Rung> OfPart(Ladder ladder, string word) =>
        [.. ladder.Rungs.Where(r => r.Part.Replace('-', ' ').Contains(word.Replace('-', ' '), StringComparison.OrdinalIgnoreCase))];

    private static Rung? Find(Ladder ladder, string id) =>
        ladder.Rungs.FirstOrDefault(r => r.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
