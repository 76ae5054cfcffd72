using Ramwright.Fabrication;
using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files.Drawings;

/// <summary>One length of bar or section on an A4 sheet: from the side with its holes, and its section at a scale of its own.</summary>
public static class LengthDrawing
{
    private const double SectionRoom = 46;

    /// <summary>Draws a length.</summary>
    /// <param name="length">The length.</param>
    /// <param name="press">Name of the press.</param>
    /// <param name="units">Units of the figures.</param>
    public static Sheet Of(LengthPart length, string press, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(length);
        Shape shape = length.Section;
        Extents section = shape.Outline.Extents();
        Extents room = PartSheet.Room;
        double[] rows = [.. length.Holes.Select(h => Math.Round(h.Along, 6)).Distinct().Order()], asides = [.. length.Holes.Where(OnSide).Select(h => Math.Round(h.Aside - section.Bottom, 6)).Distinct().Order()];
        DimensionLines lines = Lines(length, section, rows, asides, 1, units);
        double n = PartSheet.ScaleFor(length.Length, section.Height, room.Width - lines.RoomLeft - 6, room.Height - lines.RoomBelow - SectionRoom - 8);
        double k = 1000 / n;
        lines = Lines(length, section, rows, asides, k, units);
        double left = room.Left + lines.RoomLeft + (room.Width - lines.RoomLeft - k * length.Length) / 2, bottom = room.Bottom + lines.RoomBelow + 4;

        var marks = new List<Mark> { new Area(length.Mark, new Outline([Loops.Rectangle(left, left + k * length.Length, bottom, bottom + k * section.Height)]), Pen.Edge, Shade.Steel) };
        foreach (LengthHole hole in length.Holes)
            marks.AddRange(Hole(hole, length.Mark, left, bottom, k, section));
        marks.AddRange(Moving.By(lines.Draw(new Extents(0, k * length.Length, 0, k * section.Height)), left, bottom));

        double s = Math.Min((SectionRoom - 12) / section.Height, 60 / section.Width), middle = (room.Left + room.Right) / 2;
        marks.Add(new Area(length.Mark, shape.Outline.Onto((s, 0), (0, s)).Moved(middle - s * (section.Left + section.Right) / 2, room.Top - 4 - s * section.Top), Pen.Edge, Shade.Steel));
        marks.Add(new Lettering(length.Mark, $"{shape.Name}, section larger", middle, room.Top - 4 - s * section.Height - 5, At: Anchor.Middle));
        marks.AddRange(PartSheet.Column(Words(length, units)));
        marks.AddRange(PartSheet.Frame(length, press, n, units));
        return new Sheet($"{length.Mark} {length.Name}", PartSheet.Wide, PartSheet.Tall, marks);
    }

    private static bool OnSide(LengthHole hole) => hole.Face is "web" or "flat" or "bar" or "leg, from mid-depth" or "front and back";

    private static DimensionLines Lines(LengthPart length, Extents section, double[] rows, double[] asides, double k, UnitSystem units)
    {
        var lines = new DimensionLines();
        if (rows.Length <= 6)
        {
            foreach (double x in rows)
                lines.Across(0, k * x, 0, 0, PartSheet.Figure(x, units));
        }

        if (asides.Length <= 4)
        {
            foreach (double z in asides)
                lines.Up(0, k * z, 0, 0, PartSheet.Figure(z, units));
        }

        lines.Across(0, k * length.Length, 0, 0, PartSheet.Figure(length.Length, units));
        lines.Up(0, k * section.Height, 0, 0, PartSheet.Figure(section.Height, units));
        return lines;
    }

    private static IEnumerable<Mark> Hole(LengthHole hole, string part, double left, double bottom, double k, Extents section)
    {
        double x = left + k * hole.Along, r = k * hole.Diameter / 2;
        if (!OnSide(hole))
        {
            // seen from its side: two hidden lines through the wall
            yield return new Line(part, [(x - r, bottom), (x - r, bottom + k * section.Height)], Pen.Hidden);
            yield return new Line(part, [(x + r, bottom), (x + r, bottom + k * section.Height)], Pen.Hidden);
            yield break;
        }

        double y = bottom + k * (hole.Aside - section.Bottom);
        if (hole.Across > 0)
        {
            yield return new Area(part, new Outline([Loops.Rectangle(x - r, x + r, y - k * hole.Across / 2, y + k * hole.Across / 2)]), Pen.Edge, "#ffffff");
            yield break;
        }

        double arm = r + 1.5;
        yield return new Area(part, new Outline([Loops.Circle(2 * r)]).Moved(x, y), Pen.Edge, "#ffffff");
        yield return new Line(part, [(x - arm, y), (x + arm, y)], Pen.Thin);
        yield return new Line(part, [(x, y - arm), (x, y + arm)], Pen.Thin);
    }

    private static IEnumerable<string> Words(LengthPart length, UnitSystem units)
    {
        string F(double x) => PartSheet.Figure(x, units);
        yield return $"{length.Section.Name}, {F(length.Length)} long";
        yield return length.First == length.Second ? $"both ends {length.First.Words}" : $"first end {length.First.Words}, second end {length.Second.Words}";
        foreach (IGrouping<(double, double, string, string), LengthHole> alike in length.Holes.GroupBy(h => (Math.Round(h.Diameter, 6), Math.Round(h.Across, 6), h.Face, h.For)))
        {
            (double d, double across, string face, string what) = alike.Key;
            yield return across > 0 ? $"{alike.Count()} x slot {F(d)} along, {F(across)} across, {face}: {what}" : $"{alike.Count()} x Ø{F(d)} through the {face}: {what}";
        }

        if (length.Holes.Count > 0)
            yield return "Mark all holes from one end and one edge; drill mating parts clamped together.";
        foreach (string note in length.Notes)
            yield return note;
        if (length.Rule.Length > 0)
            yield return $"By rule: {length.Rule}.";
    }
}
