using Ramwright.Fabrication;
using Ramwright.Fabrication.Bars;
using Ramwright.Fabrication.Nesting;
using Ramwright.Fabrication.Plates;
using Ramwright.Files.Making;
using Ramwright.Geometry;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>What is cut from what there is: bars, sheets, and what to mind.</summary>
internal static class StockView
{
    public static void Show(MakeOf of, IAnsiConsole screen)
    {
        string Mm(double metres) => Readout.Text(metres, Dimension.Length, of.Units, 5);
        if (of.Bars.Groups.Count > 0)
            screen.Heading("Bars", $"saw cut {Mm(of.Rig.Cutting.SawKerf)}, {Mm(of.Rig.Cutting.RoughEnd)} off each rough end");
        foreach (BarGroup group in of.Bars.Groups)
        {
            foreach (IGrouping<(string, double, bool, double), SawnBar> alike in group.Bars.GroupBy(b => (BarFiles.Pieces(b), b.Bar.Length, b.Bar.Buy, Math.Round(b.Left, 4))))
            {
                SawnBar bar = alike.First();
                string from = bar.Bar.Buy ? group.Assumed ? "if bought whole, taken as" : "bought," : "yours,";
                screen.Paragraph($"{alike.Count()} x {group.Section.Name}, {from} {Mm(bar.Bar.Length)}: {string.Join(", ", bar.Pieces.GroupBy(p => p.Mark).Select(g => $"{g.Count()} x {g.Key}"))}; {Mm(bar.Left)} left", 2);
            }

            foreach ((LengthPart part, int count) in group.Without)
                screen.Bullet("!", $"{count} x {part.Mark} {part.Name}: no {group.Section.Name} is left that is {Mm(part.Length)} long.");
            if (!group.Proven)
                screen.Paragraph("Another plan may do with less: the search ended before it was sure.", 4);
        }

        screen.WriteLine();
        if (of.Nests.Groups.Count == 0)
            return;
        screen.Heading("Sheets", "what is cut from which");
        foreach ((string name, Nest nest) in NestFiles.Named(of.Nests))
        {
            screen.Paragraph($"{name}, {Mm(nest.Sheet.Thickness)}{(nest.Sheet.Buy ? ", bought" : "")}: {string.Join(", ", nest.Parts.GroupBy(p => p.Part.Mark).Select(g => $"{g.Count()} x {g.Key}"))}; "
                + $"{Readout.Text(nest.Filled, Dimension.Ratio, of.Units)} of it becomes parts", 2);
        }

        foreach (NestGroup group in of.Nests.Groups.Where(g => g.Without.Count > 0))
        {
            string steel = group.Steel is { } s ? $" in {s.Name}" : "";
            string what = string.Join(", ", group.Without.Select(w => $"{w.Count} x {w.Part.Mark} {Size(w.Part)}"));
            screen.Paragraph(group.HasSheets ? $"No room on the sheets of {Mm(group.Thickness)}{steel} for: {what}." : $"No sheet of {Mm(group.Thickness)}{steel} in the file; buy blanks for: {what}.", 2);
        }

        screen.WriteLine();
        string[] advice = [.. of.Parts.Plates.SelectMany(p => PlateAdvice.Of(p, of.Units, PlateFiles.Style(of.Rig)).Select(a => $"{p.Mark}: {a}"))];
        foreach (string line in advice)
            screen.Bullet("!", line);
        if (advice.Length > 0)
            screen.WriteLine();

        string Size(PlatePart plate)
        {
            Extents e = plate.Outline.Extents();
            return $"({Mm(e.Width)} x {Mm(e.Height)})";
        }
    }
}
