using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The answer on a terminal, 80 columns wide: verdict, weakest part, three forces, speeds, ladder, assumptions, cautions.</summary>
internal static class CheckView
{
    public static void Show(PressCheck check, UnitSystem units, string file, bool all, IAnsiConsole screen)
    {
        screen.Heading(check.Rig.Name);
        screen.WriteLine();
        screen.Loud(Headline.Wanted(check, units));
        screen.Loud(Headline.MostPossible(check, units));
        screen.WriteLine();
        screen.Paragraph(Headline.Weakest(check, units));
        screen.WriteLine();
        Forces(check, units, screen);
        screen.WriteLine();
        Speeds(check, units, screen);
        screen.WriteLine();
        Stiffness(check, units, screen);
        screen.WriteLine();
        PowerFails(check, units, screen);
        screen.WriteLine();
        LadderTable.Show(check, units, all, screen);
        screen.WriteLine();
        Assumptions(check.Assumed, units, screen);
        Cautions(check, units, screen);
        screen.WriteLine($"Working of any rung: ramwright explain {file} {check.Ladder.Governing.Id}");
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

    private static void Speeds(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Speed");
        PowerReport power = check.Power;
        screen.Fact("approach", Readout.Text(power.ApproachSpeed, Dimension.Speed, units), "no load");
        foreach (SpeedAtLoad at in Quarters(power.Speeds))
            screen.Fact($"at {Readout.Text(at.Load, Dimension.Force, units)}", Readout.Text(at.Speed < 1e-9 ? 0 : at.Speed, Dimension.Speed, units), "");
        screen.Fact("return", power.ReturnSpeed is { } back ? Readout.Text(back, Dimension.Speed, units) : "not known",
            power.Times.ReturnBy switch { ReturnBy.Oil => "by oil", ReturnBy.Spring => "by its spring", _ => "by weight or load" });
        screen.Fact("full stroke", Readout.Text(power.Times.FullStroke, Dimension.Time, units),
            $"{Readout.Text(check.Rig.Cylinder.Stroke, Dimension.Length, units)}, no load");
        foreach ((string what, string value, string remark) in PowerFacts.Of(check, units))
            screen.Fact(what, value, remark);
    }

    private static void Stiffness(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Give");
        screen.Fact("daylight grows", Readout.Text(check.DaylightGrowth, Dimension.Length, units),
            $"at the wanted force; {Readout.Text(check.Response.Stiffness, Dimension.Stiffness, units)}");
        screen.Fact("dies open", Readout.Text(check.Opening, Dimension.Slope, units),
            $"at the wanted force, {check.Response.Solutions[check.WorstOpening.Case].Case.Name}");
        foreach ((string what, string value, string remark) in LastingFacts.Of(check, units))
            screen.Fact(what, value, remark);
    }

    private static void PowerFails(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("When it fails with the ram up");
        foreach (PowerFailure failure in check.PowerFailing)
        {
            string missing = failure.Missing.Count == 0 ? "" : " Missing: " + string.Join("; ", failure.Missing) + ".";
            screen.Bullet(failure.Fate == RamFate.Holds ? "-" : "!", $"{failure.Lost}: {failure.What.Text(units)}.{missing}");
        }
    }

    private static void Assumptions(IReadOnlyList<Assumed> assumed, UnitSystem units, IAnsiConsole screen)
    {
        if (assumed.Count == 0)
            return;
        screen.Heading("Assumed", $"{assumed.Count} things the file does not say; write the key to say otherwise");
        foreach (Assumed a in assumed)
            screen.Paragraph($"{a.What}: {a.Value(units)}  ({a.Why})", margin: 2);
        screen.Paragraph("Which of them matter, tried one by one: the same command with --guesses.", 2);
        screen.WriteLine();
    }

    private static void Cautions(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Cautions");
        foreach (string caution in check.Cautions(units))
            screen.Bullet("!", caution);
        screen.WriteLine();
    }

    /// <summary>Up to four loads out of the list, evenly spread, the greatest last.</summary>
    private static IEnumerable<SpeedAtLoad> Quarters(IReadOnlyList<SpeedAtLoad> speeds)
    {
        int last = speeds.Count - 1;
        for (int i = 1; i <= 4; i++)
        {
            int at = last * i / 4;
            if (at > 0)
                yield return speeds[at];
        }
    }

    internal static Table Bare(params string[] columns)
    {
        var table = new Table { Border = TableBorder.None, ShowHeaders = false };
        foreach (string column in columns)
            table.AddColumn(new TableColumn(column) { Padding = new Padding(1, 0, 1, 0) });
        return table;
    }
}
