using Ramwright.Fabrication;
using Ramwright.Fabrication.Bars;
using Ramwright.Fabrication.Nesting;
using Ramwright.Files.Drawings;
using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>What goes to the saw and the table.</summary>
internal static class CutListChapter
{
    public static Chapter Of(Papers p)
    {
        PartList list = p.Parts;
        var blocks = new List<Block>();
        if (list.Misfits.Count > 0)
        {
            blocks.Add(new Prose("What does not go together as it is described:", Tone.Warn));
            blocks.Add(new Items(list.Misfits));
        }

        if (list.Lengths.Any())
        {
            blocks.Add(new Heading("Lengths to saw"));
            blocks.Add(new Grid([new("mark", 0.7), new("off", 0.5, true), new("part", 3), new("section", 2.2), new("length", 1.2, true), new("ends", 1.8), new("steel", 1.2), new("mass of all", 1.1, true)],
                [.. list.Lengths.Select(l => (IReadOnlyList<string>)[l.Mark, $"{l.Count}", l.Name + Proposed(l), l.Section.Name, p.T(l.Length, Dimension.Length, 5),
                    l.First == l.Second ? l.First.Words : $"{l.First.Words}, {l.Second.Words}", l.Steel?.Name ?? Papers.Open, Kg(p, l)])]));
        }

        if (list.Plates.Any())
        {
            blocks.Add(new Heading("Plates to cut"));
            blocks.Add(new Grid([new("mark", 0.7), new("off", 0.5, true), new("part", 3.4), new("over all", 2.2, true), new("thick", 1, true), new("holes", 0.7, true), new("bends", 0.7, true), new("steel", 1.2), new("mass of all", 1.1, true)],
                [.. list.Plates.Select(plate =>
                {
                    Extents e = plate.Outline.Extents();
                    return (IReadOnlyList<string>)[plate.Mark, $"{plate.Count}", plate.Name + Proposed(plate), $"{p.T(e.Width, Dimension.Length, 5)} × {p.T(e.Height, Dimension.Length, 5)}",
                        p.T(plate.Thickness, Dimension.Length), $"{plate.Holes.Count}", $"{plate.Bends.Count}", plate.Steel?.Name ?? Papers.Open, Kg(p, plate)];
                })]));
        }

        Bars(p, blocks);
        Sheets(p, blocks);
        blocks.Add(new Heading("Mass and lifting"));
        blocks.Add(new Prose($"All parts whose mass is known: {p.T(list.Mass, Dimension.Mass)}."));
        blocks.Add(new Items(list.Lifting.Cautions));
        return new Chapter("Cut list", blocks);
    }

    private static void Bars(Papers p, List<Block> blocks)
    {
        BarPlan plan = p.Of.Bars;
        if (plan.Groups.Count == 0)
            return;
        blocks.Add(new Heading("Which bar is sawn into what"));
        var rows = new List<IReadOnlyList<string>>();
        foreach (BarGroup group in plan.Groups)
        {
            foreach (SawnBar bar in group.Bars)
                rows.Add([group.Section.Name, p.T(bar.Bar.Length, Dimension.Length, 4) + (bar.Bar.Buy ? " to buy" : ""), Pieces(p, bar), p.T(bar.Left, Dimension.Length, 4)]);
            foreach ((LengthPart part, int count) in group.Without)
                rows.Add([group.Section.Name, "none", $"{count} × {part.Mark}: no bar is left that is long enough", ""]);
        }

        blocks.Add(new Grid([new("section", 2), new("bar", 2), new("cut in this order", 5), new("left over", 1.4, true)], rows));
        if (plan.Groups.Any(g => g.Assumed))
            blocks.Add(new Prose($"Where the file lists no bar of a section, lengths of {p.T(BarPlan.UsualLength(p.Units), Dimension.Length, 4)} are taken to be bought.", Tone.Quiet));
    }

    private static string Pieces(Papers p, SawnBar bar) =>
        string.Join("; ", bar.Pieces.GroupBy(piece => piece.Mark).Select(g => $"{g.Count()} × {g.Key} {p.T(g.First().Length, Dimension.Length, 5)}"));

    /// <summary>A nest of no more parts than this is drawn half as wide as the page, mm, so that two stand beside each other.</summary>
    private const int Few = 6;
    private const double Half = 83, Whole = 168;

    private static void Sheets(Papers p, List<Block> blocks)
    {
        int number = 0;
        foreach (NestGroup group in p.Of.Nests.Groups.Where(g => g.HasSheets))
        {
            foreach (Nest nest in group.Nests)
            {
                Sheet drawn = NestDrawing.Of(nest, $"{nest.Sheet.Name}{(nest.Sheet.Count > 1 ? $", {nest.Copy}" : "")}", p.Units, nest.Parts.Count <= Few ? Half : Whole);
                if (number++ == 0)
                    blocks.Add(new Heading("Which sheet is cut into what"));
                blocks.Add(new Picture(drawn) { Shrinks = true });
            }

            foreach ((PlatePart part, int count) in group.Without)
                blocks.Add(new Prose($"{count} × {part.Mark} {part.Name}: no sheet in the file has room for it.", Tone.Warn));
        }
    }

    private static string Proposed(Part part) => part.Origin == PartOrigin.Proposed ? " (proposed)" : "";

    private static string Kg(Papers p, Part part) => part.Mass is { } kg ? p.T(kg * part.Count, Dimension.Mass) : "–";
}
