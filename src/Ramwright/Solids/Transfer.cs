namespace Ramwright.Solids;

/// <summary>Between a level and the next: groups move and turn as rigid pieces about their middles. Turns are kept times the size of the piece, so that all movements are lengths.</summary>
internal sealed class Transfer
{
    private readonly int _size, _stride;
    private readonly int[] _start, _members;
    private readonly float[] _lever, _turn;

    /// <summary>Group of each node.</summary>
    public int[] Group { get; }

    /// <summary>How many groups.</summary>
    public int Groups { get; }

    /// <summary>Middle of each group.</summary>
    public double[] At { get; }

    /// <summary>Size of each group, m.</summary>
    public double[] Length { get; }

    private readonly bool[]? _held;

    /// <summary>Prepares.</summary>
    /// <param name="groups">Which nodes go together.</param>
    /// <param name="size">Movements of a node.</param>
    /// <param name="at">Where the nodes are.</param>
    /// <param name="length">Their sizes, where they turn.</param>
    /// <param name="held">Which of three movements of each node are held, where any are.</param>
    public Transfer(Aggregation groups, int size, double[] at, double[]? length, bool[]? held)
    {
        (_size, _stride, Group, Groups, _held) = (size, size == 3 ? 4 : Eight.Width, groups.Group, groups.Count, held);
        int nodes = Group.Length;
        _start = new int[Groups + 2];
        foreach (int g in Group)
            _start[g + 2]++;
        for (int g = 2; g < _start.Length; g++)
            _start[g] += _start[g - 1];
        _members = new int[nodes];
        for (int i = 0; i < nodes; i++)
            _members[_start[Group[i] + 1]++] = i;

        At = new double[3 * Groups];
        Length = new double[Groups];
        _lever = new float[3 * nodes];
        _turn = new float[size == 6 ? nodes : 0];
        Span<double> middle = stackalloc double[3];
        for (int g = 0; g < Groups; g++)
        {
            ReadOnlySpan<int> members = Members(g);
            middle.Clear();
            foreach (int i in members)
                for (int c = 0; c < 3; c++)
                    middle[c] += at[3 * i + c] / members.Length;
            double square = 0;
            foreach (int i in members)
            {
                for (int c = 0; c < 3; c++)
                    square += Math.Pow(at[3 * i + c] - middle[c], 2) / members.Length;
                square += length is null ? 0 : length[i] * length[i] / members.Length;
            }

            double size1 = square > 0 ? Math.Sqrt(square) : 1;
            Length[g] = size1;
            middle.CopyTo(At.AsSpan(3 * g, 3));
            foreach (int i in members)
            {
                for (int c = 0; c < 3; c++)
                    _lever[3 * i + c] = (float)((at[3 * i + c] - middle[c]) / size1);
                if (size == 6)
                    _turn[i] = (float)(length![i] / size1);
            }
        }
    }

    public ReadOnlySpan<int> Members(int group) => _members.AsSpan(_start[group], _start[group + 1] - _start[group]);

    /// <summary>Block of a node: its movements for each of the six of its group; rows of eight.</summary>
    public void Block(int node, Span<float> to)
    {
        to.Clear();
        (float x, float y, float z) = (_lever[3 * node], _lever[3 * node + 1], _lever[3 * node + 2]);
        (to[0], to[9], to[18]) = (1, 1, 1);
        (to[4], to[5]) = (z, -y);           // turn × lever
        (to[8 + 3], to[8 + 5]) = (-z, x);
        (to[16 + 3], to[16 + 4]) = (y, -x);
        if (_size == 6)
            to[24 + 3] = to[32 + 4] = to[40 + 5] = _turn[node];
        for (int c = 0; c < 3; c++)
            if (_held is not null && _held[3 * node + c])
                to.Slice(Eight.Width * c, Eight.Width).Clear();
    }

    /// <summary>Movements of the nodes from those of the groups.</summary>
    public void Down(float[] groups, float[] nodes) => Shares.Run(Group.Length, 8 * Group.Length, (from, to) =>
    {
        for (int i = from; i < to; i++)
        {
            ReadOnlySpan<float> g = groups.AsSpan(Group[i] * Eight.Width, 6);
            Span<float> u = nodes.AsSpan(i * _stride, _stride);
            (float x, float y, float z) = (_lever[3 * i], _lever[3 * i + 1], _lever[3 * i + 2]);
            u[0] = g[0] + g[4] * z - g[5] * y;
            u[1] = g[1] + g[5] * x - g[3] * z;
            u[2] = g[2] + g[3] * y - g[4] * x;
            if (_size == 6)
            {
                (u[3], u[4], u[5]) = (_turn[i] * g[3], _turn[i] * g[4], _turn[i] * g[5]);
                (u[6], u[7]) = (0, 0);
            }
            else
            {
                u[3] = 0;
                for (int c = 0; c < 3 && _held is not null; c++)
                    u[c] = _held[3 * i + c] ? 0 : u[c];
            }
        }
    });

    /// <summary>Forces on the groups from those on the nodes.</summary>
    public void Up(float[] nodes, float[] groups) => Shares.Run(Groups, 8 * Group.Length, (from, to) =>
    {
        Span<float> sum = stackalloc float[Eight.Width];
        for (int g = from; g < to; g++)
        {
            sum.Clear();
            foreach (int i in Members(g))
            {
                ReadOnlySpan<float> f = nodes.AsSpan(i * _stride, _stride);
                (float x, float y, float z) = (_lever[3 * i], _lever[3 * i + 1], _lever[3 * i + 2]);
                sum[0] += f[0];
                sum[1] += f[1];
                sum[2] += f[2];
                sum[3] += y * f[2] - z * f[1];
                sum[4] += z * f[0] - x * f[2];
                sum[5] += x * f[1] - y * f[0];
                if (_size == 6)
                    (sum[3], sum[4], sum[5]) = (sum[3] + _turn[i] * f[3], sum[4] + _turn[i] * f[4], sum[5] + _turn[i] * f[5]);
            }

            sum.CopyTo(groups.AsSpan(g * Eight.Width, Eight.Width));
        }
    });
}
