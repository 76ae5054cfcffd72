namespace Ramwright.Fabrication.Nesting;

/// <summary>
/// Presses parts that found no room into sheets that are nearly full, in exchange for lesser ones where need be: they are laid over others, and all are pushed apart.
/// </summary>
internal sealed class NestPressing(IReadOnlyList<IReadOnlyList<NestShape>> kinds, int[] kindOf, NestTable table, SeededDraw draw)
{
    /// <summary>Rounds of pushing after which a try ends, and rounds without any gain.</summary>
    private const int MostRounds = 120, Patience = 30;

    /// <summary>Of a sheet's room no more than a share drawn between these is to be claimed.</summary>
    private const double FullLeast = 0.86, FullMost = 1.0;

    /// <summary>What is gained by less than this is not, m².</summary>
    private const double Gain = 1e-9;

    /// <summary>Runs it.</summary>
    /// <param name="laid">For each part where it lies.</param>
    /// <param name="rounds">Rounds of pushing.</param>
    /// <param name="goOn">Told of the best plan after each round; false ends it.</param>
    public Placement?[] Run(Placement?[] laid, int rounds, Func<Placement?[], bool> goOn)
    {
        int round = 0;
        while (round < rounds)
        {
            if (Exchange(laid) is not var (sheet, items))
            {
                round++;
                if (!goOn(laid))
                    break;
                continue;
            }

            PushApart push = Start(laid, sheet, items);
            double least = double.PositiveInfinity;
            int since = 0;
            bool stopped = false;
            for (int k = 0; k < MostRounds && since < Patience && round < rounds && !push.IsDone; k++)
            {
                push.Round();
                round++;
                if (!goOn(laid))
                {
                    stopped = true;
                    break;
                }

                since = push.Overlap < least * 0.98 ? 0 : since + 1;
                least = Math.Min(least, push.Overlap);
            }

            if (push.IsDone)
                laid = Better(laid, Done(laid, sheet, items, push));
            if (stopped)
                break;
        }

        return laid;
    }

    private double AreaOf(int item) => kinds[kindOf[item]][0].Area;

    private double ClaimOf(int item) => kinds[kindOf[item]][0].Claim;

    // which parts shall lie on a sheet, more by area than do; null where none such is drawn
    private (int Sheet, List<int> Items)? Exchange(Placement?[] laid)
    {
        int[] left = [.. Enumerable.Range(0, laid.Length).Where(i => laid[i] is null)];
        if (left.Length == 0)
            return null;
        for (int tries = 0; tries < 50; tries++)
        {
            int sheet = draw.Below(table.Sheets.Count);
            List<int> items = [.. Enumerable.Range(0, laid.Length).Where(i => laid[i] is { } at && at.Sheet == sheet)];
            double before = items.Sum(AreaOf), most = table.Sheets[sheet].Free * (FullLeast + (FullMost - FullLeast) * draw.Share());
            for (int out_ = draw.Below(4); out_ > 1 && items.Count > 0; out_--)
                items.RemoveAt(draw.Below(items.Count));
            double claimed = items.Sum(ClaimOf);
            // in an order that is drawn
            var pool = new List<int>(left);
            while (pool.Count > 0)
            {
                int k = draw.Below(pool.Count), item = pool[k];
                pool.RemoveAt(k);
                if (claimed + ClaimOf(item) > most || !Fits(item, sheet))
                    continue;
                items.Add(item);
                claimed += ClaimOf(item);
            }

            if (items.Sum(AreaOf) > before + Gain)
                return (sheet, items);
        }

        return null;
    }

    private bool Fits(int item, int sheet) => kinds[kindOf[item]].Any(s => table.Sheets[sheet].Origins(s) is { Width: > -NestTable.Hair, Height: > -NestTable.Hair });

    private PushApart Start(Placement?[] laid, int sheet, List<int> items) => new(table, sheet, [.. items.Select(i => kinds[kindOf[i]])],
        [.. items.Select(i => laid[i]?.Shape ?? kinds[kindOf[i]].First(s => table.Sheets[sheet].Origins(s) is { Width: > -NestTable.Hair, Height: > -NestTable.Hair }))],
        [.. items.Select(i => laid[i]?.At)], draw);

    // what had to go from the sheet, and what has no room yet, may find some now
    private Placement?[] Done(Placement?[] laid, int sheet, List<int> items, PushApart push)
    {
        var next = new Placement?[laid.Length];
        var on = new List<Placement>[table.Sheets.Count];
        for (int s = 0; s < on.Length; s++)
            on[s] = [];
        for (int k = 0; k < items.Count; k++)
            Put(new Placement(items[k], sheet, push.Shapes[k], push.At[k]));
        for (int i = 0; i < laid.Length; i++)
        {
            if (laid[i] is { } at && at.Sheet != sheet)
                Put(at);
        }

        table.Begin();
        foreach (int item in Enumerable.Range(0, laid.Length).Where(i => next[i] is null).OrderByDescending(AreaOf).ToArray())
        {
            for (int s = 0; s < on.Length && next[item] is null; s++)
            {
                if (table.Best(item, kinds[kindOf[item]], s, on[s], new Spot(0, 1)) is { } found)
                    Put(found);
            }
        }

        return next;

        void Put(Placement p)
        {
            next[p.Item] = p;
            on[p.Sheet].Add(p);
        }
    }

    private static Placement?[] Better(Placement?[] now, Placement?[] next)
    {
        static double Placed(Placement?[] plan) => plan.Sum(p => p?.Shape.Area ?? 0);
        return Placed(next) > Placed(now) + Gain ? next : now;
    }
}
