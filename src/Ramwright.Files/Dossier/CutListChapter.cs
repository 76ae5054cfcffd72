using Ramwright.Fabrication;
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
            blocks.Add(new Grid([new("mark", 0.7), new("off", 0.5, true), new("part", 3), new("section", 2.2), new("length", 1.2, true), new("ends", 1.8), new("steel", 1.2), new("kg all", 0.9, true)],
                [.. list.Lengths.Select(l => (IReadOnlyList<string>)[l.Mark, $"{l.Count}", l.Name + Proposed(l), l.Section.Name, p.T(l.Length, Dimension.Length, 5),
                    l.First == l.Second ? l.First.Words : $"{l.First.Words}, {l.Second.Words}", l.Steel?.Name ?? Papers.Open, Kg(p, l)])]));
        }

        if (list.Plates.Any())
        {
            blocks.Add(new Heading("Plates to cut"));
            blocks.Add(new Grid([new("mark", 0.7), new("off", 0.5, true), new("part", 3.4), new("over all", 2.2, true), new("thick", 1, true), new("holes", 0.7, true), new("bends", 0.7, true), new("steel", 1.2), new("kg all", 0.9, true)],
                [.. list.Plates.Select(plate =>
                {
                    Extents e = plate.Outline.Extents();
                    return (IReadOnlyList<string>)[plate.Mark, $"{plate.Count}", plate.Name + Proposed(plate), $"{p.T(e.Width, Dimension.Length, 5)} × {p.T(e.Height, Dimension.Length, 5)}",
                        p.T(plate.Thickness, Dimension.Length), $"{plate.Holes.Count}", $"{plate.Bends.Count}", plate.Steel?.Name ?? Papers.Open, Kg(p, plate)];
                })]));
        }

        blocks.Add(new Heading("Mass and lifting"));
        blocks.Add(new Prose($"All parts whose mass is known: {p.T(list.Mass, Dimension.Mass)}."));
        blocks.Add(new Items(list.Lifting.Cautions));
        return new Chapter("Cut list", blocks);
    }

    private static string Proposed(Part part) => part.Origin == PartOrigin.Proposed ? " (proposed)" : "";

    private static string Kg(Papers p, Part part) => part.Mass is { } kg ? p.T(kg * part.Count, Dimension.Mass) : "–";
}
