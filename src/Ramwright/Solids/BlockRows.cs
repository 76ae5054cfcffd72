namespace Ramwright.Solids;

/// <summary>A symmetric matrix of blocks of six by six, in double precision: a coarser level while the hierarchy is built.</summary>
internal sealed class BlockRows : IMatrixRows
{
    /// <summary>Numbers of a block: six rows of eight.</summary>
    public const int Block = 6 * Eight.Width;

    public required int[] Start { get; init; }
    public required int[] Columns { get; init; }
    public required double[] Blocks { get; init; }

    public int Nodes => Start.Length - 1;

    public int Size => 6;

    public MatrixRow NewRow() => new(Enumerable.Range(0, Nodes).Max(i => Start[i + 1] - Start[i])) { Source = Blocks };

    public void Read(int node, MatrixRow into)
    {
        int from = Start[node];
        into.Count = Start[node + 1] - from;
        for (int e = 0; e < into.Count; e++)
            (into.Columns[e], into.Offsets[e]) = (Columns[from + e], (from + e) * Block);
    }
}

/// <summary>Gathers blocks on and right of the diagonal, one thread's share; several are put together to a matrix.</summary>
internal sealed class BlockGatherer
{
    private const int Page = 256;
    private readonly List<double[]> _pages = [];
    private readonly List<int> _next = [], _column = [];
    private readonly int[] _first;

    public BlockGatherer(int nodes)
    {
        _first = new int[nodes];
        Array.Fill(_first, -1);
    }

    /// <summary>Where the block of a row and column is kept; made, empty, if it is new.</summary>
    public (double[] Page, int At) Place(int row, int column)
    {
        int e = _first[row];
        while (e >= 0 && _column[e] != column)
            e = _next[e];
        if (e < 0)
        {
            e = _column.Count;
            _column.Add(column);
            _next.Add(_first[row]);
            _first[row] = e;
            if (e / Page == _pages.Count)
                _pages.Add(new double[Page * BlockRows.Block]);
        }

        return (_pages[e / Page], e % Page * BlockRows.Block);
    }

    /// <summary>Puts shares together, and mirrors what is right of the diagonal to the left.</summary>
    public static BlockRows Together(IReadOnlyList<BlockGatherer> shares, int nodes)
    {
        var count = new int[nodes + 1];
        var columns = new List<int>[nodes];
        for (int row = 0; row < nodes; row++)
        {
            var here = new SortedSet<int>();
            foreach (BlockGatherer share in shares)
                for (int e = share._first[row]; e >= 0; e = share._next[e])
                    here.Add(share._column[e]);
            columns[row] = [.. here];
            foreach (int column in here)
            {
                count[row + 1]++;
                if (column != row)
                    count[column + 1]++;
            }
        }

        for (int i = 0; i < nodes; i++)
            count[i + 1] += count[i];
        (var all, var blocks, var filled) = (new int[count[nodes]], new double[count[nodes] * BlockRows.Block], new int[nodes]);
        for (int row = 0; row < nodes; row++)
        {
            foreach (int column in columns[row])
            {
                int at = count[row] + filled[row]++;
                all[at] = column;
                Span<double> block = blocks.AsSpan(at * BlockRows.Block, BlockRows.Block);
                foreach (BlockGatherer share in shares)
                    share.AddTo(row, column, block);
                if (column == row)
                    continue;
                int mirror = count[column] + filled[column]++;
                all[mirror] = row;
                for (int i = 0; i < 6; i++)
                    for (int j = 0; j < 6; j++)
                        blocks[mirror * BlockRows.Block + Eight.Width * j + i] = block[Eight.Width * i + j];
            }
        }

        return new BlockRows { Start = count, Columns = all, Blocks = blocks };
    }

    private void AddTo(int row, int column, Span<double> block)
    {
        for (int e = _first[row]; e >= 0; e = _next[e])
        {
            if (_column[e] != column)
                continue;
            ReadOnlySpan<double> from = _pages[e / Page].AsSpan(e % Page * BlockRows.Block, BlockRows.Block);
            for (int i = 0; i < from.Length; i++)
                block[i] += from[i];
            return;
        }
    }
}
