using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>
/// What a beam calculation needs to know of a cross-section. Axes after EN 1993: x along the member, y across
/// (parallel to the flanges of an I), z up (parallel to its web); y-y is the strong axis of a rolled section.
/// All about the centroid, SI.
/// </summary>
public sealed record SectionProperties
{
    /// <summary>Area, m².</summary>
    public required double A { get; init; }
    /// <summary>Second moment about y-y (bending in the plane of the web), m⁴.</summary>
    public required double Iy { get; init; }
    /// <summary>Second moment about z-z, m⁴.</summary>
    public required double Iz { get; init; }
    /// <summary>∫ y z dA, m⁴; zero unless the section is an angle or the like, whose principal axes are slanted.</summary>
    public double Iyz { get; init; }
    /// <summary>Elastic modulus about y-y, the smaller of the two edges, m³.</summary>
    public required double Wely { get; init; }
    /// <summary>Elastic modulus about z-z, the smaller of the two edges, m³.</summary>
    public required double Welz { get; init; }
    /// <summary>Plastic modulus about y-y, m³.</summary>
    public required double Wply { get; init; }
    /// <summary>Plastic modulus about z-z, m³.</summary>
    public required double Wplz { get; init; }
    /// <summary>Shear area for a force along z (the web of an I), m²; EN 1993-1-1 6.2.6(3).</summary>
    public required double Avz { get; init; }
    /// <summary>Shear area for a force along y (the flanges of an I), m².</summary>
    public required double Avy { get; init; }
    /// <summary>Area that governs shear deflection along z (Timoshenko), m².</summary>
    public required double Asz { get; init; }
    /// <summary>Area that governs shear deflection along y (Timoshenko), m².</summary>
    public required double Asy { get; init; }
    /// <summary>Saint-Venant torsion constant, m⁴.</summary>
    public required double It { get; init; }
    /// <summary>Torsion modulus: torque over the greatest shear stress, m³.</summary>
    public required double Wt { get; init; }
    /// <summary>Warping constant, m⁶; zero where warping does not matter.</summary>
    public required double Iw { get; init; }
    /// <summary>Distance from the centroid to the top edge (+z), m.</summary>
    public required double Top { get; init; }
    /// <summary>Distance from the centroid to the bottom edge (−z), m.</summary>
    public required double Bottom { get; init; }
    /// <summary>Distance from the centroid to the right edge (+y), m.</summary>
    public required double Right { get; init; }
    /// <summary>Distance from the centroid to the left edge (−y), m.</summary>
    public required double Left { get; init; }
    /// <summary>How far the shear centre lies from the centroid along y, m; negative to the left.</summary>
    public double ShearCentreY { get; init; }
    /// <summary>The thickness that decides the yield strength, m: the thickest part of the section.</summary>
    public required double Thickness { get; init; }

    /// <summary>Depth, m.</summary>
    public double Height => Top + Bottom;
    /// <summary>Width, m.</summary>
    public double Width => Left + Right;
    /// <summary>Radius of gyration about y-y, m.</summary>
    public double RadiusY => Math.Sqrt(Iy / A);
    /// <summary>Radius of gyration about z-z, m.</summary>
    public double RadiusZ => Math.Sqrt(Iz / A);
    /// <summary>Second moments about the principal axes: those of y-y and z-z unless these are slanted.</summary>
    public PrincipalMoments Principal => PrincipalMoments.Of(Iy, Iz, Iyz);
    /// <summary>Least radius of gyration, m: about v-v.</summary>
    public double LeastRadius => Math.Sqrt(Principal.Iv / A);
}
