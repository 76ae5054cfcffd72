using CsCheck;
using Google.OrTools.Sat;
using Ramwright.Fabrication.Bars;

namespace Ramwright.Tests.Fabrication.Bars;

public class CuttingStockTest
{
    private static readonly Gen<CutTask> Tasks =
        from kinds in Gen.Int[1, 6]
        from weights in Gen.Long[300, 3000].Array[kinds]
        from counts in Gen.Int[1, 5].Array[kinds]
        from bought in Gen.Long[3000, 7000].Array[1, 2]
        from racked in Gen.Select(Gen.Long[400, 4000], Gen.Int[1, 2]).Array[0, 4]
        select new CutTask(
            [.. weights.Distinct().OrderDescending().Select((w, i) => new CutLength(w, counts[i]))],
            [.. racked.Select(r => new CutBar(r.Item1, r.Item1, r.Item2)), .. bought.Distinct().Select(b => new CutBar(b, 1000 * b, 40))]);

    [Fact]
    public void NoPlanCostsLessThanOursAsASolverOfConstraintsFinds()
    {
        int tried = 0, proven = 0;
        Tasks.Sample(task =>
        {
            CutSolution ours = CuttingStock.Solve(task)!;

            Holds(task, ours);
            long least = BySat(task);
            tried++;
            proven += ours.IsProven ? 1 : 0;
            // a search that gave up says how much less could be had at most
            Assert.InRange(least, ours.Bound, ours.Cost);
            if (ours.IsProven)
                Assert.Equal(least, ours.Cost);
        }, iter: 60, threads: 1);
        Assert.True(proven >= 0.95 * tried, $"{proven} of {tried} proven");
    }

    [Fact]
    public void TheBoundNeverLiesAboveThePlan() => Tasks.Sample(task =>
    {
        CutSolution hurried = CuttingStock.Solve(task, mostStates: 1)!;

        Holds(task, hurried);
        Assert.True(hurried.Bound <= CuttingStock.Solve(task)!.Cost);
    }, iter: 200, threads: 1);

    [Fact]
    public void WhatDoesNotFitOnTheBarsThereAreHasNoPlan() =>
        Assert.Null(CuttingStock.Solve(new CutTask([new CutLength(600, 2)], [new CutBar(1000, 1000, 1)])));

    /// <summary>The example of Gilmore and Gomory's method in most textbooks: rolls of 5.6 m, thirteen widths, 219 to cut.</summary>
    [Fact]
    public void APaperMillsOrderTakesSeventyThreeRolls()
    {
        (long Width, int Count)[] order =
        [
            (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20), (2000, 10), (2050, 12), (2100, 14), (2140, 16), (2150, 18), (2200, 20),
        ];
        var task = new CutTask([.. order.OrderByDescending(o => o.Width).Select(o => new CutLength(o.Width, o.Count))], [new CutBar(5600, 5600, 300)]);

        CutSolution plan = CuttingStock.Solve(task)!;

        Holds(task, plan);
        var reference = new Reference("K-01", "cutting-stock example of the literature, 5600 mm rolls, 219 widths: 73 rolls, and the material bound of 72.7", Trust.FromMemoryAndRecomputed);
        reference.Exactly("rolls", 73, plan.Patterns.Count);
        reference.Exactly("bound, rolls", 73L, plan.Bound / 5600);
    }

    private static void Holds(CutTask task, CutSolution plan)
    {
        for (int i = 0; i < task.Lengths.Count; i++)
            Assert.Equal(task.Lengths[i].Count, plan.Patterns.Sum(p => p.Counts[i]));
        Assert.All(plan.Patterns, p => Assert.True(p.Counts.Select((n, i) => n * task.Lengths[i].Weight).Sum() <= task.Bars[p.Bar].Room));
        for (int j = 0; j < task.Bars.Count; j++)
            Assert.True(plan.Patterns.Count(p => p.Bar == j) <= task.Bars[j].Count);
        Assert.Equal(plan.Cost, plan.Patterns.Sum(p => task.Bars[p.Bar].Cost));
    }

    // every bar by itself, whether it is used and what is sawn from it
    private static long BySat(CutTask task)
    {
        var model = new CpModel();
        int all = task.Lengths.Sum(l => l.Count);
        var taken = task.Lengths.Select(_ => new List<LinearExpr>()).ToList();
        var cost = new List<LinearExpr>();
        foreach (CutBar bar in task.Bars)
        {
            BoolVar? before = null;
            for (int b = 0; b < Math.Min(bar.Count, all); b++)
            {
                BoolVar used = model.NewBoolVar("used");
                IntVar[] counts = [.. task.Lengths.Select(l => model.NewIntVar(0, l.Count, "n"))];
                model.Add(LinearExpr.WeightedSum(counts, task.Lengths.Select(l => l.Weight)) <= bar.Room * used);
                if (before is not null)
                    model.Add(before >= used);
                before = used;
                for (int i = 0; i < counts.Length; i++)
                    taken[i].Add(counts[i]);
                cost.Add(bar.Cost * used);
            }
        }

        for (int i = 0; i < taken.Count; i++)
            model.Add(LinearExpr.Sum(taken[i]) == task.Lengths[i].Count);
        model.Minimize(LinearExpr.Sum(cost));
        var solver = new CpSolver { StringParameters = "num_workers:1, max_time_in_seconds:60" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return (long)Math.Round(solver.ObjectiveValue);
    }
}
