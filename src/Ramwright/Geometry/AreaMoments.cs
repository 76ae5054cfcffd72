namespace Ramwright.Geometry;

/// <summary>Area of an outline, its centroid, and its second moments about axes through the centroid.</summary>
/// <param name="A">Area, m².</param>
/// <param name="Y">Centroid across, m.</param>
/// <param name="Z">Centroid up, m.</param>
/// <param name="Iy">∫ z² dA about the centroid, m⁴: bending about the horizontal axis y-y.</param>
/// <param name="Iz">∫ y² dA about the centroid, m⁴: bending about the vertical axis z-z.</param>
/// <param name="Iyz">∫ y z dA about the centroid, m⁴; zero where one axis is an axis of symmetry.</param>
public readonly record struct AreaMoments(double A, double Y, double Z, double Iy, double Iz, double Iyz);
