using System.Diagnostics;
using Ramwright.Fabrication;
using Ramwright.Fabrication.Nesting;
using Xunit.Abstractions;

namespace Ramwright.Tests.Fabrication.Nesting;

public class PuzzleTest(ITestOutputHelper output)
{
    [Theory]
    [InlineData(12, 1), InlineData(20, 2), InlineData(30, 3)]
    public void RectanglesCutFromASheetGoBackOnIt(int pieces, int seed) => Reaches(0.90, Puzzle.Guillotine(1.0, 0.7, pieces, seed), $"rectangles {pieces}");

    [Theory]
    [InlineData(8, 1), InlineData(15, 2), InlineData(25, 3)]
    public void ShardsCutFromASheetGoBackOnItForTheMostPart(int pieces, int seed) => Reaches(0.85, Puzzle.Shards(1.0, 0.7, pieces, seed), $"shards {pieces}");

    private void Reaches(double share, IReadOnlyList<PlatePart> parts, string what)
    {
        var watch = Stopwatch.StartNew();
        NestGroup nest = NestPlan.Of(parts, [Puzzle.Sheet(1.0, 0.7)], Puzzle.Close with { TurnStep = Math.PI / 2 }, new NestEffort(Rounds: 400));
        output.WriteLine($"{what}: {nest.Filled:0.000} of the sheet in {watch.ElapsedMilliseconds} ms");

        Assert.Single(nest.Nests);
        Apart.Holds(nest, 0, 0);
        Assert.True(nest.Filled >= share, $"{what}: {nest.Filled:0.000} of the sheet is filled, {share} wanted");
    }
}
