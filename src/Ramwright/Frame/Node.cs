using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>A point of the frame where members meet or loads act.</summary>
/// <param name="Name">What it is to a person: <c>crown, under the cylinder</c>.</param>
/// <param name="At">Where, m.</param>
public sealed record Node(string Name, Vector At);
