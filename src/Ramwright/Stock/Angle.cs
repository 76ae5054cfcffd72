using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>A rolled angle, its back to the left and its heel at the bottom, m; the leg that stands may be the longer or the shorter.</summary>
/// <param name="H">Length of the standing leg, over the heel.</param>
/// <param name="B">Length of the lying leg, over the heel.</param>
/// <param name="T">Thickness of both legs.</param>
/// <param name="R1">Root radius; may be zero.</param>
/// <param name="R2">Radius of the toes; may be zero.</param>
/// <remarks>
/// y-y and z-z run along the legs; the angle bends about neither alone, but about its slanted axes u-u and v-v, see
/// <see cref="SectionProperties.Principal"/>. For the class of its plates, EN 1993-1-1 table 5.2 (sheet 3) takes the whole
/// legs: H/T and (B + H)/2T. Its shear centre lies where the middle lines of the legs cross.
/// </remarks>
/// <exception cref="ArgumentOutOfRangeException">Dimensions that do not make an angle.</exception>
public sealed record Angle(double H, double B, double T, double R1, double R2 = 0) : Shape
{
    /// <summary>Length of the standing leg, over the heel, m.</summary>
    public double H { get; } = DimensionCheck.Above(0, H);
    /// <summary>Length of the lying leg, over the heel, m.</summary>
    public double B { get; } = DimensionCheck.Above(0, B);
    /// <summary>Thickness of both legs, m.</summary>
    public double T { get; } = DimensionCheck.Between(0, T, Math.Min(H, B));
    /// <summary>Root radius, m.</summary>
    public double R1 { get; } = DimensionCheck.From(0, R1, Math.Min(H, B) - T);
    /// <summary>Radius of the toes, m.</summary>
    public double R2 { get; } = DimensionCheck.UpTo(0, R2, Math.Min(T, Math.Min(H, B) - T - R1));

    /// <inheritdoc/>
    public override BucklingCurve CurveY => BucklingCurve.B;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => BucklingCurve.B;

    /// <inheritdoc/>
    protected override Outline Draw()
    {
        double bottom = -H / 2, top = H / 2, inner = -H / 2 + T;
        return new Outline([Loops.Rounded((0, bottom, 0), (B, bottom, 0), (B, inner, R2), (T, inner, R1), (T, top, R2), (0, top, 0))]);
    }

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double It = TorsionConstant();
        return new ShearAndTorsion
        {
            Avz = 2.0 / 3 * H * T,      // the leg is a bar free at its end: τmax must stay below fy/√3
            Avy = 2.0 / 3 * B * T,
            Asz = 5.0 / 6 * H * T,
            Asy = 5.0 / 6 * B * T,
            It = It,
            Wt = It / T,
            Thickness = T,
            ShearCentre = T / 2,
        }.With(Outline);
    }

    /// <summary>Two rectangles, plus the junction, less the free ends; 2 % over the exact value, for the toes are rounded.</summary>
    private double TorsionConstant()
    {
        double t = T, r = R1, alpha = 0.0768 + 0.0479 * r / t;
        double D = 2 * (3 * r + 2 * t - Math.Sqrt(2) * (2 * r + t));       // circle in the junction
        return (B + H - t) * t * t * t / 3 + alpha * Math.Pow(D, 4) - 0.21 * Math.Pow(t, 4);
    }

    internal override IReadOnlyList<WebStrip> Webs => [new(0, T, H / 2 - T)];

    internal override IReadOnlyList<FlangeStrip> BottomFlange => [new(T + R1, B - R2, -H / 2, -H / 2 + T, -H / 2 + T)];

    internal override bool HasTopFlange => false;
}
