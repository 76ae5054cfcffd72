using Ramwright.Geometry;

namespace Ramwright.Fabrication.Plates;

/// <summary>What a cutting table is told, in the order it does it: marks, bend lines, inside cuts, outside cuts. Metres.</summary>
/// <param name="Name">What is cut: a part's mark, or a nest's.</param>
/// <param name="Moves">The moves, in order.</param>
public sealed record CutSheet(string Name, IReadOnlyList<CutMove> Moves);

/// <summary>One thing a cutting table does.</summary>
/// <param name="Layer">What kind of thing.</param>
/// <param name="Points">Its corners.</param>
/// <param name="Closed">Whether it closes on its first corner.</param>
public sealed record CutMove(CutLayer Layer, IReadOnlyList<Corner> Points, bool Closed);

/// <summary>Kinds of moves.</summary>
public enum CutLayer
{
    /// <summary>The edge of the plate that is cut from, for looking only.</summary>
    Stock,
    /// <summary>Scribed, not cut.</summary>
    Mark,
    /// <summary>Middle of a bend, not cut.</summary>
    Bend,
    /// <summary>From the scrap to where a cut begins.</summary>
    Lead,
    /// <summary>A hole or window.</summary>
    CutInside,
    /// <summary>The edge of a part.</summary>
    CutOutside,
}

/// <summary>How cuts are drawn. Off unless wanted: most tables see to kerf and leads by themselves.</summary>
/// <param name="Kerf">Width of the cut that the drawing makes room for, m; 0 draws parts true to size.</param>
/// <param name="Lead">Length of a straight run-in from the scrap, m; 0 for none.</param>
/// <param name="Marks">Whether part marks are scribed.</param>
public sealed record CutStyle(double Kerf = 0, double Lead = 0, bool Marks = true)
{
    /// <summary>True to size, no leads, with marks.</summary>
    public static readonly CutStyle Plain = new();
}
