using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>What holds a solid: nodes and the directions, 0 to 2, in which each does not move. A body that nothing holds is solved all the same if the forces on it balance.</summary>
public sealed class Supports
{
    private readonly HashSet<(int Node, int Direction)> _held = [];

    /// <summary>Nodes and directions.</summary>
    public IReadOnlyCollection<(int Node, int Direction)> Held => _held;

    /// <summary>Holds one movement.</summary>
    public void Hold(int node, int direction) => _held.Add((node, direction));

    /// <summary>Holds every node of a plane in one direction: a plane of symmetry.</summary>
    public void HoldPlane(SolidMesh mesh, int axis, double at, int direction, Cuboid? within = null)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        for (int i = 0; i < mesh.NodeCount; i++)
        {
            Vector p = mesh.At(i);
            if (Math.Abs((axis switch { 0 => p.X, 1 => p.Y, _ => p.Z }) - at) < GridPlanes.Same && (within ?? Cuboid.Everywhere).Holds(p.X, p.Y, p.Z, GridPlanes.Same))
                Hold(i, direction);
        }
    }
}

/// <summary>How far a solution has come.</summary>
/// <param name="Stage">What is being done.</param>
/// <param name="Share">How much of it, 0 to 1.</param>
public readonly record struct SolidProgress(string Stage, double Share)
{
    /// <summary>What is known so far, where a stage of a solid check has just brought something; null between.</summary>
    public SolidCheck? SoFar { get; init; }
}

/// <summary>
/// Solves a mesh for any number of load cases: conjugate gradients on the cells themselves, with a hierarchy that is built once. Small movements, linear steel.
/// Not for two threads at once: it works in vectors of its own.
/// </summary>
public sealed class SolidSolver
{
    /// <summary>Error in energy at which the iteration stops, as a share: the opening under the force is then right to its square.</summary>
    public const double Wanted = 1e-5;

    /// <summary>Forces on a free body may miss balance by this share of their size, from rounding; beyond it they are refused.</summary>
    private const double Balanced = 1e-6;

    private const int Attempts = 4;

    private readonly CellOperator<DoubleLane, double> _cells;
    private readonly Hierarchy _hierarchy;
    private readonly RigidModes _free;
    private readonly bool[]? _held;

    /// <summary>Prepares: the stiffness of each kind of cell, and the hierarchy.</summary>
    /// <param name="mesh">The cells.</param>
    /// <param name="supports">What holds them; nothing where it is left out.</param>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="stop">Ends it early.</param>
    public SolidSolver(SolidMesh mesh, Supports? supports = null, Action<SolidProgress>? progress = null, CancellationToken stop = default)
    {
        Mesh = mesh ?? throw new ArgumentNullException(nameof(mesh));
        var families = new double[mesh.Kinds.Count * CellStiffness.Numbers];
        for (int k = 0; k < mesh.Kinds.Count; k++)
            CellStiffness.Fill(mesh.Kinds[k], families.AsSpan(k * CellStiffness.Numbers, CellStiffness.Numbers));
        int[] places = [];
        if (supports is { Held.Count: > 0 })
        {
            _held = new bool[3 * mesh.NodeCount];
            foreach ((int node, int direction) in supports.Held)
                _held[3 * node + direction] = true;
            places = [.. supports.Held.Select(h => 4 * h.Node + h.Direction).Order()];
        }

        _cells = new CellOperator<DoubleLane, double>(mesh, families, places);
        _free = new RigidModes(mesh, _held);
        progress?.Invoke(new SolidProgress("gathering cells into pieces", 0));
        _hierarchy = new Hierarchy(mesh, families, new CellOperator<SingleLane, float>(mesh, Array.ConvertAll(families, x => (float)x), places), _held, _free, stop);
        progress?.Invoke(new SolidProgress("gathering cells into pieces", 1));
    }

    /// <summary>The cells.</summary>
    public SolidMesh Mesh { get; }

    /// <summary>Kinds of cells.</summary>
    public int Kinds => Mesh.Kinds.Count;

    /// <summary>Nodes of each level of the hierarchy, the mesh first.</summary>
    public IReadOnlyList<int> Levels => [.. _hierarchy.Sizes.Select(s => s.Nodes), _hierarchy.Sizes[^1].Groups];

