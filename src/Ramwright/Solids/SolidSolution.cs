using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>How a mesh moves in one load case. SI.</summary>
public sealed class SolidSolution
{
    private readonly double[] _moved;

    internal SolidSolution(SolidMesh mesh, double[] moved) => (Mesh, _moved) = (mesh, moved);

    /// <summary>The mesh.</summary>
    public SolidMesh Mesh { get; }

    /// <summary>What the iteration came to.</summary>
    public required Convergence Convergence { get; init; }

    /// <summary>All that the supports give back, N; nothing where there are none.</summary>
    public required Vector Reaction { get; init; }

    /// <summary>What the forces missed balance by on bodies that nothing holds, as a share of their size; from rounding only.</summary>
    public required double OutOfBalance { get; init; }

    /// <summary>Displacement of a node, m. Of a body that nothing holds the mean is nothing.</summary>
    public Vector Displacement(int node) => new(_moved[4 * node], _moved[4 * node + 1], _moved[4 * node + 2]);

    /// <summary>Stress at a point of a cell, Pa.</summary>
    /// <param name="cell">Its number.</param>
    /// <param name="x">From −1 at its left to 1 at its right.</param>
    /// <param name="y">From −1 in front to 1 at the back.</param>
    /// <param name="z">From −1 at its bottom to 1 at its top.</param>
    public StressState Stress(int cell, double x = 0, double y = 0, double z = 0)
    {
        Span<Vector> corners = stackalloc Vector[8];
        ReadOnlySpan<int> nodes = Mesh.NodesOf(cell);
        for (int n = 0; n < 8; n++)
            corners[n] = Displacement(nodes[n]);
        return CellStress.At(Mesh.Kinds[Mesh.CellKind[cell]], corners, x, y, z);
    }

    /// <summary>Stress in a corner of a cell, Pa; bits 1, 2 and 4 of its number stand for the far end along x, y and z.</summary>
    internal StressState AtCorner(int cell, int corner) => Stress(cell, (corner & 1) != 0 ? 1 : -1, (corner & 2) != 0 ? 1 : -1, (corner & 4) != 0 ? 1 : -1);

    /// <summary>Force that passes a level cut upward, N: what the upright stress in the layer of cells there adds up to.</summary>
    /// <param name="z">Height of the cut, m.</param>
    public double Through(double z)
    {
        IReadOnlyList<double> planes = Mesh.Planes(2);
        int layer = 0;
        while (layer < planes.Count - 2 && planes[layer + 1] <= z)
            layer++;
        double sum = 0;
        for (int c = 0; c < Mesh.CellCount; c++)
        {
            if (Mesh.CellPlace(c).Z != layer)
                continue;
            Cuboid box = Mesh.CellBox(c);
            sum += Stress(c).ZZ * box.Along(0) * box.Along(1);
        }

        return sum;
    }

    /// <summary>Mean displacement of a face, each node by its share.</summary>
    public Vector Mean(IReadOnlyDictionary<int, double> share)
    {
        ArgumentNullException.ThrowIfNull(share);
        double all = share.Values.Sum();
        return share.Aggregate(Vector.Zero, (sum, s) => sum + s.Value / all * Displacement(s.Key));
    }

    /// <summary>How a face turns, rad: the rigid turn that fits the movement of its nodes best, each by its share.</summary>
    public Vector Turn(IReadOnlyDictionary<int, double> share)
    {
        ArgumentNullException.ThrowIfNull(share);
        double all = share.Values.Sum();
        Vector middle = share.Aggregate(Vector.Zero, (sum, s) => sum + s.Value / all * Mesh.At(s.Key)), mean = Mean(share), moment = Vector.Zero;
        var inertia = new double[9];
        foreach ((int node, double s) in share)
        {
            Vector r = Mesh.At(node) - middle;
            moment += s / all * r.Cross(Displacement(node) - mean);
            double[] of = [r.X, r.Y, r.Z];
            for (int i = 0; i < 3; i++)
                for (int j = 0; j < 3; j++)
                    inertia[3 * i + j] += s / all * ((i == j ? r.Dot(r) : 0) - of[i] * of[j]);
        }

        // along each principal direction by itself; one about which nothing stands off does not turn
        (double[] values, double[] vectors) = SmallEigen.Of(inertia, 3);
        Vector turn = Vector.Zero;
        for (int v = 0; v < 3; v++)
        {
            var way = new Vector(vectors[v], vectors[3 + v], vectors[6 + v]);
            if (values[v] > 1e-9 * values.Max())
                turn += moment.Dot(way) / values[v] * way;
        }

        return turn;
    }
}
