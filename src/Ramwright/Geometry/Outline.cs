namespace Ramwright.Geometry;

/// <summary>A corner of an outline, and how the edge to the next corner bends.</summary>
/// <param name="Y">Across, m.</param>
/// <param name="Z">Up, m.</param>
/// <param name="Bulge">Tangent of a quarter of the arc's angle to the next corner, as in the DXF format; positive turns left; 0 is straight.</param>
public readonly record struct Corner(double Y, double Z, double Bulge = 0);

/// <summary>The edge of a flat shape: closed loops, outer ones anticlockwise, holes clockwise.</summary>
/// <param name="Loops">Each loop closes on its first corner.</param>
public sealed record Outline(IReadOnlyList<IReadOnlyList<Corner>> Loops);
