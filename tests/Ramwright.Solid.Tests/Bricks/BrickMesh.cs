using Ramwright.Solids;

namespace Ramwright.Solid.Tests.Bricks;

/// <summary>A brick of eight or twenty nodes.</summary>
/// <param name="Body">The body that it is part of.</param>
/// <param name="Box">Its edges, m.</param>
/// <param name="Nodes">Corners below anticlockwise, corners above; where there are twenty, edges below, edges above, uprights. Numbers from 0.</param>
public sealed record Brick(int Body, Cuboid Box, int[] Nodes);

/// <summary>The engine's own mesh as CalculiX takes it: its cells with their eight corners, or with the middles of their edges as nodes too.</summary>
public sealed class BrickMesh
{
    private static readonly int[] Corner = [0, 1, 3, 2, 4, 5, 7, 6];
    private static readonly (int A, int B)[] Edges = [(0, 1), (1, 2), (2, 3), (3, 0), (4, 5), (5, 6), (6, 7), (7, 4), (0, 4), (1, 5), (2, 6), (3, 7)];
    private readonly List<(double X, double Y, double Z)> _places = [];
    private readonly bool _middles;

    /// <summary>The cells.</summary>
    public SolidMesh Mesh { get; }

    /// <summary>Bricks.</summary>
    public IReadOnlyList<Brick> Bricks { get; }

    /// <summary>Places of the nodes, m; corners are numbered as in the mesh.</summary>
    public IReadOnlyList<(double X, double Y, double Z)> Places => _places;

    /// <summary>Nodes in use.</summary>
    public IReadOnlyCollection<int> Used => [.. Enumerable.Range(0, _places.Count)];

    /// <summary>Cuts up.</summary>
    /// <param name="blocks">Boxes and the body that each belongs to.</param>
    /// <param name="cuts">Boxes cut out of a body.</param>
    /// <param name="bonds">Where bodies are joined.</param>
    /// <param name="lines">Boxes whose faces must be planes too.</param>
    /// <param name="fine">Longest brick beside a face, m.</param>
    /// <param name="coarse">Longest brick anywhere, m.</param>
    /// <param name="middles">Whether the middles of edges are nodes too.</param>
    public BrickMesh(
        IReadOnlyList<(int Body, Cuboid Box)> blocks, IReadOnlyList<(int Body, Cuboid Box)> cuts, IReadOnlyList<Bond> bonds,
        IReadOnlyList<Cuboid> lines, double fine, double coarse, bool middles = true)
    {
        int[] bodies = [.. blocks.Select(b => b.Body).Distinct().Order()];
        int Number(int body) => Array.IndexOf(bodies, body);
        SolidPart[] parts = [.. bodies.Select(body => new SolidPart($"body {body}", [.. blocks.Where(b => b.Body == body).Select(b => b.Box)])
        {
            Cuts = [.. cuts.Where(c => c.Body == body).Select(c => c.Box)],
        })];
        (Mesh, _middles) = (SolidMesh.Of(parts, [.. bonds.Select(b => new Bond(Number(b.A), Number(b.B), b.Where))], new CellSizes(fine, coarse), lines), middles);
        Bricks = Cut(bodies);
    }

    /// <summary>A mesh that is cut up already; corners only.</summary>
    public BrickMesh(SolidMesh mesh)
    {
        Mesh = mesh ?? throw new ArgumentNullException(nameof(mesh));
        Bricks = Cut([.. Enumerable.Range(0, mesh.Parts.Count)]);
    }

    private Brick[] Cut(int[] bodies)
    {
        for (int i = 0; i < Mesh.NodeCount; i++)
            _places.Add((Mesh.At(i).X, Mesh.At(i).Y, Mesh.At(i).Z));

        var middle = new Dictionary<(int, int), int>();
        int Middle(int a, int b)
        {
            (int, int) key = (Math.Min(a, b), Math.Max(a, b));
            if (middle.TryGetValue(key, out int n))
                return n;
            ((double x, double y, double z), (double x1, double y1, double z1)) = (_places[a], _places[b]);
            _places.Add(((x + x1) / 2, (y + y1) / 2, (z + z1) / 2));
            return middle[key] = _places.Count - 1;
        }

        var bricks = new Brick[Mesh.CellCount];
        for (int c = 0; c < bricks.Length; c++)
        {
            int[] own = Mesh.NodesOf(c).ToArray(), n = [.. Corner.Select(k => own[k])];
            bricks[c] = new Brick(bodies[Mesh.PartOf(c)], Mesh.CellBox(c), _middles ? [.. n, .. Edges.Select(e => Middle(n[e.A], n[e.B]))] : n);
        }

        return bricks;
    }

    /// <summary>
    /// Share of an even pressure that each node takes, m²: the faces of a body that lie in a plane, inside a box. On a face of eight nodes the corners take
    /// −1/12 of it and the middles of the edges 1/3; on one of four, a quarter each.
    /// </summary>
    public Dictionary<int, double> Face(int body, int axis, double at, Cuboid within)
    {
        var share = new Dictionary<int, double>();
        foreach (Brick b in Bricks)
        {
            // a plane inside the body is met from below only, so that nothing is counted twice
            bool top = Math.Abs(b.Box.To(axis) - at) < 1e-7, bottom = Math.Abs(b.Box.From(axis) - at) < 1e-7;
            if (b.Body != body || !top && !(bottom && !HasBelow(b, axis)))
                continue;
            Cuboid flat = b.Box.With(axis, at, at);
            if (!within.Holds(flat.Middle(0), flat.Middle(1), flat.Middle(2)))
                continue;
            double area = b.Box.Volume / b.Box.Along(axis);
            for (int n = 0; n < b.Nodes.Length; n++)
            {
                (double X, double Y, double Z) place = _places[b.Nodes[n]];
                double along = axis switch { 0 => place.X, 1 => place.Y, _ => place.Z };
                if (Math.Abs(along - at) < 1e-7)
                    share[b.Nodes[n]] = share.GetValueOrDefault(b.Nodes[n]) + area * (!_middles ? 0.25 : n < 8 ? -1.0 / 12 : 1.0 / 3);
            }
        }

        return share.Count > 0 ? share : throw new ArgumentException($"body {body} has no face at {at:G4} along axis {axis} in {within}");
    }

    private bool HasBelow(Brick brick, int axis) => Bricks.Any(b => b.Body == brick.Body
        && Math.Abs(b.Box.To(axis) - brick.Box.From(axis)) < 1e-7
        && Enumerable.Range(0, 3).All(a => a == axis || Math.Abs(b.Box.From(a) - brick.Box.From(a)) < 1e-7));
}
