using Ramwright.Fabrication;
using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files.Drawings;

/// <summary>A length sawn from a section: its walls with their holes one under another, and its section beside.</summary>
internal static class LengthDrawing
{
    private const double Wide = 172, Left = 20, Room = 108, Between = 9;

    public static PartFigure Of(LengthPart part, UnitSystem units)
    {
        SectionProperties size = part.Section.Properties;
        string[] faces = [.. part.Holes.Select(h => h.Face).Distinct()];
        if (faces.Length == 0)
            faces = [""];
        double n = PartDrawing.Scale(part.Length, Math.Max(size.Height, size.Width), Room, 60), s = 1000 / n, long_ = s * part.Length;
        double foot = 20, y = foot;
        var marks = new List<Mark>();
        var holes = new List<PartHole>();
        // the lowest wall stands last, over the dimension
        foreach (string face in faces.Reverse())
        {
            double high = s * HeightOf(face, size);
            marks.Add(new Area("", new Outline([Loops.Rectangle(Left, Left + long_, y, y + high)]), Pen.Edge, Shade.Steel));
            marks.Add(new Line("", [(Left - 3, y + high / 2), (Left + long_ + 3, y + high / 2)], Pen.Centre));
            if (face.Length > 0)
                marks.Add(new Lettering("", face, Left, y + high + 1.5, 2));
            y += high + Between;
        }

        int number = 0;
        foreach (LengthHole hole in part.Holes)
        {
            double foot_ = FootOf(hole.Face, faces, size, s, foot), high = s * HeightOf(hole.Face, size);
            double x = Left + s * hole.Along, up = foot_ + high / 2 + s * hole.Aside;
            if (hole.Across > 0)
                marks.Add(new Area("", new Outline([Loops.Rectangle(x - s * hole.Diameter / 2, x + s * hole.Diameter / 2, up - s * hole.Across / 2, up + s * hole.Across / 2)]), Pen.Edge, "#ffffff"));
            else
                marks.Add(new Area("", new Outline([[new(x + s * hole.Diameter / 2, up, 1), new(x - s * hole.Diameter / 2, up, 1)]]), Pen.Edge, "#ffffff"));
            PartDrawing.Hole(marks, ++number, x, up, s * (hole.Across > 0 ? Math.Min(hole.Diameter, hole.Across) : hole.Diameter) / 2);
            string size_ = hole.Across > 0 ? $"slot {PartDrawing.Figure(hole.Diameter, units)} along, {PartDrawing.Figure(hole.Across, units)} across, " : "";
            holes.Add(new PartHole(number, hole.Along, hole.Aside, hole.Diameter, $"{size_}{hole.Face}, {hole.For}"));
        }

        var view = new Extents(Left, Left + long_, foot, y - Between);
        var lines = new DimensionLines();
        lines.Across(view.Left, view.Right, view.Bottom, view.Bottom, PartDrawing.Figure(part.Length, units));
        marks.AddRange(lines.Draw(view));
        if (part.Holes.Count > 0)
            PartDrawing.Datum(marks, Left, foot + s * HeightOf(faces[^1], size) / 2);
        double tall = Math.Max(y - Between + 7, Section(marks, part.Section, foot));
        return new PartFigure(new Sheet($"{part.Mark} {part.Name}", Wide, tall, marks), n, holes);
    }

    private static double HeightOf(string face, SectionProperties size) => face.Contains("flange", StringComparison.Ordinal) ? size.Width : size.Height;

    private static double FootOf(string face, string[] faces, SectionProperties size, double s, double foot)
    {
        double y = foot;
        for (int i = faces.Length - 1; i >= 0 && faces[i] != face; i--)
            y += s * HeightOf(faces[i], size) + Between;
        return y;
    }

    /// <summary>The section, at a scale of its own; gives the height it reaches to.</summary>
    private static double Section(List<Mark> marks, Shape shape, double foot)
    {
        Extents e = shape.Outline.Extents();
        double n = PartDrawing.Scale(e.Width, e.Height, 26, 30), s = 1000 / n, x = Wide - 30;
        marks.Add(new Area("", shape.Outline.Onto((s, 0), (0, s)).Moved(x - s * e.Left + (26 - s * e.Width) / 2, foot - s * e.Bottom), Pen.Edge, Shade.Steel));
        marks.Add(new Lettering("", shape.Name, x + 13, foot - 5, 2, Anchor.Middle));
        marks.Add(new Lettering("", $"1:{Readout.Number(n)}", x + 13, foot - 9, 1.8, Anchor.Middle));
        return foot + s * e.Height + 6;
    }
}
