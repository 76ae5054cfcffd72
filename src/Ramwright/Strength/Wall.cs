namespace Ramwright.Strength;

/// <summary>How a wall of a section is held along its length.</summary>
public enum WallHold
{
    /// <summary>Along both edges: a web, the wall of a box.</summary>
    BothEdges,
    /// <summary>Along one edge: half a flange.</summary>
    OneEdge,
    /// <summary>A round tube, which closes on itself.</summary>
    Round,
}

/// <summary>One wall of a section that could buckle by itself.</summary>
/// <param name="Name">What the trade calls it.</param>
/// <param name="Hold">How it is held.</param>
/// <param name="C">Flat width between roots, m; of a tube its outside diameter.</param>
/// <param name="T">Thickness, m.</param>
/// <param name="Y1">Where it is held, from the centroid along y, m.</param>
/// <param name="Z1">The same along z.</param>
/// <param name="Y2">Its other edge; the free one where it is held along one, m.</param>
/// <param name="Z2">The same along z.</param>
public readonly record struct Wall(string Name, WallHold Hold, double C, double T, double Y1, double Z1, double Y2, double Z2);
