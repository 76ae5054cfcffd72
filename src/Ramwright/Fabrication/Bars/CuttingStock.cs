namespace Ramwright.Fabrication.Bars;

/// <summary>
/// Which lengths to saw from which bars so that what is used up costs least, proven where the search ends by itself. Whole numbers
/// throughout; the same input gives the same plan.
/// </summary>
/// <remarks>
/// Gilmore and Gomory's linear programme over sawing patterns gives the price of each length; those prices bound every state of a
/// branch-and-bound search from below. The search opens one bar at a time for the longest length still wanted, fills it as full as
/// it goes, and never looks twice at a state that was reached for less.
/// </remarks>
public sealed class CuttingStock
{
    private readonly CutTask _task;
    private readonly PatternPrices _prices;
    private readonly long _mostStates;
    private readonly Dictionary<string, long> _seen = [];
    private readonly List<CutPattern> _open = [];
    private List<CutPattern>? _best;
    private long _bestCost, _states;
    private bool _stopped;

    private CuttingStock(CutTask task, long mostStates)
    {
        _task = task;
        _mostStates = mostStates;
        _prices = PatternPrices.Of(task);
    }

    /// <summary>Solves a task.</summary>
    /// <param name="task">What is wanted and what there is; every length must fit on some bar.</param>
    /// <param name="mostStates">How many states are looked at before the best plan so far is taken unproven.</param>
    /// <returns>The plan; null where the bars there are cannot hold everything.</returns>
    public static CutSolution? Solve(CutTask task, long mostStates = 400_000)
    {
        ArgumentNullException.ThrowIfNull(task);
        var search = new CuttingStock(task, mostStates);
        search._bestCost = long.MaxValue;
        foreach (List<CutPattern>? greedy in GreedyCuts.Of(task))
            search.Offer(greedy);
        int[] wanted = [.. task.Lengths.Select(l => l.Count)], bars = [.. task.Bars.Select(b => b.Count)];
        long bound = search.Bound(wanted, bars);
        if (search._bestCost > bound)
            search.Branch(wanted, bars, 0);
        return search._best is null ? null : new CutSolution(search._best, search._bestCost, search._stopped ? Math.Min(bound, search._bestCost) : search._bestCost, search._states);
    }

    private void Offer(List<CutPattern>? plan)
    {
        if (plan is null)
            return;
        long cost = plan.Sum(p => _task.Bars[p.Bar].Cost);
        if (cost < _bestCost)
            (_best, _bestCost) = ([.. plan], cost);
    }

    // what the rest costs at least
    private long Bound(int[] wanted, int[] bars)
    {
        double bound = 0;
        for (int i = 0; i < wanted.Length; i++)
            bound += _prices.OfLength[i] * wanted[i];
        for (int j = 0; j < bars.Length; j++)
        {
            if (_prices.OfBar[j] > 0)
                bound -= _prices.OfBar[j] * bars[j];
        }

        long step = _task.CostStep;
        return step * (long)Math.Ceiling(Math.Max(0, bound) / step - 1e-7);
    }

    private void Branch(int[] wanted, int[] bars, long spent)
    {
        int first = Array.FindIndex(wanted, n => n > 0);
        if (first < 0)
        {
            Offer(_open);
            return;
        }

        if (spent + Bound(wanted, bars) >= _bestCost || _stopped)
            return;
        if (++_states > _mostStates)
        {
            _stopped = true;
            return;
        }

        string state = State(wanted, bars);
        if (_seen.TryGetValue(state, out long before) && before <= spent)
            return;
        _seen[state] = spent;
        foreach (int j in _task.BarsByCost)
        {
            if (bars[j] == 0 || _task.Bars[j].Room < _task.Lengths[first].Weight)
                continue;
            bars[j]--;
            foreach (int[] pattern in Patterns(wanted, first, _task.Bars[j].Room))
            {
                for (int i = 0; i < wanted.Length; i++)
                    wanted[i] -= pattern[i];
                _open.Add(new CutPattern(j, pattern));
                Branch(wanted, bars, spent + _task.Bars[j].Cost);
                _open.RemoveAt(_open.Count - 1);
                for (int i = 0; i < wanted.Length; i++)
                    wanted[i] += pattern[i];
                if (_stopped)
                    break;
            }

            bars[j]++;
        }
    }

    /// <summary>Ways to fill a bar that hold the first length and leave no room for any other that is wanted; the fullest first.</summary>
    private List<int[]> Patterns(int[] wanted, int first, long room)
    {
        var all = new List<(long Left, int[] Pattern)>();
        var pattern = new int[wanted.Length];
        pattern[first] = 1;
        Fill(first, room - _task.Lengths[first].Weight);
        return [.. all.OrderBy(p => p.Left).Select(p => p.Pattern)];

        void Fill(int i, long left)
        {
            if (i == wanted.Length)
            {
                for (int k = 0; k < wanted.Length; k++)
                {
                    if (pattern[k] < wanted[k] && _task.Lengths[k].Weight <= left)
                        return;
                }

                all.Add((left, (int[])pattern.Clone()));
                return;
            }

            int had = pattern[i];
            long weight = _task.Lengths[i].Weight;
            int most = (int)Math.Min(wanted[i] - had, left / weight);
            for (int n = most; n >= 0; n--)
            {
                pattern[i] = had + n;
                Fill(i + 1, left - n * weight);
            }

            pattern[i] = had;
        }
    }

    private static string State(int[] wanted, int[] bars)
    {
        return string.Create(wanted.Length + bars.Length, (wanted, bars), static (text, s) =>
        {
            for (int i = 0; i < s.wanted.Length; i++)
                text[i] = (char)s.wanted[i];
            for (int j = 0; j < s.bars.Length; j++)
                text[s.wanted.Length + j] = (char)Math.Min(s.bars[j], char.MaxValue);
        });
    }
}
