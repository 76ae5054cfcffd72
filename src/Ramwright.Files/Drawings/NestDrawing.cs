using Ramwright.Fabrication.Nesting;
using Ramwright.Fabrication.Plates;
using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>A sheet of plate with the parts that are cut from it.</summary>
public static class NestDrawing
{
    private const double A4 = 297, Highest = 0.81;

    /// <summary>Narrower than this the words below are broken, mm.</summary>
    private const double Narrow = 150;

    /// <summary>Draws a nest.</summary>
    /// <param name="nest">The nest.</param>
    /// <param name="name">What the sheet is called.</param>
    /// <param name="units">Units of the figures.</param>
    /// <param name="wide">Width of the drawing, mm.</param>
    public static Sheet Of(Nest nest, string name, UnitSystem units = UnitSystem.Metric, double wide = A4)
    {
        ArgumentNullException.ThrowIfNull(nest);
        bool narrow = wide < Narrow;
        double margin = narrow ? 1 : 8, foot = narrow ? 15 : 16, head = margin;
        var edge = new Outline([nest.Sheet.Edge]);
        Extents e = edge.Extents();
        double k = Math.Min((wide - 2 * margin) / e.Width, Highest * wide / e.Height), tall = k * e.Height + head + foot + margin;
        double left = (narrow ? margin : (wide - k * e.Width) / 2) - k * e.Left, bottom = foot - k * e.Bottom;
        Outline On(Outline o) => o.Onto((k, 0), (0, k)).Moved(left, bottom);
        var marks = new List<Mark> { new Area("", On(edge), Pen.Edge, "#fbfaf7") };
        foreach (NestedPart part in nest.Parts)
        {
            Outline outline = On(part.Outline);
            marks.Add(new Area(part.Part.Mark, outline, Pen.Edge, "#d6e2ea"));
            Extents p = outline.Extents();
            double height = Math.Clamp(Math.Min(p.Height / 3, p.Width / (1.2 * part.Part.Mark.Length)), 0.8, narrow ? 1.8 : 4);
            (double y, double z) = Middle(part, outline, k, left, bottom);
            marks.Add(new Lettering(part.Part.Mark, part.Part.Mark, y, z - height / 2, height, Anchor.Middle));
        }

        string size = $"{PartSheet.Figure(e.Width, units)} x {PartSheet.Figure(e.Height, units)} x {PartSheet.Figure(nest.Sheet.Thickness, units)} {(units == UnitSystem.Metric ? "mm" : "in")}";
        string what = $"{size}, {nest.Sheet.Steel.Name}", share = $"{nest.Parts.Count} {(nest.Parts.Count == 1 ? "part" : "parts")} · {Readout.Text(nest.Filled, Dimension.Ratio, units)} of it becomes parts";
        marks.Add(new Lettering("", name, margin, narrow ? 10 : 8.5, 3, Bold: true));
        marks.Add(new Lettering("", narrow ? what : $"{what} · {share}", margin, narrow ? 5.8 : 3.5));
        if (narrow)
            marks.Add(new Lettering("", share, margin, 2));
        return new Sheet(name, wide, tall, marks);
    }

    // where the mark is scribed, or the middle of the steel where it finds no room
    private static (double, double) Middle(NestedPart part, Outline outline, double k, double left, double bottom)
    {
        if (PlateCuts.MarkPlace(part.Part) is var (y, z))
        {
            (double py, double pz) = part.Turn.Of(y, z);
            return (left + k * py, bottom + k * pz);
        }

        AreaMoments m = outline.Moments();
        return (m.Y, m.Z);
    }
}
