namespace Ramwright.Frame;

/// <summary>
/// Which movements are unknown, in what order, and the outline of their matrix: row i of the lower triangle is kept from
/// column <see cref="First"/>[i] to the diagonal, rows one after another.
/// </summary>
internal sealed class Unknowns
{
    public const int PerNode = 6;

    /// <summary>How many.</summary>
    public readonly int Count;
    /// <summary>Number of each movement, six for each node; −1 where a support holds it.</summary>
    public readonly int[] Of;
    /// <summary>The movement (six times its node, plus which) that an unknown stands for.</summary>
    public readonly int[] Movement;
    /// <summary>First column kept in each row.</summary>
    public readonly int[] First;
    /// <summary>Entry (i, j) is kept at Row[i] + j.</summary>
    public readonly int[] Row;
    /// <summary>How many entries are kept.</summary>
    public readonly int Entries;

    public Unknowns(FrameModel model)
    {
        int nodes = model.Nodes.Count;
        Of = new int[PerNode * nodes];
        foreach (Support s in model.Supports)
            Hold(Of.AsSpan(PerNode * s.Node, PerNode), s);

        int[] joined = new int[nodes + 1];                 // neighbours by node, one after another
        int[] neighbours = new int[2 * model.Members.Count];
        Join(model, joined, neighbours);
        int[] order = new int[nodes];
        Ordering.ReverseCuthillMcKee(joined, neighbours, order, new int[nodes]);

        Movement = new int[PerNode * nodes];
        foreach (int node in order)
            for (int m = PerNode * node; m < PerNode * node + PerNode; m++)
                if (Of[m] == 0)
                {
                    Movement[Count] = m;
                    Of[m] = Count++;
                }
        Array.Resize(ref Movement, Count);
        First = new int[Count];
        Row = new int[Count];
        for (int i = 0, at = 0; i < Count;)
        {
            int node = Movement[i] / PerNode, first = Start(node, i);
            foreach (int other in neighbours.AsSpan(joined[node]..joined[node + 1]))
                first = Math.Min(first, Start(other, i));
            for (; i < Count && Movement[i] / PerNode == node; i++)
            {
                First[i] = first;
                Row[i] = at - first;
                at += i - first + 1;
            }
            Entries = at;
        }
    }

    private static void Hold(Span<int> of, Support s)
    {
        if (s.Ux) of[0] = -1;
        if (s.Uy) of[1] = -1;
        if (s.Uz) of[2] = -1;
        if (s.Rx) of[3] = -1;
        if (s.Ry) of[4] = -1;
        if (s.Rz) of[5] = -1;
    }

    private bool IsFree(int node) => Of.AsSpan(PerNode * node, PerNode).Contains(0);

    /// <summary>Nodes held in every way have no unknowns and join nothing.</summary>
    private void Join(FrameModel model, int[] joined, int[] neighbours)
    {
        foreach (FrameMember m in model.Members)
            if (IsFree(m.From) && IsFree(m.To))
            {
                joined[m.From]++;
                joined[m.To]++;
            }
        for (int i = 0, sum = 0; i < joined.Length; i++)
            joined[i] = sum += joined[i];                  // ends; each becomes a start as it is filled from behind
        foreach (FrameMember m in model.Members)
            if (IsFree(m.From) && IsFree(m.To))
            {
                neighbours[--joined[m.From]] = m.To;
                neighbours[--joined[m.To]] = m.From;
            }
    }

    /// <summary>The node's first unknown, or <paramref name="otherwise"/> if it has none.</summary>
    private int Start(int node, int otherwise)
    {
        foreach (int unknown in Of.AsSpan(PerNode * node, PerNode))
            if (unknown >= 0)
                return unknown;
        return otherwise;
    }
}
