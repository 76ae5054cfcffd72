using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>Two of a shape side by side, level with each other and bent together.</summary>
/// <param name="Half">One of the two.</param>
/// <param name="Apart">Clear gap between them, m; zero where they touch.</param>
/// <param name="ToesTogether">Channels with their toes towards each other; otherwise back to back.</param>
/// <param name="Tied">
/// Tied together by plates or spacers along their length, so that they bend about z-z as one piece. Otherwise each bends
/// about its own z-z, and Iz and its moduli are twice those of one. y-y is the same either way.
/// </param>
/// <exception cref="ArgumentException">A pair of pairs, or a gap below zero.</exception>
public sealed record Pair(Shape Half, double Apart = 0, bool ToesTogether = false, bool Tied = true) : Shape
{
    /// <summary>One of the two.</summary>
    public Shape Half { get; } = Half is null or Pair
        ? throw new ArgumentException("A pair is made of two single shapes.", nameof(Half))
        : Half;

    /// <summary>Clear gap between the two, m.</summary>
    public double Apart { get; } = DimensionCheck.From(0, Apart, double.PositiveInfinity);

    /// <inheritdoc/>
    protected override IReadOnlyList<Strand> Split()
    {
        SectionProperties half = Half.Properties;
        double y = Apart / 2 + (ToesTogether ? half.Right : half.Left);
        return [new Strand(Half, y, 0, ToesTogether), new Strand(Half, -y, 0, !ToesTogether)];
    }

    /// <inheritdoc/>
    public override double Thinnest => Half.Thinnest;

    /// <inheritdoc/>
    public override BucklingCurve CurveY => Half.CurveY;

    /// <inheritdoc/>
    /// <remarks>Table 6.2 does not list pairs; c, or worse where one half's is.</remarks>
    public override BucklingCurve CurveZ => Half.CurveZ > BucklingCurve.C ? Half.CurveZ : BucklingCurve.C;

    /// <summary>The same pair with another clear gap, m.</summary>
    public Pair WithGap(double apart) => new(Half, apart, ToesTogether, Tied) { Name = Name, Source = Source };

    /// <inheritdoc/>
    protected override Outline Draw()
    {
        Outline right = ToesTogether ? Half.Outline.Mirrored() : Half.Outline;
        right = right.Moved(Apart / 2 - right.Extents().Left, 0);
        return right.With(right.Mirrored());
    }

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        SectionProperties half = Half.Properties;
        SectionProperties asOne = new ShearAndTorsion
        {
            Avz = 2 * half.Avz,
            Avy = 2 * half.Avy,
            Asz = 2 * half.Asz,
            Asy = 2 * half.Asy,
            It = 2 * half.It,       // each twists on its own: the ties are not counted as a closed box
            Wt = 2 * half.Wt,
            Iw = 2 * half.Iw,
            Thickness = half.Thickness,
        }.With(Outline);
        return Tied ? asOne : asOne with { Iz = 2 * half.Iz, Welz = 2 * half.Welz, Wplz = 2 * half.Wplz };
    }
}
