using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>What a joint finds of a section that is bent about its y: the thickness of all its webs together, thickness and width of a flange, and the root radius, m. A bar on edge is all web.</summary>
internal readonly record struct Walls(double Web, double Flange, double Width, double Root)
{
    /// <summary>The walls of a shape; null where no rule is known for a joint with it.</summary>
    public static Walls? Of(Shape shape) => shape switch
    {
        Flat f => new Walls(f.T, 0, f.T, 0),
        ISection i => new Walls(i.Tw, i.Tf, i.B, i.R),
        Channel c => new Walls(c.Tw, c.Tf, c.B, c.R1),
        Box b => new Walls(2 * b.Tw, b.Tf, b.B, 0),
        RectangularHollow r => new Walls(2 * r.T, r.T, r.B, 0),
        Pair p when Of(p.Half) is { } half => half with { Web = 2 * half.Web, Width = 2 * half.Width },
        _ => null,
    };

    /// <summary>Between the middles of the flanges of a section of some depth, m; the depth itself for a bar.</summary>
    public double Between(double depth) => depth - Flange;
}
