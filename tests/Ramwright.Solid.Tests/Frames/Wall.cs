using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solids;
using Ramwright.Stock;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>A rectangle of a cross-section: a bar, a web or a flange; from the centroid, m.</summary>
/// <param name="Y0">Left.</param>
/// <param name="Y1">Right.</param>
/// <param name="Z0">Bottom.</param>
/// <param name="Z1">Top.</param>
/// <param name="IsWeb">Whether it carries the shear along z.</param>
public readonly record struct Wall(double Y0, double Y1, double Z0, double Z1, bool IsWeb)
{
    /// <summary>The rectangles that a shape is made of. Rounded corners and tapers are refused: use shapes without.</summary>
    public static IReadOnlyList<Wall> Of(Shape shape) => [.. shape.Strands.SelectMany(strand =>
        Single(strand.Shape).Select(w => strand.Mirrored ? w with { Y0 = -w.Y1, Y1 = -w.Y0 } : w)
            .Select(w => w with { Y0 = w.Y0 + strand.Y, Y1 = w.Y1 + strand.Y }))];

    private static IEnumerable<Wall> Single(Shape shape)
    {
        switch (shape)
        {
            case Flat f:
                return [new(-f.T / 2, f.T / 2, -f.H / 2, f.H / 2, true)];
            case Turned { Of: Flat f }:
                return [new(-f.H / 2, f.H / 2, -f.T / 2, f.T / 2, true)];
            case ISection { R: 0 } i:
                double y = i.B / 2, z = i.H / 2, inner = z - i.Tf;
                return [new(-i.Tw / 2, i.Tw / 2, -inner, inner, true), new(-y, y, inner, z, false), new(-y, y, -z, -inner, false)];
            case Box b:
                (y, z, inner) = (b.B / 2, b.H / 2, b.H / 2 - b.Tf);
                return
                [
                    new(-y, -y + b.Tw, -inner, inner, true), new(y - b.Tw, y, -inner, inner, true),
                    new(-y, y, inner, z, false), new(-y, y, -z, -inner, false),
                ];
            case Channel { R1: 0, R2: 0, Slope: 0 } c:
                double back = -c.Properties.Left;
                (z, inner) = (c.H / 2, c.H / 2 - c.Tf);
                return [new(back, back + c.Tw, -inner, inner, true), new(back, back + c.B, inner, z, false), new(back, back + c.B, -z, -inner, false)];
            default:
                throw new ArgumentException($"{shape.Name} is not made of rectangles");
        }
    }

    /// <summary>Drawn along x from a place to another, its z up at a height.</summary>
    public Cuboid AlongX(double from, double to, double height) => new(from, to, Y0, Y1, height + Z0, height + Z1);

    /// <summary>Drawn along z from a place to another, its z to the right, its centroid at a distance from the middle.</summary>
    public Cuboid Upright(double from, double to, double centroid) => new(centroid + Z0, centroid + Z1, Y0, Y1, from, to);

    /// <summary>Drawn along z, its z to the front, its centroid at a depth.</summary>
    public Cuboid Column(double from, double to, double centroid) => new(Y0, Y1, centroid - Z1, centroid - Z0, from, to);

    /// <summary>Drawn along y, its z up at a height.</summary>
    public Cuboid AlongY(double from, double to, double height) => new(Y0, Y1, from, to, height + Z0, height + Z1);
}
