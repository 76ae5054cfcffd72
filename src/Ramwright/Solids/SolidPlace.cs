using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>
/// Where steel is stressed most, for one newton at the ram. At a sharp inner corner stress grows without end as cells shrink, so that a lump which reaches half a wall's thickness each way is
/// looked at, and what is in it carried in a straight line to the surface; the peak of the cells is given beside it.
/// </summary>
/// <remarks>
/// Bending of a wall or of a whole bar runs straight through the lump and is carried to the surface as it is. Steel counts by the square of its distance from that surface: so a field that grows as
/// 1/√r towards a corner gives 2.06/√L of a lump that reaches L from it, its mean being 2/√L.
/// </remarks>
/// <param name="Part">Its name.</param>
/// <param name="At">The place, on the surface, m.</param>
/// <param name="Cell">The cell in the middle of the lump.</param>
/// <param name="Carried">Equivalent stress there, carried to the surface, Pa/N.</param>
/// <param name="Peak">Greatest equivalent stress in the middle of a cell of the lump, Pa/N.</param>
/// <param name="Yield">Of the part, Pa.</param>
public sealed record SolidPlace(string Part, Vector At, int Cell, double Carried, double Peak, double Yield)
{
    /// <summary>Ram force at which steel yields there, N.</summary>
    public double GivesAt => Yield / Carried;

    /// <summary>Whether the peak is far above what is carried: a sharp corner, whose peak means nothing.</summary>
    public bool IsSharp => Peak > 1.3 * Carried;

    /// <summary>The place that yields first.</summary>
    /// <param name="solution">How the steel moves for one newton at the ram.</param>
    /// <param name="yields">Yield of each part, Pa; null where it is not known.</param>
    /// <param name="blind">Boxes that are not looked at: what stands for something else.</param>
    internal static SolidPlace? Weakest(SolidSolution solution, IReadOnlyList<double?> yields, IReadOnlyList<Cuboid> blind)
    {
        SolidMesh mesh = solution.Mesh;
        var used = new (double Share, int Cell)[mesh.CellCount];
        Solids.Shares.Run(mesh.CellCount, mesh.CellCount * 400, (from, to) =>
        {
            for (int c = from; c < to; c++)
                used[c] = (yields.ElementAtOrDefault(mesh.PartOf(c)) is { } fy && !IsBlind(blind, mesh.CellBox(c)) ? Greatest(solution, c) / fy : 0, c);
        });
        Array.Sort(used, (a, b) => b.Share != a.Share ? b.Share.CompareTo(a.Share) : a.Cell.CompareTo(b.Cell));
        CellLookup cells = new(mesh);
        SolidPlace? weakest = null;
        // what is carried lies below the greatest stress in a cell, unless it is the same
        foreach ((double share, int cell) in used)
        {
            if (share <= 0 || weakest is { } w && w.Carried / w.Yield >= share)
                break;
            SolidPlace place = SolidLump.Of(mesh, cells, cell).Carry(solution, yields[mesh.PartOf(cell)]!.Value);
            if (weakest is null || place.GivesAt < weakest.GivesAt)
                weakest = place;
        }

        return weakest;
    }

    private static bool IsBlind(IReadOnlyList<Cuboid> blind, Cuboid cell) => blind.Any(b => b.Holds(cell.Middle(0), cell.Middle(1), cell.Middle(2)));

    private static double Greatest(SolidSolution solution, int cell)
    {
        double most = 0;
        for (int n = 0; n < 8; n++)
            most = Math.Max(most, solution.AtCorner(cell, n).Equivalent);
        return most;
    }
}
