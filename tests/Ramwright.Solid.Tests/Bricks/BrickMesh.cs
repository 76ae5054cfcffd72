namespace Ramwright.Solid.Tests.Bricks;

/// <summary>A brick of twenty nodes.</summary>
/// <param name="Body">The body that it is part of.</param>
/// <param name="Box">Its edges, m.</param>
/// <param name="Nodes">Corners below anticlockwise, corners above, edges below, edges above, uprights; numbers from 0.</param>
public sealed record Brick(int Body, Box3 Box, int[] Nodes);

/// <summary>
/// Bodies made of boxes, cut into bricks by one set of planes along each axis, so that bodies that touch have their nodes in the same places.
/// Each body has nodes of its own; a bond merges them.
/// </summary>
public sealed class BrickMesh
{
    private readonly double[][] _planes;
    private readonly int _bodies;
    private readonly Dictionary<long, int> _numbers = [];
    private readonly List<int> _same = [];
    private readonly List<(double X, double Y, double Z)> _places = [];

    /// <summary>Bricks.</summary>
    public IReadOnlyList<Brick> Bricks { get; }

    /// <summary>Places of the nodes, m. Merged nodes keep a place of their own that nothing uses.</summary>
    public IReadOnlyList<(double X, double Y, double Z)> Places => _places;

    /// <summary>Cuts up.</summary>
    /// <param name="blocks">Boxes and the body that each belongs to.</param>
    /// <param name="cuts">Boxes cut out of a body.</param>
    /// <param name="bonds">Where bodies are joined.</param>
    /// <param name="lines">Boxes whose faces must be planes too.</param>
    /// <param name="fine">Longest brick beside a face, m.</param>
    /// <param name="coarse">Longest brick anywhere, m.</param>
    /// <exception cref="ArgumentException">Two bodies want the same place.</exception>
    public BrickMesh(
        IReadOnlyList<(int Body, Box3 Box)> blocks, IReadOnlyList<(int Body, Box3 Box)> cuts, IReadOnlyList<Bond> bonds,
        IReadOnlyList<Box3> lines, double fine, double coarse)
    {
        _bodies = blocks.Max(b => b.Body) + 1;
        Box3[] boxes = [.. blocks.Select(b => b.Box), .. cuts.Select(c => c.Box), .. bonds.Select(b => b.Where), .. lines];
        _planes = [.. Enumerable.Range(0, 3).Select(axis =>
        {
            double least = blocks.Min(b => b.Box.From(axis)), most = blocks.Max(b => b.Box.To(axis));
            return Grid.Planes(boxes.SelectMany(b => (double[])[b.From(axis), b.To(axis)]).Where(x => x >= least - 1e-9 && x <= most + 1e-9), fine, coarse);
        })];
        Bricks = Cut(blocks, cuts);
        foreach (IGrouping<(int A, int B), Bond> pair in bonds.GroupBy(b => (b.A, b.B)))
        {
            if (pair.Sum(Join) == 0)
                throw new ArgumentException($"bodies {pair.Key.A} and {pair.Key.B} do not touch where they are joined");
        }

        Bricks = [.. Bricks.Select(b => b with { Nodes = [.. b.Nodes.Select(Merged)] })];
    }

