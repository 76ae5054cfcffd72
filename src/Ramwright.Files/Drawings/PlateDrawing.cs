using Ramwright.Fabrication;
using Ramwright.Fabrication.Plates;
using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>One plate on an A4 sheet: outline, holes with their places, bend lines, dimensions.</summary>
public static class PlateDrawing
{
    /// <summary>Hole rows that are given by dimension lines; with more of them the table says where each stands.</summary>
    private const int MostLines = 4;

    /// <summary>Draws a plate.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="press">Name of the press.</param>
    /// <param name="units">Units of the figures.</param>
    public static Sheet Of(PlatePart plate, string press, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(plate);
        Extents e = plate.Outline.Extents();
        double[] across = Rows(plate.Holes.Select(h => h.Y - e.Left).Concat(plate.Bends.Where(b => b.From.Y == b.To.Y).Select(b => b.From.Y - e.Left))), up = Rows(plate.Holes.Select(h => h.Z - e.Bottom));
        DimensionLines lines = Lines(e, across, up, 1, units);
        Extents room = PartSheet.Room;
        double n = PartSheet.ScaleFor(e.Width, e.Height, room.Width - lines.RoomLeft - 4, room.Height - lines.RoomBelow - 4);
        double k = 1000 / n;
        lines = Lines(e, across, up, k, units);

        double left = room.Left + lines.RoomLeft + (room.Width - lines.RoomLeft - k * e.Width) / 2, bottom = room.Bottom + lines.RoomBelow + (room.Height - lines.RoomBelow - k * e.Height) / 2;
        var marks = new List<Mark>
        {
            new Area(plate.Mark, plate.Outline.Onto((k, 0), (0, k)).Moved(left - k * e.Left, bottom - k * e.Bottom), Pen.Edge, Shade.Steel),
        };
        foreach (PlateHole hole in plate.Holes)
            marks.AddRange(Centre(left + k * (hole.Y - e.Left), bottom + k * (hole.Z - e.Bottom), k * hole.Diameter / 2, hole.MarkOnly, plate.Mark));
        foreach (PlateBend bend in plate.Bends)
        {
            marks.Add(new Line(plate.Mark, [(left + k * (bend.From.Y - e.Left), bottom + k * (bend.From.Z - e.Bottom)), (left + k * (bend.To.Y - e.Left), bottom + k * (bend.To.Z - e.Bottom))], Pen.Centre));
            marks.Add(new Lettering(plate.Mark, $"{(bend.Up ? "up" : "down")} {Readout.Number(bend.Angle * 180 / Math.PI)}° R{PartSheet.Figure(bend.Radius, units)}",
                left + k * ((bend.From.Y + bend.To.Y) / 2 - e.Left) - 1, bottom + k * ((bend.From.Z + bend.To.Z) / 2 - e.Bottom), At: Anchor.Middle, Upward: true));
        }

        marks.AddRange(Moving.By(lines.Draw(new Extents(0, k * e.Width, 0, k * e.Height)), left, bottom));
        marks.AddRange(PartSheet.Column(Words(plate, e, units)));
        marks.AddRange(PartSheet.Frame(plate, press, n, units));
        return new Sheet($"{plate.Mark} {plate.Name}", PartSheet.Wide, PartSheet.Tall, marks);
    }

    private static double[] Rows(IEnumerable<double> places)
    {
        double[] rows = [.. places.Select(p => Math.Round(p, 6)).Distinct().Order()];
        return rows.Length <= MostLines ? rows : [];
    }

    private static DimensionLines Lines(Extents e, double[] across, double[] up, double k, UnitSystem units)
    {
        var lines = new DimensionLines();
        foreach (double y in across)
            lines.Across(0, k * y, 0, 0, PartSheet.Figure(y, units));
        foreach (double z in up)
            lines.Up(0, k * z, 0, 0, PartSheet.Figure(z, units));
        lines.Across(0, k * e.Width, 0, 0, PartSheet.Figure(e.Width, units));
        lines.Up(0, k * e.Height, 0, 0, PartSheet.Figure(e.Height, units));
        return lines;
    }

    private static IEnumerable<Mark> Centre(double x, double y, double r, bool markOnly, string part)
    {
        double arm = Math.Max(r, 1) + 1.5;
        yield return new Line(part, [(x - arm, y), (x + arm, y)], Pen.Thin);
        yield return new Line(part, [(x, y - arm), (x, y + arm)], Pen.Thin);
        if (markOnly)
            yield return new Area(part, new Outline([Loops.Circle(2 * r)]).Moved(x, y), Pen.Hidden);
    }

    private static IEnumerable<string> Words(PlatePart plate, Extents e, UnitSystem units)
    {
        string F(double x) => PartSheet.Figure(x, units);
        yield return $"plate {F(plate.Thickness)} thick, {F(e.Width)} x {F(e.Height)}{(plate.Bends.Count > 0 ? ", flat" : "")}";
        foreach (IGrouping<(double, string, bool), PlateHole> alike in plate.Holes.GroupBy(h => (Math.Round(h.Diameter, 6), h.For, h.MarkOnly)))
        {
            yield return $"{alike.Count()} x Ø{F(alike.Key.Item1)}{(alike.Key.Item3 ? ", marked, to be drilled" : "")}: {alike.Key.Item2}";
            if (Rows(plate.Holes.Select(h => h.Y)).Length == 0 || Rows(plate.Holes.Select(h => h.Z)).Length == 0)
                yield return "at " + string.Join("; ", alike.Select(h => $"{F(h.Y - e.Left)}, {F(h.Z - e.Bottom)}"));
        }

        if (plate.Bends.Count > 0)
            yield return "Flat length by DIN 6935 (from memory). Bend a strip of the same plate first and measure.";
        foreach (string advice in PlateAdvice.Of(plate, units))
            yield return advice;
        foreach (string note in plate.Notes)
            yield return note;
        if (plate.Rule.Length > 0)
            yield return $"By rule: {plate.Rule}.";
    }
}
