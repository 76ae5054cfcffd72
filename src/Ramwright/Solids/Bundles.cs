namespace Ramwright.Solids;

/// <summary>
/// Nodes that stretched cells bind tightly: those of a thin wall's two faces, of a slender rod's cross-section. The smoother takes each bundle as a whole; by single nodes it would
/// only see how stiff the bundle is in itself, and hardly move it against its neighbours.
/// </summary>
internal sealed class Bundles
{
    /// <summary>An edge this many times shorter than its cell's longest binds.</summary>
    private const double Binding = 2.5;

    /// <summary>Nodes of a bundle at most.</summary>
    public const int Most = 16;

    private readonly int[] _start, _nodes;

    private Bundles(int[] start, int[] nodes) => (_start, _nodes) = (start, nodes);

    /// <summary>How many there are; a node that nothing binds is one by itself.</summary>
    public int Count => _start.Length - 1;

    /// <summary>Nodes of a bundle, in rising order.</summary>
    public ReadOnlySpan<int> Nodes(int bundle) => _nodes.AsSpan(_start[bundle], _start[bundle + 1] - _start[bundle]);

    /// <summary>Each node by itself.</summary>
    public static Bundles Single(int nodes) => new([.. Enumerable.Range(0, nodes + 1)], [.. Enumerable.Range(0, nodes)]);

    /// <summary>Of a mesh, by the shapes of its cells; the tightest bound first.</summary>
    public static Bundles Of(SolidMesh mesh)
    {
        double[] ratio = new double[3 * mesh.Kinds.Count];
        for (int k = 0; k < mesh.Kinds.Count; k++)
        {
            (double x, double y, double z) = (mesh.Kinds[k].X, mesh.Kinds[k].Y, mesh.Kinds[k].Z);
            double longest = Math.Max(x, Math.Max(y, z));
            (ratio[3 * k], ratio[3 * k + 1], ratio[3 * k + 2]) = (longest / x, longest / y, longest / z);
        }

        int[] root = [.. Enumerable.Range(0, mesh.NodeCount)], size = new int[mesh.NodeCount];
        Array.Fill(size, 1);
        foreach (double least in ratio.Where(r => r >= Binding).Select(Step).Distinct().OrderDescending())
            for (int c = 0; c < mesh.CellCount; c++)
            {
                int k = 3 * mesh.CellKind[c];
                for (int axis = 0; axis < 3; axis++)
                    if (ratio[k + axis] >= least)
                        Bind(mesh.NodesOf(c), 1 << axis, root, size);
            }

        return Gathered(root);
    }

    // ratios within a factor of two are alike
    private static double Step(double ratio) => Binding * Math.Pow(2, Math.Floor(Math.Log2(ratio / Binding)));

    private static void Bind(ReadOnlySpan<int> cell, int bit, int[] root, int[] size)
    {
        for (int n = 0; n < 8; n++)
        {
            if ((n & bit) != 0)
                continue;
            (int a, int b) = (Find(root, cell[n]), Find(root, cell[n | bit]));
            if (a == b || size[a] + size[b] > Most)
                continue;
            (a, b) = (Math.Min(a, b), Math.Max(a, b));
            (root[b], size[a]) = (a, size[a] + size[b]);
        }
    }

    private static int Find(int[] root, int i)
    {
        while (root[i] != i)
            i = root[i] = root[root[i]];
        return i;
    }

    private static Bundles Gathered(int[] root)
    {
        var number = new int[root.Length];
        int count = 0;
        for (int i = 0; i < root.Length; i++)
            number[i] = Find(root, i) == i ? count++ : number[Find(root, i)];
        var start = new int[count + 2];
        foreach (int b in number)
            start[b + 2]++;
        for (int b = 2; b < start.Length; b++)
            start[b] += start[b - 1];
        var nodes = new int[root.Length];
        for (int i = 0; i < root.Length; i++)
            nodes[start[number[i] + 1]++] = i;
        return new Bundles(start[..^1], nodes);
    }
}
