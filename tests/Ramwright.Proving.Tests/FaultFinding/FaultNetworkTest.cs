using Ramwright.FaultFinding;
using Ramwright.Files.Readings;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Tests.Proving;

namespace Ramwright.Tests.FaultFinding;

public class FaultNetworkTest
{
    private static FaultTables MadeUp(int seed, int causes, int signs)
    {
        var random = new Random(seed);
        return new FaultTables(
            [.. Enumerable.Range(0, causes).Select(i => new Cause($"c{i}", $"c{i}", [], Math.Round(0.01 + 0.4 * random.NextDouble(), 3), "", false, "practice"))],
            [.. Enumerable.Range(0, signs).Select(i => new Sign($"s{i}", $"s{i}?", [], i % 2 == 0 ? 0 : 1 + i, false, Math.Round(0.01 + 0.1 * random.NextDouble(), 3)))],
            [.. from c in Enumerable.Range(0, causes) from s in Enumerable.Range(0, signs) where random.Next(3) > 0 select new Link($"c{c}", $"s{s}", random.Next(10) == 0 ? 1 : random.NextDouble())]);
    }

    /// <summary>By summing over every way in which the causes may be there or not.</summary>
    private static (double[] Causes, double Evidence) ByAllWays(FaultTables tables, IReadOnlyList<Seen> seen)
    {
        int n = tables.Causes.Count;
        double total = 0;
        double[] with = new double[n];
        for (int way = 0; way < 1 << n; way++)
        {
            double p = 1;
            for (int c = 0; c < n; c++)
                p *= (way >> c & 1) == 1 ? tables.Causes[c].Prior : 1 - tables.Causes[c].Prior;
            foreach (Seen s in seen)
            {
                double not = 1 - tables.Signs.Single(x => x.Id == s.Sign).Leak;
                for (int c = 0; c < n; c++)
                {
                    if ((way >> c & 1) == 1)
                        not *= 1 - (tables.Links.FirstOrDefault(l => l.Cause == tables.Causes[c].Id && l.Sign == s.Sign)?.Chance ?? 0);
                }

                p *= s.Yes ? 1 - not : not;
            }

            total += p;
            for (int c = 0; c < n; c++)
            {
                if ((way >> c & 1) == 1)
                    with[c] += p;
            }
        }

        return ([.. with.Select(w => w / total)], total);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void ItIsTheSumOverAllWays(int seed)
    {
        FaultTables tables = MadeUp(seed, 10, 9);
        var network = new FaultNetwork(tables);
        var random = new Random(seed);
        for (int turn = 0; turn < 12; turn++)
        {
            Seen[] seen = [.. tables.Signs.Where(_ => random.Next(3) > 0).Select(s => new Seen(s.Id, random.Next(2) == 0))];
            (double[] expected, double evidence) = ByAllWays(tables, seen);
            (double[] computed, double sum) = network.Posterior(seen);
            Near.Relative(evidence, sum, 1e-8, "evidence");
            for (int c = 0; c < expected.Length; c++)
                Near.Absolute(expected[c], computed[c], 1e-8, $"cause {c}");
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void ManyRareSignsAtOnceAreSummedAsExactly(int seed)
    {
        FaultTables made = MadeUp(seed, 9, 10);
        FaultTables rare = made with
        {
            Causes = [.. made.Causes.Select(c => c with { Prior = c.Prior / 50 })],
            Signs = [.. made.Signs.Select(s => s with { Leak = s.Leak / 30 })],
        };
        Seen[] seen = [.. rare.Signs.Select(s => new Seen(s.Id, true))];
        (double[] expected, double evidence) = ByAllWays(rare, seen);
        (double[] computed, double sum) = new FaultNetwork(rare).Posterior(seen);
        Assert.True(evidence < 1e-5, $"{evidence} is not rare");
        Near.Relative(evidence, sum, 1e-6, "evidence");
        for (int c = 0; c < expected.Length; c++)
            Near.Absolute(expected[c], computed[c], 1e-6, $"cause {c}");
    }

    [Fact]
    public void WithNothingSeenItIsThePriors()
    {
        FaultTables tables = MadeUp(8, 12, 5);
        (double[] causes, double evidence) = new FaultNetwork(tables).Posterior([]);
        Near.Relative(1, evidence, 1e-12);
        for (int c = 0; c < causes.Length; c++)
            Near.Relative(tables.Causes[c].Prior, causes[c], 1e-12);
    }

    [Fact]
    public void OneCauseOneSignIsBayesRule()
    {
        // prior 0.1, shown in 0.9, seen anyway in 0.2: P(sign) = 0.1 (1 − 0.8·0.1) + 0.9·0.2
        var tables = new FaultTables([new Cause("c", "", [], 0.1, "", false, "")], [new Sign("s", "", [], 0, false, 0.2)], [new Link("c", "s", 0.9)]);
        (double[] causes, double evidence) = new FaultNetwork(tables).Posterior([new Seen("s", true)]);
        Near.Relative(0.1 * 0.92 + 0.9 * 0.2, evidence, 1e-12);
        Near.Relative(0.1 * 0.92 / 0.272, causes[0], 1e-12);
    }

    [Fact]
    public void WhatCannotBeIsSaid()
    {
        var tables = new FaultTables([new Cause("c", "", [], 0.1, "", false, "")], [new Sign("s", "", [], 0, false, 0)], []);
        Assert.Throws<ArgumentException>(() => new FaultNetwork(tables).Posterior([new Seen("s", true)]));
        Assert.Throws<ArgumentException>(() => new FaultNetwork(tables with { Links = [new Link("c", "s", 1.2)] }));
    }

    [Fact]
    public void TheGainOfATestIsTheMeanOverItsAnswers()
    {
        FaultTables tables = FaultFiles.Built;
        Rig rig = ProvedPress.Press("railing-shop").Rig;
        Seen[] seen = [new("low-pressure", true)];
        FaultSearch search = FaultSearch.Of(rig, tables, seen);
        var network = FaultNetwork.Of(rig, tables);
        double Entropy(IEnumerable<Seen> s) => network.Posterior(s).Causes.Sum(p => p is > 0 and < 1 ? -p * Math.Log2(p) - (1 - p) * Math.Log2(1 - p) : 0);
        foreach (NextTest test in search.Tests.Take(5))
        {
            double yes = network.Posterior([.. seen, new Seen(test.Sign.Id, true)]).Evidence / network.Posterior(seen).Evidence;
            Near.Relative(yes, test.Yes, 1e-9, test.Sign.Id);
            Near.Relative(Entropy(seen) - yes * Entropy([.. seen, new Seen(test.Sign.Id, true)]) - (1 - yes) * Entropy([.. seen, new Seen(test.Sign.Id, false)]), test.Gain, 1e-8, test.Sign.Id);
            Near.Relative(test.Gain / test.Sign.Minutes, test.PerMinute, 1e-12);
        }

        Assert.Equal(search.Tests.OrderByDescending(t => t.PerMinute).Select(t => t.Sign.Id), search.Tests.Select(t => t.Sign.Id));
    }
}
