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

    /// <summary>What the engine makes of two grids, against bricks of twenty nodes half as long; and how fast its own grids close in.</summary>
    [Theory, MemberData(nameof(Refined))]
    public void ComesToTheRefinedAnswer(string id)
    {
        Study study = Studies.Named(id);
        IReadOnlyList<OwnGrids.Grid> grids = OwnGrids.Of(study);
        double refined = Committed.Of(study, "fine").Opening;
        var source = new Reference($"Z-{id}", $"CalculiX {Committed.Version(study, "fine")}, C3D20R bricks, 1/{study.Refining} as long: {study.Words}", Trust.Recomputed);

        source.Near("opening from two grids, nm/N", refined * 1e9, OwnGrids.Limit(grids[0], grids[1]) * 1e9, 0.02);
        source.Near("opening from the next two, nm/N", refined * 1e9, OwnGrids.Limit(grids[1], grids[2]) * 1e9, 0.01);
        double ratio = (grids[1].Opening - grids[0].Opening) / (grids[2].Opening - grids[1].Opening);
        Assert.True(ratio > 1.1, $"halving the cells must take away a good part of what is missing; it left 1/{ratio:F2} of it");
        Near.Relative(grids[0].Calculix!.Value, grids[0].Opening, 1e-5, "on the same grid");
    }

    [Theory, InlineData("C-01"), InlineData("O-10")]
    public void StillGivesWhatWasCommitted(string id)
    {
        Study study = Studies.Named(id);
        foreach ((int shorter, OwnGrids.Grid grid) in ((int, OwnGrids.Grid)[])[(1, OwnGrids.Of(study)[0]), (2, OwnGrids.Of(study)[1])])
            Near.Relative(grid.Opening, Answer.OfSolid(OwnGrids.On(study, shorter), SolidAnswer.Own).Opening, 1e-6, $"opening, cells 1/{shorter} as long");
    }
}
