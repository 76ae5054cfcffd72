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

    /// <summary>All that the supports give back, N. Where forces balance by themselves it should be nothing.</summary>
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

    /// <summary>Mean displacement of a face, each node by its share.</summary>
    public Vector Mean(IReadOnlyDictionary<int, double> share)
    {
        ArgumentNullException.ThrowIfNull(share);
        double all = share.Values.Sum();
        return share.Aggregate(Vector.Zero, (sum, s) => sum + s.Value / all * Displacement(s.Key));
    }

    /// <summary>How much a face turns, rad: the slope of the straight line that fits best how its movement along one axis grows along another.</summary>
    /// <param name="share">Nodes and their shares.</param>
    /// <param name="of">Axis of the movement.</param>
    /// <param name="along">Axis along which it grows.</param>
    public double Slope(IReadOnlyDictionary<int, double> share, int of, int along)
    {
        ArgumentNullException.ThrowIfNull(share);
        double all = share.Values.Sum(), middle = share.Sum(s => s.Value * Component(Mesh.At(s.Key), along)) / all, mean = Component(Mean(share), of);
        return share.Sum(s => s.Value * (Component(Mesh.At(s.Key), along) - middle) * (Component(Displacement(s.Key), of) - mean))
            / share.Sum(s => s.Value * Math.Pow(Component(Mesh.At(s.Key), along) - middle, 2));
    }

    private static double Component(Vector v, int axis) => axis switch { 0 => v.X, 1 => v.Y, _ => v.Z };
}
