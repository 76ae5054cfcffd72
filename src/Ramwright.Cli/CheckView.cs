using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>
/// The answer on a terminal, 80 columns wide: verdict, three forces, what gives first and what to do about it, ladder, speed and give,
/// assumptions, cautions. In short it fits one screen and counts what it leaves out.
/// </summary>
internal static class CheckView
{
    // which assumptions the answer hangs on is worked out only where not all of them are shown
    public static void Show(PressCheck check, UnitSystem units, string file, bool all, Func<IReadOnlyList<Guess>> guesses, IAnsiConsole screen)
    {
        screen.Heading(check.Rig.Name);
        screen.WriteLine();
        screen.Loud(Headline.Wanted(check, units));
        screen.Loud(Headline.MostPossible(check, units));
        screen.WriteLine();
        Forces(check, units, screen);
        screen.WriteLine();
        screen.Paragraph(Headline.Weakest(check, units));
        ToDo(check, units, file, screen);
        screen.WriteLine();
        LadderTable.Show(check, units, all, screen);
        screen.WriteLine();
        if (all)
            CheckFacts.Show(check, units, screen);
        else
            CheckFacts.Brief(check, units, screen);
        screen.WriteLine();
        if (all)
            AssumedView.Show(check.Assumed, units, screen);
        else
            AssumedView.Brief(check, guesses(), units, screen);
        Cautions(check, units, all, screen);
        if (!all)
            screen.Line($"All of it: ramwright check {file} --all");
        screen.Line($"Working of any rung: ramwright explain {file} {check.Ladder.Governing.Id}");
    }

    private static void Forces(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.Fact("wanted", Force.Text(check.Rig.Wanted, units), "what you ask of it");
        screen.Fact("safe to", Force.Text(check.Ladder.SafeRating, units), $"lowest rung: {check.Ladder.Governing.Id}");
        screen.Fact("true force", Force.Text(check.Power.TrueForce, units),
            $"at {Readout.Text(check.Power.TruePressure, Dimension.Pressure, units)}; {check.Power.TrueForceLimitedBy}");
        screen.Fact("most possible", Force.Text(check.Power.MostPossibleForce, units), check.Power.MostPossibleLimitedBy);
        if (check.Power.Label is { } label)
            screen.Fact("sold as", Force.Text(label.Stated, units), $"at its rated pressure: {Force.Text(label.AtRatedPressure, units)}");
    }

    private static void ToDo(PressCheck check, UnitSystem units, string file, IAnsiConsole screen)
    {
        string remedy = Headline.ToDo(check, units);
        if (remedy.Length > 0)
            screen.Paragraph($"To do: {remedy}");
        screen.Line(remedy.Length > 0 ? $"Every change tried: ramwright lift {file}" : $"Before first use: ramwright prove {file} --plan");
    }

    private static void Cautions(PressCheck check, UnitSystem units, bool all, IAnsiConsole screen)
    {
        screen.Heading("Cautions");
        if (all)
        {
            foreach (string caution in check.Cautions(units))
                screen.Bullet("!", caution);
        }
        else
        {
            CautionsBrief.Show(check, units, screen);
        }

        screen.WriteLine();
    }
}
