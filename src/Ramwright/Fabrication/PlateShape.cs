using Ramwright.Geometry;

namespace Ramwright.Fabrication;

/// <summary>Outlines of plates from their sizes, and rows of round holes.</summary>
public static class PlateShape
{
    /// <summary>A rectangle about the origin.</summary>
    /// <param name="wide">m.</param>
    /// <param name="high">m.</param>
    public static Outline Rectangle(double wide, double high) => new([Loops.Rectangle(-wide / 2, wide / 2, -high / 2, high / 2)]);

    /// <summary>A disc about the origin.</summary>
    /// <param name="diameter">m.</param>
    public static Outline Disc(double diameter) => new([Loops.Circle(diameter)]);

    /// <summary>An outline with holes; those that are only marked are not cut.</summary>
    internal static Outline Drilled(Outline blank, IReadOnlyList<PlateHole> holes)
    {
        return holes.All(h => h.MarkOnly) ? blank : new Outline([.. blank.Loops, .. holes.Where(h => !h.MarkOnly).Select(Hole)]);
    }

    /// <summary>Holes on a circle about the origin, the first at the top.</summary>
    /// <param name="circle">Diameter through their centres, m.</param>
    /// <param name="count">How many.</param>
    /// <param name="diameter">Of each, m.</param>
    /// <param name="what">What goes through.</param>
    public static IReadOnlyList<PlateHole> Ring(double circle, int count, double diameter, string what) =>
        [.. Enumerable.Range(0, count).Select(i => new PlateHole(circle / 2 * Math.Sin(2 * Math.PI * i / count), circle / 2 * Math.Cos(2 * Math.PI * i / count), diameter, what))];

    /// <summary>Holes in rows and columns about the origin.</summary>
    /// <param name="across">Columns, and between them, m.</param>
    /// <param name="up">Rows, and between them, m.</param>
    /// <param name="diameter">Of each, m.</param>
    /// <param name="what">What goes through.</param>
    public static IReadOnlyList<PlateHole> Grid((int Count, double Pitch) across, (int Count, double Pitch) up, double diameter, string what) =>
    [
        .. from i in Enumerable.Range(0, across.Count)
           from j in Enumerable.Range(0, up.Count)
           select new PlateHole((i - (across.Count - 1) / 2.0) * across.Pitch, (j - (up.Count - 1) / 2.0) * up.Pitch, diameter, what),
    ];

    private static IReadOnlyList<Corner> Hole(PlateHole hole) => new Outline([Loops.Circle(hole.Diameter)]).Moved(hole.Y, hole.Z).Loops[0].AsHole();
}
