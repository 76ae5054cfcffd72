using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>Fills the cells of a grid with parts and gives them nodes.</summary>
internal sealed class MeshBuilder(IReadOnlyList<SolidPart> parts, IReadOnlyList<Bond> bonds, MeshGrid grid)
{
    private const short Void = -1;

    // padded by one void cell all round, so that every node has eight cells about it
    private readonly int _stepMiddle = grid.NodesFast + 1, _stepSlow = (grid.NodesFast + 1) * (grid.NodesMiddle + 1);
    private readonly Dictionary<(int, int), int> _joined = [];

    public SolidMesh Build()
    {
        short[] part = Filled();
        (int[] number, int[] cellAt, short[] cellPart, int[] layers) = Numbered(part);
        var cellNodes = new int[8 * cellAt.Length];
        int[] nodeAt = Nodes(part, number, cellNodes);
        foreach (Bond bond in bonds)
            if (!_joined.ContainsKey(Pair(bond.A, bond.B)))
                throw new SolidFaultException($"{parts[bond.A].Name} and {parts[bond.B].Name} do not touch face to face where they are joined");
        (int[] body, int bodies) = MeshBodies.Of(cellNodes, nodeAt.Length);
        (int[] kind, List<CellKind> kinds) = KindsOf(cellAt, cellPart);
        return new SolidMesh(parts, grid, cellAt, nodeAt)
        {
            CellNodes = cellNodes,
            CellPart = cellPart,
            CellKind = kind,
            Kinds = kinds,
            Layers = layers,
            Body = body,
            Bodies = bodies,
        };
    }

    // what solving takes: measured on frames of a million unknowns, 645 bytes each, some 3.4 unknowns to a cell
    private const double BytesACell = 2300;

    /// <summary>Places of a grid beyond which even its voids are too many, whatever the machine.</summary>
    private const double MostPlaces = 400e6;

    /// <summary>Steel cells that the machine has room for, with a quarter of its memory left to others.</summary>
    private static double MostCells => 0.75 * GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / BytesACell;

    private static SolidFaultException TooMany(double cells, double most) =>
        new($"so short cells would be {cells:N0}, and there is room here for {most:N0}: take cells {Math.Ceiling(10 * Math.Cbrt(cells / most)) / 10:0.0} times as long");

    private short[] Filled()
    {
        double places = (double)_stepSlow * (grid.NodesSlow + 1);
        if (places > MostPlaces)
            throw TooMany(places, MostPlaces);
        var part = new short[_stepSlow * (grid.NodesSlow + 1)];
        Array.Fill(part, Void);
        for (short p = 0; p < parts.Count; p++)
        {
            foreach (Cuboid block in parts[p].Blocks)
                Lay(part, block, Void, p, p);
            foreach (Cuboid cut in parts[p].Cuts)
                Lay(part, cut, p, Void, p);
        }

        return part;
    }

    // what stands in the box as `over` becomes `with`; anything else is left, and another part there is refused
    private void Lay(short[] part, Cuboid box, short over, short with, short whose)
    {
        (int f0, int f1) = grid.Range(grid.Fast, box.From(grid.Fast), box.To(grid.Fast));
        (int m0, int m1) = grid.Range(grid.Middle, box.From(grid.Middle), box.To(grid.Middle));
        (int s0, int s1) = grid.Range(grid.Slow, box.From(grid.Slow), box.To(grid.Slow));
        for (int s = s0; s < s1; s++)
            for (int m = m0; m < m1; m++)
            {
                Span<short> row = part.AsSpan((s + 1) * _stepSlow + (m + 1) * _stepMiddle + 1 + f0, f1 - f0);
                for (int f = 0; f < row.Length; f++)
                {
                    if (row[f] == over)
                        row[f] = with;
                    else if (with != Void && row[f] != whose && !IsCut(whose, f0 + f, m, s))
                        throw new SolidFaultException($"{parts[row[f]].Name} and {parts[whose].Name} stand in one another");
                }
            }
    }

    // what is cut out of a part may be filled by another
    private bool IsCut(short part, int fast, int middle, int slow) => parts[part].Cuts.Any(cut =>
    {
        bool Within(int axis, int at) => grid.Range(axis, cut.From(axis), cut.To(axis)) is var (from, to) && at >= from && at < to;
        return Within(grid.Fast, fast) && Within(grid.Middle, middle) && Within(grid.Slow, slow);
    });

    private (int[] Number, int[] CellAt, short[] CellPart, int[] Layers) Numbered(short[] part)
    {
        int count = part.Count(p => p != Void);
        if (count == 0)
            throw new SolidFaultException("nothing is left of the parts after what is cut out of them");
        if (count > MostCells)
            throw TooMany(count, MostCells);
        var number = new int[part.Length];
        Array.Fill(number, -1);
        (var cellAt, var cellPart, var layers) = (new int[count], new short[count], new List<int>());
        int next = 0;
        for (int s = 0; s < grid.NodesSlow - 1; s++)
        {
            layers.Add(next);
            for (int m = 0; m < grid.NodesMiddle - 1; m++)
                for (int f = 0; f < grid.NodesFast - 1; f++)
                {
                    int at = (s + 1) * _stepSlow + (m + 1) * _stepMiddle + f + 1;
                    if (part[at] == Void)
                        continue;
                    (cellAt[next], cellPart[next], number[at]) = (grid.Index(f, m, s), part[at], next);
                    next++;
                }
        }

        layers.Add(next);
        return (number, cellAt, cellPart, [.. layers]);
    }

