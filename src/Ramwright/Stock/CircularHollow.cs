using Ramwright.Geometry;
using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A round tube, m.</summary>
/// <param name="D">Outside diameter.</param>
/// <param name="T">Wall.</param>
/// <param name="ColdFormed">Cold formed; otherwise hot finished.</param>
/// <exception cref="ArgumentOutOfRangeException">Dimensions that do not make a tube.</exception>
public sealed record CircularHollow(double D, double T, bool ColdFormed = false) : Shape
{
    /// <summary>Hot finished tube.</summary>
    public static readonly Citation HotSource = new("EN 10210-2:2006");

    /// <summary>Cold formed tube.</summary>
    public static readonly Citation ColdSource = new("EN 10219-2:2006");

    /// <summary>Outside diameter, m.</summary>
    public double D { get; } = DimensionCheck.Above(0, D);
    /// <summary>Wall, m.</summary>
    public double T { get; } = DimensionCheck.Between(0, T, D / 2);

    /// <inheritdoc/>
    public override BucklingCurve CurveY => ColdFormed ? BucklingCurve.C : BucklingCurve.A;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => CurveY;

    /// <inheritdoc/>
    protected override Outline Draw() => new([Loops.Circle(D), Loops.Circle(D - 2 * T).AsHole()]);

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double d = D - 2 * T, A = Math.PI / 4 * (D * D - d * d), It = Math.PI / 32 * (Math.Pow(D, 4) - Math.Pow(d, 4));
        double m2 = d * d / (D * D), nu = 0.3, q = (1 + m2) * (1 + m2);
        double k = 6 * (1 + nu) * q / ((7 + 6 * nu) * q + (20 + 12 * nu) * m2);       // Cowper: 0.53 thin, 0.89 solid
        return new ShearAndTorsion
        {
            Avz = 2 * A / Math.PI,
            Avy = 2 * A / Math.PI,
            Asz = k * A,
            Asy = k * A,
            It = It,
            Wt = 2 * It / D,
            Thickness = T,
        }.With(Outline);
    }
}
