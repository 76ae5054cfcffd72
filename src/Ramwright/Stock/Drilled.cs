using System.Globalization;
using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>The net section of a shape through a row of holes or slots.</summary>
/// <remarks>
/// Area, moments, moduli and shear areas are net, the axis shifted to the net centroid. Torsion and the areas of shear
/// deflection stay those of the whole member: one row of holes changes neither along its length. Holes are spread evenly
/// over the straight part of their wall. Pairs are drilled through both halves, turned shapes before turning.
/// </remarks>
public sealed record Drilled : Shape
{
    private readonly Shape _whole;

    private Drilled(Shape whole, HolePlace place, double width, int count, double offset)
    {
        _whole = whole;
        Place = place;
        Width = width;
        Count = count;
        Offset = offset;
    }

    /// <summary>The shape before drilling.</summary>
    public Shape Of => _whole;
    /// <summary>Which wall the holes go through.</summary>
    public HolePlace Place { get; }
    /// <summary>Width of each hole across the member's length, m.</summary>
    public double Width { get; }
    /// <summary>How many stand side by side in the cross-section.</summary>
    public int Count { get; }
    /// <summary>How far the holes in a web stand above mid-depth, m.</summary>
    public double Offset { get; }

    /// <inheritdoc/>
    public override double Thinnest => _whole.Thinnest;

    /// <inheritdoc/>
    public override BucklingCurve CurveY => _whole.CurveY;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => _whole.CurveZ;

    /// <summary>Drills a shape.</summary>
    /// <param name="shape">What to drill.</param>
    /// <param name="place">Which wall the holes go through.</param>
    /// <param name="width">Width of each hole across the member's length, m, above zero.</param>
    /// <param name="count">How many stand side by side in one cross-section; of a pair's flanges half of them in each half.</param>
    /// <param name="offset">How far the holes in a web stand above mid-depth, m.</param>
    /// <exception cref="ArgumentException">The holes do not fit; the message says why: see <see cref="WhyNot"/>.</exception>
    public static Shape Through(Shape shape, HolePlace place, double width, int count = 1, double offset = 0)
    {
        if (WhyNot(shape, place, width, count, offset) is { } reason)
            throw new ArgumentException(reason);

        return shape switch
        {
            Pair p => new Pair(Through(p.Half, place, width, InEachHalf(place, count), offset), p.Apart, p.ToesTogether, p.Tied)
            {
                Name = p.Name,
                Source = p.Source,
            },
            Turned t => new Turned(Through(t.Of, place, width, count, offset)) { Name = t.Name, Source = t.Source },
            _ => new Drilled(shape, place, width, count, offset) { Name = shape.Name, Source = shape.Source },
        };
    }

    /// <summary>Why the holes do not fit, in words for the person who asked, or null where they do.</summary>
    public static string? WhyNot(Shape shape, HolePlace place, double width, int count = 1, double offset = 0)
    {
        ArgumentNullException.ThrowIfNull(shape);
        if (!(width > 0) || !double.IsFinite(width))
            return "a hole is wider than nothing";
        if (count < 1)
            return "holes are counted from one";
        if (!double.IsFinite(offset))
            return "the holes stand a finite way from mid-depth";
        if (shape is Pair p)
            return WhyNot(p.Half, place, width, InEachHalf(place, count), offset);
        if (shape is Turned t)
            return WhyNot(t.Of, place, width, count, offset);

        if (place == HolePlace.BothFlanges && shape.BottomFlange.Count > 0 && !shape.HasTopFlange)
            return $"{shape.Name} has one flange only";

        return place == HolePlace.Web ? WhyNotInWeb(shape, width, count, offset) : WhyNotInFlange(shape, width, count);
    }

    private static string? WhyNotInWeb(Shape shape, double width, int count, double offset)
    {
        if (shape.Webs.Count == 0)
            return $"{shape.Name} has no web to drill";

        double room = 2 * shape.Webs.Min(w => w.HalfDepth);
        return count * width + 2 * Math.Abs(offset) < room
            ? null
            : $"{Holes(count, width)} not fit in the {Mm(room)} clear height of the web of {shape.Name}";
    }