    private List<Brick> Cut(IReadOnlyList<(int Body, Box3 Box)> blocks, IReadOnlyList<(int Body, Box3 Box)> cuts)
    {
        (double[] xs, double[] ys, double[] zs) = (_planes[0], _planes[1], _planes[2]);
        var bricks = new List<Brick>();
        for (int i = 0; i + 1 < xs.Length; i++)
            for (int j = 0; j + 1 < ys.Length; j++)
                for (int k = 0; k + 1 < zs.Length; k++)
                {
                    (double x, double y, double z) = ((xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2, (zs[k] + zs[k + 1]) / 2);
                    int body = -1;
                    foreach ((int of, Box3 box) in blocks)
                    {
                        if (!box.Holds(x, y, z, 0) || cuts.Any(c => c.Body == of && c.Box.Holds(x, y, z, 0)))
                            continue;
                        if (body >= 0 && body != of)
                            throw new ArgumentException($"bodies {body} and {of} both want ({x:G4}, {y:G4}, {z:G4})");
                        body = of;
                    }

                    if (body >= 0)
                        bricks.Add(new Brick(body, new Box3(xs[i], xs[i + 1], ys[j], ys[j + 1], zs[k], zs[k + 1]), Nodes(body, 2 * i, 2 * j, 2 * k)));
                }

        return bricks;
    }

    // each brick spans two steps of a grid that also counts the middles of edges
    private int[] Nodes(int body, int i, int j, int k)
    {
        int N(int a, int b, int c) => Number(body, i + a, j + b, k + c);
        return
        [
            N(0, 0, 0), N(2, 0, 0), N(2, 2, 0), N(0, 2, 0), N(0, 0, 2), N(2, 0, 2), N(2, 2, 2), N(0, 2, 2),
            N(1, 0, 0), N(2, 1, 0), N(1, 2, 0), N(0, 1, 0), N(1, 0, 2), N(2, 1, 2), N(1, 2, 2), N(0, 1, 2),
            N(0, 0, 1), N(2, 0, 1), N(2, 2, 1), N(0, 2, 1),
        ];
    }

    private int Number(int body, int i, int j, int k)
    {
        long key = Key(body, i, j, k);
        if (!_numbers.TryGetValue(key, out int n))
        {
            _numbers[key] = n = _places.Count;
            _places.Add((Half(_planes[0], i), Half(_planes[1], j), Half(_planes[2], k)));
            _same.Add(n);
        }

        return n;
    }

    private static double Half(double[] planes, int i) => i % 2 == 0 ? planes[i / 2] : (planes[i / 2] + planes[i / 2 + 1]) / 2;

    private long Key(int body, long i, long j, long k) => ((i * 2 * _planes[1].Length + j) * 2 * _planes[2].Length + k) * _bodies + body;

    private int Join(Bond bond)
    {
        int joined = 0;
        foreach ((long key, int a) in _numbers)
        {
            if (key % _bodies != bond.A || !_numbers.TryGetValue(key - bond.A + bond.B, out int b))
                continue;
            (double x, double y, double z) = _places[a];
            if (!bond.Where.Holds(x, y, z))
                continue;
            _same[Merged(a)] = Merged(b);
            joined++;
        }

        return joined;
    }

    private int Merged(int node)
    {
        while (_same[node] != node)
            node = _same[node] = _same[_same[node]];
        return node;
    }

    /// <summary>Nodes in use.</summary>
    public IReadOnlyCollection<int> Used => [.. Bricks.SelectMany(b => b.Nodes).Distinct()];

    /// <summary>
    /// Share of an even pressure that each node takes, m²: the faces of a body that lie in a plane, inside a box. On a face of eight nodes the corners take
    /// −1/12 of it and the middles of the edges 1/3.
    /// </summary>
    public Dictionary<int, double> Face(int body, int axis, double at, Box3 within)
    {
        var share = new Dictionary<int, double>();
        foreach (Brick b in Bricks)
        {
            // a plane inside the body is met from below only, so that nothing is counted twice
            bool top = Math.Abs(b.Box.To(axis) - at) < 1e-7, bottom = Math.Abs(b.Box.From(axis) - at) < 1e-7;
            if (b.Body != body || !top && !(bottom && !HasBelow(b, axis)))
                continue;
            (double x, double y, double z) = ((b.Box.X0 + b.Box.X1) / 2, (b.Box.Y0 + b.Box.Y1) / 2, (b.Box.Z0 + b.Box.Z1) / 2);
            (x, y, z) = axis switch { 0 => (at, y, z), 1 => (x, at, z), _ => (x, y, at) };
            if (!within.Holds(x, y, z))
                continue;
            double area = (b.Box.X1 - b.Box.X0) * (b.Box.Y1 - b.Box.Y0) * (b.Box.Z1 - b.Box.Z0) / (b.Box.To(axis) - b.Box.From(axis));
            for (int n = 0; n < b.Nodes.Length; n++)
            {
                (double X, double Y, double Z) place = _places[b.Nodes[n]];
                double along = axis switch { 0 => place.X, 1 => place.Y, _ => place.Z };
                if (Math.Abs(along - at) < 1e-7)
                    share[b.Nodes[n]] = share.GetValueOrDefault(b.Nodes[n]) + area * (n < 8 ? -1.0 / 12 : 1.0 / 3);
            }
        }

        return share.Count > 0 ? share : throw new ArgumentException($"body {body} has no face at {at:G4} along axis {axis} in {within}");
    }

    private bool HasBelow(Brick brick, int axis) => Bricks.Any(b => b.Body == brick.Body
        && Math.Abs(b.Box.To(axis) - brick.Box.From(axis)) < 1e-7
        && Enumerable.Range(0, 3).All(a => a == axis || Math.Abs(b.Box.From(a) - brick.Box.From(a)) < 1e-7));
}
