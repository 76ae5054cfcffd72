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
        screen.MarkupLineInterpolated($"[bold]{check.Rig.Name}[/]");
        screen.WriteLine();
        Paragraph(Headline.Wanted(check, units), bold: true, screen);
        Paragraph(Headline.MostPossible(check, units), bold: true, screen);
        screen.WriteLine();
        Paragraph(Headline.Weakest(check, units), bold: false, screen);
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

    internal static void Paragraph(string text, bool bold, IAnsiConsole screen)
    {
        screen.Write(new Text(text, bold ? new Style(decoration: Decoration.Bold) : Style.Plain));
        screen.WriteLine();
    }

    private static void Forces(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        Grid grid = TwoColumns();
        Row(grid, "wanted", Force.Text(check.Rig.Wanted, units), "what you ask of it");
        Row(grid, "safe to", Force.Text(check.Ladder.SafeRating, units), $"lowest rung: {check.Ladder.Governing.Id}");
        Row(grid, "true force", Force.Text(check.Power.TrueForce, units),
            $"at {Readout.Text(check.Power.TruePressure, Dimension.Pressure, units)}; {check.Power.TrueForceLimitedBy}");
        Row(grid, "most possible", Force.Text(check.Power.MostPossibleForce, units), check.Power.MostPossibleLimitedBy);
        if (check.Power.Label is { } label)
            Row(grid, "sold as", Force.Text(label.Stated, units), $"at its rated pressure: {Force.Text(label.AtRatedPressure, units)}");
        screen.Write(grid);
    }

    private static void Speeds(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.MarkupLine("[bold]Speed[/]");
        Grid grid = TwoColumns();
        PowerReport power = check.Power;
        Row(grid, "approach", Readout.Text(power.ApproachSpeed, Dimension.Speed, units), "no load");
        foreach (SpeedAtLoad at in Quarters(power.Speeds))
            Row(grid, $"at {Readout.Text(at.Load, Dimension.Force, units)}", Readout.Text(at.Speed < 1e-9 ? 0 : at.Speed, Dimension.Speed, units), "");
        Row(grid, "return", power.ReturnSpeed is { } back ? Readout.Text(back, Dimension.Speed, units) : "not known",
            power.Times.ReturnBy switch { ReturnBy.Oil => "by oil", ReturnBy.Spring => "by its spring", _ => "by weight or load" });
        Row(grid, "full stroke", Readout.Text(power.Times.FullStroke, Dimension.Time, units),
            $"{Readout.Text(check.Rig.Cylinder.Stroke, Dimension.Length, units)}, no load");
        foreach ((string what, string value, string remark) in PowerFacts.Of(check, units))
            Row(grid, what, value, remark);
        screen.Write(grid);
    }

    private static void Stiffness(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.MarkupLine("[bold]Give[/]");
        Grid grid = TwoColumns();
        Row(grid, "daylight grows", Readout.Text(check.DaylightGrowth, Dimension.Length, units),
            $"at the wanted force; {Readout.Text(check.Response.Stiffness, Dimension.Stiffness, units)}");
        Row(grid, "dies open", Readout.Text(check.Opening, Dimension.Slope, units),
            $"at the wanted force, {check.Response.Solutions[check.WorstOpening.Case].Case.Name}");
        foreach ((string what, string value, string remark) in LastingFacts.Of(check, units))
            Row(grid, what, value, remark);
        screen.Write(grid);
    }

    private static void PowerFails(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.MarkupLine("[bold]When it fails with the ram up[/]");
        foreach (PowerFailure failure in check.PowerFailing)
        {
            string missing = failure.Missing.Count == 0 ? "" : " Missing: " + string.Join("; ", failure.Missing) + ".";
            Bullet(failure.Fate == RamFate.Holds ? "-" : "!", $"{failure.Lost}: {failure.What.Text(units)}.{missing}", screen);
        }
    }

    private static void Assumptions(IReadOnlyList<Assumed> assumed, UnitSystem units, IAnsiConsole screen)
    {
        if (assumed.Count == 0)
            return;
        screen.MarkupLineInterpolated($"[bold]Assumed[/] {assumed.Count} things the file does not say; write the key to say otherwise");
        foreach (Assumed a in assumed)
        {
            var line = new Text($"{a.What}: {a.Value(units)}  ({a.Why})");
            screen.Write(new Padder(line, new Padding(2, 0, 0, 0)));
        }

        screen.WriteLine();
    }

    private static void Cautions(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.MarkupLine("[bold]Cautions[/]");
        foreach (string caution in check.Cautions(units))
            Bullet("!", caution, screen);
        screen.WriteLine();
    }

    /// <summary>A mark and a text that hangs beside it.</summary>
    internal static void Bullet(string mark, string text, IAnsiConsole screen)
    {
        var grid = new Grid();
        grid.AddColumn(new GridColumn { Width = 1, Padding = new Padding(2, 0, 1, 0) });
        grid.AddColumn(new GridColumn { Padding = new Padding(0, 0, 0, 0) });
        grid.AddRow(new Text(mark), new Text(text));
        screen.Write(grid);
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

    private static Grid TwoColumns()
    {
        var grid = new Grid();
        grid.AddColumn(new GridColumn { Width = 15, Padding = new Padding(2, 0, 1, 0) });
        grid.AddColumn(new GridColumn { Width = 18, NoWrap = true, Padding = new Padding(0, 0, 2, 0) });
        grid.AddColumn(new GridColumn { Padding = new Padding(0, 0, 0, 0) });
        return grid;
    }

    private static void Row(Grid grid, string what, string value, string remark) =>
        grid.AddRow(new Text(what), new Text(value, new Style(decoration: Decoration.Bold)), new Text(remark));
}
