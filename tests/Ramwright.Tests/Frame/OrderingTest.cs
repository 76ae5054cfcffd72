using Ramwright.Frame;

namespace Ramwright.Tests.Frame;

public class OrderingTest
{
    [Fact]
    public void AShuffledLadderBecomesNarrow()
    {
        // Two rails and rungs: numbered well, joined nodes are never more than two or three apart.
        const int rungs = 30;
        int[] name = [.. Enumerable.Range(0, 2 * rungs)];
        new Random(5).Shuffle(name);
        var joined = new List<int>[2 * rungs];
        for (int i = 0; i < joined.Length; i++)
            joined[i] = [];
        void Join(int a, int b)
        {
            joined[name[a]].Add(name[b]);
            joined[name[b]].Add(name[a]);
        }
        for (int i = 0; i < rungs; i++)
        {
            Join(2 * i, 2 * i + 1);
            if (i + 1 < rungs)
            {
                Join(2 * i, 2 * i + 2);
                Join(2 * i + 1, 2 * i + 3);
            }
        }
        int[] first = new int[2 * rungs + 1];
        for (int i = 0; i < joined.Length; i++)
            first[i + 1] = first[i] + joined[i].Count;
        int[] order = new int[2 * rungs];

        Ordering.ReverseCuthillMcKee(first, [.. joined.SelectMany(j => j)], order, new int[2 * rungs]);

        Assert.Equal(Enumerable.Range(0, 2 * rungs), order.Order());
        int[] place = new int[order.Length];
        for (int i = 0; i < order.Length; i++)
            place[order[i]] = i;
        Assert.InRange(Enumerable.Range(0, place.Length).Max(i => joined[i].Max(j => Math.Abs(place[i] - place[j]))), 1, 3);
    }

    [Fact]
    public void SeparatePartsAreAllPlaced()
    {
        // Node 1 alone; 0–2; 3–4.
        int[] order = new int[5];
        Ordering.ReverseCuthillMcKee([0, 1, 1, 2, 3, 4], [2, 0, 4, 3], order, new int[5]);

        Assert.Equal([0, 1, 2, 3, 4], order.Order());
    }
}
