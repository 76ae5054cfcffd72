using Ramwright.Fabrication;
using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>One part with its outside dimensions and its holes numbered, as wide as a page's text.</summary>
public static class PartDrawing
{
    private const double Wide = 172, Most = 62, Room = 112;
    private static readonly double[] Scales = [1, 2, 2.5, 5, 10, 15, 20, 25, 50, 100, 200];

    /// <summary>Draws a plate or a length.</summary>
    /// <param name="part">The part.</param>
    /// <param name="units">Units of its figures.</param>
    /// <exception cref="NotSupportedException">A part that is bought.</exception>
    public static PartFigure Of(Part part, UnitSystem units = UnitSystem.Metric) => part switch
    {
        PlatePart plate => Plate(plate, units),
        LengthPart length => LengthDrawing.Of(length, units),
        _ => throw new NotSupportedException("What is bought is not drawn."),
    };

    private static PartFigure Plate(PlatePart plate, UnitSystem units)
    {
        Extents e = plate.Outline.Extents();
        double n = Scale(e.Width, e.Height, Room, Most), s = 1000 / n, left = 34, foot = 22;
        double dx = left - s * e.Left, dy = foot - s * e.Bottom, tall = foot + s * e.Height + 6;
        Outline on = plate.Outline.Onto((s, 0), (0, s)).Moved(dx, dy);
        var marks = new List<Mark> { new Area("", on, Pen.Edge, Shade.Steel) };
        foreach (PlateBend bend in plate.Bends)
        {
            marks.Add(new Line("", [(dx + s * bend.From.Y, dy + s * bend.From.Z), (dx + s * bend.To.Y, dy + s * bend.To.Z)], Pen.Centre));
            marks.Add(new Lettering("", bend.Up ? "up" : "down", dx + s * bend.To.Y + 1.2, dy + s * bend.To.Z - 3.2, 1.8));
        }

        for (int i = 0; i < plate.Holes.Count; i++)
            Hole(marks, i + 1, dx + s * plate.Holes[i].Y, dy + s * plate.Holes[i].Z, s * plate.Holes[i].Diameter / 2, plate.Holes[i].MarkOnly);
        var view = new Extents(left, left + s * e.Width, foot, foot + s * e.Height);
        var lines = new DimensionLines();
        lines.Across(view.Left, view.Right, view.Bottom, view.Bottom, Figure(e.Width, units));
        lines.Up(view.Bottom, view.Top, view.Left, view.Left, Figure(e.Height, units));
        marks.AddRange(lines.Draw(view));
        if (plate.Holes.Count > 0)
            Datum(marks, view.Left, view.Bottom);
        Thickness(marks, view, plate.Thickness * s, plate.Thickness, units);
        return new PartFigure(new Sheet($"{plate.Mark} {plate.Name}", Wide, tall, marks), n,
            [.. plate.Holes.Select((h, i) => new PartHole(i + 1, h.Y - e.Left, h.Z - e.Bottom, h.Diameter, h.For + (h.Thread is { } t ? $", tapped {t.Name}" : "") + (h.MarkOnly ? ", centre-mark and drill" : "")))]);
    }

    /// <summary>The plate's edge beside it, as thick as it is.</summary>
    private static void Thickness(List<Mark> marks, Extents view, double thick, double metres, UnitSystem units)
    {
        double x = view.Right + 9;
        if (x + thick > Wide - 16)
            return;
        marks.Add(new Area("", new Outline([Loops.Rectangle(x, x + thick, view.Bottom, view.Top)]), Pen.Edge, Shade.Steel));
        marks.Add(new Lettering("", "t " + Figure(metres, units), x + thick + 2, (view.Bottom + view.Top) / 2 - 1.2, 2.3));
    }

    /// <summary>A scale at which something fits.</summary>
    internal static double Scale(double width, double height, double wide, double tall)
    {
        foreach (double n in Scales)
        {
            if (width * 1000 / n <= wide && height * 1000 / n <= tall)
                return n;
        }

        return Math.Ceiling(Math.Max(width * 1000 / wide, height * 1000 / tall));
    }

    /// <summary>A hole with its cross and its number.</summary>
    internal static void Hole(List<Mark> marks, int number, double x, double y, double r, bool dashed = false)
    {
        if (dashed)
            marks.Add(new Area("", new Outline([[new(x + r, y, 1), new(x - r, y, 1)]]), Pen.Hidden));
        double arm = r + 1.2;
        marks.Add(new Line("", [(x - arm, y), (x + arm, y)], Pen.Thin));
        marks.Add(new Line("", [(x, y - arm), (x, y + arm)], Pen.Thin));
        marks.Add(new Lettering("", $"{number}", x + Math.Max(0.71 * r, 0.8) + 0.6, y + Math.Max(0.71 * r, 0.8) + 0.4, 1.8));
    }

    /// <summary>The corner that holes are measured from.</summary>
    internal static void Datum(List<Mark> marks, double x, double y)
    {
        marks.Add(new Area("", new Outline([[new(x + 1.1, y, 1), new(x - 1.1, y, 1)]]), Pen.Thin, "#1c1c1c"));
        marks.Add(new Lettering("", "0", x - 3.4, y - 3, 2));
    }

    internal static string Figure(double metres, UnitSystem units) => units == UnitSystem.Metric ? Readout.Number(metres * 1000, 5) : Readout.Number(metres / 0.0254, 5) + "\"";
}

/// <summary>A drawn part.</summary>
/// <param name="Sheet">The drawing.</param>
/// <param name="Scale">Its scale, one to this.</param>
/// <param name="Holes">Its holes from the marked corner, by the numbers on the drawing.</param>
public sealed record PartFigure(Sheet Sheet, double Scale, IReadOnlyList<PartHole> Holes);

/// <summary>A hole of a drawn part.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Right">From the marked corner or end, m.</param>
/// <param name="Up">From the marked corner, or from the middle line of a length's wall, m.</param>
/// <param name="Size">Diameter, m.</param>
/// <param name="For">What it is for.</param>
public sealed record PartHole(int Number, double Right, double Up, double Size, string For);
