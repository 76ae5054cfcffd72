namespace Ramwright.Solids;

/// <summary>
/// Smoothed aggregation: the mesh, then ever fewer and larger pieces that move and turn as rigid ones, down to a few that are solved whole. It serves every load case of a model.
/// </summary>
/// <remarks>P. Vaněk, J. Mandel, M. Brezina, Algebraic multigrid by smoothed aggregation for second and fourth order elliptic problems, Computing 56 (1996); from memory.</remarks>
internal sealed class Hierarchy
{
    private const int SmallEnough = 90;

    /// <summary>Turns on each coarser level for one on the level above: they cost next to nothing there.</summary>
    private const int Again = 3;

    private readonly List<Level> _levels = [];
    private readonly List<(float[] Above, float[] Below)> _between = [];
    private readonly Coarsest _coarsest;

    public Hierarchy(SolidMesh mesh, double[] families, CellOperator<SingleLane, float> cells, bool[]? held, RigidModes free, CancellationToken stop)
    {
        var finest = new CellRows(mesh, families, held);
        IMatrixRows rows = finest;
        ILevelMatrix matrix = new CellMatrix(cells);
        var at = new double[3 * mesh.NodeCount];
        for (int i = 0; i < mesh.NodeCount; i++)
            (at[3 * i], at[3 * i + 1], at[3 * i + 2]) = (mesh.At(i).X, mesh.At(i).Y, mesh.At(i).Z);
        Places places = mesh.Places();
        double[]? length = null;
        bool[]? stands = held;
        int[] body = mesh.Body;
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            DiagonalBlocks inverse = DiagonalOf(rows, rows is BlockRows ? Bundles.Single(rows.Nodes) : Bundles.Of(mesh));
            var level = new Level(matrix, inverse, rows.Nodes * (rows.Size == 3 ? 4 : Eight.Width));
            Aggregation groups = Aggregation.Of(places, rows is BlockRows b ? NeighboursOf(b) : NeighboursOf(mesh), inverse.Bundles, rows is BlockRows);
            places = groups.Next;
            var transfer = new Transfer(groups, rows.Size, at, length, stands);
            level.Transfer = transfer;
            BlockRows next = Galerkin.Coarser(rows, transfer, inverse, level.Omega);
            _levels.Add(level);
            Sizes.Add((rows.Nodes, groups.Count));
            _between.Add((new float[next.Nodes * Eight.Width], new float[next.Nodes * Eight.Width]));
            var bodies = new int[groups.Count];
            for (int i = 0; i < rows.Nodes; i++)
                bodies[groups.Group[i]] = body[i];
            body = bodies;
            if (next.Nodes <= SmallEnough || next.Nodes > 0.8 * rows.Nodes)
            {
                _coarsest = new Coarsest(next, free.OfPieces(transfer.At, transfer.Length, body));
                return;
            }

            (rows, matrix, at, length, stands) = (next, new BlockMatrix(next), transfer.At, transfer.Length, null);
        }
    }

    /// <summary>Nodes and groups of each level.</summary>
    public List<(int Nodes, int Groups)> Sizes { get; } = [];

    /// <summary>Smooths more carefully, where the iteration ran off.</summary>
    public void Stiffen() => _levels.ForEach(l => l.Stiffen());

    /// <summary>Movements that nearly answer forces.</summary>
    public void Apply(float[] force, float[] movement) => Turn(0, force, movement);

    private void Turn(int level, float[] force, float[] movement)
    {
        if (level == _levels.Count)
            _coarsest.Solve(force, movement);
        else if (level == 0)
            _levels[0].Turn(force, movement, (f, u) => Turn(1, f, u), _between[0].Above, _between[0].Below);
        else
            _levels[level].Turns(Again, force, movement, (f, u) => Turn(level + 1, f, u), _between[level].Above, _between[level].Below);
    }

    private static DiagonalBlocks DiagonalOf(IMatrixRows rows, Bundles bundles)
    {
        (int size, var inverse) = (rows.Size, new DiagonalBlocks(rows.Size, rows.Nodes, bundles));
        Shares.Each(8, rows.Nodes * 100, p =>
        {
            MatrixRow row = rows.NewRow();
            for (int b = (int)((long)bundles.Count * p / 8); b < (int)((long)bundles.Count * (p + 1) / 8); b++)
            {
                ReadOnlySpan<int> nodes = bundles.Nodes(b);
                int all = nodes.Length * size;
                var block = new double[all * all];
                for (int n = 0; n < nodes.Length; n++)
                {
                    rows.Read(nodes[n], row);
                    for (int e = 0; e < row.Count; e++)
                        if (nodes.BinarySearch(row.Columns[e]) is >= 0 and int other)
                            for (int i = 0; i < size; i++)
                                for (int j = 0; j < size; j++)
                                    block[(n * size + i) * all + other * size + j] = row.Source[row.Offsets[e] + Eight.Width * i + j];
                }

                inverse.Set(b, block);
            }
        });
        return inverse;
    }

    private static Action<Action<int, int>> NeighboursOf(BlockRows rows) => pair =>
    {
        for (int i = 0; i < rows.Nodes; i++)
            for (int e = rows.Start[i]; e < rows.Start[i + 1]; e++)
                if (rows.Columns[e] < i)
                    pair(i, rows.Columns[e]);
    };

    // along the edges of the cells is enough: what hangs together does so along edges
    private static Action<Action<int, int>> NeighboursOf(SolidMesh mesh) => pair =>
    {
        for (int c = 0; c < mesh.CellCount; c++)
        {
            ReadOnlySpan<int> n = mesh.NodesOf(c);
            for (int bit = 1; bit < 8; bit <<= 1)
                for (int k = 0; k < 8; k++)
                    if ((k & bit) == 0)
                        pair(n[k], n[k | bit]);
        }
    };
}
