namespace Ramwright.Fabrication.Bars;

/// <summary>Quick plans to begin from: the longest length first, onto the bar it fills best.</summary>
internal static class GreedyCuts
{
    public static IEnumerable<List<CutPattern>?> Of(CutTask task)
    {
        int[] byRoom = [.. Enumerable.Range(0, task.Bars.Count).OrderBy(j => task.Bars[j].Room).ThenBy(j => j)];
        yield return Fill(task, task.BarsByCost);
        yield return Fill(task, byRoom);
        yield return Fill(task, [.. byRoom.Reverse()]);
        yield return BestFilled(task);
    }

    // opens bars in a given order
    private static List<CutPattern>? Fill(CutTask task, int[] order)
    {
        int[] wanted = [.. task.Lengths.Select(l => l.Count)], bars = [.. task.Bars.Select(b => b.Count)];
        var plan = new List<CutPattern>();
        while (wanted.Any(n => n > 0))
        {
            int longest = Array.FindIndex(wanted, n => n > 0);
            int at = Array.FindIndex(order, k => bars[k] > 0 && task.Bars[k].Room >= task.Lengths[longest].Weight);
            if (at < 0)
                return null;
            int j = order[at];
            bars[j]--;
            plan.Add(new CutPattern(j, Take(task, wanted, task.Bars[j].Room)));
        }

        return plan;
    }

    // of all bars left, the one that the longest-first filling fills best for its cost
    private static List<CutPattern>? BestFilled(CutTask task)
    {
        int[] wanted = [.. task.Lengths.Select(l => l.Count)], bars = [.. task.Bars.Select(b => b.Count)];
        var plan = new List<CutPattern>();
        while (wanted.Any(n => n > 0))
        {
            int best = -1;
            double most = 0;
            for (int j = 0; j < bars.Length; j++)
            {
                if (bars[j] == 0)
                    continue;
                int[] trial = Take(task, (int[])wanted.Clone(), task.Bars[j].Room);
                double worth = trial.Select((n, i) => (double)n * task.Lengths[i].Weight).Sum() / task.Bars[j].Cost;
                if (worth > most)
                    (best, most) = (j, worth);
            }

            if (best < 0)
                return null;
            bars[best]--;
            plan.Add(new CutPattern(best, Take(task, wanted, task.Bars[best].Room)));
        }

        return plan;
    }

    private static int[] Take(CutTask task, int[] wanted, long room)
    {
        var pattern = new int[wanted.Length];
        for (int i = 0; i < wanted.Length; i++)
        {
            int n = (int)Math.Min(wanted[i], room / task.Lengths[i].Weight);
            pattern[i] = n;
            wanted[i] -= n;
            room -= n * task.Lengths[i].Weight;
        }

        return pattern;
    }
}
