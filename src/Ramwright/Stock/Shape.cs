using Ramwright.Geometry;
using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>
/// A cross-section by its dimensions: the one truth from which properties, weights, drawings and cut parts follow.
/// Immutable; properties are computed once.
/// </summary>
public abstract record Shape
{
    private SectionProperties? _properties;

    /// <summary>As it is called at the stockholder's: <c>HEB 160</c>, <c>2 x UPN 200</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Where the dimensions come from.</summary>
    public required Citation Source { get; init; }

    /// <summary>The properties, computed from the dimensions at first use.</summary>
    public SectionProperties Properties => _properties ??= Compute();

    /// <summary>The edge of the section: outer loops anticlockwise, holes clockwise, y to the right and z up, m.</summary>
    public abstract Outline Outline { get; }

    /// <summary>Buckling curve for bending about y-y; EN 1993-1-1, table 6.2.</summary>
    public abstract BucklingCurve CurveY { get; }

    /// <summary>Buckling curve for bending about z-z; EN 1993-1-1, table 6.2.</summary>
    public abstract BucklingCurve CurveZ { get; }

    /// <summary>Computes the properties from the dimensions.</summary>
    protected abstract SectionProperties Compute();
}
