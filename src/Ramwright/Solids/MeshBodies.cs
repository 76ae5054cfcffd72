namespace Ramwright.Solids;

/// <summary>Which nodes hang together through cells.</summary>
internal static class MeshBodies
{
    public static (int[] Body, int Count) Of(int[] cellNodes, int nodes)
    {
        var root = new int[nodes];
        for (int i = 0; i < nodes; i++)
            root[i] = i;
        int Find(int i)
        {
            while (root[i] != i)
                i = root[i] = root[root[i]];
            return i;
        }

        for (int c = 0; c < cellNodes.Length; c += 8)
        {
            int a = Find(cellNodes[c]);
            for (int n = 1; n < 8; n++)
            {
                int b = Find(cellNodes[c + n]);
                if (b != a)
                    (root[Math.Max(a, b)], a) = (Math.Min(a, b), Math.Min(a, b));
            }
        }

        var body = new int[nodes];
        int count = 0;
        for (int i = 0; i < nodes; i++)
            body[i] = Find(i) == i ? count++ : body[Find(i)];
        return (body, count);
    }
}
