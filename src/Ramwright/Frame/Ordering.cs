namespace Ramwright.Frame;

/// <summary>
/// Numbers the nodes so that members join near numbers, which keeps the matrix narrow: reverse Cuthill–McKee from a node
/// at the rim of each connected part.
/// </summary>
/// <remarks>Cuthill and McKee, ACM National Conference (1969); rim search after George and Liu (1979). From memory.</remarks>
internal static class Ordering
{
    /// <summary>Orders a graph.</summary>
    /// <param name="first">Where each node's neighbours start in <paramref name="neighbours"/>; one longer than there are nodes.</param>
    /// <param name="neighbours">Neighbours, node after node.</param>
    /// <param name="order">Filled with the nodes in their new order.</param>
    /// <param name="scratch">As long as there are nodes.</param>
    public static void ReverseCuthillMcKee(
        ReadOnlySpan<int> first, ReadOnlySpan<int> neighbours, Span<int> order, Span<int> scratch)
    {
        int n = order.Length, placed = 0;
        Span<int> seen = scratch[..n];          // mark of the last search that met the node; −1: placed for good
        seen.Clear();
        int mark = 0;
        for (int root = 0; root < n; root++)
        {
            if (seen[root] < 0)
                continue;
            int start = root, depth = -1;
            while (true)
            {
                int count = Search(first, neighbours, start, ++mark, seen, order[placed..], out int levels, out int lastLevel);
                if (levels <= depth)
                    break;
                depth = levels;
                start = LeastJoined(first, order.Slice(placed + lastLevel, count - lastLevel));
            }
            int found = Search(first, neighbours, start, ++mark, seen, order[placed..], out _, out _);
            foreach (int node in order.Slice(placed, found))
                seen[node] = -1;
            placed += found;
        }
        order.Reverse();
    }

    /// <summary>Breadth first from one node, less joined neighbours first.</summary>
    private static int Search(
        ReadOnlySpan<int> first, ReadOnlySpan<int> neighbours, int start, int mark, Span<int> seen, Span<int> queue,
        out int levels, out int lastLevel)
    {
        queue[0] = start;
        seen[start] = mark;
        int count = 1, head = 0;
        levels = 0;
        lastLevel = 0;
        while (head < count)
        {
            lastLevel = head;
            levels++;
            for (int end = count; head < end; head++)
            {
                int node = queue[head], from = count;
                foreach (int next in neighbours[first[node]..first[node + 1]])
                {
                    if (seen[next] == mark)
                        continue;
                    seen[next] = mark;
                    int at = count++, degree = first[next + 1] - first[next];
                    for (; at > from && first[queue[at - 1] + 1] - first[queue[at - 1]] > degree; at--)
                        queue[at] = queue[at - 1];
                    queue[at] = next;
                }
            }
        }
        return count;
    }

    private static int LeastJoined(ReadOnlySpan<int> first, ReadOnlySpan<int> level)
    {
        int best = level[0];
        foreach (int node in level)
            if (first[node + 1] - first[node] < first[best + 1] - first[best])
                best = node;
        return best;
    }
}
