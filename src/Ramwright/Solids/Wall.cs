using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>A rectangle of a cross-section: a bar, a web, a flange or what stands for a root; from the centroid, m.</summary>
/// <param name="Y0">Left.</param>
/// <param name="Y1">Right.</param>
/// <param name="Z0">Bottom.</param>
/// <param name="Z1">Top.</param>
/// <param name="IsWeb">Whether it carries the shear along z.</param>
public readonly record struct Wall(double Y0, double Y1, double Z0, double Z1, bool IsWeb)
{
    /// <summary>Whether it stands for a rounded root.</summary>
    public bool IsRoot { get; init; }

    /// <summary>Side of a square as large as what a rounded inner corner of radius one fills.</summary>
    private static readonly double Root = Math.Sqrt(1 - Math.PI / 4);

    /// <summary>Roots smaller than this are left out, m: they would cost more cells than they stiffen.</summary>
    private const double SmallRoot = 0.008;

    /// <summary>
    /// The rectangles that a shape is made of. Rounded roots become squares of the same area; rounded toes and outer corners are left sharp; tapered walls take their mean thickness;
    /// a round becomes a cross, and a round tube a square one, of the same area and stiffness in bending.
    /// </summary>
    /// <exception cref="SolidFaultException">A shape that has no rectangles.</exception>
    public static IReadOnlyList<Wall> Of(Shape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return [.. shape.Strands.SelectMany(strand =>
            Single(strand.Shape).Select(w => strand.Mirrored ? w with { Y0 = -w.Y1, Y1 = -w.Y0 } : w)
                .Select(w => w.Moved(strand.Y, strand.Z)))];
    }

    /// <summary>What was simplified, for the reader; nothing where the shape is drawn as it is.</summary>
    public static string? Simplified(Shape shape) => shape switch
    {
        Pair p => Simplified(p.Half),
        Turned t => Simplified(t.Of),
        ISection { R: > 0 } or Tee { R1: > 0 } or Angle { R1: > 0 } => "rounded roots are drawn as squares of the same area",
        Channel { R1: > 0 } or Channel { Slope: > 0 } => "rounded roots are drawn as squares of the same area, tapered flanges at their mean thickness",
        RectangularHollow => "the corners of hollow sections are drawn sharp",
        Round => "round bars are drawn as a cross of three boxes, with the same depth, area and stiffness in bending",
        CircularHollow => "round tubes are drawn square, with the same area and stiffness in bending",
        _ => null,
    };

    private Wall Moved(double y, double z) => this with { Y0 = Y0 + y, Y1 = Y1 + y, Z0 = Z0 + z, Z1 = Z1 + z };

    private static IEnumerable<Wall> Single(Shape shape)
    {
        switch (shape)
        {
            case Flat f:
                return [new(-f.T / 2, f.T / 2, -f.H / 2, f.H / 2, true)];
            case Turned { Of: Flat f }:
                return [new(-f.H / 2, f.H / 2, -f.T / 2, f.T / 2, true)];
            case Turned t:          // a quarter turn anticlockwise takes y to z, and z to −y; what was a flange carries the shear
                return Single(t.Of).Select(w => new Wall(-w.Z1, -w.Z0, w.Y0, w.Y1, !w.IsWeb) { IsRoot = w.IsRoot });
            case ISection i:
                double y = i.B / 2, z = i.H / 2, inner = z - i.Tf;
                return
                [
                    new(-i.Tw / 2, i.Tw / 2, -inner, inner, true), new(-y, y, inner, z, false), new(-y, y, -z, -inner, false),
                    .. Roots(i.R, i.Tw / 2, inner, 1), .. Roots(i.R, -i.Tw / 2, inner, -1),
                ];
            case Box b:
                return Hollow(b.B, b.H, b.Tw, b.Tf);
            case RectangularHollow r:
                return Hollow(r.B, r.H, r.T, r.T);
            case CircularHollow c:
                double inside = c.D - 2 * c.T, area = Math.PI / 4 * (c.D * c.D - inside * inside), squares = 0.75 * (c.D * c.D + inside * inside);
                // where the bore is too narrow for both, areas of bore and tube are kept
                double square = (squares - area) / 2, bore = square > inside * inside / 3 ? Math.Sqrt(square) : Math.Sqrt(Math.PI) / 2 * inside, side = Math.Sqrt(area + bore * bore), wall = (side - bore) / 2;
                return Hollow(side, side, wall, wall);
            case Round r:           // a cross as deep and as wide as the round, with its area and, upright, its second moment
                (double w, double h) = (0.48986 * r.D / 2, 0.57933 * r.D / 2);
                return [new(-w, w, -r.D / 2, r.D / 2, true), new(w, r.D / 2, -h, h, false), new(-r.D / 2, -w, -h, h, false)];
            case Channel c:
                double back = -c.Properties.Left, tf = c.FlangeAt((c.Tw + c.B) / 2);
                (z, inner) = (c.H / 2, c.H / 2 - tf);
                return
                [
                    new(back, back + c.Tw, -inner, inner, true), new(back, back + c.B, inner, z, false), new(back, back + c.B, -z, -inner, false),
                    .. Roots(c.R1, back + c.Tw, inner, 1),
                ];
            case Angle a:
                (double left, double bottom) = (-a.Properties.Left, -a.Properties.Bottom);
                double s = a.R1 < SmallRoot ? 0 : Root * a.R1;
                return
                [
                    new(left, left + a.T, bottom + a.T, bottom + a.H, true), new(left, left + a.B, bottom, bottom + a.T, false),
                    .. s > 0 ? (Wall[])[new(left + a.T, left + a.T + s, bottom + a.T, bottom + a.T + s, false)] : [],
                ];
            case Tee t:
                bottom = -t.Properties.Bottom;
                s = t.R1 < SmallRoot ? 0 : Root * t.R1;
                return
                [
                    new(-t.Tw / 2, t.Tw / 2, bottom + t.Tf, bottom + t.H, true), new(-t.B / 2, t.B / 2, bottom, bottom + t.Tf, false),
                    .. s > 0 ? (Wall[])[new(t.Tw / 2, t.Tw / 2 + s, bottom + t.Tf, bottom + t.Tf + s, false), new(-t.Tw / 2 - s, -t.Tw / 2, bottom + t.Tf, bottom + t.Tf + s, false)] : [],
                ];
            default:
                throw new SolidFaultException($"{shape.Name} is not made of rectangles: it cannot be drawn as a solid yet");
        }
    }

    // above and below, beside a web's face, on the side that a sign gives
    private static IEnumerable<Wall> Roots(double r, double web, double inner, int side)
    {
        if (r < SmallRoot)
            yield break;
        (double a, double b) = side > 0 ? (web, web + Root * r) : (web - Root * r, web);
        yield return new Wall(a, b, inner - Root * r, inner, false) { IsRoot = true };
        yield return new Wall(a, b, -inner, -inner + Root * r, false) { IsRoot = true };
    }

    private static Wall[] Hollow(double width, double depth, double web, double flange)
    {
        (double y, double z, double inner) = (width / 2, depth / 2, depth / 2 - flange);
        return [new(-y, -y + web, -inner, inner, true), new(y - web, y, -inner, inner, true), new(-y, y, inner, z, false), new(-y, y, -z, -inner, false)];
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
