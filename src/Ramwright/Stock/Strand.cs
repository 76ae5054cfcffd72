namespace Ramwright.Stock;

/// <summary>One of the single shapes that a member is made of, side by side: each bends by itself between the places where they are tied.</summary>
/// <param name="Shape">The single shape.</param>
/// <param name="Y">Its centroid from the member's, along y, m.</param>
/// <param name="Z">Its centroid from the member's, along z, m.</param>
/// <param name="Mirrored">Whether it stands left for right.</param>
public readonly record struct Strand(Shape Shape, double Y, double Z, bool Mirrored);
