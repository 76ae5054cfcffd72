namespace Ramwright.Fabrication.Nesting;

/// <summary>How far a search has come.</summary>
/// <param name="Round">Plans tried.</param>
/// <param name="Rounds">Plans to be tried.</param>
/// <param name="Placed">Parts placed in the best plan.</param>
/// <param name="Parts">Parts to be placed.</param>
/// <param name="Filled">Area of parts over area of the sheets that the best plan opens.</param>
public readonly record struct NestProgress(int Round, int Rounds, int Placed, int Parts, double Filled);

/// <summary>
/// Looks for the order of parts, and the direction in which each sheet is filled, that leave least. One change at a time is tried;
/// a plan a little worse is followed at first, less and less towards the end. What was laid before the change is kept.
/// </summary>
/// <remarks>It counts rounds, not seconds: the same seed and rounds give the same plan on every machine.</remarks>
internal sealed class NestSearch
{
    private const int Directions = 16;

    /// <summary>How much worse a plan is on average that is followed at the beginning, in parts of middling size without a place.</summary>
    private const double Warmth = 0.15;

    private const int Coolings = 3, ManyParts = 100;

    /// <summary>What weighs how much while a plan is followed; the best plan is the one that places most, whatever else.</summary>
    private const double Closeness = 0.5, Missing = 3;

    /// <summary>Turns of a part that can be asked for one by one.</summary>
    private const int MostTurns = 36;

    /// <summary>Of all rounds these shares lay next what touches most, and let parts overlap and push them apart.</summary>
    private const double TouchingShare = 0.5, PushingShare = 0.3;

    private readonly IReadOnlyList<IReadOnlyList<NestShape>> _kinds;
    private readonly int[] _kindOf;
    private readonly NestTable _table;
    private readonly double _area;

    /// <param name="kinds">Each kind of part in its turns.</param>
    /// <param name="kindOf">The kind of each part.</param>
    /// <param name="sheets">The sheets: those that are there from the smallest up, then those to be bought.</param>
    public NestSearch(IReadOnlyList<IReadOnlyList<NestShape>> kinds, int[] kindOf, IReadOnlyList<NestSheet> sheets)
    {
        (_kinds, _kindOf) = (kinds, kindOf);
        _table = new NestTable(sheets, kinds.Sum(k => k.Count));
        _area = kindOf.Sum(k => kinds[k][0].Area);
    }

    private sealed record Plan(int[] Order, int[] Ways, int[] Turns, int[] Own, Placement?[] Laid, double Score, double Soft);

    /// <summary>Runs it.</summary>
    /// <param name="rounds">Plans to try beyond the first ones.</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <param name="goOn">Told of each round; false ends the search with the best plan so far.</param>
    /// <returns>For each part where it lies; null where it found no room.</returns>
    public IReadOnlyList<Placement?> Run(int rounds, ulong seed, Func<NestProgress, bool>? goOn)
    {
        var draw = new SeededDraw(seed);
        int round = 0;
        bool stopped = false;
        Plan first = First();
        Placement?[] best = ByItem(first);
        // a plan in order leaves what is left over in one piece: another one must be better
        int touching = _kindOf.Length > ManyParts ? 0 : (int)(rounds * TouchingShare), pushing = (int)(rounds * PushingShare), inOrder = rounds - touching - pushing;
        if (_kindOf.Length <= ManyParts && !IsFull(best))
        {
            var touch = new TouchSearch(_kinds, _kindOf, _table, draw);
            touch.Begin(Offer);
            while (touching-- > 0 && !IsFull(best) && GoesOn())
                touch.Try(Offer);
        }

        if (!stopped && !IsFull(best))
            InOrder(first, inOrder, draw, Offer, GoesOn);
        if (!stopped && !IsFull(best))
            best = new NestPressing(_kinds, _kindOf, _table, draw).Run(best, pushing, now => (best = now) == now && GoesOn());
        goOn?.Invoke(Progress(best, rounds, rounds));
        return best;

        double Offer(Placement?[] laid)
        {
            double score = Score(laid);
            if (score < Score(best))
                best = laid;
            return score;
        }

        bool GoesOn()
        {
            round++;
            stopped = stopped || goOn?.Invoke(Progress(best, round, rounds)) == false;
            return !stopped;
        }
    }