    private int[] Nodes(short[] part, int[] number, int[] cellNodes)
    {
        var nodeAt = new List<int>(cellNodes.Length / 6);
        Span<int> step = stackalloc int[8], corner = stackalloc int[8], cells = stackalloc int[8], group = stackalloc int[8];
        for (int o = 0; o < 8; o++)
        {
            (int f, int m, int s) = (o & 1, o >> 1 & 1, o >> 2);
            step[o] = f + m * _stepMiddle + s * _stepSlow;
            // the cell before the node has it as its far corner
            corner[o] = ((1 - f) << grid.Fast) | ((1 - m) << grid.Middle) | ((1 - s) << grid.Slow);
        }

        for (int s = 0; s < grid.NodesSlow; s++)
            for (int m = 0; m < grid.NodesMiddle; m++)
                for (int f = 0; f < grid.NodesFast; f++)
                {
                    int at = s * _stepSlow + m * _stepMiddle + f, steel = 0;
                    short first = part[at];
                    bool even = true;
                    for (int o = 0; o < 8; o++)
                    {
                        short p = part[at + step[o]];
                        even &= p == first;
                        steel += p == Void ? 0 : 1;
                    }

                    if (steel == 0)
                        continue;
                    int index = grid.Index(f, m, s);
                    for (int o = 0; o < 8; o++)
                        cells[o] = number[at + step[o]];
                    if (!even)
                        Group(cells, part, at, step, index, group);
                    for (int o = 0; o < 8; o++)
                    {
                        if (cells[o] < 0)
                            continue;
                        int node = even ? nodeAt.Count : nodeAt.Count + group[o];
                        cellNodes[8 * cells[o] + corner[o]] = node;
                    }

                    int copies = 1;
                    if (!even)
                        for (int o = 0; o < 8; o++)
                            copies = Math.Max(copies, cells[o] < 0 ? 0 : group[o] + 1);
                    for (int c = 0; c < copies; c++)
                        nodeAt.Add(index);
                }

        return [.. nodeAt];
    }

    // cells about a node that hang together face to face, numbered from 0
    private void Group(Span<int> cells, short[] part, int at, Span<int> step, int index, Span<int> group)
    {
        for (int o = 0; o < 8; o++)
            group[o] = o;
        for (int bit = 1; bit < 8; bit <<= 1)
            for (int o = 0; o < 8; o++)
            {
                int other = o | bit;
                if (other == o || cells[o] < 0 || cells[other] < 0 || group[o] == group[other] || !AreOne(part[at + step[o]], part[at + step[other]], index))
                    continue;
                (int keep, int drop) = (Math.Min(group[o], group[other]), Math.Max(group[o], group[other]));
                for (int i = 0; i < 8; i++)
                    if (group[i] == drop)
                        group[i] = keep;
            }

        int next = 0;
        Span<int> renumbered = stackalloc int[8];
        renumbered.Fill(-1);
        for (int o = 0; o < 8; o++)
        {
            if (cells[o] < 0)
                continue;
            ref int to = ref renumbered[group[o]];
            if (to < 0)
                to = next++;
            group[o] = to;
        }
    }

    private bool AreOne(short a, short b, int index)
    {
        if (a == b)
            return true;
        Vector at = grid.NodeAt(index);
        foreach (Bond bond in bonds)
        {
            if (Pair(bond.A, bond.B) != Pair(a, b) || !bond.Where.Holds(at.X, at.Y, at.Z, GridPlanes.Same))
                continue;
            _joined[Pair(a, b)] = 1;
            return true;
        }

        return false;
    }

    private static (int, int) Pair(int a, int b) => a < b ? (a, b) : (b, a);

    private (int[] Kind, List<CellKind> Kinds) KindsOf(int[] cellAt, short[] cellPart)
    {
        int[][] sizes = [.. grid.Planes.Select(Sizes)];
        (int nx, int ny, int nz) = (sizes[0].Max() + 1, sizes[1].Max() + 1, sizes[2].Max() + 1);
        (double, double)[] steels = [.. parts.Select(p => (p.E, p.Nu)).Distinct()];
        int[] steel = [.. parts.Select(p => Array.IndexOf(steels, (p.E, p.Nu)))];
        var number = new int[nx * ny * nz * steels.Length];
        var kind = new int[cellAt.Length];
        var kinds = new List<CellKind>();
        for (int c = 0; c < kind.Length; c++)
        {
            (int i, int j, int k) = grid.Place(cellAt[c]);
            ref int at = ref number[((steel[cellPart[c]] * nz + sizes[2][k]) * ny + sizes[1][j]) * nx + sizes[0][i]];
            if (at == 0)
            {
                Cuboid box = grid.CellBox(cellAt[c]);
                kinds.Add(new CellKind(box.Along(0), box.Along(1), box.Along(2), parts[cellPart[c]].E, parts[cellPart[c]].Nu));
                at = kinds.Count;
            }

            kind[c] = at - 1;
        }

        return (kind, kinds);
    }

    // spaces between planes that are alike get one number
    private static int[] Sizes(double[] planes)
    {
        var number = new Dictionary<long, int>();
        var sizes = new int[planes.Length - 1];
        for (int i = 0; i < sizes.Length; i++)
        {
            long length = (long)Math.Round((planes[i + 1] - planes[i]) * 1e9);
            if (!number.TryGetValue(length, out sizes[i]))
                number[length] = sizes[i] = number.Count;
        }

        return sizes;
    }
}
