using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>A shape turned a quarter anticlockwise, so that its weak axis carries the bending: what pointed right points up.</summary>
/// <param name="Of">The shape before turning.</param>
public sealed record Turned(Shape Of) : Shape
{
    /// <summary>The shape before turning.</summary>
    public Shape Of { get; } = Of ?? throw new ArgumentNullException(nameof(Of));

    /// <inheritdoc/>
    /// <remarks>A quarter turn anticlockwise takes y to z, and z to −y.</remarks>
    protected override IReadOnlyList<Strand> Split()
    {
        IReadOnlyList<Strand> before = Of.Strands;
        return before.Count == 1
            ? base.Split()
            : [.. before.Select(s => new Strand(new Turned(s.Shape) { Name = Name, Source = Source }, -s.Z, s.Y, s.Mirrored))];
    }

    /// <inheritdoc/>
    public override double Thinnest => Of.Thinnest;

    /// <inheritdoc/>
    public override BucklingCurve CurveY => Of.CurveZ;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => Of.CurveY;

    /// <inheritdoc/>
    protected override Outline Draw() => Of.Outline.QuarterTurned();

    /// <inheritdoc/>
    /// <remarks>A turned channel has its shear centre below the centroid, on the line of a vertical load: ShearCentreY is zero.</remarks>
    protected override SectionProperties Compute()
    {
        SectionProperties p = Of.Properties;
        return p with
        {
            Iy = p.Iz,
            Iz = p.Iy,
            Iyz = -p.Iyz,
            Wely = p.Welz,
            Welz = p.Wely,
            Wply = p.Wplz,
            Wplz = p.Wply,
            Avz = p.Avy,
            Avy = p.Avz,
            Asz = p.Asy,
            Asy = p.Asz,
            Top = p.Right,
            Bottom = p.Left,
            Left = p.Top,
            Right = p.Bottom,
            ShearCentreY = 0,
        };
    }
}
