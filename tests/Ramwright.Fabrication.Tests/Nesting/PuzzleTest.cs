using Ramwright.Fabrication;
using Ramwright.Fabrication.Nesting;
using Ramwright.Geometry;

namespace Ramwright.Tests.Fabrication.Nesting;

/// <summary>Sheets that were cut up at random: a layout without any waste is known to exist.</summary>
public class PuzzleTest
{
    [Theory]
    [InlineData(8, 1, 1000), InlineData(15, 2, 600), InlineData(20, 4, 300)]
    public void RectanglesCutFromASheetGoBackOnIt(int pieces, int seed, int rounds) => Reaches(0.90, Puzzle.Guillotine(1.0, 0.7, pieces, seed), rounds);

    [Theory]
    [InlineData(8, 8, 20), InlineData(12, 12, 20), InlineData(15, 15, 50), InlineData(20, 20, 50), InlineData(25, 25, 100), InlineData(30, 30, 100), InlineData(30, 31, 100), InlineData(40, 2, 200)]
    public void ShardsCutFromASheetGoBackOnIt(int pieces, int seed, int rounds) => Reaches(0.85, Puzzle.Shards(1.0, 0.7, pieces, seed), rounds);

    [Fact]
    public void HalvesOfRectanglesCutAslantGoBackOnTheirSheet()
    {
        var halves = new List<PlatePart>();
        foreach (PlatePart whole in Puzzle.Guillotine(1.0, 0.7, 7, 5))
        {
            Extents e = whole.Outline.Extents();
            // every other one from corner to corner, the others a third in from both
            double s = halves.Count % 4 == 0 ? 0 : e.Width / 3;
            halves.Add(Puzzle.Plate(whole.Mark + "a", s > 0 ? [new Corner(0, 0), new Corner(e.Width - s, 0), new Corner(s, e.Height), new Corner(0, e.Height)] : [new Corner(0, 0), new Corner(e.Width, 0), new Corner(0, e.Height)], 2));
        }

        Reaches(0.85, halves, 1500);
    }

    private static void Reaches(double share, IReadOnlyList<PlatePart> parts, int rounds)
    {
        NestGroup nest = NestPlan.Of(parts, [Puzzle.Sheet(1.0, 0.7)], Puzzle.Close, new NestEffort(rounds));

        Assert.Single(nest.Nests);
        Apart.Holds(nest, 0, 0);
        Assert.Equal(1, nest.Bound, 1e-9);
        Assert.True(nest.Filled >= share, $"{parts.Count} parts: {nest.Filled:0.000} of the sheet is filled, {share} wanted");
    }
}
