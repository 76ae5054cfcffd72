using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>What to measure first: the assumptions that the answer hangs on.</summary>
internal static class GuessView
{
    public static void Show(PressCheck check, IReadOnlyList<Guess> guesses, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("What the answer hangs on", " " + check.Rig.Name);
        screen.WriteLine();
        Guess[] matter = [.. guesses.Where(g => g.Moves >= Guesses.Little)];
        string safe = Force.Text(check.Ladder.SafeRating, units);
        if (matter.Length == 0)
        {
            screen.Paragraph($"None of the {guesses.Count} values that are assumed moves the {safe} it is safe to, or its true force, by as much as 1 %, were it a fifth off.");
            return;
        }

        screen.Paragraph($"It is safe to {safe}, with what is assumed. Were one of these a fifth less or a fifth more, it would be safe to:");
        screen.WriteLine();
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        foreach ((string title, bool right) in new[] { ("assumed", false), ("value", true), ("a fifth less", true), ("a fifth more", true) })
            table.AddColumn(JobView.Column(title, right));
        foreach (Guess guess in matter)
            table.AddRow(new Text(guess.Assumed.What), new Text(guess.Assumed.Value(units)), new Text(Safe(guess.Less, units)), new Text(Safe(guess.More, units)));
        screen.Write(table);
        screen.WriteLine();
        screen.Paragraph($"Measure these first and write them down; where the safe force stays, it is the true force that moves. {guesses.Count - matter.Length} more assumed values hardly matter.");
    }

    private static string Safe(double? force, UnitSystem units) => force is { } f ? Readout.Text(f, Dimension.Force, units) : "cannot be";
}
