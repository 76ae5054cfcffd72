using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>A point of a line through a solved frame.</summary>
/// <param name="Along">From the line's beginning, m.</param>
/// <param name="At">Where, m.</param>
/// <param name="Part">Part whose steel is there; null for a void.</param>
/// <param name="Equivalent">Equivalent stress, Pa/N.</param>
/// <param name="Pull">Stress along the line, pull positive, Pa/N.</param>
public sealed record StressPoint(double Along, Vector At, string? Part, double Equivalent, double Pull);

/// <summary>Stress along a straight line of the reader's choosing, for one newton at the ram.</summary>
public static class StressLine
{
    /// <summary>Reads it at points evenly spaced, both ends among them.</summary>
    /// <param name="solution">How the steel moves.</param>
    /// <param name="from">Where the line begins, m.</param>
    /// <param name="to">Where it ends, m.</param>
    /// <param name="points">How many, two or more.</param>
    /// <exception cref="ArgumentException">A line without length, or fewer than two points.</exception>
    public static IReadOnlyList<StressPoint> Of(SolidSolution solution, Vector from, Vector to, int points = 21)
    {
        ArgumentNullException.ThrowIfNull(solution);
        double length = (to - from).Length;
        if (!(length > 0) || !double.IsFinite(length) || points < 2)
            throw new ArgumentException("a line needs two ends apart from each other, and two points");
        Vector way = 1 / length * (to - from);
        CellLookup cells = new(solution.Mesh);
        var all = new StressPoint[points];
        for (int i = 0; i < points; i++)
        {
            double along = length * i / (points - 1);
            Vector at = from + along * way;
            all[i] = cells.Holding(at) is >= 0 and var cell ? Read(solution, cell, at, along, way) : new StressPoint(along, at, null, 0, 0);
        }

        return all;
    }

    private static StressPoint Read(SolidSolution solution, int cell, Vector at, double along, Vector way)
    {
        Cuboid box = solution.Mesh.CellBox(cell);
        double Local(double x, int axis) => Math.Clamp(2 * (x - box.Middle(axis)) / box.Along(axis), -1, 1);
        StressState s = solution.Stress(cell, Local(at.X, 0), Local(at.Y, 1), Local(at.Z, 2));
        double pull = way.X * way.X * s.XX + way.Y * way.Y * s.YY + way.Z * way.Z * s.ZZ + 2 * (way.X * way.Y * s.XY + way.X * way.Z * s.XZ + way.Y * way.Z * s.YZ);
        return new StressPoint(along, at, solution.Mesh.Parts[solution.Mesh.PartOf(cell)].Name, s.Equivalent, pull);
    }
}
