using Ramwright.Geometry;

namespace Ramwright.Strength;

/// <summary>
/// The face that a part stands on and is welded to, with two directions in it. The part stands on the side of
/// <see cref="Normal"/>. For a member cut at x with EN axes take U = y, V = z: the normal is the member's x, and a force
/// (N, Vy, Vz) with a moment (T, My, Mz) is what the member's <see cref="Frame.Actions"/> hold.
/// </summary>
/// <param name="Origin">Centre of the welded outline, m.</param>
/// <param name="U">One direction in the face; made a unit vector.</param>
/// <param name="V">The other; its part square to U counts.</param>
public sealed record WeldPlane(Vector Origin, Vector U, Vector V)
{
    /// <summary>Section axes of a member along X: y to Y, z to Z, at the origin.</summary>
    public static readonly WeldPlane OfSection = new(Vector.Zero, Vector.Deep, Vector.Up);

    /// <summary>Unit vector in the face.</summary>
    public Vector U { get; } = U.Length > 0 ? U.Unit : throw new ArgumentException("must not be zero", nameof(U));

    /// <summary>Unit vector in the face, square to <see cref="U"/>.</summary>
    public Vector V { get; } = U.Cross(V).Length > 1e-9 * U.Length * V.Length
        ? U.Cross(V).Cross(U).Unit
        : throw new ArgumentException("must not be along U", nameof(V));

    /// <summary>Unit normal, to the side where the part stands.</summary>
    public Vector Normal => U.Cross(V);

    /// <summary>A point of the face.</summary>
    public Vector At(double u, double v) => Origin + u * U + v * V;
}
