using CsCheck;
using Ramwright.Fabrication;
using Ramwright.Fabrication.Plates;
using Ramwright.Geometry;
using Ramwright.Tests.Fabrication.Nesting;

namespace Ramwright.Tests.Fabrication.Plates;

public class PlateTest
{
    [Theory]
    [InlineData(0.001), InlineData(0.003)]
    public void ADiscMovedOutsideIsAGreaterDiscAndAHoleALesserOne(double d)
    {
        Assert.Equal(Math.PI * (0.05 + d) * (0.05 + d), LoopOffset.SignedArea(LoopOffset.ToTheRight(Loops.Circle(0.1), d)), 1e-12);
        Assert.Equal(-Math.PI * (0.05 - d) * (0.05 - d), LoopOffset.SignedArea(LoopOffset.ToTheRight(Loops.Circle(0.1).AsHole(), d)), 1e-12);
    }

    [Fact]
    public void AConvexEdgeGrowsByItsLengthAndOneRoundOfTheOffset()
    {
        const double d = 0.002;
        IReadOnlyList<Corner> rounded = Loops.Rounded((0, 0, 0.01), (0.3, 0, 0), (0.35, 0.2, 0.03), (0, 0.2, 0));
        var edge = new Outline([rounded]);

        Assert.Equal(edge.Area() + d * edge.Perimeter() + Math.PI * d * d, LoopOffset.SignedArea(LoopOffset.ToTheRight(rounded, d)), 1e-11);
    }

    [Fact]
    public void AnInnerCornerComesEarlierAndALoopMovedOutAndBackIsWhereItWas() => Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[0.02, 0.2], Gen.Double[0.0005, 0.003]).Sample((a, b, d) =>
    {
        // an L: five outer corners, one inner
        Corner[] l = [new(0, 0), new(a + b, 0), new(a + b, a), new(a, a), new(a, a + b), new(0, a + b)];
        IReadOnlyList<Corner> out_ = LoopOffset.ToTheRight(l, d);
        double square = LoopOffset.SignedArea(out_), expected = LoopOffset.SignedArea(l) + d * new Outline([l]).Perimeter() + d * d * (5 * Math.PI / 4 - 1);

        Assert.Equal(expected, square, 1e-12);
    });

    [Fact]
    public void AHoleWithoutRoomForTheCutIsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => LoopOffset.ToTheRight(Loops.Circle(0.004).AsHole(), 0.003));

    [Fact]
    public void APlateWithSuchAHoleIsCutTrueToSizeThereAndThatIsSaid()
    {
        PlateHole[] holes = [new PlateHole(0, 0, 0.004, "wire"), new PlateHole(0.05, 0, 0.03, "bolt")];
        PlatePart plate = Puzzle.Plate("P1", Loops.Rectangle(-0.1, 0.1, -0.1, 0.1)) with { Thickness = 0.003, Holes = holes, Blank = PlateShape.Rectangle(0.2, 0.2) };
        var style = new CutStyle(Kerf: 0.006);

        CutMove[] cuts = [.. PlateCuts.Of(plate, style).Moves.Where(m => m.Layer == CutLayer.CutInside)];

        Assert.Equal([-Math.PI * 0.002 * 0.002, -Math.PI * 0.012 * 0.012], cuts.Select(c => Math.Round(LoopOffset.SignedArea(c.Points), 12)), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Contains("wide", Assert.Single(PlateAdvice.Of(plate, style: style)), StringComparison.Ordinal);
        Assert.Empty(PlateAdvice.Of(plate, style: style with { Kerf = 0.002 }));
    }

    [Fact]
    public void AHoleFinerThanThePlateIsThickIsWarnedOf()
    {
        PlateHole[] holes = [new PlateHole(0, 0, 0.018, "bolt M16")];
        PlatePart plate = Puzzle.Plate("P1", Loops.Rectangle(-0.1, 0.1, -0.1, 0.1)) with { Thickness = 0.02, Holes = holes, Blank = PlateShape.Rectangle(0.2, 0.2) };

        Assert.Contains("too fine for a torch", Assert.Single(PlateAdvice.Of(plate)), StringComparison.Ordinal);
        Assert.Empty(PlateAdvice.Of(plate with { Thickness = 0.018 }));
    }

    [Fact]
    public void TheLeastWebIsTheSteelBetweenTwoCuts()
    {
        PlateHole[] holes = [new PlateHole(-0.03, 0, 0.02, "a"), new PlateHole(0.03, 0, 0.02, "b"), new PlateHole(0.085, 0, 0.02, "c")];
        PlatePart plate = Puzzle.Plate("P1", Loops.Rectangle(-0.1, 0.1, -0.1, 0.1)) with { Holes = holes, Blank = PlateShape.Rectangle(0.2, 0.2) };

        Assert.Equal(0.005, PlateAdvice.LeastWeb(plate), 1e-5);
    }

    [Fact]
    public void EveryLetterKeepsToItsBox()
    {
        foreach (char c in "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-./ é")
            Assert.All(StrokeLetters.Of(c.ToString()).SelectMany(s => s), p => Assert.True(p.X is >= 0 and <= 0.6 && p.Y is >= 0 and <= 1));
        Assert.Equal(2 * 0.6 + 0.25, StrokeLetters.Width("P1"), 1e-12);
    }

    [Fact]
    public void TheMarkLiesOnSteelClearOfEveryCut()
    {
        PlateHole[] holes = [new PlateHole(0, 0, 0.15, "a")];
        PlatePart ring = Puzzle.Plate("P12", Loops.Circle(0.2)) with { Holes = holes, Blank = PlateShape.Disc(0.2) };

        Corner[] marks = [.. PlateCuts.Of(ring, CutStyle.Plain).Moves.Where(m => m.Layer == CutLayer.Mark).SelectMany(m => m.Points)];

        Assert.NotEmpty(marks);
        Assert.All(marks, m => Assert.InRange(Math.Sqrt((m.Y - 0.1) * (m.Y - 0.1) + (m.Z - 0.1) * (m.Z - 0.1)), 0.0755, 0.0995));
    }

    [Fact]
    public void ALeadRunsInTheScrap()
    {
        PlateHole[] holes = [new PlateHole(0, 0, 0.05, "a")];
        PlatePart plate = Puzzle.Plate("P1", Loops.Rectangle(-0.1, 0.1, -0.1, 0.1)) with { Holes = holes, Blank = PlateShape.Rectangle(0.2, 0.2) };

        CutMove[] leads = [.. PlateCuts.Of(plate, new CutStyle(0, 0.006)).Moves.Where(m => m.Layer == CutLayer.Lead)];

        Assert.Equal(2, leads.Length);
        // from within the hole, and from outside the plate's corner
        Assert.InRange(Math.Sqrt(Math.Pow(leads[0].Points[0].Y - 0.1, 2) + Math.Pow(leads[0].Points[0].Z - 0.1, 2)), 0, 0.0249);
        Assert.True(leads[1].Points[0].Y < 0 && leads[1].Points[0].Z < 0);
    }
}
