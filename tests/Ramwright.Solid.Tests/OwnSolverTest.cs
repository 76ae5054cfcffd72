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
}
