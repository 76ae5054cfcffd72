using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>
/// Where steel is stressed most, for one newton at the ram. At a sharp inner corner stress grows without end as cells shrink, so that the mean over a lump as wide as the wall is thick is
/// what counts; the peak of the cells is given beside it.
/// </summary>
/// <param name="Part">Its name.</param>
/// <param name="At">Middle of the lump, m.</param>
/// <param name="Cell">The cell in its middle.</param>
/// <param name="Mean">Equivalent stress of the mean state over the lump, Pa/N.</param>
/// <param name="Peak">Greatest equivalent stress in the middle of a cell of the lump, Pa/N.</param>
/// <param name="Yield">Of the part, Pa.</param>
public sealed record SolidPlace(string Part, Vector At, int Cell, double Mean, double Peak, double Yield)
{
    /// <summary>So many of the most stressed cells are looked at.</summary>
    private const int Looked = 200;

    /// <summary>Ram force at which the lump yields, N.</summary>
    public double GivesAt => Yield / Mean;

    /// <summary>Whether the peak is far above the mean: a sharp corner, whose peak means nothing.</summary>
    public bool IsSharp => Peak > 1.3 * Mean;

    internal static SolidPlace? Weakest(PressSolid solid, SolidSolution solution)
    {
        SolidMesh mesh = solution.Mesh;
        var used = new (double Share, int Cell)[mesh.CellCount];
        Solids.Shares.Run(mesh.CellCount, mesh.CellCount * 50, (from, to) =>
        {
            for (int c = from; c < to; c++)
                used[c] = (solid.Yields.ElementAtOrDefault(mesh.PartOf(c)) is { } fy && !IsBlind(solid, mesh.CellBox(c)) ? solution.Stress(c).Equivalent / fy : 0, c);
        });
        Array.Sort(used, (a, b) => b.Share != a.Share ? b.Share.CompareTo(a.Share) : a.Cell.CompareTo(b.Cell));
        return used.Take(Looked).Where(u => u.Share > 0).Select(u => Lump(solid, solution, u.Cell)).MinBy(p => p.GivesAt);
    }

    private static bool IsBlind(PressSolid solid, Cuboid cell) => solid.Blind.Any(b => b.Holds(cell.Middle(0), cell.Middle(1), cell.Middle(2)));

    private static SolidPlace Lump(PressSolid solid, SolidSolution solution, int cell)
    {
        SolidMesh mesh = solution.Mesh;
        int part = mesh.PartOf(cell);
        Cuboid own = mesh.CellBox(cell);
        (double x, double y, double z) = (own.Middle(0), own.Middle(1), own.Middle(2));
        double half = mesh.Parts[part].Blocks.Where(b => b.Holds(x, y, z)).Min(b => Math.Min(b.Along(0), Math.Min(b.Along(1), b.Along(2)))) / 2;
        var lump = new Cuboid(x - half, x + half, y - half, y + half, z - half, z + half);
        (StressState sum, double volume, double peak) = (default, 0, 0);
        foreach (int c in mesh.CellsIn(lump).Where(c => mesh.PartOf(c) == part))
        {
            Cuboid shared = mesh.CellBox(c).And(lump);
            StressState s = solution.Stress(c);
            (sum, volume, peak) = (sum + shared.Volume * s, volume + shared.Volume, Math.Max(peak, s.Equivalent));
        }

        return new SolidPlace(mesh.Parts[part].Name, new Vector(x, y, z), cell, (1 / volume * sum).Equivalent, peak, solid.Yields[part]!.Value);
    }
}
