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
        string[] titles = ["assumed", "value", "a fifth less", "a fifth more"];
        string[][] rows = [.. matter.Select(g => new[] { g.Assumed.What, g.Assumed.Value(units), Safe(g.Less, units), Safe(g.More, units) })];
        int[] wide = [.. titles.Select((title, i) => Math.Max(title.Length, rows.Max(r => r[i].Length)))];
        Row(titles, Dim);
        foreach (string[] row in rows)
            Row(row, Style.Plain);
        screen.WriteLine();
        screen.Paragraph($"Measure these first and write them down; where the safe force stays, it is the true force that moves. {guesses.Count - matter.Length} more assumed values hardly matter.");

        void Row(string[] cells, Style style) => screen.Write(new Lines(
            new Cell(0, cells[0], wide[0], style),
            new Cell(wide[0] + 1, cells[1], wide[1], style, Right: true),
            new Cell(wide[0] + wide[1] + 3, cells[2], wide[2], style, Right: true),
            new Cell(wide[0] + wide[1] + wide[2] + 5, cells[3], wide[3], style, Right: true)));
    }

    private static readonly Style Dim = new(decoration: Decoration.Dim);

    private static string Safe(double? force, UnitSystem units) => force is { } f ? Readout.Text(f, Dimension.Force, units) : "cannot be";
}
