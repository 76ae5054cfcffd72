using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>Round bar, m.</summary>
/// <param name="D">Diameter.</param>
/// <exception cref="ArgumentOutOfRangeException">A diameter that is not above zero.</exception>
public sealed record Round(double D) : Shape
{
    /// <summary>Diameter, m.</summary>
    public double D { get; } = DimensionCheck.Above(0, D);

    /// <inheritdoc/>
    public override BucklingCurve CurveY => BucklingCurve.C;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => BucklingCurve.C;

    /// <inheritdoc/>
    protected override Outline Draw() => new([Loops.Circle(D)]);

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double A = Math.PI / 4 * D * D, It = Math.PI / 32 * Math.Pow(D, 4);
        return new ShearAndTorsion
        {
            Avz = 3.0 / 4 * A,          // τmax = 4/3 V/A must stay below fy/√3
            Avy = 3.0 / 4 * A,
            Asz = 0.9 * A,
            Asy = 0.9 * A,
            It = It,
            Wt = 2 * It / D,
            Thickness = D,
        }.With(Outline);
    }
}
