using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The ladder: every rung with the force it gives at and is safe to, the wanted force and the pump's most as lines across.</summary>
internal static class LadderTable
{
    /// <summary>In short, rungs safe to more than this many times the greatest force in question are only counted.</summary>
    private const double FarAway = 1.25;

    /// <summary>In short, no fewer and no more rungs than these are shown.</summary>
    private const int Fewest = 4, Most = 7;

    private const int ByWide = 4, LineWide = 24;

    private const string MostPossible = "── most possible ─";

    private static readonly Style Bold = new(decoration: Decoration.Bold), Dim = new(decoration: Decoration.Dim);

    public static void Show(PressCheck check, UnitSystem units, bool all, IAnsiConsole screen)
    {
        screen.Heading("Ladder", $"in {Readout.UnitFor(Dimension.Force, units)}, the lowest rung first");
        IReadOnlyList<Rung> rungs = check.Ladder.Rungs;
        int shown = all ? rungs.Count : InShort(check);
        int safeWide = 4, givesWide = 5, name = MostPossible.Length, loadWide = 4, widest = LineWide;
        for (int i = 0; i < shown; i++)
        {
            safeWide = Math.Max(safeWide, Kept(rungs[i].SafeTo, units).Length);
            givesWide = Math.Max(givesWide, Kept(rungs[i].GivesAt, units).Length);
            name = Math.Max(name, rungs[i].Id.Length);
            loadWide = Math.Max(loadWide, Load(rungs[i].Load).Length);
            widest = Math.Max(widest, rungs[i].Brief.Length);
        }

        int givesAt = safeWide + 1, byAt = givesAt + givesWide + 1, nameAt = byAt + ByWide + 1, briefAt = nameAt + name + 1;
        int brief = Math.Clamp(screen.Profile.Width - briefAt - 1 - loadWide, 12, widest);
        Write("safe", "gives", "by", "rung", "how it gives", "load", Dim, Dim);

        (double Force, string Name) wanted = (check.Rig.Wanted, "wanted"), most = (check.Power.MostPossibleForce, "most possible");
        (double Force, string Name)[] lines = wanted.Force <= most.Force ? [wanted, most] : [most, wanted];
        int next = 0, counted = 0;
        Rung? lone = null;
        for (int i = 0; i < rungs.Count; i++)
        {
            while (next < lines.Length && rungs[i].SafeTo >= lines[next].Force * (1 - 1e-9))
            {
                Counted("below this");
                Line(lines[next++]);
            }

            if (i < shown)
                Row(rungs[i]);
            else
                (counted, lone) = (counted + 1, rungs[i]);
        }

        Counted(next < lines.Length ? "below this" : "above");
        while (next < lines.Length)
            Line(lines[next++]);
        screen.Paragraph(all
            ? "Safe to, gives at, and the factor between; load: work aside or to the front, or a sideways push, pushed to the front (push fr.); the centred load where nothing stands."
            : "Safe to, gives at, the factor between; load: where the work stands, or a push.", margin: 1);

        void Counted(string where)
        {
            // one alone takes no more room than its count
            if (counted == 1)
                Row(lone!);
            else if (counted > 1)
                screen.Paragraph($"{counted} more rungs {where}: --all shows them", margin: nameAt, Dim);
            counted = 0;
        }

        void Row(Rung rung) => Write(
            Kept(rung.SafeTo, units), Kept(rung.GivesAt, units), rung.Factor?.ToString("0.00") ?? "-", rung.Id, rung.Brief, Load(rung.Load));

        void Line((double Force, string Name) line) => Write(
            Kept(line.Force, units), "─────", "────", $"── {line.Name} ".PadRight(name, '─'), new string('─', Math.Min(LineWide, brief)), new string('─', loadWide), Bold);

        void Write(string safe, string gives, string by, string id, string how, string load, Style? loud = null, Style? rest = null) => screen.Write(new Lines(
            new Cell(0, safe, safeWide, loud, Right: true), new Cell(givesAt, gives, givesWide, rest, Right: true), new Cell(byAt, by, ByWide, rest, Right: true),
            new Cell(nameAt, id, name, loud), new Cell(briefAt, how, brief, rest), new Cell(briefAt + brief + 1, load, loadWide, rest)));
    }

    /// <summary>How many rungs a first look needs.</summary>
    private static int InShort(PressCheck check)
    {
        double far = FarAway * Math.Max(check.Rig.Wanted, check.Power.MostPossibleForce);
        return Math.Min(check.Ladder.Rungs.Count, Math.Clamp(check.Ladder.Rungs.Count(r => r.SafeTo <= far), Fewest, Most));
    }

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
