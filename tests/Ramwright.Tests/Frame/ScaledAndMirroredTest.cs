using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Tests.Frame;

/// <summary>What must hold for any frame: of all lengths s times as long, stresses are 1/s² and growth 1/s of what they were; left and right may change places.</summary>
public class ScaledAndMirroredTest
{
    private static string Free(double s = 1, bool mirrored = false)
    {
        string Right(double mm) => $"right: {(mirrored ? 700 - mm : mm) * s:0.###} mm";
        return $$"""
            kind: free
            daylight: {{600 * s:0.###}} mm
            section: flat {{120 * s:0.###}}x{{30 * s:0.###}}
            steel: S275
            cylinder-at: c2
            work-at: b2
            points:
              - { name: b1, {{Right(0)}} }
              - { name: b2, {{Right(300)}} }
              - { name: b3, {{Right(700)}} }
              - { name: c1, {{Right(100)}}, up: {{900 * s:0.###}} mm }
              - { name: c2, {{Right(300)}}, up: {{900 * s:0.###}} mm }
              - { name: c3, {{Right(600)}}, up: {{900 * s:0.###}} mm }
            bars:
              - { name: bed left, from: b1, to: b2 }
              - { name: bed right, from: b2, to: b3 }
              - { name: crown left, from: c1, to: c2 }
              - { name: crown right, from: c2, to: c3 }
              - { name: left leg, from: b1, to: c1 }
              - { name: right leg, from: b3, to: c3 }
            """;
    }

    private static string OnPins(double s = 1) => $$"""
        kind: closed
        daylight: {{800 * s:0.###}} mm
        ram-drop: {{100 * s:0.###}} mm
        width: {{500 * s:0.###}} mm
        section: flat {{150 * s:0.###}}x{{40 * s:0.###}}
        steel: S275
        crown-joint: { kind: one-piece, corner-radius: {{40 * s:0.###}} mm }
        bed-pins: { diameter: {{40 * s:0.###}} mm, pitch: {{120 * s:0.###}} mm, count: 3, steel: S275, middle: {{40 * s:0.###}} mm, outer: {{20 * s:0.###}} mm, gap: {{2 * s:0.###}} mm, edge: {{100 * s:0.###}} mm }
        """;

    private const string Centred = "off-centre-across: 0 mm, off-centre-deep: 0 mm, side-load: 0 %";

    // a side load acts where the cylinder ends, and cylinders are not scaled here
    private static string Off(double s) => $"off-centre-across: {15 * s:0.###} mm, off-centre-deep: {10 * s:0.###} mm, side-load: 0 %";

    private static FrameResponse Solve(string frame, string loading) => FrameResponse.Of(FramePlan.Of(Described.Rig(frame, loading)));

    [Theory]
    [InlineData("free")]
    [InlineData("pins")]
    public void AllLengthsTwiceMakeMomentsTwiceAndGrowthHalf(string kind)
    {
        FrameResponse one = Solve(kind == "free" ? Free() : OnPins(), Off(1)), two = Solve(kind == "free" ? Free(2) : OnPins(2), Off(2));

        for (int i = 0; i < one.Solutions.Count; i++)
        {
            Near.Relative(one.Growth(i) / 2, two.Growth(i), 1e-7, "growth of the daylight");
            Assert.True(Math.Abs(one.Opening(i) - 4 * two.Opening(i)) < 1e-6 * one.Opening(i) + 1e-14, $"opening out of parallel: {one.Opening(i)}, {two.Opening(i)}");
            foreach ((PlanPart a, PlanPart b) in one.Plan.Parts.Zip(two.Plan.Parts))
            {
                foreach ((PlanStation p, PlanStation q) in a.Stations.Zip(b.Stations))
                {
                    Actions x = p.Actions(one.Solutions[i]), y = q.Actions(two.Solutions[i]);
                    Assert.True(Math.Abs(y.My - 2 * x.My) < 1e-7, $"moment of {a.Member.Part} {p.Where}: {x.My}, {y.My}");
                    Assert.True(Math.Abs(y.N - x.N) < 1e-7, $"force along {a.Member.Part} {p.Where}: {x.N}, {y.N}");
                }
            }
        }
    }

    [Theory]
    [InlineData("free")]
    [InlineData("pins")]
    public void AllLengthsTwiceCarryFourTimesAsMuch(string kind)
    {
        PressCheck one = PressCheck.Of(Described.Rig(kind == "free" ? Free() : OnPins(), Off(1))), two = PressCheck.Of(Described.Rig(kind == "free" ? Free(2) : OnPins(2), Off(2)));
        // sway and tipping, pins and cross-sections; the strength of thick steel falls, and fatigue's classes go by millimetres
        string[] ids = [.. one.Ladder.Rungs.Select(r => r.Id).Where(id => id.EndsWith("-bending", StringComparison.Ordinal) || id.Contains("-pin-", StringComparison.Ordinal))];

        Assert.NotEmpty(ids);
        foreach (string id in ids)
        {
            Rung small = one.Ladder.Rungs.Single(r => r.Id == id), large = two.Ladder.Rungs.Single(r => r.Id == id);
            RigMember? Member(PressCheck c) => c.Response.Plan.Parts.FirstOrDefault(p => p.Member.Part == small.Part)?.Member;
            double fall = (Member(two)?.Fy ?? 1) / (Member(one)?.Fy ?? 1);
            if (Member(one) is null)
                continue;
            Near.Relative(4 * fall, large.GivesAt / small.GivesAt, 1e-4, id);
        }
    }

    [Fact]
    public void AFreeFrameMirroredAnswersMirrored()
    {
        FrameResponse there = Solve(Free(), Centred), back = Solve(Free(mirrored: true), Centred);

        Near.Relative(there.DaylightGrowth, back.DaylightGrowth, 1e-9, "growth of the daylight");
        Near.Relative(there.Opening(0), back.Opening(0), 1e-9, "opening out of parallel");
        Assert.True(there.Opening(0) > 1e-12, "a lopsided frame opens out of parallel");
        foreach ((PlanPart a, PlanPart b) in there.Plan.Parts.Zip(back.Plan.Parts))
        {
            foreach ((PlanStation p, PlanStation q) in a.Stations.Zip(b.Stations))
            {
                Actions x = p.Actions(there.Solutions[0]), y = q.Actions(back.Solutions[0]);
                Assert.True(Math.Abs(y.N - x.N) < 1e-9 && Math.Abs(Math.Abs(y.My) - Math.Abs(x.My)) < 1e-9, $"{a.Member.Part} {p.Where}");
            }
        }
    }

    [Fact]
    public void AFrameWithItsBedOnPinsIsAlikeLeftAndRight()
    {
        FrameResponse response = Solve(OnPins(), Centred);
        FrameSolution s = response.Solutions[0];

        foreach (string key in new[] { "frame.crown-joint", "frame.bed-pins" })
        {
            PlanJoint[] pair = [.. response.Plan.Joints.Where(j => j.Key == key || (key == "frame.bed-pins" && j.Key == "frame.bed-joint"))];
            JointEnd left = JointEnd.Of(response, s, pair[0]), right = JointEnd.Of(response, s, pair[1]);
            Near.Relative(left.Force.Length, right.Force.Length, 1e-9, key);
            Near.Relative(left.Moment.Length + 1, right.Moment.Length + 1, 1e-9, key);
        }

        foreach (PlanJoint pin in response.Plan.Joints.Where(j => j.Key == "frame.bed-joint"))
            Near.Relative(0.5, Math.Abs(JointEnd.Of(response, s, pin).Force.Z), 1e-9, "half of the force on each pin");
    }
}
