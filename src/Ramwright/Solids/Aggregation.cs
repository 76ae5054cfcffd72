namespace Ramwright.Solids;

/// <summary>
/// Gathers the nodes of a level into pieces that move as rigid ones in the next: planes of the grid are gathered by threes, cut where the gaps are wide, and the nodes of one
/// box of planes that hang together within it are a piece.
/// </summary>
internal sealed class Aggregation
{
    /// <summary>Piece of each node.</summary>
    public required int[] Group { get; init; }

    /// <summary>How many pieces.</summary>
    public required int Count { get; init; }

    /// <summary>Where the pieces stand among the planes of the next level.</summary>
    public required Places Next { get; init; }

    /// <summary>Gathers.</summary>
    /// <param name="places">Where the nodes stand.</param>
    /// <param name="neighbours">Hands pairs of neighbours to what it is given.</param>
    /// <param name="bundles">Nodes that stay together.</param>
    /// <param name="coarse">Whether the nodes are pieces already: then twos of planes are gathered, because threes of rods and walls answer too slowly.</param>
    public static Aggregation Of(Places places, Action<Action<int, int>> neighbours, Bundles bundles, bool coarse)
    {
        int[][] gathered = [.. places.Planes.Select(p => Gathered(p, coarse))];
        int nodes = places.Count;
        var box = new int[nodes];
        (int nx, int ny) = (gathered[0][^1] + 1, gathered[1][^1] + 1);
        for (int i = 0; i < nodes; i++)
            box[i] = (gathered[2][places.At[3 * i + 2]] * ny + gathered[1][places.At[3 * i + 1]]) * nx + gathered[0][places.At[3 * i]];

        // a bundle stays together, with its first node
        for (int b = 0; b < bundles.Count; b++)
            foreach (int i in bundles.Nodes(b))
                box[i] = box[bundles.Nodes(b)[0]];

        var root = new int[nodes];
        for (int i = 0; i < nodes; i++)
            root[i] = i;
        neighbours((a, b) =>
        {
            if (box[a] != box[b])
                return;
            (a, b) = (Find(root, a), Find(root, b));
            if (a != b)
                root[Math.Max(a, b)] = Math.Min(a, b);
        });
        var group = new int[nodes];
        var at = new List<int>();
        int count = 0;
        for (int i = 0; i < nodes; i++)
        {
            int r = Find(root, i);
            if (r != i)
            {
                group[i] = group[r];
                continue;
            }

            group[i] = count++;
            for (int axis = 0; axis < 3; axis++)
                at.Add(gathered[axis][places.At[3 * i + axis]]);
        }

        double[][] planes = [.. Enumerable.Range(0, 3).Select(axis => places.Planes[axis].Zip(gathered[axis]).GroupBy(p => p.Second).Select(g => g.Average(p => p.First)).ToArray())];
        return new Aggregation { Group = group, Count = count, Next = new Places(planes, [.. at]) };
    }

    private static int Find(int[] root, int i)
    {
        while (root[i] != i)
            i = root[i] = root[root[i]];
        return i;
    }

    /// <summary>Group of each plane: threes if it can be, and cuts where planes are far apart.</summary>
    internal static int[] Gathered(double[] planes, bool coarse)
    {
        int n = planes.Length;
        double usual = n > 1 ? (planes[^1] - planes[0]) / (n - 1) : 1;
        ReadOnlySpan<double> odd = coarse ? [0, 3, 0, 0.5, 3] : [0, 3, 1, 0, 0.7];      // by how many planes are together
        var least = new double[n + 1];
        var width = new int[n + 1];
        for (int end = 1; end <= n; end++)
        {
            double cut = end == n ? 0 : 1.5 * Math.Min(1, Math.Pow(usual / (planes[end] - planes[end - 1]), 2));
            least[end] = double.PositiveInfinity;
            for (int w = 1; w <= Math.Min(4, end); w++)
                if (least[end - w] + odd[w] + cut < least[end])
                    (least[end], width[end]) = (least[end - w] + odd[w] + cut, w);
        }

        var group = new int[n];
        var ends = new Stack<int>();
        for (int end = n; end > 0; end -= width[end])
            ends.Push(end);
        for ((int g, int i) = (0, 0); ends.Count > 0; g++)
            for (int end = ends.Pop(); i < end; i++)
                group[i] = g;
        return group;
    }
}

/// <summary>Where the nodes of a level stand among planes.</summary>
/// <param name="Planes">Planes along each axis, m.</param>
/// <param name="At">Counts along x, y and z, three for each node.</param>
internal sealed record Places(double[][] Planes, int[] At)
{
    /// <summary>Nodes.</summary>
    public int Count => At.Length / 3;
}
