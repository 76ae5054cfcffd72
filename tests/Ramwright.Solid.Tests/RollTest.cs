using Ramwright.Solid.Tests.Frames;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>Work off to the front turns crown and bed against each other about the line across.</summary>
public class RollTest
{
    public static TheoryData<string> Ids() => [.. Studies.Rolled.Keys];

    /// <summary>
    /// Solid bars come near. A box whose two webs are pressed unlike each other distorts, and so do channels that only a bolster ties: beams keep their sections'
    /// shape, and fall short by as much as docs/solids.md says.
    /// </summary>
    [Theory, MemberData(nameof(Ids))]
    public void DiesTurnFromFrontToBack(string id)
    {
        Study study = Studies.Named(id);
        double solid = Committed.Of(study).Roll, beams = Answer.RollOfBeams(study);

        new Reference($"Z-{id}", $"CalculiX {Committed.Version(study)}, C3D20R bricks: {study.Words}", Trust.Recomputed)
            .Near("turn from front to back, nrad/(N·m)", solid * 1e9, beams * 1e9, Studies.Rolled[id]);
        Assert.True(beams < solid * 1.05, "beams do not claim more than the solid gives");
    }

    [SolidFact]
    public void StillGivesWhatWasCommitted()
    {
        Study study = Studies.Named("C-02");
        Near.Relative(Committed.Of(study).Roll, Answer.RollOfSolid(study), 1e-4, "turn from front to back");
    }
}
