using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>A box welded from four plates, m: two flanges of full width with two webs between them, flush at the sides.</summary>
/// <param name="H">Depth over the flanges.</param>
/// <param name="B">Width of the flanges, over the webs.</param>
/// <param name="Tw">Thickness of each web.</param>
/// <param name="Tf">Thickness of each flange.</param>
/// <remarks>The four corner welds must run the whole length; the properties take the plates as one piece.</remarks>
/// <exception cref="ArgumentOutOfRangeException">Dimensions that do not make a box.</exception>
public sealed record Box(double H, double B, double Tw, double Tf) : Shape
{
    /// <summary>Depth over the flanges, m.</summary>
    public double H { get; } = DimensionCheck.Above(0, H);
    /// <summary>Width of the flanges, over the webs, m.</summary>
    public double B { get; } = DimensionCheck.Above(0, B);
    /// <summary>Thickness of each web, m.</summary>
    public double Tw { get; } = DimensionCheck.Between(0, Tw, B / 2);
    /// <summary>Thickness of each flange, m.</summary>
    public double Tf { get; } = DimensionCheck.Between(0, Tf, H / 2);

    /// <inheritdoc/>
    public override double Thinnest => Math.Min(Tw, Tf);

    /// <inheritdoc/>
    /// <remarks>b, but c for the stocky walls that table 6.2 names together with thick welds, whose size is not known here.</remarks>
    public override BucklingCurve CurveY => B / Tf < 30 || H / Tw < 30 ? BucklingCurve.C : BucklingCurve.B;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => CurveY;

    /// <inheritdoc/>
    protected override Outline Draw() => new(
    [
        Loops.Rectangle(-B / 2, B / 2, -H / 2, H / 2),
        Loops.Rectangle(-B / 2 + Tw, B / 2 - Tw, -H / 2 + Tf, H / 2 - Tf).AsHole(),
    ]);

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double hw = H - 2 * Tf, A = 2 * B * Tf + 2 * hw * Tw;
        double hm = H - Tf, bm = B - Tw, Am = hm * bm;              // middle lines and the area they enclose
        double closed = 4 * Am * Am / (2 * hm / Tw + 2 * bm / Tf);
        double open = 2 * (hm * Math.Pow(Tw, 3) + bm * Math.Pow(Tf, 3)) / 3;
        double It = closed + open;

        // The closed tube's even share and the wall's own share of the shear stress add up in the worse of the two walls.
        double perTwist(double t) => closed / (2 * Am * t) + t;
        return new ShearAndTorsion
        {
            Avz = 2 * hw * Tw,
            Avy = A - 2 * hw * Tw,
            Asz = 2 * Tw * hm,
            Asy = 2 * Tf * bm,
            It = It,
            Wt = It / Math.Max(perTwist(Tw), perTwist(Tf)),
            Thickness = Math.Max(Tw, Tf),
        }.With(Outline);
    }

    internal override IReadOnlyList<WebStrip> Webs =>
        [new(-B / 2, -B / 2 + Tw, H / 2 - Tf), new(B / 2 - Tw, B / 2, H / 2 - Tf)];

    internal override IReadOnlyList<FlangeStrip> BottomFlange =>
        [new(-B / 2 + Tw, B / 2 - Tw, -H / 2, -H / 2 + Tf, -H / 2 + Tf)];
}
