using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Frames;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>Joint springs from local solids: beams on them open as the full solid does.</summary>
public class JointTest
{
    public static TheoryData<string> Ids() => [.. JointTable.Studied.Select(s => s.Id)];

    [Theory, MemberData(nameof(Ids))]
    public void BeamsOnLocalSpringsComeNearTheFullSolid(string id)
    {
        JointTable.Row row = JointTable.Committed.Single(r => r.Id == id);

        Near.Relative(row.Solid, row.Local, 0.05, $"opening of {id}");
    }

    [Theory, MemberData(nameof(Ids))]
    public void TheToolNeverClaimsMoreThanTheRulesHold(string id)
    {
        JointTable.Row row = JointTable.Committed.Single(r => r.Id == id);
        FramePlan plan = FramePlan.Of(Rigs.With(JointTable.Named(id)));

        Near.Relative(row.Rule, FrameResponse.Of(plan).DaylightGrowth, 1e-3, "the rules are those of the table");
        if (plan.Within is { } within)
            Near.Relative(row.Rule, row.Solid, within, $"opening of {id}, of what is shown");
        else
            Assert.Contains(plan.Notes, n => n.Text().StartsWith("No rule is known", StringComparison.Ordinal) || n.Text().StartsWith("Where no rule is known", StringComparison.Ordinal));
    }

    [Theory, InlineData("C-02"), InlineData("C-11"), InlineData("O-10"), InlineData("O-12"), InlineData("T-01")]
    public void StillDo(string id)
    {
        JointTable.Row now = JointTable.Of(id, new JointBook(), 0.016);

        Near.Relative(now.Solid, now.Local, 0.05, "opening by beams on local springs");
        Near.Relative(JointTable.Committed.Single(r => r.Id == id).Local, now.Local, 0.01, "the same as committed, whatever the grid of the full solid");
    }

    /// <summary>One frame of each kind made up at random: its joints solved today, so that what is said of the table is said of today's springs.</summary>
    [Theory, InlineData("bars 1"), InlineData("profiles 1"), InlineData("pairs 1"), InlineData("bolted pairs 1"), InlineData("cornered 2"), InlineData("slot 1"), InlineData("face 1"), InlineData("gusset 1"), InlineData("rods 1"), InlineData("boxes on rods 1")]
    public void SpringsAreStillThoseOfTheTable(string id)
    {
        Rig rig = Rigs.With(JointTable.Named(id));
        double now = FrameResponse.Of(FramePlan.Of(rig with { Springs = new JointBook().Of(rig) })).DaylightGrowth;

        Near.Relative(JointTable.Committed.Single(r => r.Id == id).Local, now, 1e-3, "opening by beams on local springs");
    }

    [Fact]
    public void AJointIsFoundOnceForItsGeometry()
    {
        var book = new JointBook();
        Rig rig = Rigs.With((RigOpenFrontFrame)Studies.Named("O-13").Frame with { Daylight = 0.7 });
        RigSprings found = book.Of(rig)!;
        int held = book.Joints.Count;
        // another throat, the same joint; both arms are one joint
        RigOpenFrontFrame wider = ((RigOpenFrontFrame)rig.Frame) with { Throat = 0.3, ArmReach = 0.4, Daylight = 0.8 };

        Assert.Equal(1, held);
        Assert.Same(found.Upper, book.Known(rig with { Frame = wider })!.Upper);
        Assert.Null(book.Known(rig with { Frame = wider with { ArmJoint = new RigWeldedJoint(BeamFit.Between, new RigWeld(WeldKind.Fillet, 5e-3)) } }));
    }
}
