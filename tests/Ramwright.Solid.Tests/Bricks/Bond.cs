namespace Ramwright.Solid.Tests.Bricks;

/// <summary>Where two bodies that touch are one: their nodes are merged inside the box.</summary>
/// <param name="A">One body.</param>
/// <param name="B">The other.</param>
/// <param name="Where">Where they are joined.</param>
public readonly record struct Bond(int A, int B, Box3 Where);
