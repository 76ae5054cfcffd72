using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>What the outline alone does not tell: shear areas and torsion, by the rules of each kind of section.</summary>
internal readonly record struct ShearAndTorsion
{
    public required double Avz { get; init; }
    public required double Avy { get; init; }
    public required double Asz { get; init; }
    public required double Asy { get; init; }
    public required double It { get; init; }
    public required double Wt { get; init; }
    public double Iw { get; init; }
    public required double Thickness { get; init; }

    /// <summary>Shear centre in the outline's own coordinates, m; NaN where it lies at the centroid.</summary>
    public double ShearCentre { get; init; } = double.NaN;

    public ShearAndTorsion()
    {
    }

    /// <summary>Joins them with what the outline tells.</summary>
    public SectionProperties With(Outline outline)
    {
        AreaMoments m = outline.Moments();
        Extents e = outline.Extents();
        double top = e.Top - m.Z, bottom = m.Z - e.Bottom, right = e.Right - m.Y, left = m.Y - e.Left;
        return new SectionProperties
        {
            A = m.A,
            Iy = m.Iy,
            Iz = m.Iz,
            Iyz = Math.Abs(m.Iyz) > 1e-9 * (m.Iy + m.Iz) ? m.Iyz : 0,       // what rounding leaves is none
            Wely = m.Iy / Math.Max(top, bottom),
            Welz = m.Iz / Math.Max(left, right),
            Wply = outline.PlasticModulus(),
            Wplz = outline.QuarterTurned().PlasticModulus(),
            Avz = Avz,
            Avy = Avy,
            Asz = Asz,
            Asy = Asy,
            It = It,
            Wt = Wt,
            Iw = Iw,
            Top = top,
            Bottom = bottom,
            Right = right,
            Left = left,
            ShearCentreY = double.IsNaN(ShearCentre) ? 0 : ShearCentre - m.Y,
            Thickness = Thickness,
        };
    }
}
