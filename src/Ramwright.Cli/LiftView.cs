using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>What to change, on a terminal: one numbered way after another, each key old and new.</summary>
internal static class LiftView
{
    public static void Show(Lift lift, UnitSystem units, string file, IAnsiConsole screen)
    {
        PressCheck before = lift.Before;
        screen.Heading("What to change", " " + before.Rig.Name);
        screen.WriteLine();
        screen.Loud(Headline.Wanted(before, units));
        screen.Loud(Headline.MostPossible(before, units));
        if (lift.IsEnough)
        {
            screen.Paragraph("Nothing has to change.");
            return;
        }

        screen.Paragraph(Headline.Weakest(before, units));
        screen.WriteLine();
        if (lift.Ways.Count == 0)
        {
            screen.Paragraph($"No way to enough was found among {lift.Looked} presses that are up to six changes away. The nearest:");
            screen.WriteLine();
            if (lift.Nearest is { } nearest)
                Way(nearest, 1, units, screen);
        }

        for (int i = 0; i < lift.Ways.Count; i++)
            Way(lift.Ways[i], i + 1, units, screen);
        screen.Paragraph(
            $"{lift.Looked} changed presses were checked in full. {Readout.UnitFor(Dimension.Mass, units)}: the steel that comes on, from centre line to centre line.");
        screen.Line($"Write the change into the file, then: ramwright check {file}");
        screen.Bullet("!", "A press that was built before is not lifted by a new file: prove it again before use.");
    }

    private static void Way(LiftWay way, int number, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading($"{number,2}.", LiftWords.Asks(way, units));
        foreach (PressEdit edit in way.Edits)
            screen.Paragraph($"{edit.Path}: {(edit.Old.Length == 0 ? "none" : edit.Old)} → {edit.New ?? "none"}", margin: 4);

        screen.Paragraph($"then safe to {Force.Text(way.Check.Ladder.SafeRating, units)}, lowest rung {way.Check.Ladder.Governing.Id}; {LiftWords.MostPossible(way, units)}", margin: 4);
        if (way.HotSpots.Count > 0)
        {
            (string rung, double safe) = way.HotSpots.MinBy(h => h.SafeTo);
            screen.Paragraph($"A joint with a hot spot is changed: {rung} is taken to be safe to {Force.Text(safe, units)}, as far from plain stress as before. Solve the joints again: ramwright solid FILE --keep-joints.", margin: 4);
        }

        screen.WriteLine();
    }
}