    private void InOrder(Plan first, int rounds, SeededDraw draw, Func<Placement?[], double> offer, Func<bool> goesOn)
    {
        Plan best = first, now = first;
        for (int round = 1; round <= rounds && goesOn(); round++)
        {
            Plan next = Changed(now, draw);
            // from warm to cold several times over
            double cooled = 1 - (double)round * Coolings / rounds % 1, allowed = -Math.Log(1 - draw.Share()) * Warmth * Missing * _area / _kindOf.Length * cooled * cooled;
            if (next.Soft <= now.Soft + allowed)
                now = next;
            if (next.Score < best.Score)
            {
                best = next;
                Placement?[] laid = ByItem(best);
                offer(laid);
                if (IsFull(laid))
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

    // nothing better can come of it: all lies on the first sheet
    private static bool IsFull(Placement?[] laid) => laid.All(p => p is { Sheet: 0 });

    private NestProgress Progress(Placement?[] laid, int round, int rounds)
    {
        double parts = 0;
        var opened = new HashSet<int>();
        foreach (Placement? p in laid)
        {
            if (p is not { } at)
                continue;
            parts += at.Shape.Area;
            opened.Add(at.Sheet);
        }

        double sheets = opened.Sum(s => _table.Sheets[s].Area);
        return new NestProgress(round, rounds, laid.Count(p => p is not null), _kindOf.Length, sheets > 0 ? parts / sheets : 0);
    }

    private Plan First()
    {
        int n = _kindOf.Length, m = _table.Sheets.Count;
        double High(int i) => Math.Max(_kinds[_kindOf[i]][0].Room.Width, _kinds[_kindOf[i]][0].Room.Height);
        int[][] orders =
        [
            [.. Enumerable.Range(0, n).OrderByDescending(i => _kinds[_kindOf[i]][0].Area).ThenBy(i => i)],
            [.. Enumerable.Range(0, n).OrderByDescending(High).ThenBy(i => i)],
        ];
        Plan? best = null;
        // many parts take long: one plan must do to begin with
        foreach (int[] order in n > ManyParts ? orders[..1] : orders)
        {
            foreach (int way in n > ManyParts ? (int[])[0] : [0, 4, 2])
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
            turns[item] = draw.Below(Math.Min(_kinds[_kindOf[item]].Count, MostTurns) + 1);
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
        for (int tries = 0; tries < 8 && _kindOf[order[a]] == _kindOf[order[b]]; tries++)
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
        int n = order.Length, m = _table.Sheets.Count;
        _table.Begin();
        var laid = new Placement?[n];
        var on = new List<Placement>[m];
        for (int s = 0; s < m; s++)
            on[s] = [];
        // what found no room on a sheet finds none when more lies there
        var full = new bool[m, _kinds.Count, MostTurns + 1];
        for (int i = 0; i < n; i++)
        {
            int item = order[i], k = _kindOf[item];
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
                    IReadOnlyList<NestShape> tried = turn == 0 ? _kinds[k] : [_kinds[k][turn - 1]];
                    laid[i] = _table.Best(item, tried, s, on[s], Way(own[item] > 0 ? own[item] - 1 : ways[s]));
                    full[s, k, turn] = laid[i] is null;
                }
            }

            if (laid[i] is { } at)
                on[at.Sheet].Add(at);
        }

        (double score, double soft) = Score(laid, ways);
        return new Plan(order, ways, turns, own, laid, score, soft);
    }

    // in this order: what finds no room, what must be bought, what is opened, how unevenly the sheets are filled
    private double Score(Placement?[] laid)
    {
        (double left, double bought, double finer) = Weighed(laid);
        return 1e4 * left + 1e2 * bought + finer;
    }

    // and how close the parts lie
    private (double Score, double Soft) Score(Placement?[] laid, int[] ways)
    {
        (double left, double bought, double finer) = Weighed(laid);
        double loose = 0;
        foreach (Placement? p in laid)
        {
            if (p is not { } at)
                continue;
            Spot way = Way(ways[at.Sheet]);
            Room room = _table.Sheets[at.Sheet].Room;
            double x = at.At.X + (at.Shape.Room.Left + at.Shape.Room.Right) / 2 - (room.Left + room.Right) / 2, y = at.At.Y + (at.Shape.Room.Bottom + at.Shape.Room.Top) / 2 - (room.Bottom + room.Top) / 2;
            loose += at.Shape.Area * (x * way.X + y * way.Y) / (room.Width + room.Height);
        }

        finer += Closeness * loose;
        return (1e4 * left + 1e2 * bought + finer, Missing * left + bought + finer);
    }

    private (double Left, double Bought, double Finer) Weighed(Placement?[] laid)
    {
        double placed = 0, bought = 0, opened = 0, uneven = 0;
        var filled = new double[_table.Sheets.Count];
        foreach (Placement? p in laid)
        {
            if (p is not { } at)
                continue;
            placed += at.Shape.Area;
            filled[at.Sheet] += at.Shape.Area;
        }

        for (int s = 0; s < filled.Length; s++)
        {
            if (filled[s] == 0)
                continue;
            NestSheet sheet = _table.Sheets[s];
            if (sheet.Buy)
                bought += sheet.Area;
            opened += sheet.Area;
            uneven += filled[s] * filled[s] / sheet.Area;
        }

        return (_area - placed, bought, opened - uneven);
    }
}
