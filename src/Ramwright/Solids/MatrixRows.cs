namespace Ramwright.Solids;

/// <summary>One row of a matrix of blocks, as it is read: where its blocks stand and which nodes they belong to.</summary>
internal class MatrixRow(int room)
{
    /// <summary>How many blocks.</summary>
    public int Count { get; set; }

    /// <summary>Node of each block.</summary>
    public int[] Columns { get; } = new int[room];

    /// <summary>Where each block starts in <see cref="Source"/>; each of its rows has <see cref="Eight.Width"/> places.</summary>
    public int[] Offsets { get; } = new int[room];

    /// <summary>The numbers.</summary>
    public double[] Source { get; set; } = [];
}

/// <summary>A symmetric matrix whose rows can be read one by one, from several threads.</summary>
internal interface IMatrixRows
{
    /// <summary>Nodes.</summary>
    int Nodes { get; }

    /// <summary>Movements of a node: 3 in the mesh, 6 in coarser levels.</summary>
    int Size { get; }

    /// <summary>A row to read into.</summary>
    MatrixRow NewRow();

    /// <summary>Reads a row.</summary>
    void Read(int node, MatrixRow into);
}

/// <summary>The mesh's own matrix: each row is put together from the cells about its node when it is asked for, and forgotten.</summary>
internal sealed class CellRows : IMatrixRows
{
    private readonly SolidMesh _mesh;
    private readonly int[] _start, _corners;
    private readonly double[] _full;
    private readonly bool[]? _held;

    public CellRows(SolidMesh mesh, double[] families, bool[]? held)
    {
        (_mesh, _held) = (mesh, held);
        _full = new double[mesh.Kinds.Count * 576];
        Shares.Run(mesh.Kinds.Count, mesh.Kinds.Count * 576, (from, to) =>
        {
            for (int k = from; k < to; k++)
                CellStiffness.Unfold(families.AsSpan(k * CellStiffness.Numbers, CellStiffness.Numbers), _full.AsSpan(k * 576, 576));
        });
        (_start, _corners) = CornersOf(mesh);
    }

    public int Nodes => _mesh.NodeCount;

    public int Size => 3;

    // twenty-seven neighbours at most, more where parts are joined at several copies of one place
    private const int Room = 64;

    private sealed class CellRow(int nodes) : MatrixRow(Room)
    {
        public readonly int[] Slot = new int[nodes];
        public readonly int[] Stamp = new int[nodes];
    }

    public MatrixRow NewRow()
    {
        var row = new CellRow(Nodes) { Source = new double[Room * 3 * Eight.Width] };
        Array.Fill(row.Stamp, -1);
        for (int i = 0; i < Room; i++)
            row.Offsets[i] = 3 * Eight.Width * i;
        return row;
    }

    /// <summary>Where each node is a corner: eight times the cell, and the corner.</summary>
    public ReadOnlySpan<int> Corners(int node) => _corners.AsSpan(_start[node], _start[node + 1] - _start[node]);

    public void Read(int node, MatrixRow into)
    {
        (int[] slot, int[] stamp) = (((CellRow)into).Slot, ((CellRow)into).Stamp);
        into.Count = 0;
        double[] blocks = into.Source;
        int[] nodes = _mesh.CellNodes;
        foreach (int at in Corners(node))
        {
            (int cell, int a) = (at >> 3, at & 7);
            ReadOnlySpan<double> k = _full.AsSpan(_mesh.CellKind[cell] * 576 + a * 72, 72);
            for (int b = 0; b < 8; b++)
            {
                int other = nodes[cell * 8 + b];
                if (stamp[other] != node)
                {
                    stamp[other] = node;
                    slot[other] = into.Count;
                    into.Columns[into.Count] = other;
                    blocks.AsSpan(24 * into.Count, 24).Clear();
                    into.Count++;
                }

                Span<double> to = blocks.AsSpan(24 * slot[other], 24);
                ReadOnlySpan<double> from = k.Slice(9 * b, 9);
                to[0] += from[0];
                to[1] += from[1];
                to[2] += from[2];
                to[8] += from[3];
                to[9] += from[4];
                to[10] += from[5];
                to[16] += from[6];
                to[17] += from[7];
                to[18] += from[8];
            }
        }

        if (_held is not null)
            Hold(node, into);
    }

    // what is held takes no force and lends none
    private void Hold(int node, MatrixRow row)
    {
        for (int e = 0; e < row.Count; e++)
            for (int i = 0; i < 3; i++)
                for (int j = 0; j < 3; j++)
                    if (_held![3 * node + i] || _held[3 * row.Columns[e] + j])
                        row.Source[24 * e + 8 * i + j] = 0;
    }

    private static (int[] Start, int[] Corners) CornersOf(SolidMesh mesh)
    {
        int[] nodes = mesh.CellNodes;
        var start = new int[mesh.NodeCount + 2];
        foreach (int n in nodes)
            start[n + 2]++;
        for (int i = 2; i < start.Length; i++)
            start[i] += start[i - 1];
        var corners = new int[nodes.Length];
        for (int i = 0; i < nodes.Length; i++)
            corners[start[nodes[i] + 1]++] = i;
        return (start, corners);
    }
}
