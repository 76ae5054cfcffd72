using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solid.Tests.Frames;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>A few frames solved by CalculiX in every run of the tests, so that the committed results cannot grow stale unseen.</summary>
public class LiveTest
{
    [SolidTheory, InlineData("C-01"), InlineData("C-09"), InlineData("T-01"), InlineData("O-01"), InlineData("O-10")]
    public void StillGivesWhatWasCommitted(string id)
    {
        Study study = Studies.Named(id);
        Answer now = Answer.OfSolid(study), then = Committed.Of(study);

        Assert.Equal(then.Mesh, now.Mesh);
        Near.Relative(then.Opening, now.Opening, 1e-4, "opening");
        Near.Relative(then.Sections, now.Sections, 1e-4, "opening of sections");
        Assert.Equal(then.Stresses.Count, now.Stresses.Count);
        foreach ((Stress a, Stress b) in then.Stresses.Zip(now.Stresses))
            Near.Relative(a.Value, b.Value, 1e-4, a.Where);
        Near.Absolute(0, now.OutOfBalance, 1e-5, "force through upright or column, less its share of the ram's");
    }
}
