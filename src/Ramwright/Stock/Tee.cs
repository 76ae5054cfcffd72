using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>A T standing on its flange, m: rolled with tapered walls, or cut from an I.</summary>
/// <param name="H">Depth, over the flange.</param>
/// <param name="B">Width of the flange.</param>
/// <param name="Tw">Thickness of the stem, at half of <paramref name="H"/> where it is tapered.</param>
/// <param name="Tf">Thickness of the flange, at a quarter of <paramref name="B"/> from the toe where it is tapered.</param>
/// <param name="R1">Root radius; may be zero.</param>
/// <param name="R2">Radius of the flange's toes; zero for a T cut from an I.</param>
/// <param name="R3">Radius of the stem's end; zero for a T cut from an I.</param>
/// <param name="Slope">Slope of the flange's upper face and of each face of the stem; 0.02 for EN 10055, zero for a T cut from an I.</param>
/// <remarks>
/// y-y runs along the flange. For the class of its plates: flange outstand c = (B − Tw)/2 − R1 over Tf, stem c = H − Tf − R1
/// over Tw, both held along one edge (EN 1993-1-1, table 5.2, sheet 2).
/// </remarks>
/// <exception cref="ArgumentOutOfRangeException">Dimensions that do not make a T.</exception>
public sealed record Tee(
    double H, double B, double Tw, double Tf, double R1, double R2 = 0, double R3 = 0, double Slope = 0) : Shape
{
    /// <summary>Depth, over the flange, m.</summary>
    public double H { get; } = DimensionCheck.Above(0, H);
    /// <summary>Width of the flange, m.</summary>
    public double B { get; } = DimensionCheck.Above(0, B);
    /// <summary>Thickness of the stem, m.</summary>
    public double Tw { get; } = DimensionCheck.Between(0, Tw, B);
    /// <summary>Thickness of the flange, m.</summary>
    public double Tf { get; } = DimensionCheck.Between(0, Tf, H);
    /// <summary>Slope of the flange's upper face and of each face of the stem, m/m.</summary>
    public double Slope { get; } = DimensionCheck.From(0, Slope, Math.Min(0.1, Math.Min(Tw / H, 4 * Tf / B)));
    /// <summary>Root radius, m.</summary>
    public double R1 { get; } = DimensionCheck.From(0, R1, Math.Min(H - Tf, (B - Tw) / 2) * (1 - Slope));
    /// <summary>Radius of the flange's toes, m.</summary>
    public double R2 { get; } = DimensionCheck.From(0, R2, Math.Min((B - Tw) / 2 - R1, Tf - Slope * B / 4));
    /// <summary>Radius of the stem's end, m.</summary>
    public double R3 { get; } = DimensionCheck.From(0, R3, Math.Min(H - Tf - R1, Tw / 2 - Slope * H / 2));

    /// <summary>The upper or lower half of an I, cut along the middle of its web; the saw's kerf is not taken off.</summary>
    /// <param name="of">The I.</param>
    public static Tee HalfOf(ISection of)
    {
        ArgumentNullException.ThrowIfNull(of);
        return new(of.H / 2, of.B, of.Tw, of.Tf, of.R) { Name = $"half {of.Name}", Source = of.Source };
    }

    /// <inheritdoc/>
    public override double Thinnest => Math.Min(Tw, Tf);

    /// <inheritdoc/>
    public override BucklingCurve CurveY => BucklingCurve.C;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => BucklingCurve.C;

    /// <summary>Thickness of the flange at <paramref name="y"/> from the middle, m, fillets left out.</summary>
    private double FlangeAt(double y) => Tf + Slope * (B / 4 - y);

    /// <summary>Half the thickness of the stem at height <paramref name="z"/> above the flange's underside, m.</summary>
    private double HalfStemAt(double z) => Tw / 2 + Slope * (H / 2 - z);

    /// <summary>Where the faces of flange and stem meet, the fillet left out: from the middle, and above the underside, m.</summary>
    private (double Y, double Z) Root
    {
        get
        {
            // y = Tw/2 + Slope (H/2 − z) and z = Tf + Slope (B/4 − y), solved for both.
            double y = (Tw / 2 + Slope * (H / 2 - Tf - Slope * B / 4)) / (1 - Slope * Slope);
            return (y, FlangeAt(y));
        }
    }

    /// <inheritdoc/>
    protected override Outline Draw()
    {
        double low = -H / 2, tip = HalfStemAt(H);
        (double y, double z) = Root;
        z += low;
        double toe = low + FlangeAt(B / 2);
        return new Outline([Loops.Rounded(
            (-B / 2, low, 0), (B / 2, low, 0), (B / 2, toe, R2), (y, z, R1), (tip, H / 2, R3),
            (-tip, H / 2, R3), (-y, z, R1), (-B / 2, toe, R2))]);
    }

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double It = TorsionConstant();
        return new ShearAndTorsion
        {
            Avz = Outline.Area() - B * Tf + (Tw + 2 * R1) * Tf / 2,
            Avy = Outline.Area() - (H - Tf) * Tw,
            Asz = 5.0 / 6 * H * Tw,
            Asy = 5.0 / 6 * B * Tf,
            It = It,
            Wt = It / Math.Max(Tf, Tw),
            Thickness = Math.Max(Tf, Tw),
        }.With(Outline);
    }

    /// <summary>Flange and stem as rectangles, plus the junction, less the free ends.</summary>
    private double TorsionConstant()
    {
        double b = B, tf = Tf, tw = Tw, r = R1;
        double alpha = -0.042 + 0.2204 * tw / tf + 0.1355 * r / tf - 0.0865 * tw * r / (tf * tf) - 0.0725 * tw * tw / (tf * tf);
        double D = ((tf + r) * (tf + r) + (r + tw / 4) * tw) / (2 * r + tf);       // circle in the junction
        return b * Math.Pow(tf, 3) / 3 + (H - tf) * Math.Pow(tw, 3) / 3 + alpha * Math.Pow(D, 4)
            - 0.21 * Math.Pow(tf, 4) - 0.105 * Math.Pow(tw, 4);
    }

    internal override IReadOnlyList<WebStrip> Webs => [new(-Tw / 2, Tw / 2, H / 2 - Tf)];

    internal override IReadOnlyList<FlangeStrip> BottomFlange
    {
        get
        {
            double inner = Root.Y + R1, outer = B / 2 - R2, low = -H / 2;
            double nearRoot = low + FlangeAt(inner), nearToe = low + FlangeAt(outer);
            return [new(inner, outer, low, nearRoot, nearToe), new(-outer, -inner, low, nearToe, nearRoot)];
        }
    }

    internal override bool HasTopFlange => false;
}
