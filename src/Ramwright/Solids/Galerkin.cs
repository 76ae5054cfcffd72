namespace Ramwright.Solids;

/// <summary>
/// The next level's matrix: P' A P, where P moves groups rigidly and then lets each node give way once, (1 − ω D⁻¹ A) of the rigid movement, so that neighbouring groups meet smoothly.
/// </summary>
internal sealed class Galerkin
{
    private readonly IMatrixRows _rows;
    private readonly Transfer _transfer;
    private readonly DiagonalBlocks _inverse;
    private readonly double _omega;
    private readonly int[] _start, _groups;
    private readonly float[] _blocks;
    private readonly int _numbers;

    private Galerkin(IMatrixRows rows, Transfer transfer, DiagonalBlocks inverse, double omega)
    {
        (_rows, _transfer, _inverse, _omega) = (rows, transfer, inverse, omega);
        _numbers = rows.Size * Eight.Width;
        _start = new int[rows.Nodes + 1];
        // how many groups each node is moved by, then which and how
        Chunks((from, to) =>
        {
            MatrixRow row = rows.NewRow();
            var met = new Met(transfer.Groups);
            for (int b = from; b < to; b++)
            {
                met.Begin();
                foreach (int i in inverse.Bundles.Nodes(b))
                {
                    rows.Read(i, row);
                    for (int e = 0; e < row.Count; e++)
                        met.Slot(transfer.Group[row.Columns[e]]);
                }

                foreach (int i in inverse.Bundles.Nodes(b))
                    _start[i + 1] = met.Count;
            }
        });
        for (int i = 0; i < rows.Nodes; i++)
            _start[i + 1] += _start[i];
        _groups = new int[_start[^1]];
        _blocks = new float[checked(_start[^1] * _numbers)];
        Chunks(Interpolate);
    }

    /// <summary>Builds it.</summary>
    public static BlockRows Coarser(IMatrixRows rows, Transfer transfer, DiagonalBlocks inverse, double omega) =>
        new Galerkin(rows, transfer, inverse, omega).Product();

    // threads at a time hold scratch of their own, so there are fewer and longer pieces than elsewhere
    private const int Pieces = 8;

    private void Chunks(Action<int, int> each) => Shares.Each(Pieces, _rows.Nodes * 100,
        p => each((int)((long)_inverse.Bundles.Count * p / Pieces), (int)((long)_inverse.Bundles.Count * (p + 1) / Pieces)));

    private void Interpolate(int from, int to)
    {
        int r = _rows.Size;
        MatrixRow row = _rows.NewRow();
        var met = new Met(_transfer.Groups);
        var moved = new float[_numbers];
        var sum = new double[64 * _numbers];
        for (int b = from; b < to; b++)
        {
            ReadOnlySpan<int> nodes = _inverse.Bundles.Nodes(b);
            met.Begin();
            int count = _start[nodes[0] + 1] - _start[nodes[0]], numbers = count * _numbers;
            if (nodes.Length * numbers > sum.Length)
                sum = new double[2 * nodes.Length * numbers];
            Array.Clear(sum, 0, nodes.Length * numbers);
            for (int n = 0; n < nodes.Length; n++)
            {
                _rows.Read(nodes[n], row);
                for (int e = 0; e < row.Count; e++)
                {
                    int slot = met.Slot(_transfer.Group[row.Columns[e]]);
                    _transfer.Block(row.Columns[e], moved);
                    Eight.Multiply(r, row.Source, row.Offsets[e], moved, 0, sum, n * numbers + slot * _numbers);
                }
            }

            _inverse.Smooth(b, _omega, sum, count);
            for (int n = 0; n < nodes.Length; n++)
            {
                int i = nodes[n], own = met.Slot(_transfer.Group[i]);
                _transfer.Block(i, moved);
                for (int k = 0; k < _numbers; k++)
                    sum[n * numbers + own * _numbers + k] += moved[k];
                for (int s = 0; s < count; s++)
                    _groups[_start[i] + s] = met.Order[s];
                for (int k = 0; k < numbers; k++)
                    _blocks[_start[i] * _numbers + k] = (float)sum[n * numbers + k];
            }
        }
    }

    private BlockRows Product()
    {
        var shares = new BlockGatherer[Pieces];
        Shares.Each(Pieces, _rows.Nodes * 100, p =>
        {
            shares[p] = new BlockGatherer(_transfer.Groups);
            Gather(shares[p], (int)((long)_rows.Nodes * p / Pieces), (int)((long)_rows.Nodes * (p + 1) / Pieces));
        });
        return BlockGatherer.Together(shares, _transfer.Groups);
    }

    private void Gather(BlockGatherer to, int first, int end)
    {
        int r = _rows.Size;
        MatrixRow row = _rows.NewRow();
        var met = new Met(_transfer.Groups);
        var forces = new double[256 * _numbers];
        for (int i = first; i < end; i++)
        {
            _rows.Read(i, row);
            met.Begin();
            for (int e = 0; e < row.Count; e++)
            {
                int j = row.Columns[e];
                for (int s = _start[j]; s < _start[j + 1]; s++)
                {
                    int before = met.Count, slot = met.Slot(_groups[s]);
                    if (met.Count > before)
                    {
                        if (met.Count * _numbers > forces.Length)
                            Array.Resize(ref forces, 2 * forces.Length);
                        Array.Clear(forces, slot * _numbers, _numbers);
                    }

                    Eight.Multiply(r, row.Source, row.Offsets[e], _blocks, s * _numbers, forces, slot * _numbers);
                }
            }

            for (int s = _start[i]; s < _start[i + 1]; s++)
                for (int c = 0; c < met.Count; c++)
                {
                    if (met.Order[c] < _groups[s])
                        continue;
                    (double[] page, int at) = to.Place(_groups[s], met.Order[c]);
                    Eight.MultiplyTurned(r, _blocks, s * _numbers, forces, c * _numbers, page, at);
                }
        }
    }

    /// <summary>Groups met about one node, in the order they were met.</summary>
    private sealed class Met
    {
        private readonly int[] _stamp, _slot;
        private int _turn;

        public Met(int groups)
        {
            (_stamp, _slot) = (new int[groups], new int[groups]);
            Order = new int[512];
        }

        public int Count { get; private set; }

        public int[] Order { get; private set; }

        public void Begin() => (Count, _turn) = (0, _turn + 1);

        public int Slot(int group)
        {
            if (_stamp[group] == _turn)
                return _slot[group];
            (_stamp[group], _slot[group]) = (_turn, Count);
            if (Count == Order.Length)
                Order = [.. Order, .. new int[Count]];
            Order[Count] = group;
            return Count++;
        }
    }
}
