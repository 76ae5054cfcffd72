using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>
/// Parts cut into cells of eight nodes by one set of planes along each axis; what is in no part is void. Two cells that share a face share the four nodes there if they
/// are of one part, or of two parts joined there; otherwise each has nodes of its own. Cells that touch along an edge or in a corner only are not joined.
/// </summary>
public sealed class SolidMesh
{
    private readonly MeshGrid _grid;
    private readonly int[] _cellAt, _nodeAt;

    internal SolidMesh(IReadOnlyList<SolidPart> parts, MeshGrid grid, int[] cellAt, int[] nodeAt)
    {
        (Parts, _grid, _cellAt, _nodeAt) = (parts, grid, cellAt, nodeAt);
    }

    /// <summary>Cuts up.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="bonds">Where they are joined.</param>
    /// <param name="cells">How long cells may be.</param>
    /// <param name="lines">Boxes whose faces must be planes too.</param>
    /// <exception cref="SolidFaultException">Two parts want one place, leave a sliver, or do not touch where they are joined.</exception>
    public static SolidMesh Of(IReadOnlyList<SolidPart> parts, IReadOnlyList<Bond> bonds, CellSizes cells, IReadOnlyList<Cuboid>? lines = null) =>
        new MeshBuilder(parts, bonds, MeshGrid.Of(parts, bonds, lines ?? [], cells)).Build();

    /// <summary>The parts.</summary>
    public IReadOnlyList<SolidPart> Parts { get; }

    /// <summary>Planes along an axis, 0 to 2, m.</summary>
    public IReadOnlyList<double> Planes(int axis) => _grid.Planes[axis];

    /// <summary>How many cells are steel.</summary>
    public int CellCount => _cellAt.Length;

    /// <summary>How many nodes they have.</summary>
    public int NodeCount => _nodeAt.Length;

    /// <summary>Movements to find: three for each node.</summary>
    public int Unknowns => 3 * NodeCount;

    /// <summary>Nodes of all cells, eight each: corner bits 1, 2 and 4 stand for the far end along x, y and z.</summary>
    internal int[] CellNodes { get; init; } = [];

    /// <summary>Number of the part that each cell is of.</summary>
    internal short[] CellPart { get; init; } = [];

    /// <summary>Which of the kinds each cell is.</summary>
    internal int[] CellKind { get; init; } = [];

    /// <summary>Cells that are alike in size and steel are of one kind.</summary>
    internal IReadOnlyList<CellKind> Kinds { get; init; } = [];

    /// <summary>Where each layer of cells starts: cells of layers that are not neighbours share no node.</summary>
    internal int[] Layers { get; init; } = [];

    /// <summary>Connected body that each node belongs to.</summary>
    internal int[] Body { get; init; } = [];

    /// <summary>How many connected bodies there are.</summary>
    public int Bodies { get; init; }

    /// <summary>Nodes of a cell.</summary>
    public ReadOnlySpan<int> NodesOf(int cell) => CellNodes.AsSpan(cell * 8, 8);

    /// <summary>Part of a cell.</summary>
    public int PartOf(int cell) => CellPart[cell];

    /// <summary>Edges of a cell, m.</summary>
    public Cuboid CellBox(int cell) => _grid.CellBox(_cellAt[cell]);

    /// <summary>Where a cell stands in the grid, counted along x, y and z.</summary>
    public (int X, int Y, int Z) CellPlace(int cell) => _grid.Place(_cellAt[cell]);

    /// <summary>Cells that a box reaches into.</summary>
    public IEnumerable<int> CellsIn(Cuboid box)
    {
        (int from, int to) = _grid.Range(_grid.Slow, box.From(_grid.Slow), box.To(_grid.Slow));
        for (int c = Layers[Math.Max(0, from - 1)]; c < Layers[Math.Min(Layers.Length - 1, to + 1)]; c++)
            if (CellBox(c).And(box).IsSolid)
                yield return c;
    }

    /// <summary>Where a node is, m.</summary>
    public Vector At(int node) => _grid.NodeAt(_nodeAt[node]);

    internal Places Places()
    {
        var at = new int[3 * NodeCount];
        for (int i = 0; i < NodeCount; i++)
            (at[3 * i], at[3 * i + 1], at[3 * i + 2]) = _grid.Place(_nodeAt[i]);
        return new Places(_grid.Planes, at);
    }

    /// <summary>Share of an even pressure that each node takes, m²: what a part shows of a plane inside a box, or a section of it there.</summary>
    /// <exception cref="SolidFaultException">The part has nothing there.</exception>
    public Dictionary<int, double> Face(int part, int axis, double at, Cuboid within)
    {
        var share = new Dictionary<int, double>();
        int bit = 1 << axis;
        // a plane inside the part is met from below only, so that nothing is counted twice
        foreach (bool top in (bool[])[true, false])
        {
            for (int cell = 0; cell < CellCount; cell++)
            {
                if (CellPart[cell] != part)
                    continue;
                Cuboid box = CellBox(cell);
                double edge = top ? box.To(axis) : box.From(axis);
                Cuboid flat = box.With(axis, at, at);
                if (Math.Abs(edge - at) > GridPlanes.Same || !within.Holds(flat.Middle(0), flat.Middle(1), flat.Middle(2), GridPlanes.Same))
                    continue;
                double quarter = box.Volume / box.Along(axis) / 4;
                ReadOnlySpan<int> nodes = NodesOf(cell);
                for (int n = 0; n < 8; n++)
                    if ((n & bit) != 0 == top)
                        share[nodes[n]] = share.GetValueOrDefault(nodes[n]) + quarter;
            }

            if (share.Count > 0)
                return share;
        }

        throw new SolidFaultException($"{Parts[part].Name} has no face where it is pressed");
    }
}

/// <summary>Cells of one size and steel: what the stiffness of a cell hangs on.</summary>
/// <param name="X">Length along x, m.</param>
/// <param name="Y">Along y, m.</param>
/// <param name="Z">Along z, m.</param>
/// <param name="E">Young's modulus, Pa.</param>
/// <param name="Nu">Poisson's ratio.</param>
internal readonly record struct CellKind(double X, double Y, double Z, double E, double Nu);
