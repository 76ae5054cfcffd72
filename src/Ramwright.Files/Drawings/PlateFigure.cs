using Ramwright.Fabrication;
using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>A plate as a small picture: outline, holes, bend lines, its two sides.</summary>
public static class PlateFigure
{
    private const double Wide = 90, Tall = 66, Edge = 10;

    /// <summary>Draws it.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="units">Units of the figures.</param>
    public static Sheet Of(PlatePart plate, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(plate);
        Extents e = plate.Outline.Extents();
        double k = Math.Min((Wide - 2 * Edge) / e.Width, (Tall - 2 * Edge) / e.Height);
        double left = (Wide - k * e.Width) / 2 - k * e.Left, bottom = (Tall - k * e.Height) / 2 - k * e.Bottom;
        var marks = new List<Mark> { new Area(plate.Mark, plate.Outline.Onto((k, 0), (0, k)).Moved(left, bottom), Pen.Edge, Shade.Steel) };
        foreach (PlateHole hole in plate.Holes.Where(h => h.MarkOnly))
        {
            double x = left + k * hole.Y, y = bottom + k * hole.Z;
            marks.Add(new Line(plate.Mark, [(x - 1.2, y), (x + 1.2, y)], Pen.Thin));
            marks.Add(new Line(plate.Mark, [(x, y - 1.2), (x, y + 1.2)], Pen.Thin));
        }

        foreach (PlateBend bend in plate.Bends)
            marks.Add(new Line(plate.Mark, [(left + k * bend.From.Y, bottom + k * bend.From.Z), (left + k * bend.To.Y, bottom + k * bend.To.Z)], Pen.Centre));
        marks.Add(new Lettering("", PartSheet.Figure(e.Width, units), Wide / 2, (Tall - k * e.Height) / 2 - 5, 2.6, Anchor.Middle));
        marks.Add(new Lettering("", PartSheet.Figure(e.Height, units), (Wide - k * e.Width) / 2 - 2.2, Tall / 2, 2.6, Anchor.Middle, Upward: true));
        return new Sheet($"{plate.Mark} {plate.Name}", Wide, Tall, marks);
    }
}
