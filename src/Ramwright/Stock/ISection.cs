using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>A rolled I- or H-section with parallel flanges, m.</summary>
/// <param name="H">Depth.</param>
/// <param name="B">Width of the flanges.</param>
/// <param name="Tw">Thickness of the web.</param>
/// <param name="Tf">Thickness of the flanges.</param>
/// <param name="R">Root radius; may be zero.</param>
/// <exception cref="ArgumentOutOfRangeException">Dimensions that do not make an I.</exception>
public sealed record ISection(double H, double B, double Tw, double Tf, double R) : Shape
{
    /// <summary>Depth, m.</summary>
    public double H { get; } = DimensionCheck.Above(0, H);
    /// <summary>Width of the flanges, m.</summary>
    public double B { get; } = DimensionCheck.Above(0, B);
    /// <summary>Thickness of the web, m.</summary>
    public double Tw { get; } = DimensionCheck.Between(0, Tw, B);
    /// <summary>Thickness of the flanges, m.</summary>
    public double Tf { get; } = DimensionCheck.Between(0, Tf, H / 2);
    /// <summary>Root radius, m.</summary>
    public double R { get; } = DimensionCheck.From(0, R, Math.Min(H / 2 - Tf, (B - Tw) / 2));

    /// <inheritdoc/>
    public override double Thinnest => Math.Min(Tw, Tf);

    /// <inheritdoc/>
    public override BucklingCurve CurveY => Curves.Y;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => Curves.Z;

    /// <summary>Clear height between the flanges, m.</summary>
    public double WebHeight => H - 2 * Tf;

    private (BucklingCurve Y, BucklingCurve Z) Curves => (H / B > 1.2, Tf) switch
    {
        (true, <= 0.040) => (BucklingCurve.A, BucklingCurve.B),
        (true, <= 0.100) => (BucklingCurve.B, BucklingCurve.C),
        (false, <= 0.100) => (BucklingCurve.B, BucklingCurve.C),
        _ => (BucklingCurve.D, BucklingCurve.D),
    };

    /// <inheritdoc/>
    protected override Outline Draw()
    {
        double y = B / 2, z = H / 2, w = Tw / 2, i = H / 2 - Tf;
        return new Outline([Loops.Rounded(
            (-y, -z, 0), (y, -z, 0), (y, -i, 0), (w, -i, R), (w, i, R), (y, i, 0),
            (y, z, 0), (-y, z, 0), (-y, i, 0), (-w, i, R), (-w, -i, R), (-y, -i, 0))]);
    }

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double h = H, b = B, tw = Tw, tf = Tf, r = R, hw = WebHeight;
        double A = Outline.Area();
        double D = ((r + tw / 2) * (r + tw / 2) + (r + tf) * (r + tf) - r * r) / (2 * r + tf);   // circle in the junction
        double It = 2.0 / 3 * (b - 0.63 * tf) * tf * tf * tf + hw * tw * tw * tw / 3
            + 2 * (tw / tf) * (0.145 + 0.1 * r / tf) * Math.Pow(D, 4);
        return new ShearAndTorsion
        {
            Avz = Math.Max(A - 2 * b * tf + (tw + 2 * r) * tf, hw * tw),
            Avy = A - hw * tw,          // listed for welded sections; rolled ones are taken alike
            Asz = (h - tf) * tw,
            Asy = 5.0 / 6 * 2 * b * tf,
            It = It,
            Wt = It / Math.Max(tf, tw),
            Iw = tf * b * b * b * (h - tf) * (h - tf) / 24,
            Thickness = Math.Max(tf, tw),
        }.With(Outline);
    }

    internal override IReadOnlyList<WebStrip> Webs => [new(-Tw / 2, Tw / 2, H / 2 - Tf)];

    internal override IReadOnlyList<FlangeStrip> BottomFlange =>
    [
        new(Tw / 2 + R, B / 2, -H / 2, -H / 2 + Tf, -H / 2 + Tf),
        new(-B / 2, -Tw / 2 - R, -H / 2, -H / 2 + Tf, -H / 2 + Tf),
    ];
}
