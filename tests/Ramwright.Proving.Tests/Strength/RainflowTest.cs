using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class RainflowTest
{
    [Fact]
    public void CountsTheStandardsExample()
    {
        var row = new Reference("RF-01", "ASTM E1049-85, figure 6: rainflow counting example", Trust.Found);
        var counts = Rainflow.Count([-2, 1, -3, 5, -1, 3, -4, 4, -2]).GroupBy(l => l.Range).ToDictionary(g => g.Key, g => g.Sum(l => l.Count));
        row.Exactly("ranges found", "3 4 6 8 9", string.Join(' ', counts.Keys.Order()));
        row.Exactly("range 3", 0.5, counts[3]);
        row.Exactly("range 4", 1.5, counts[4]);
        row.Exactly("range 6", 0.5, counts[6]);
        row.Exactly("range 8", 1.0, counts[8]);
        row.Exactly("range 9", 0.5, counts[9]);
    }

    [Fact]
    public void MeansAreThoseOfTheStandardsExample()
    {
        var row = new Reference("RF-02", "ASTM E1049-85, figure 6: means", Trust.Found);
        Loop closed = Assert.Single(Rainflow.Count([-2, 1, -3, 5, -1, 3, -4, 4, -2]), l => l.Count == 1);
        row.Exactly("mean of the closed loop", 1.0, closed.Mean);
        row.Exactly("its range", 4.0, closed.Range);
    }

    [Fact]
    public void SqueezesFromNothingAreWholeLoops()
    {
        IReadOnlyList<Loop> loops = Rainflow.Count([0, 100, 0, 100, 0, 60, 0, 100, 0]);
        Assert.Equal(3, loops.Where(l => l.Range == 100).Sum(l => l.Count));
        Assert.Equal(1, loops.Where(l => l.Range == 60).Sum(l => l.Count));
    }

    [Fact]
    public void RangesAndTurnsAddUpWhateverTheCourse()
    {
        var random = new Random(3);
        for (int turn = 0; turn < 200; turn++)
        {
            double[] course = [.. Enumerable.Range(0, 40).Select(_ => Math.Round(random.NextDouble() * 20))];
            IReadOnlyList<double> turns = Rainflow.Turns(course);
            double travelled = turns.Zip(turns.Skip(1), (a, b) => Math.Abs(b - a)).Sum();
            // every stretch of the course belongs to one loop: a loop is travelled there and back, half a loop once
            Near.Relative(travelled, Rainflow.Count(course).Sum(l => 2 * l.Count * l.Range), 1e-12, "way up and down");
            Assert.Equal(course.Max() - course.Min(), Rainflow.Count(course).Max(l => l.Range));
        }
    }

    [Fact]
    public void NoiseBelowTheLeastRangeIsNotCounted()
    {
        IReadOnlyList<Loop> loops = Rainflow.Count([0, 50, 49.6, 50.2, 100, 99.7, 100.1, 0], least: 1);
        Assert.Equal(1, loops.Sum(l => l.Count));
        Assert.Equal(100.1, loops.Max(l => l.Range), 9);
    }

    [Fact]
    public void MinerAddsTheShares()
    {
        var row = new Reference("G-22", "EN 1993-1-9:2005, annex A by figure 7.1: category 71, γ_Mf 1.15", Trust.FoundAndRecomputed);
        var detail = new DetailCategory("category 71", 71e6, new Citation("EN 1993-1-9:2005"));
        double? Life(double range) => FatigueCurve.Life(detail, 1.15 * range);
        row.Near("N at 150 MPa", 139_456, Life(150e6)!.Value, 0.005);
        row.Near("N at 100 MPa", 470_665, Life(100e6)!.Value, 0.005);
        row.Near("N at 40 MPa", 9.511e6, Life(40e6)!.Value, 0.005);
        var w = new Working();
        row.Near("D", 0.0889, MinerSum.Of([(5000, Life(150e6)), (20_000, Life(100e6)), (100_000, Life(40e6)), (1e9, Life(10e6))], w), 0.005);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void MinerComesToThePublishedExample()
    {
        var row = new Reference("MI-01", "M. Modarres, M. Amiri, C. Jackson, Probabilistic Physics of Failure Approach to Reliability (2017), pp. 33-37, as an open reliability library documents it", Trust.FoundAndRecomputed);
        // hours at 1, 2 and 4 kN in one load cycle, and the hours that a bearing stands of each
        (double Hours, double? Life)[] cycle = [(40 / 60.0, 50_000), (15 / 60.0, 6_500), (5 / 60.0, 1_000)];
        double D = MinerSum.Of(cycle);
        row.Near("life used by one cycle, %", 0.01351, 100 * D, 0.0005);
        row.Near("cycles until it is used up", 7400.37951, 1 / D, 1e-8);
        row.Near("share at 1 kN, %", 9.86717, 100 * MinerSum.Of([cycle[0]]) / D, 1e-5);
        row.Near("share at 2 kN, %", 28.463, 100 * MinerSum.Of([cycle[1]]) / D, 1e-5);
        row.Near("share at 4 kN, %", 61.66983, 100 * MinerSum.Of([cycle[2]]) / D, 1e-5);
    }
}