    /// <summary>Solves one load case.</summary>
    /// <param name="forces">Forces on nodes, N.</param>
    /// <param name="wanted">Error in energy to stop at, as a share.</param>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="stop">Ends it early.</param>
    /// <exception cref="SolidFaultException">Forces on a body that nothing holds do not balance, a body is joined to nothing, or no answer was found.</exception>
    public SolidSolution Solve(IReadOnlyDictionary<int, Vector> forces, double wanted = Wanted, Action<SolidProgress>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(forces);
        var force = new double[4 * Mesh.NodeCount];
        foreach ((int node, Vector f) in forces)
            for (int c = 0; c < 3; c++)
                if (_held is null || !_held[3 * node + c])
                    force[4 * node + c] += c switch { 0 => f.X, 1 => f.Y, _ => f.Z };
        (double loose, int body) = _free.Remove(force);
        if (loose > Balanced)
            throw new SolidFaultException(Loose(body, "pressed but held by nothing"));
        if (_held is null && Mesh.Bodies > 1 && Idle(forces) is >= 0 and var idle)
            throw new SolidFaultException(Loose(idle, "joined to nothing"));

        var movement = new double[force.Length];
        Convergence? convergence = null;
        for (int attempt = 0; convergence is null; attempt++)
        {
            if (attempt == Attempts)
                throw new SolidUnsolvedException(Stubborn());
            if (attempt > 0)
                _hierarchy.Stiffen();
            convergence = ConjugateGradients.Solve(_cells.Apply, _hierarchy.Apply, [.. force], movement, wanted,
                error => progress?.Invoke(new SolidProgress("solving", Math.Clamp(Math.Log(error) / Math.Log(wanted), 0, 1))), stop);
        }

        _free.Remove(movement);
        return new SolidSolution(Mesh, movement) { Convergence = convergence, Reaction = Reaction(movement, forces), OutOfBalance = loose };
    }

    // what is most slender beside its cells is what single precision loses
    private string Stubborn()
    {
        double Slender(SolidPart p) => p.Blocks.Max(b => Math.Max(b.Along(0), Math.Max(b.Along(1), b.Along(2))) / Math.Min(b.Along(0), Math.Min(b.Along(1), b.Along(2))));
        SolidPart most = Mesh.Parts.MaxBy(Slender)!;
        return $"the frame could not be solved on this grid. {most.Name} is {Slender(most):0} times as long as it is thick: so slender a part carries as a beam does, keep to the beams' figures; "
            + "or give --cell another length";
    }

    // a body that is neither pressed nor held, -1 if there is none
    private int Idle(IReadOnlyDictionary<int, Vector> forces)
    {
        var pressed = new bool[Mesh.Bodies];
        foreach ((int node, Vector f) in forces)
            pressed[Mesh.Body[node]] |= f.Length > 0;
        return Array.IndexOf(pressed, false);
    }

    // which part the body is, or is part of
    private string Loose(int body, string how)
    {
        var parts = new SortedSet<int>();
        for (int c = 0; c < Mesh.CellCount; c++)
            if (Mesh.Body[Mesh.NodesOf(c)[0]] == body)
                parts.Add(Mesh.PartOf(c));
        string[] all = [.. parts.Select(p => Mesh.Parts[p].Name)];
        string names = all.Length > 1 ? $"{string.Join(", ", all[..^1])} and {all[^1]}" : all[0];
        return $"{names} {(parts.Count > 1 ? "are" : "is")} {how}: no face of {(parts.Count > 1 ? "theirs" : "its own")} is joined to the rest. "
            + "Parts that touch along an edge only, or stand apart, are not joined; bring faces together, or weld them.";
    }

    // cells' forces add up to nothing over all nodes: what stands at the held ones is minus the sum at the others
    private Vector Reaction(double[] movement, IReadOnlyDictionary<int, Vector> forces)
    {
        Vector sum = Vector.Zero;
        if (_held is null)
            return sum;
        var all = new double[movement.Length];
        _cells.Apply(movement, all);
        for (int i = 0; i < Mesh.NodeCount; i++)
            sum -= new Vector(all[4 * i], all[4 * i + 1], all[4 * i + 2]);
        foreach ((int node, Vector f) in forces)
            sum -= new Vector(_held[3 * node] ? f.X : 0, _held[3 * node + 1] ? f.Y : 0, _held[3 * node + 2] ? f.Z : 0);
        return sum;
    }
}
