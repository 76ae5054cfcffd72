using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>A rolled channel, its web to the left, m; flanges parallel, or tapered on the inside.</summary>
/// <param name="H">Depth.</param>
/// <param name="B">Width of the flanges, over the web.</param>
/// <param name="Tw">Thickness of the web.</param>
/// <param name="Tf">Thickness of the flanges, at <paramref name="TfAt"/> from the toe where they are tapered.</param>
/// <param name="R1">Root radius.</param>
/// <param name="R2">Toe radius; zero for parallel flanges.</param>
/// <param name="Slope">Slope of the inner faces, 0.08 for UPN up to 300; zero for parallel flanges.</param>
/// <param name="TfAt">Where <paramref name="Tf"/> is measured, from the toe; zero stands for half the width.</param>
/// <exception cref="ArgumentOutOfRangeException">Dimensions that do not make a channel.</exception>
public sealed record Channel(
    double H, double B, double Tw, double Tf, double R1, double R2 = 0, double Slope = 0, double TfAt = 0) : Shape
{
    /// <summary>Depth, m.</summary>
    public double H { get; } = DimensionCheck.Above(0, H);
    /// <summary>Width of the flanges, over the web, m.</summary>
    public double B { get; } = DimensionCheck.Above(0, B);
    /// <summary>Thickness of the web, m.</summary>
    public double Tw { get; } = DimensionCheck.Between(0, Tw, B);
    /// <summary>Thickness of the flanges, m.</summary>
    public double Tf { get; } = DimensionCheck.Between(0, Tf, H / 2);
    /// <summary>Root radius, m.</summary>
    public double R1 { get; } = DimensionCheck.From(0, R1, Math.Min(H / 2 - Tf - Slope * (B - MeasuredAt(B, TfAt) - Tw), B - Tw));
    /// <summary>Toe radius, m.</summary>
    public double R2 { get; } = DimensionCheck.From(0, R2, Math.Min(B - Tw - R1, Tf - Slope * MeasuredAt(B, TfAt)));
    /// <summary>Slope of the inner faces, m/m.</summary>
    public double Slope { get; } = DimensionCheck.From(0, Slope, 0.3);
    /// <summary>Where the flange's thickness is measured, from the toe, m.</summary>
    public double TfAt { get; } = DimensionCheck.Between(0, MeasuredAt(B, TfAt), B);

    /// <inheritdoc/>
    public override BucklingCurve CurveY => BucklingCurve.C;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => BucklingCurve.C;

    private static double MeasuredAt(double b, double tfAt) => tfAt == 0 ? b / 2 : tfAt;

    /// <summary>Thickness of the flange at <paramref name="y"/> from the back of the web, m, fillets left out.</summary>
    public double FlangeAt(double y) => Tf + Slope * (B - TfAt - y);

    /// <inheritdoc/>
    protected override Outline Draw()
    {
        double z = H / 2, root = z - FlangeAt(Tw), toe = z - FlangeAt(B);
        return new Outline([Loops.Rounded(
            (0, -z, 0), (B, -z, 0), (B, -toe, R2), (Tw, -root, R1), (Tw, root, R1), (B, toe, R2), (B, z, 0), (0, z, 0))]);
    }

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double A = Outline.Area();
        double It = TorsionConstant();
        (double e, double Iw) = ShearCentre(Outline.Moments().Iy);
        return new ShearAndTorsion
        {
            Avz = A - 2 * B * Tf + (Tw + R1) * Tf,
            Avy = A - (H - 2 * Tf) * Tw,
            Asz = (H - Tf) * Tw,
            Asy = 5.0 / 6 * 2 * B * Tf,
            It = It,
            Wt = It / Math.Max(Tf, Tw),
            Iw = Iw,
            Thickness = Math.Max(Tf, Tw),
            ShearCentre = Tw / 2 - e,
        }.With(Outline);
    }

    /// <summary>Two flanges and a web as rectangles, plus the junctions, less the free ends.</summary>
    private double TorsionConstant()
    {
        double b = B, tf = Tf, tw = Tw, r = R1;
        double alpha = -0.0908 + 0.2621 * tw / tf + 0.1231 * r / tf - 0.0752 * tw * r / (tf * tf) - 0.0945 * tw * tw / (tf * tf);
        double D = 2 * (3 * r + tw + tf - Math.Sqrt(2 * (2 * r + tw) * (2 * r + tf)));      // circle in the junction
        return 2.0 / 3 * b * Math.Pow(tf, 3) + (H - 2 * tf) * Math.Pow(tw, 3) / 3
            + 2 * alpha * Math.Pow(D, 4) - 0.42 * Math.Pow(tf, 4);
    }

    /// <summary>
    /// Distance e of the shear centre outside the middle of the web, and the warping constant, by Vlasov's thin-walled
    /// theory on the middle lines, with the flange's taper; within 2 % of the tables for UPN.
    /// </summary>
    private (double E, double Iw) ShearCentre(double Iy)
    {
        double length = B - Tw / 2;                     // flange from the middle of the web to the toe
        double Thickness(double x) => FlangeAt(x + Tw / 2);
        double Middle(double x) => H / 2 - Thickness(x) / 2;
        double Q(double x) => Gauss(x, length, s => Middle(s) * Thickness(s));

        // Shear flow of both flanges, turned about the middle of the web; the tapered middle line rises by Slope/2.
        double e = 2 * Gauss(0, length, x => Q(x) * (Middle(x) - x * Slope / 2)) / Iy;

        double h = Middle(0);
        double Iw = 2 * Gauss(0, length, x => Thickness(x) * (e - x) * (e - x) * h * h) + 2.0 / 3 * Tw * e * e * h * h * h;
        return (e, Iw);
    }

    // Three points: exact up to the fifth power, and the fourth is the highest met.
    private static double Gauss(double from, double to, Func<double, double> f)
    {
        double half = (to - from) / 2, mid = (to + from) / 2, d = half * Math.Sqrt(0.6);
        return half * (5 * f(mid - d) + 8 * f(mid) + 5 * f(mid + d)) / 9;
    }

    internal override IReadOnlyList<WebStrip> Webs => [new(0, Tw, H / 2 - FlangeAt(Tw))];

    internal override IReadOnlyList<FlangeStrip> BottomFlange
    {
        get
        {
            double left = Tw + R1, right = B - R2;
            return [new(left, right, -H / 2, -H / 2 + FlangeAt(left), -H / 2 + FlangeAt(right))];
        }
    }
}
