using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The ladder: every rung with the force it gives at and is safe to, the wanted force and the pump's most as lines across.</summary>
internal static class LadderTable
{
    /// <summary>Rungs safe to more than this many times the greatest force in question are left out.</summary>
    private const double FarAway = 4;

    public static void Show(PressCheck check, UnitSystem units, bool all, IAnsiConsole screen)
    {
        screen.MarkupLineInterpolated($"[bold]Ladder[/] in {Readout.UnitFor(Dimension.Force, units)}, the lowest rung first");
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        table.AddColumn(Column("safe", right: true));
        table.AddColumn(Column("gives", right: true));
        table.AddColumn(Column("by", right: true));
        table.AddColumn(Column("rung", right: false));
        table.AddColumn(Column("how it gives", right: false));
        table.AddColumn(Column("load", right: false));
        int name = check.Ladder.Rungs.Where(r => all || r.SafeTo <= Far(check)).Max(r => r.Id.Length);

        var lines = new List<(double Force, string Name)>
        {
            (check.Rig.Wanted, "wanted"),
            (check.Power.MostPossibleForce, "most possible"),
        };
        lines.Sort((a, b) => a.Force.CompareTo(b.Force));
        double ends = all ? double.PositiveInfinity : Far(check);
        int next = 0, beyond = 0;
        foreach (Rung rung in check.Ladder.Rungs)
        {
            while (next < lines.Count && rung.SafeTo >= lines[next].Force * (1 - 1e-9))
                Line(table, lines[next++], name, units);
            if (rung.SafeTo > ends)
            {
                beyond++;
                continue;
            }

            table.AddRow(
                new Text(Kept(rung.SafeTo, units)),
                new Text(Kept(rung.GivesAt, units)),
                new Text(rung.Factor?.ToString("0.00") ?? "-"),
                new Text(rung.Id),
                new Text(rung.Brief),
                new Text(Load(rung.Load)));
        }

        while (next < lines.Count)
            Line(table, lines[next++], name, units);
        screen.Write(table);
        screen.WriteLine(" safe to, gives at, and the factor between; load: work aside or to the front,");
        screen.WriteLine(" or a sideways push; the centred load where nothing stands.");
        if (beyond > 0)
            screen.WriteLine($" {beyond} more rungs are safe to over {Kept(ends, units)}; --all shows them.");
    }

    private static double Far(PressCheck check) => FarAway * Math.Max(check.Rig.Wanted, check.Power.MostPossibleForce);

    /// <summary>A load case in one word.</summary>
    private static string Load(string load) => load switch
    {
        "off to one side" => "aside",
        "off to the front" => "front",
        "side push" => "push",
        "side push to the front" => "push fr.",
        "own weight across" => "weight",
        _ => load,
    };

    /// <summary>One unit for the whole ladder, whatever the size.</summary>
    private static string Kept(double newtons, UnitSystem units) =>
        Readout.Number(Readout.UnitFor(Dimension.Force, units).FromSi(newtons), 3);

    private static void Line(Table table, (double Force, string Name) line, int name, UnitSystem units) =>
        table.AddRow(
            new Text(Kept(line.Force, units), new Style(decoration: Decoration.Bold)),
            new Text("─────"), new Text("────"), new Text($"── {line.Name} ".PadRight(name, '─'), new Style(decoration: Decoration.Bold)),
            new Text(new string('─', 24)), new Text("─────"));

    private static TableColumn Column(string title, bool right)
    {
        var column = new TableColumn(new Text(title, new Style(decoration: Decoration.Dim))) { Padding = new Padding(0, 0, 1, 0) };
        column.Alignment = right ? Justify.Right : Justify.Left;
        column.NoWrap = right;
        return column;
    }
}
