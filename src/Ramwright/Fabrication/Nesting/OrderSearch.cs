namespace Ramwright.Fabrication.Nesting;

/// <summary>
/// Looks for the order of parts, and the direction in which each sheet is filled, that leave least. One change at a time is tried;
/// a plan a little worse is followed at first, less and less towards the end. What was laid before the change is kept.
/// </summary>
internal sealed class OrderSearch(IReadOnlyList<IReadOnlyList<NestShape>> kinds, int[] kindOf, NestTable table, NestScore score)
{
    private const int Directions = 16;

    /// <summary>How much worse a plan is on average that is followed at the beginning, in parts of middling size without a place; three times that in area.</summary>
    private const double Warmth = 0.45;

    private const int Coolings = 3;

    /// <summary>Turns of a part that can be asked for one by one.</summary>
    private const int MostTurns = 36;

    private readonly double _area = kindOf.Sum(k => kinds[k][0].Area);
    private Plan? _first;

    private sealed record Plan(int[] Order, int[] Ways, int[] Turns, int[] Own, Placement?[] Laid, double Score, double Soft);

    /// <summary>The best of a few plans: for each part where it lies.</summary>
    /// <param name="few">Whether there are so few parts that several plans can be tried.</param>
    public Placement?[] Begin(bool few) => ByItem(_first = First(few));

    /// <summary>Goes on from there.</summary>
    /// <param name="rounds">Plans to try.</param>
    /// <param name="draw">The draws.</param>
    /// <param name="offer">Takes each better plan; true where no better one can be.</param>
    /// <param name="goesOn">Asked before each.</param>
    public void Run(int rounds, SeededDraw draw, Func<Placement?[], bool> offer, Func<bool> goesOn)
    {
        Plan best = _first ?? First(few: true), now = best;
        for (int round = 1; round <= rounds && goesOn(); round++)
        {
            Plan next = Changed(now, draw);
            // from warm to cold several times over
            double cooled = 1 - (double)round * Coolings / rounds % 1, allowed = -Math.Log(1 - draw.Share()) * Warmth * _area / kindOf.Length * cooled * cooled;
            if (next.Soft <= now.Soft + allowed)
                now = next;
            if (next.Score < best.Score)
            {
                best = next;
                if (offer(ByItem(best)))
                    return;
            }

            if (round * Coolings / rounds != (round + 1) * Coolings / rounds)
                now = best;
        }
    }

    private static Placement?[] ByItem(Plan plan)
    {
        var byItem = new Placement?[plan.Order.Length];
        for (int i = 0; i < plan.Order.Length; i++)
            byItem[plan.Order[i]] = plan.Laid[i];
        return byItem;
    }

    private static Spot Way(int way)
    {
        (double sin, double cos) = Math.SinCos(way * 2 * Math.PI / Directions);
        return new Spot(sin, cos);
    }

    private Plan First(bool few)
    {
        int n = kindOf.Length, m = table.Sheets.Count;
        double High(int i) => Math.Max(kinds[kindOf[i]][0].Room.Width, kinds[kindOf[i]][0].Room.Height);
        int[][] orders =
        [
            [.. Enumerable.Range(0, n).OrderByDescending(i => kinds[kindOf[i]][0].Area).ThenBy(i => i)],
            [.. Enumerable.Range(0, n).OrderByDescending(High).ThenBy(i => i)],
        ];
        Plan? best = null;
        // many parts take long: one plan must do to begin with
        foreach (int[] order in few ? orders : orders[..1])
        {
            foreach (int way in few ? (int[])[0, 4, 2] : [0])
            {
                Plan plan = Laid(order, [.. Enumerable.Repeat(way, m)], new int[n], new int[n], null, 0);
                if (best is null || plan.Score < best.Score)
                    best = plan;
            }
        }

        return best!;
    }

    // one thing is changed: how a sheet is filled, which way a part is turned, or the order
    private Plan Changed(Plan plan, SeededDraw draw)
    {
        int n = plan.Order.Length, kind = draw.Below(20);
        if (kind < 2 || n < 2)
        {
            int[] ways = (int[])plan.Ways.Clone();
            int sheet = draw.Below(ways.Length);
            ways[sheet] = draw.Below(Directions);
            int first = Array.FindIndex(plan.Laid, p => p is { } at && at.Sheet == sheet);
            return Laid(plan.Order, ways, plan.Turns, plan.Own, plan, Math.Max(0, first));
        }

        int a = draw.Below(n);
        if (kind < 6)
        {
            int[] turns = (int[])plan.Turns.Clone();
            int item = plan.Order[a];
            turns[item] = draw.Below(Math.Min(kinds[kindOf[item]].Count, MostTurns) + 1);
            return Laid(plan.Order, plan.Ways, turns, plan.Own, plan, a);
        }

        if (kind < 9)
        {
            int[] own = (int[])plan.Own.Clone();
            own[plan.Order[a]] = draw.Below(2) == 0 ? 0 : 1 + draw.Below(Directions);
            return Laid(plan.Order, plan.Ways, plan.Turns, own, plan, a);
        }

        int[] order = (int[])plan.Order.Clone();
        int[] left = [.. Enumerable.Range(0, n).Where(i => plan.Laid[i] is null)];
        int b = left.Length > 0 && kind < 14 ? left[draw.Below(left.Length)] : draw.Below(n);
        for (int tries = 0; tries < 8 && kindOf[order[a]] == kindOf[order[b]]; tries++)
            a = draw.Below(n);
        if (kind % 2 == 0)
        {
            (order[a], order[b]) = (order[b], order[a]);
        }
        else
        {
            int moved = order[b];
            if (a < b)
                Array.Copy(order, a, order, a + 1, b - a);
            else
                Array.Copy(order, b + 1, order, b, a - b);
            order[a] = moved;
        }

        return Laid(order, plan.Ways, plan.Turns, plan.Own, plan, Math.Min(a, b));
    }

    // lays parts in order; what stands before the first change lies as it did
    private Plan Laid(int[] order, int[] ways, int[] turns, int[] own, Plan? before, int from)
    {
        int n = order.Length, m = table.Sheets.Count;
        table.Begin();
        var laid = new Placement?[n];
        var on = new List<Placement>[m];
        for (int s = 0; s < m; s++)
            on[s] = [];
        // what found no room on a sheet finds none when more lies there
        var full = new bool[m, kinds.Count, MostTurns + 1];
        for (int i = 0; i < n; i++)
        {
            int item = order[i], k = kindOf[item];
            if (before is not null && i < from)
                laid[i] = before.Laid[i];
            else
            {
                for (int s = 0; s < m && laid[i] is null; s++)
                {
                    // 0 leaves the turn to the table; any other is one turn only
                    int turn = Math.Min(turns[item], MostTurns);
                    if (full[s, k, 0] || full[s, k, turn])
                        continue;
                    IReadOnlyList<NestShape> tried = turn == 0 ? kinds[k] : [kinds[k][turn - 1]];
                    laid[i] = table.Best(item, tried, s, on[s], Way(own[item] > 0 ? own[item] - 1 : ways[s]));
                    full[s, k, turn] = laid[i] is null;
                }
            }

            if (laid[i] is { } at)
                on[at.Sheet].Add(at);
        }

        (double hard, double soft) = score.Of(laid, [.. ways.Select(Way)]);
        return new Plan(order, ways, turns, own, laid, hard, soft);
    }
}
