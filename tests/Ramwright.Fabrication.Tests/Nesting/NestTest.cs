using CsCheck;
using Ramwright.Fabrication;
using Ramwright.Fabrication.Nesting;
using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Tests.Fabrication.Nesting;

public class NestTest
{
    private static readonly RigSheet Odd = new("odd", 0.01, Puzzle.S275,
        [new Corner(0, 0), new Corner(0.6, 0), new Corner(0.6, 0.2), new Corner(0.3, 0.25, -0.3), new Corner(0.25, 0.5), new Corner(0, 0.5)], 1, false);

    private static readonly Gen<PlatePart> Plates =
        from w in Gen.Double[0.03, 0.2]
        from h in Gen.Double[0.03, 0.2]
        from clip in Gen.Double[0.1, 0.9]
        from count in Gen.Int[1, 3]
        from kind in Gen.Int[0, 3]
        select Puzzle.Plate($"{kind}{w:0.000}", kind switch
        {
            0 => Loops.Rectangle(0, w, 0, h),
            1 => Loops.Circle(w),
            2 => [new Corner(0, 0), new Corner(w, 0), new Corner(w, h * clip), new Corner(w * clip, h * clip), new Corner(w * clip, h), new Corner(0, h)],
            _ => [new Corner(0, 0), new Corner(w, 0, 0.4), new Corner(w, h), new Corner(w * clip, h, -0.2), new Corner(0, h)],
        }, count);

    [Fact]
    public void NothingOverlapsAndNothingComesTooNearWhateverTheParts() => Gen.Select(Plates.Array[1, 5], Gen.Double[0, 0.012], Gen.Double[0, 0.015], Gen.Int[1, 4]).Sample((plates, gap, edge, turns) =>
    {
        RigCutting cutting = RigCutting.Usual with { PartGap = gap, EdgeGap = edge, TurnStep = Math.PI / 2 / turns };

        NestGroup nest = NestPlan.Of(plates, [Odd, Puzzle.Sheet(0.9, 0.6, 0, buy: true)], cutting, new NestEffort(3));

        Apart.Holds(nest, gap, edge);
        Assert.Equal(plates.Sum(p => p.Count), nest.Nests.Sum(n => n.Parts.Count) + nest.Without.Sum(w => w.Count));
        Assert.Empty(nest.Without);
        Assert.InRange(nest.Filled, 0, nest.Bound + 1e-9);
        Assert.All(nest.Nests, n => Assert.InRange(n.Taken, n.Filled - 1e-9, 1));
    }, iter: 40, threads: 1);

    [Fact]
    public void SixtyPartsOnFourRemnants()
    {
        (RigSheet[] sheets, PlatePart[] parts) = Puzzle.Sixty();
        Assert.Equal(60, parts.Sum(p => p.Count));

        NestGroup nest = NestPlan.Of(parts, sheets, RigCutting.Usual, new NestEffort(100));

        Apart.Holds(nest, RigCutting.Usual.PartGap, RigCutting.Usual.EdgeGap);
        Assert.Equal(4, nest.Nests.Count);
        // by area alone 0.81 of the remnants could become parts
        Assert.Equal(0.81, nest.Bound, 0.005);
        Assert.True(nest.Filled > 0.72, $"{nest.Filled:0.000}");
        Assert.True(nest.Nests.Average(n => n.Taken) > 0.84);
        Assert.True(nest.Nests.Sum(n => n.Parts.Count) >= 52);
    }

    [Fact]
    public void AThousandPartsHaveAFirstPlan()
    {
        PlatePart[] parts = [.. Puzzle.Sixty().Parts.Select(p => p with { Count = p.Count * 50 / 3 })];

        NestGroup nest = NestPlan.Of(parts, [Puzzle.Sheet(16, 2.0, 0, buy: true)], RigCutting.Usual, new NestEffort());

        Assert.Empty(nest.Without);
        Assert.Equal(998, Assert.Single(nest.Nests).Parts.Count);
    }

    [Fact]
    public void TheSameSeedGivesTheSameNestAndTimeDoesNotMatter()
    {
        IReadOnlyList<PlatePart> parts = Puzzle.Guillotine(1.0, 0.7, 10, 3);
        var effort = new NestEffort(60, 7);

        NestGroup one = NestPlan.Of(parts, [Odd, Puzzle.Sheet(0.5, 0.5)], RigCutting.Usual, effort);
        NestGroup two = NestPlan.Of(parts, [Odd, Puzzle.Sheet(0.5, 0.5)], RigCutting.Usual, effort with { GoOn = _ => { Thread.Sleep(1); return true; } });

        Assert.Equal(one.Nests.SelectMany(n => n.Parts.Select(p => (p.Part.Mark, p.Turn))), two.Nests.SelectMany(n => n.Parts.Select(p => (p.Part.Mark, p.Turn))));
    }

    [Fact]
    public void ItTellsHowFarItIsAndStopsWhenToldWithTheBestSoFar()
    {
        var told = new List<NestProgress>();

        NestGroup nest = NestPlan.Of(Puzzle.Guillotine(1.0, 0.7, 30, 30), [Puzzle.Sheet(1.0, 0.7)], Puzzle.Close, new NestEffort(5000, 1, p =>
        {
            told.Add(p);
            return p.Round < 20;
        }));

        Assert.InRange(told.Count, 20, 22);
        Assert.Equal(told[^1].Placed, nest.Nests.Sum(n => n.Parts.Count));
        Assert.Equal(told[^1].Filled, nest.Filled, 1e-9);
        Assert.True(told.Zip(told.Skip(1)).All(p => p.Second.Placed >= p.First.Placed || p.Second.Filled >= p.First.Filled));
        Apart.Holds(nest, 0, 0);
    }

    [Fact]
    public void RemnantsComeBeforeABoughtSheetAndTheSmallestFirst()
    {
        PlatePart[] parts = [Puzzle.Plate("A", Loops.Rectangle(0, 0.1, 0, 0.1), 4)];
        RigSheet[] sheets = [Puzzle.Sheet(2, 1, 0, buy: true), Puzzle.Sheet(0.5, 0.5), Puzzle.Sheet(0.26, 0.26) with { Name = "small" }];

        NestGroup nest = NestPlan.Of(parts, sheets, RigCutting.Usual, new NestEffort(20));

        Assert.Equal("small", Assert.Single(nest.Nests).Sheet.Name);
    }

    [Fact]
    public void WhatFitsNowhereIsSaid()
    {
        NestGroup nest = NestPlan.Of([Puzzle.Plate("A", Loops.Rectangle(0, 0.49, 0, 0.1), 2), Puzzle.Plate("B", Loops.Rectangle(0, 0.2, 0, 0.1))], [Puzzle.Sheet(0.5, 0.5)], RigCutting.Usual, new NestEffort());

        Assert.Equal(("A", 2), (Assert.Single(nest.Without).Part.Mark, nest.Without[0].Count));
        Assert.Equal("B", Assert.Single(Assert.Single(nest.Nests).Parts).Part.Mark);
        Assert.True(nest.Bound > nest.Filled);
    }

    [Fact]
    public void APartTurnsOnlyByTheStepItMay()
    {
        PlatePart[] bar = [Puzzle.Plate("A", Loops.Rectangle(0, 0.5, 0, 0.05))];
        RigSheet[] upright = [Puzzle.Sheet(0.2, 0.6)];

        Assert.Single(NestPlan.Of(bar, upright, RigCutting.Usual, new NestEffort()).Nests);
        Assert.Empty(NestPlan.Of(bar, upright, RigCutting.Usual with { TurnStep = 2 * Math.PI }, new NestEffort()).Nests);
    }
}
