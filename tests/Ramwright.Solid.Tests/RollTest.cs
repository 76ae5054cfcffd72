using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solid.Tests.Frames;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>Work off to the front turns crown and bed against each other about the line across; solved afresh.</summary>
public class RollTest
{
    /// <summary>
    /// Solid bars come near. A box whose two webs are pressed unlike each other distorts, and so do channels that only a bolster ties: beams keep their sections'
    /// shape, and fall short by as much as docs/solids.md says.
    /// </summary>
    [SolidTheory, InlineData("C-01", 0.16), InlineData("C-02", 0.05), InlineData("C-05", 0.05), InlineData("C-09", 0.6), InlineData("C-12", 0.5)]
    public void DiesTurnFromFrontToBack(string id, double within)
    {
        Study study = Studies.Named(id);
        new Reference($"Z-{id}", $"CalculiX {Solver.Version}, C3D20R bricks: {study.Words}", Trust.Recomputed)
            .Near("turn from front to back, nrad/(N·m)", Answer.RollOfSolid(study) * 1e9, Answer.RollOfBeams(study) * 1e9, within);
    }
}
