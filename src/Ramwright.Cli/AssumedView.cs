using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>What the file does not say and is assumed: all of it, or what the answer hangs on and how much more there is.</summary>
internal static class AssumedView
{
    private const int MostInBrief = 4;

    public static void Show(IReadOnlyList<Assumed> assumed, UnitSystem units, IAnsiConsole screen)
    {
        if (assumed.Count == 0)
            return;
        screen.Heading("Assumed", $"{Things(assumed.Count)} the file does not say; write the key to say otherwise");
        foreach (Assumed a in assumed)
            screen.Paragraph(Line(a, units), margin: 2);
        screen.Paragraph("Which of them matter, tried one by one: the same command with --guesses.", 2);
        screen.WriteLine();
    }

    /// <summary>Those that move the answer first, then words said of the part that gives first.</summary>
    public static void Brief(PressCheck check, IReadOnlyList<Guess> guesses, UnitSystem units, IAnsiConsole screen)
    {
        IReadOnlyList<Assumed> assumed = check.Assumed;
        if (assumed.Count == 0)
            return;
        Guess[] matter = [.. guesses.Where(g => g.Moves >= Guesses.Little).Take(MostInBrief)];
        string owner = Owner(check.Ladder.Governing.Group);
        AssumedWord[] words = [.. assumed.OfType<AssumedWord>()
            .Where(w => w.What.StartsWith(owner, StringComparison.Ordinal)).Take(MostInBrief - matter.Length)];
        if (matter.Length + words.Length == 0)
        {
            screen.Heading("Assumed", $"{Things(assumed.Count)} the file does not say; none moves the answer much (--all)");
            screen.WriteLine();
            return;
        }

        screen.Heading("Assumed", $"{Things(assumed.Count)} the file does not say; the answer hangs most on");
        foreach (Guess guess in matter)
            screen.Paragraph($"{Line(guess.Assumed, units)}; a fifth off moves the answer by {guess.Moves * 100:0} %", margin: 2);
        foreach (AssumedWord word in words)
            screen.Paragraph(Line(word, units), margin: 2);
        int more = assumed.Count - matter.Length - words.Length;
        if (more > 0)
            screen.Paragraph($"{more} more: --all lists them, --guesses tries each.", 2);
        screen.WriteLine();
    }

    private static string Things(int count) => count == 1 ? "1 thing" : $"{count} things";

    private static string Line(Assumed a, UnitSystem units) => $"{a.What}: {a.Value(units)}  ({a.Why.Text(units)})";

    /// <summary>The record of the file whose keys say most of a kind of rung.</summary>
    private static string Owner(RungGroup group) => group switch
    {
        RungGroup.Power => "pump.",
        RungGroup.Lines => "lines.",
        RungGroup.Cylinder => "cylinder.",
        _ => "frame.",
    };
}