    private static string? WhyNotInFlange(Shape shape, double width, int count)
    {
        IReadOnlyList<FlangeStrip> strips = shape.BottomFlange;
        if (strips.Count == 0)
            return $"{shape.Name} has no flange to drill";

        for (int i = 0; i < strips.Count; i++)
        {
            double room = strips[i].Right - strips[i].Left;
            if (InStrip(i, strips.Count, count) * width >= room)
                return $"{Holes(count, width)} not fit in the flange of {shape.Name}: "
                    + $"{Mm(room)} of it is straight" + (strips.Count > 1 ? " on each side of the web" : "");
        }

        return null;
    }

    /// <inheritdoc/>
    protected override Outline Draw()
    {
        var holes = new Outline([.. Place == HolePlace.Web ? WebHoles() : FlangeHoles()]);
        return Place == HolePlace.BothFlanges
            ? _whole.Outline.With(holes).With(holes.Upended())
            : _whole.Outline.With(holes);
    }

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        SectionProperties whole = _whole.Properties;
        double cutWeb = 0, cutFlange = 0;
        double lost = whole.A - Outline.Area();
        if (Place == HolePlace.Web)
            cutWeb = lost;
        else
            cutFlange = lost;

        return new ShearAndTorsion
        {
            // The same share of the shear area goes as of the material that carries it.
            Avz = whole.Avz * (1 - cutWeb / WebArea),
            Avy = whole.Avy - Math.Min(cutFlange, 0.9 * whole.Avy),
            Asz = whole.Asz,
            Asy = whole.Asy,
            It = whole.It,
            Wt = whole.Wt,
            Iw = whole.Iw,
            Thickness = whole.Thickness,
        }.With(Outline) with
        { ShearCentreY = whole.ShearCentreY };
    }

    private double WebArea => _whole.Webs.Sum(w => w.Right - w.Left) * _whole.Properties.Height;

    private IEnumerable<IReadOnlyList<Corner>> WebHoles()
    {
        foreach (WebStrip web in _whole.Webs)
        {
            double cell = 2 * (web.HalfDepth - Math.Abs(Offset)) / Count;
            for (int i = 0; i < Count; i++)
            {
                double z = Offset + cell * (i - (Count - 1) / 2.0);
                yield return Loops.Rectangle(web.Left, web.Right, z - Width / 2, z + Width / 2).AsHole();
            }
        }
    }

    private IEnumerable<IReadOnlyList<Corner>> FlangeHoles()
    {
        IReadOnlyList<FlangeStrip> strips = _whole.BottomFlange;
        for (int s = 0; s < strips.Count; s++)
        {
            FlangeStrip strip = strips[s];
            int count = InStrip(s, strips.Count, Count);
            double cell = (strip.Right - strip.Left) / Math.Max(count, 1);
            for (int i = 0; i < count; i++)
            {
                double left = strip.Left + cell * (i + 0.5) - Width / 2, right = left + Width;
                IReadOnlyList<Corner> hole =
                    [new(left, strip.Outer), new(right, strip.Outer), new(right, strip.Inner(right)), new(left, strip.Inner(left))];
                yield return hole.AsHole();
            }
        }
    }

    private static int InEachHalf(HolePlace place, int count) => place == HolePlace.Web ? count : (count + 1) / 2;

    /// <summary>An odd hole goes to the first strip.</summary>
    private static int InStrip(int strip, int strips, int count) => count / strips + (strip < count % strips ? 1 : 0);

    private static string Holes(int count, double width) =>
        count == 1 ? $"a hole of {Mm(width)} does" : $"{count} holes of {Mm(width)} do";

    private static string Mm(double m) => (m * 1000).ToString("0.#", CultureInfo.InvariantCulture) + " mm";
}
