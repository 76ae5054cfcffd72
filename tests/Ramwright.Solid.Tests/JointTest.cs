using System.Diagnostics;
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

        // halves of a pair also bend out of the frame's plane between their ties, which the springs do not see
        Near.Relative(row.Solid, row.Local, Studies.Named(id).Class.Contains("pairs", StringComparison.Ordinal) ? 0.055 : 0.05, $"opening of {id}");
    }

    [Theory, InlineData("C-02"), InlineData("O-10"), InlineData("O-12")]
    public void StillDo(string id)
    {
        JointTable.Row now = JointTable.Of(Studies.Named(id), new JointBook(), 0.016);

        Near.Relative(now.Solid, now.Local, 0.05, "opening by beams on local springs");
        Near.Relative(JointTable.Committed.Single(r => r.Id == id).Local, now.Local, 0.01, "the same as committed, whatever the grid of the full solid");
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

    [Fact]
    public void AnEverydayCheckOnKnownSpringsTakesLessThanFiveMilliseconds()
    {
        Rig rig = Rigs.With(Studies.Named("O-10").Frame) with { Springs = new RigSprings(new RigSpring(4e7, 1e8, 1e10), new RigSpring(4e7, 1e8, 1e10)) };
        for (int i = 0; i < 200; i++)
            FrameResponse.Of(FramePlan.Of(rig));
        double least = Enumerable.Range(0, 20).Min(_ =>
        {
            long start = Stopwatch.GetTimestamp();
            FrameResponse.Of(FramePlan.Of(rig));
            return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        });

        Assert.True(least < 5, $"{least:F3} ms");
    }
}
