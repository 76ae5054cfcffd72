using Ramwright.Fabrication;
using Ramwright.Fabrication.Nesting;
using Ramwright.Fabrication.Plates;
using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Tests.Fabrication.Nesting;

/// <summary>Small plates cut from the drop-out of great openings.</summary>
public class WindowTest
{
    private static PlatePart Frame(double window) => Puzzle.Plate("F", Loops.Rectangle(0, 0.5, 0, 0.4)) with
    {
        Blank = new Outline([Loops.Rectangle(0, 0.5, 0, 0.4), Loops.Rectangle(0.1, 0.1 + window, 0.08, 0.32).AsHole()]),
    };

    private static PlatePart Small(double width, double height) => Puzzle.Plate("S", Loops.Rectangle(0, width, 0, height));

    [Fact]
    public void APlateIsCutFromTheOpeningOfAnotherAndBeforeIt()
    {
        NestGroup group = NestPlan.Of([Frame(0.3), Small(0.2, 0.12)], [Puzzle.Sheet(0.53, 0.43)], RigCutting.Usual, new NestEffort());

        Nest nest = Assert.Single(group.Nests);
        Assert.Equal(2, nest.Parts.Count);
        Apart.Holds(group, RigCutting.Usual.PartGap, RigCutting.Usual.EdgeGap);
        // what becomes parts: the frame without its opening, and the plate
        Assert.Equal((0.5 * 0.4 - 0.3 * 0.24 + 0.2 * 0.12) / (0.53 * 0.43), nest.Filled, 1e-9);
        double[] order = [.. nest.Cuts("N", CutStyle.Plain with { Marks = false }).Moves.Where(m => m.Layer is CutLayer.CutInside or CutLayer.CutOutside).Select(m => m.Points.Max(p => p.Y) - m.Points.Min(p => p.Y))];
        Assert.Equal(3, order.Length);
        // the small plate, then the opening it lies in, then the frame's edge
        Assert.InRange(order[0], 0.119, 0.201);
        Assert.Equal(0.3, order[1], 1e-9);
        Assert.Equal(0.5, order[2], 1e-9);
    }

    [Fact]
    public void APlateThatLeavesNoGapInTheOpeningStaysOut()
    {
        double gap = RigCutting.Usual.PartGap;

        Assert.Empty(NestPlan.Of([Frame(0.3), Small(0.3 - 2 * gap - 0.001, 0.24 - 2 * gap - 0.001)], [Puzzle.Sheet(0.53, 0.43)], RigCutting.Usual, new NestEffort()).Without);
        Assert.Single(NestPlan.Of([Frame(0.3), Small(0.3 - 2 * gap + 0.001, 0.24 - 2 * gap - 0.001)], [Puzzle.Sheet(0.53, 0.43)], RigCutting.Usual, new NestEffort()).Without);
    }

    [Fact]
    public void ADiscFitsARoundOpeningAndOneInAnother()
    {
        double gap = 0.008;
        PlatePart Ring(string mark, double outside, double inside) => Puzzle.Plate(mark, Loops.Circle(outside)) with { Blank = new Outline([Loops.Circle(outside), Loops.Circle(inside).AsHole()]) };
        PlatePart[] parts = [Ring("A", 0.4, 0.3), Ring("B", 0.28, 0.2), Puzzle.Plate("C", Loops.Circle(0.18))];

        NestGroup group = NestPlan.Of(parts, [Puzzle.Sheet(0.421, 0.421)], RigCutting.Usual with { PartGap = gap, EdgeGap = 0.01 }, new NestEffort());

        Assert.Equal(3, Assert.Single(group.Nests).Parts.Count);
        Apart.Holds(group, gap, 0.01);
        double[] outside = [.. group.Nests[0].Cuts("N", CutStyle.Plain).Moves.Where(m => m.Layer is CutLayer.CutOutside or CutLayer.CutInside).Select(m => new Outline([m.Points]).Extents().Width)];
        Assert.Equal([0.18, 0.2, 0.28, 0.3, 0.4], outside.Select(w => Math.Round(w, 6)));
    }
}
