using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The ladder: every rung with the force it gives at and is safe to, the wanted force and the pump's most as lines across.</summary>
internal static class LadderTable
{
    public static void Show(PressCheck check, UnitSystem units, IAnsiConsole screen)
    {
        screen.MarkupLine("[bold]Ladder[/], the lowest rung first");
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        table.AddColumn(Column("safe to", right: true));
        table.AddColumn(Column("gives at", right: true));
        table.AddColumn(Column("factor", right: true));
        table.AddColumn(Column("rung", right: false));
        table.AddColumn(Column("how it gives", right: false));

        var lines = new List<(double Force, string Name)>
        {
            (check.Rig.Wanted, "wanted"),
            (check.Power.MostPossibleForce, "most possible"),
        };
        lines.Sort((a, b) => a.Force.CompareTo(b.Force));
        int next = 0;
        foreach (Rung rung in check.Ladder.Rungs)
        {
            while (next < lines.Count && rung.SafeTo >= lines[next].Force * (1 - 1e-9))
                Line(table, lines[next++], units);
            table.AddRow(
                new Text(Readout.Text(rung.SafeTo, Dimension.Force, units)),
                new Text(Readout.Text(rung.GivesAt, Dimension.Force, units)),
                new Text(rung.Factor.ToString("0.00")),
                new Text(rung.Id),
                new Text(rung.Mode));
        }

        while (next < lines.Count)
            Line(table, lines[next++], units);
        screen.Write(table);
    }

    private static void Line(Table table, (double Force, string Name) line, UnitSystem units) =>
        table.AddRow(
            new Text(Readout.Text(line.Force, Dimension.Force, units), new Style(decoration: Decoration.Bold)),
            new Text("────────"), new Text("──────"), new Text($"──── {line.Name} ".PadRight(24, '─'), new Style(decoration: Decoration.Bold)),
            new Text(new string('─', 24)));

    private static TableColumn Column(string title, bool right)
    {
        var column = new TableColumn(new Text(title, new Style(decoration: Decoration.Dim))) { Padding = new Padding(1, 0, 1, 0) };
        column.Alignment = right ? Justify.Right : Justify.Left;
        column.NoWrap = right;
        return column;
    }
}
