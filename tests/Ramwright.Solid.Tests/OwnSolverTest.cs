using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solid.Tests.Frames;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>The engine's own cells and solver against CalculiX on the same grid, with bricks of the same order: eight nodes and incompatible modes.</summary>
public class OwnSolverTest
{
    [SolidTheory]
    [InlineData("C-01"), InlineData("C-02"), InlineData("C-03"), InlineData("C-05"), InlineData("C-14"), InlineData("C-16"), InlineData("C-17")]
    [InlineData("T-01"), InlineData("T-04"), InlineData("O-03"), InlineData("O-06"), InlineData("O-10"), InlineData("O-13")]
    public void GivesWhatCalculixGivesOnTheSameGrid(string id)
    {
        Study study = Studies.Named(id) with { Middles = false };
        Answer calculix = Answer.OfSolid(study), own = Answer.OfSolid(study, SolidAnswer.Own);

        Assert.Equal(calculix.Mesh, own.Mesh);
        var source = new Reference($"Z-{id}", $"CalculiX {Solver.Version}, C3D8I bricks on the same grid: {study.Words}", Trust.Recomputed);
        source.Near("opening at the dies, nm/N", calculix.Opening * 1e9, own.Opening * 1e9, 1e-5);
        foreach ((Stress c, Stress o) in calculix.Stresses.Zip(own.Stresses))
            source.Near($"σ, {c.Where}, Pa/N", c.Value, o.Value, 1e-4);
        Near.Absolute(0, own.OutOfBalance, 1e-5, "force through upright or column, less its share of the ram's");
    }

    public static TheoryData<string> Refined() => [.. Studies.Refined];

    /// <summary>What the engine makes of two grids, against bricks of twenty nodes half as long.</summary>
    [Theory, MemberData(nameof(Refined))]
    public void ComesToTheRefinedAnswer(string id)
    {
        Study study = Studies.Named(id);
        IReadOnlyList<OwnGrids.Grid> grids = OwnGrids.Of(study);
        double refined = Committed.Of(study, "fine").Opening;
        var source = new Reference($"Z-{id}", $"CalculiX {Committed.Version(study, "fine")}, C3D20R bricks, 1/{study.Refining} as long: {study.Words}", Trust.Recomputed);

        source.Near("opening from two grids, nm/N", refined * 1e9, OwnGrids.Limit(grids[0], grids[1]) * 1e9, 0.02);
        source.Near("opening from the next two, nm/N", refined * 1e9, OwnGrids.Limit(grids[1], grids[2]) * 1e9, 0.01);
        Near.Relative(grids[0].Calculix!.Value, grids[0].Opening, 1e-5, "on the same grid");
    }

    /// <summary>
    /// At a square inner corner stress grows as r^(λ − 1) with λ = 0.5445, at the edge of a weld, where two faces part, with λ = 1/2; the energy, and with it the opening, then closes in with the cells' length
    /// to the power 2 λ, 1.09 or 1. Bars come to that on any three grids; walls of which one cell or two go through the thickness, and gaps that set the cells beside them, only on the finest three.
    /// </summary>
    [Theory, MemberData(nameof(Refined))]
    public void ClosesInAsItsSharpCornersLetIt(string id)
    {
        Study study = Studies.Named(id);
        IReadOnlyList<OwnGrids.Grid> g = OwnGrids.Of(study);
        double order = OwnGrids.Order(g[^3], g[^2], g[^1]);

        (double least, double most) = OwnGrids.Band(study);
        Assert.True(order >= least && order <= most, $"{id}, {study.Class}: order {order:F2} on the last three grids, {least} to {most} wanted");
        if (study.Class == Studies.Solid)
            Assert.InRange(OwnGrids.Order(g[0], g[1], g[2]), 1.0, 1.4);
        // every halving brings less than the one before: the last two grids say how much is left
        for (int i = 2; i < g.Count; i++)
            Assert.InRange((g[i].Opening - g[i - 1].Opening) / (g[i - 1].Opening - g[i - 2].Opening), 0, 0.9);
    }

    /// <summary>Today's cells and solver, so that what is said of the committed grids is said of them.</summary>
    [Theory, MemberData(nameof(Refined))]
    public void StillGivesWhatWasCommitted(string id)
    {
        Study study = Studies.Named(id);
        foreach ((int shorter, OwnGrids.Grid grid) in OwnGrids.Shorter(study).Zip(OwnGrids.Of(study)).Take(3))
            Near.Relative(grid.Opening, Answer.OfSolid(OwnGrids.On(study, shorter), SolidAnswer.Own).Opening, 1e-6, $"opening, cells 1/{shorter} as long");
    }
}
