namespace Ramwright.Fabrication.Bars;

/// <summary>
/// What each length is worth at least: the dual prices of the linear programme over all sawing patterns, found by adding the best
/// pattern until none is better. No pattern of any bar is worth more than the bar costs and its own price, so that the sum of prices
/// is a lower bound for whatever is left to saw.
/// </summary>
internal sealed class PatternPrices
{
    private const int MostRounds = 500;
    private const double Slack = 1e-9;

    /// <summary>Price of one of each length.</summary>
    public required double[] OfLength { get; init; }

    /// <summary>Price of having one more of each bar; zero where there is no want of it.</summary>
    public required double[] OfBar { get; init; }

    public static PatternPrices Of(CutTask task)
    {
        int n = task.Lengths.Count, m = task.Bars.Count, rows = n + m;
        double unit = task.Bars.Max(b => b.Cost);
        double[] need = [.. task.Lengths.Select(l => (double)l.Count), .. task.Bars.Select(b => (double)Math.Min(b.Count, task.Lengths.Sum(l => l.Count)))];
        var simplex = new ColumnSimplex(need, n, 10.0 * rows);
        double[] prices = simplex.Prices();
        for (int round = 0; round < MostRounds; round++)
        {
            bool better = false;
            for (int j = 0; j < m; j++)
            {
                (double worth, int[] pattern) = BestPattern.Of(task, j, prices);
                // prices of bars are below zero or zero
                if (worth + prices[n + j] <= task.Bars[j].Cost / unit + Slack)
                    continue;
                var column = new double[rows];
                for (int i = 0; i < n; i++)
                    column[i] = pattern[i];
                column[n + j] = 1;
                simplex.Enter(column, task.Bars[j].Cost / unit);
                prices = simplex.Prices();
                better = true;
            }

            if (!better)
                break;
        }

        return Feasible(task, prices, unit);
    }

    // rounding, or a stop before the end, may leave a pattern worth a little more than its bar: all prices come down until none is
    private static PatternPrices Feasible(CutTask task, double[] prices, double unit)
    {
        int n = task.Lengths.Count;
        double[] ofLength = [.. prices.Take(n).Select(p => Math.Max(0, p))], ofBar = [.. prices.Skip(n).Select(p => Math.Max(0, -p))];
        double over = 1;
        for (int j = 0; j < task.Bars.Count; j++)
        {
            (double worth, _) = BestPattern.Of(task, j, ofLength);
            over = Math.Max(over, worth / (task.Bars[j].Cost / unit + ofBar[j]));
        }

        return new PatternPrices { OfLength = [.. ofLength.Select(p => p / over * unit)], OfBar = [.. ofBar.Select(p => p * unit)] };
    }
}

/// <summary>The pattern of most worth on a bar: a knapsack, by depth-first search with the fractional bound.</summary>
internal static class BestPattern
{
    public static (double Worth, int[] Pattern) Of(CutTask task, int bar, double[] prices)
    {
        int n = task.Lengths.Count;
        int[] order = [.. Enumerable.Range(0, n).Where(i => prices[i] > 0).OrderByDescending(i => prices[i] / task.Lengths[i].Weight).ThenBy(i => i)];
        int[] best = new int[n], now = new int[n];
        double most = 0;
        Try(0, task.Bars[bar].Room, 0);
        return (most, best);

        void Try(int k, long room, double worth)
        {
            if (worth > most)
            {
                most = worth;
                now.CopyTo(best, 0);
            }

            if (k == order.Length)
                return;
            int i = order[k];
            long weight = task.Lengths[i].Weight;
            if (worth + room * (prices[i] / weight) <= most * (1 + 1e-12))
                return;
            for (int c = (int)Math.Min(task.Lengths[i].Count, room / weight); c >= 0; c--)
            {
                now[i] = c;
                Try(k + 1, room - c * weight, worth + c * prices[i]);
            }

            now[i] = 0;
        }
    }
}
