using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>Marks put in another place on the sheet.</summary>
internal static class Moving
{
    public static IEnumerable<Mark> By(IEnumerable<Mark> marks, double x, double y) => marks.Select<Mark, Mark>(mark => mark switch
    {
        Area a => a with { Outline = a.Outline.Moved(x, y) },
        Line l => l with { Points = [.. l.Points.Select(p => (p.X + x, p.Y + y))] },
        Lettering t => t with { X = t.X + x, Y = t.Y + y },
        _ => mark,
    });
}
