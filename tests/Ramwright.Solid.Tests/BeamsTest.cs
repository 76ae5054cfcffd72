using Ramwright.Solid.Tests.Frames;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>The beams of today against the committed solids.</summary>
public class BeamsTest
{
    public static TheoryData<string> Ids() => [.. Studies.All.Select(s => s.Id)];

    private static Reference Row(Study study, string mesh = "") =>
        new($"Z-{study.Id}", $"CalculiX {Committed.Version(study, mesh.Length == 0 ? "plain" : "fine")}, C3D20R bricks{mesh}: {study.Words}", Trust.Recomputed);

    [Theory, MemberData(nameof(Ids))]
    public void Agree(string id)
    {
        Study study = Studies.Named(id);
        Answer solid = Committed.Of(study), beams = Answer.OfBeams(study, solid.Stresses);

        if (study.Within is not { } within)
        {
            // no rule: what matters is that the tool does not claim one
            Assert.True(beams.Opening < 0.5 * solid.Opening);
            Assert.Contains(Answer.Notes(study), n => n.StartsWith("No rule is known", StringComparison.Ordinal));
            return;
        }

        Row(study).Near("opening at the dies, nm/N", solid.Opening * 1e9, beams.Opening * 1e9, within);
        if (study.Frame is Presses.RigOpenFrontFrame)
            Row(study).Near("turn of the sections behind the dies, nrad/N", solid.SectionTurn * 1e9, beams.SectionTurn * 1e9, 0.05);
        foreach ((Stress s, Stress b) in solid.Stresses.Zip(beams.Stresses))
            Row(study).Near($"σ, {s.Where}, Pa/N", s.Value, b.Value, 0.1);
    }

    public static TheoryData<string> Refined() => [.. Studies.Refined];

    [Theory, MemberData(nameof(Refined))]
    public void BricksAreSmallEnough(string id)
    {
        Study study = Studies.Named(id);
        Answer plain = Committed.Of(study), fine = Committed.Of(study, "fine");

        Assert.True(fine.Mesh.Bricks > 2.5 * plain.Mesh.Bricks);
        Row(study, $", 1/{study.Refining} as long").Near($"opening with bricks {study.Refining} times as long, nm/N", fine.Opening * 1e9, plain.Opening * 1e9, 0.015);
    }
}
