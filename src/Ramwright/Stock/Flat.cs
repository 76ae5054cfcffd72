using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>Flat or square bar, or a strip of plate, standing on edge, m.</summary>
/// <param name="H">Height.</param>
/// <param name="T">Thickness, across.</param>
/// <exception cref="ArgumentOutOfRangeException">A dimension that is not above zero.</exception>
public sealed record Flat(double H, double T) : Shape
{
    /// <summary>Height, m.</summary>
    public double H { get; } = DimensionCheck.Above(0, H);
    /// <summary>Thickness, across, m.</summary>
    public double T { get; } = DimensionCheck.Above(0, T);

    /// <inheritdoc/>
    public override BucklingCurve CurveY => BucklingCurve.C;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => BucklingCurve.C;

    /// <inheritdoc/>
    protected override Outline Draw() => new([Loops.Rectangle(-T / 2, T / 2, -H / 2, H / 2)]);

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double A = H * T;
        (double It, double Wt) = RectangleTorsion.Of(H, T);
        return new ShearAndTorsion
        {
            Avz = 2.0 / 3 * A,          // τmax = 3/2 V/A must stay below fy/√3
            Avy = 2.0 / 3 * A,
            Asz = 5.0 / 6 * A,
            Asy = 5.0 / 6 * A,
            It = It,
            Wt = Wt,
            Thickness = Math.Min(H, T),
        }.With(Outline);
    }

    internal override IReadOnlyList<WebStrip> Webs => [new(-T / 2, T / 2, H / 2)];
}
