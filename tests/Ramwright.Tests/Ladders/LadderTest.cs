using CsCheck;
using Ramwright.Ladders;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

public class LadderTest
{
    private static Rung Rung(string id, double gives, double safe, RungGroup group = RungGroup.Frame) => new()
    {
        Id = id,
        Part = id,
        Mode = "",
        Saying = "",
        Group = group,
        GivesAt = gives,
        SafeTo = safe,
        FactorFrom = "",
        Source = Citation.Practice("test"),
        Work = _ => { },
    };

    [Fact]
    public void TheLowestRungIsTheSafeRating()
    {
        Ladder ladder = Ladder.Of([Rung("b", 300, 200), Rung("a", 400, 150)]);

        Assert.Equal("a", ladder.Governing.Id);
        Assert.Equal(150, ladder.SafeRating);
    }

    [Fact]
    public void OrderDoesNotDependOnTheOrderOfTheFile()
    {
        // few different forces, so that ties come up and must fall back on names
        var gen = Gen.Int[1, 5].Array[2, 20].SelectMany(forces =>
            Gen.Shuffle(Enumerable.Range(0, forces.Length).ToArray()).Select(order => (forces, order)));
        gen.Sample(t =>
        {
            Rung[] rungs = [.. t.forces.Select((f, i) => Rung("r" + i, f * 150.0, f * 100.0))];
            Rung[] shuffled = [.. t.order.Select(i => rungs[i])];

            Assert.Equal(Ladder.Of(rungs).Rungs.Select(r => r.Id), Ladder.Of(shuffled).Rungs.Select(r => r.Id));
        });
    }

    [Theory]
    [InlineData(100, Verdict.Holds)]
    [InlineData(150, Verdict.Holds)]
    [InlineData(151, Verdict.Marginal)]
    [InlineData(300, Verdict.Marginal)]
    [InlineData(301, Verdict.DoesNotHold)]
    public void AgainstTheWantedForceEveryRungCounts(double wanted, Verdict expected) =>
        Assert.Equal(expected, Ladder.Of([Rung("a", 300, 150)]).Against(wanted));

    [Fact]
    public void AStallIsNoDangerAtTheMostPossibleForce()
    {
        Ladder ladder = Ladder.Of([Rung("stall", 100, 100, RungGroup.Power), Rung("crown", 500, 300)]);

        Assert.Equal(Verdict.DoesNotHold, ladder.Against(200));
        Assert.Equal(Verdict.Holds, ladder.Surviving(200));
    }

    [Fact]
    public void APressureRatingIsComparedPressureAgainstPressure()
    {
        // 5 % lost to the seals: the ram has 95 when the oil pushes 100
        Ladder ladder = Ladder.Of([Rung("hose", 380, 95, RungGroup.Lines) with { PressureScale = 100 / 95.0 }]);

        Assert.Equal(Verdict.Holds, ladder.Surviving(100));
        Assert.Equal(Verdict.Marginal, ladder.Surviving(101));
    }

    [Fact]
    public void TwoRungsOfOneNameAreRefused() =>
        Assert.Throws<ArgumentException>(() => Ladder.Of([Rung("a", 2, 1), Rung("a", 2, 1)]));

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(double.PositiveInfinity, 1)]
    [InlineData(1, 2)]
    [InlineData(1, -1)]
    public void ForcesThatAreNoForcesAreRefused(double gives, double safe) =>
        Assert.Throws<ArgumentException>(() => Ladder.Of([Rung("a", gives, safe)]));
}
