using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The ladder: every rung with the force it gives at and is safe to, the wanted force and the pump's most as lines across.</summary>
internal static class LadderTable
{
    /// <summary>Rungs safe to more than this many times the greatest force in question are left out.</summary>
    private const double FarAway = 4;

    private const int ByWide = 4;

    private static readonly Style Bold = new(decoration: Decoration.Bold), Dim = new(decoration: Decoration.Dim);

    public static void Show(PressCheck check, UnitSystem units, bool all, IAnsiConsole screen)
    {
        screen.Heading("Ladder", $"in {Readout.UnitFor(Dimension.Force, units)}, the lowest rung first");
        double ends = all ? double.PositiveInfinity : Far(check);
        int safeWide = 4, givesWide = 5, name = 0, loadWide = 4;
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (rung.SafeTo > ends)
                continue;
            safeWide = Math.Max(safeWide, Kept(rung.SafeTo, units).Length);
            givesWide = Math.Max(givesWide, Kept(rung.GivesAt, units).Length);
            name = Math.Max(name, rung.Id.Length);
            loadWide = Math.Max(loadWide, Load(rung.Load).Length);
        }

        int givesAt = safeWide + 1, byAt = givesAt + givesWide + 1, nameAt = byAt + ByWide + 1, briefAt = nameAt + name + 1;
        int brief = Math.Max(screen.Profile.Width - briefAt - 1 - loadWide, 12);
        Write("safe", "gives", "by", "rung", "how it gives", "load", Dim, Dim);

        (double Force, string Name) wanted = (check.Rig.Wanted, "wanted"), most = (check.Power.MostPossibleForce, "most possible");
        (double Force, string Name)[] lines = wanted.Force <= most.Force ? [wanted, most] : [most, wanted];
        int next = 0, beyond = 0;
        foreach (Rung rung in check.Ladder.Rungs)
        {
            while (next < lines.Length && rung.SafeTo >= lines[next].Force * (1 - 1e-9))
                Line(lines[next++]);
            if (rung.SafeTo > ends)
            {
                beyond++;
                continue;
            }

            Write(Kept(rung.SafeTo, units), Kept(rung.GivesAt, units), rung.Factor?.ToString("0.00") ?? "-", rung.Id, rung.Brief, Load(rung.Load));
        }

        while (next < lines.Length)
            Line(lines[next++]);
        screen.WriteLine(" safe to, gives at, and the factor between; load: work aside or to the front,");
        screen.WriteLine(" or a sideways push; the centred load where nothing stands.");
        if (beyond > 0)
            screen.WriteLine($" {beyond} more rungs are safe to over {Kept(ends, units)}; --all shows them.");

        void Line((double Force, string Name) line) => Write(
            Kept(line.Force, units), "─────", "────", $"── {line.Name} ".PadRight(name, '─'), new string('─', Math.Min(24, brief)), new string('─', loadWide), Bold);

        void Write(string safe, string gives, string by, string id, string how, string load, Style? loud = null, Style? rest = null) => screen.Write(new Lines(
            new Cell(0, safe, safeWide, loud, Right: true), new Cell(givesAt, gives, givesWide, rest, Right: true), new Cell(byAt, by, ByWide, rest, Right: true),
            new Cell(nameAt, id, name, loud), new Cell(briefAt, how, brief, rest), new Cell(briefAt + brief + 1, load, loadWide, rest)));
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
}
