using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Frame;

public class TieRodTest
{
    private const string Centred = "off-centre-across: 0 mm, off-centre-deep: 0 mm, side-load: 0 %";

    private static string Two(string rod, string crown = "HEB 300", string more = "") => $$"""
        kind: tie-rod
        daylight: 1200 mm
        ram-drop: 150 mm
        rods-across: 800 mm
        section: {{crown}}
        steel: S275
        rod: { {{rod}} }
        {{more}}
        """;

    private static string Plates(string rod, double t = 75) => $$"""
        kind: tie-rod
        daylight: 1200 mm
        ram-drop: 150 mm
        rods-across: 500 mm
        rods-deep: 200 mm
        crown-plate: { thickness: {{t:0.###}} mm, width: 300 mm, steel: S355 }
        bed-plate: { thickness: {{t:0.###}} mm, width: 300 mm, steel: S355 }
        rod: { {{rod}} }
        """;

    private static FrameResponse Solve(string frame, string loading = Centred) => FrameResponse.Of(FramePlan.Of(Described.Rig(frame, loading)));

    private static double Safe(PressCheck check, string id) => check.Ladder.Rungs.Single(r => r.Id == id).SafeTo;

    [Fact]
    public void ThinRodsLeaveTheCrownABeamOnTwoSupports()
    {
        FrameResponse response = Solve(Two("thread: M16, class: 8.8"));

        var B13 = new Reference("B-13", "pinned corners: a beam on two supports with the load in the middle", Trust.Recomputed);
        Near.Relative(0.8 / 4, response.Solutions[0].At(1, 0).My, 2e-3, "moment in the middle for one newton, F L/4");
        B13.Near("thin rods: Mm for 200 kN over 800 mm, kN·m", 40, 200 * response.Solutions[0].At(1, 0).My, 2e-3);
        Assert.True(response.Solutions[0].At(1, 0).My < 0.2, "the rods' own bending takes a little off");
    }

    [Fact]
    public void EachRodPullsItsShare()
    {
        Assert.All(Solve(Two("thread: M36")).Plan.Rods, r => Assert.Equal(0.5, r.Actions(Solve(Two("thread: M36")).Solutions[0]).N, 1e-9));
        FrameResponse four = Solve(Plates("thread: M36"));
        Assert.All(four.Plan.Rods, r => Assert.Equal(0.25, r.Actions(four.Solutions[0]).N, 1e-9));
    }

    [Fact]
    public void ARodStretchesOverItsWholeLength()
    {
        // 1200 + 150 between plates of 75: 1500 mm from nut to nut
        FrameResponse response = Solve(Plates("thread: M36, class: 8.8"));
        var rig = (RigTieRodFrame)Described.Rig(Plates("thread: M36, class: 8.8")).Frame;

        double stretch = 100e3 / RodStiffness.Of(rig).Open;

        new Reference("F-32", "stretch F L/(E A)", Trust.Recomputed).Near("M36 threaded throughout, 1500 mm, 100 kN, mm", 0.874, stretch * 1e3, 3e-3);
        // and the frame does stretch by it: crown's end against bed's end, a quarter of the force in each of four rods
        FrameSolution s = response.Solutions[0];
        int crownEnd = response.Plan.Model.Members[response.Plan.Rods[0].Beam].To, bedEnd = response.Plan.Model.Members[response.Plan.Rods[0].Beam].From;
        Near.Relative(stretch / 4, 100e3 * (s.Displacement(crownEnd).Z - s.Displacement(bedEnd).Z), 1e-9, "stretch in the frame");
    }

    [Fact]
    public void SleevesAndPreloadStiffenTheFrameUntilTheyLetGo()
    {
        const string sleeve = "thread: M36, class: 8.8, sleeve: { outside: 80 mm, inside: 38 mm }";
        var bare = (RigTieRodFrame)Described.Rig(Plates(sleeve)).Frame;
        RodStiffness k = RodStiffness.Of(bare);

        Assert.True(k.Closed > 3 * k.Open);
        Near.Relative(k.Open / k.Closed, k.ShareMost, 1e-12, "the rod's share is its stiffness over both");
        double loose = Solve(Plates(sleeve)).DaylightGrowth, held = Solve(Plates(sleeve + ", preload: 100 kN")).DaylightGrowth;
        Near.Relative((1 / k.Open - 1 / k.Closed) / 4, loose - held, 1e-9, "what preload takes off the daylight's growth");
        // 10 t on four rods are 24.5 kN each: 5 kN of preload are gone before that
        Near.Relative(loose, Solve(Plates(sleeve + ", preload: 5 kN")).DaylightGrowth, 1e-12, "a preload that does not last");
    }

    [Fact]
    public void ClampedEndsDoLittleForTheDaylight()
    {
        RodStiffness k = RodStiffness.Of((RigTieRodFrame)Described.Rig(Plates("thread: M36, class: 8.8, preload: 100 kN")).Frame);

        Assert.InRange(k.Closed / k.Open, 1.0, 1.12);
    }

    [Fact]
    public void TheSameFromLeftAndRightFrontAndBack()
    {
        FrameResponse four = Solve(Plates("thread: M36"));
        double[] bent = [.. four.Plan.Rods.Select(r => Math.Abs(r.Actions(four.Solutions[0]).My))];

        Assert.All(bent, b => Near.Relative(bent[0], b, 1e-9, "bending of each rod, work centred"));
    }

    [Fact]
    public void WorkOffToOneSidePullsMoreOnTheRodsThere()
    {
        FrameResponse two = Solve(Two("thread: M16"), "off-centre-across: 100 mm, off-centre-deep: 0 mm, side-load: 0 %");
        FrameSolution off = two.Solutions[1];

        // thin rods take next to no bending: the lever rule, 100 off on 800 apart
        Near.Relative(0.5 + 0.1 / 0.8, two.Plan.Rods.Single(r => r.Name == "tie rod, right").Actions(off).N, 5e-3, "lever rule");
    }

    [Fact]
    public void AllLengthsTwiceMakeMomentsTwice()
    {
        RigTieRodFrame Sized(double s)
        {
            var frame = (RigTieRodFrame)Described.Rig(Plates("thread: M36, class: 8.8")).Frame;
            RigMember Plate(RigMember m) => m with { Shape = new Turned(new Flat(0.3 * s, 0.075 * s) { Name = "p", Source = SectionText.AsGiven }) { Name = "p", Source = SectionText.AsGiven } };
            return frame with
            {
                Daylight = s * frame.Daylight,
                RamDrop = s * frame.RamDrop,
                RodsAcross = s * frame.RodsAcross,
                RodsDeep = s * frame.RodsDeep,
                Crown = Plate(frame.Crown),
                Bed = Plate(frame.Bed),
                CrownPlate = new RigEndPlate(0.075 * s, 0.3 * s, 0.6 * s, 0),
                BedPlate = new RigEndPlate(0.075 * s, 0.3 * s, 0.6 * s, 0),
                Rod = frame.Rod with { Thread = new ScrewThread(s * 0.036, s * 0.004) { Name = "scaled" } },
            };
        }

        Rig rig = Described.Rig(Plates("thread: M36, class: 8.8"), Centred);
        FrameResponse one = FrameResponse.Of(FramePlan.Of(rig with { Frame = Sized(1) })), two = FrameResponse.Of(FramePlan.Of(rig with { Frame = Sized(2) }));

        Near.Relative(2 * one.Solutions[0].At(1, 0).My, two.Solutions[0].At(1, 0).My, 1e-9, "crown's moment");
        Near.Relative(2 * one.Plan.Rods[0].Actions(one.Solutions[0]).My, two.Plan.Rods[0].Actions(two.Solutions[0]).My, 1e-7, "rod's moment");
        Near.Relative(one.DaylightGrowth / 2, two.DaylightGrowth, 1e-9, "growth of the daylight");
    }

    [Fact]
    public void RungsOfARig()
    {
        PressCheck check = PressCheck.Of(Described.Rig(Plates("thread: M36, class: 8.8, preload: 150 kN")));

        string[] expected = ["tie-rod-pull", "tie-rod-bending", "tie-rod-thread", "preload", "crown-bending", "bed-bending", "crown-plate-deep", "bed-plate-deep"];
        Assert.All(expected, id => Assert.Single(check.Ladder.Rungs, r => r.Id == id));
    }

    [Fact]
    public void AThickerRodNeverLowersItsRungs()
    {
        string[] threads = ["M20", "M24", "M30", "M36", "M42"];
        PressCheck[] checks = [.. threads.Select(t => PressCheck.Of(Described.Rig(Plates($"thread: {t}, class: 8.8"))))];

        for (int i = 1; i < checks.Length; i++)
            Assert.True(Safe(checks[i], "tie-rod-pull") > Safe(checks[i - 1], "tie-rod-pull"), threads[i]);
    }

    [Fact]
    public void UnmarkedRodCountsAsTheWeakest()
    {
        PressCheck plain = PressCheck.Of(Described.Rig(Plates("thread: M20"), Centred)), marked = PressCheck.Of(Described.Rig(Plates("thread: M20, class: 8.8"), Centred));

        new Reference("T-02", "ISO 898-1:2013, plain studding taken for 8.8: proof load of M20", Trust.Recomputed)
            .Near("147 kN against 55.1", 147 / 55.1, marked.Ladder.Rungs.Single(r => r.Id == "tie-rod-pull").GivesAt / plain.Ladder.Rungs.Single(r => r.Id == "tie-rod-pull").GivesAt, 5e-3);
    }

    [Fact]
    public void NutsThatStripUnderThePreloadAreRefused() =>
        Assert.Throws<PressFaultsException>(() => PressCheck.Of(Described.Rig(Plates("thread: M36, class: 8.8, preload: 400 kN, nut-height: 5 mm"))));

    [Fact]
    public void TooHardATorqueIsRefused() =>
        Assert.Throws<PressFaultsException>(() => Described.Rig(Plates("thread: M20, class: 4.6, torque: 900 N·m")));

    [Fact]
    public void APressThatLiesIsBentByItsOwnSteel()
    {
        PressCheck stands = PressCheck.Of(Described.Rig(Plates("thread: M20")));
        PressCheck lies = PressCheck.Of(Described.Rig("horizontal: yes\n" + Plates("thread: M20")));

        Assert.Contains(lies.Response.Plan.Cases, c => c.Name == "own weight across");
        Assert.DoesNotContain(stands.Response.Plan.Cases, c => c.Name == "own weight across");
        Assert.Contains(lies.Ladder.Rungs, r => r.Part == "cylinder end");
        // two uniform rods between feet: each bows by its own w L²/12 at clamped ends; the plates stand over the feet
        int at = lies.Response.Plan.Cases.ToList().FindIndex(c => c.Name == "own weight across");
        PlanRod rod = lies.Response.Plan.Rods[0];
        double w = 7850 * 9.81 * lies.Response.Plan.Model.Members[rod.Beam].Section.A / lies.Rig.Wanted;
        double bends = Math.Abs(rod.Actions(lies.Response.Solutions[at]).Mz);
        Assert.InRange(bends, w * rod.Length * rod.Length / 13, w * rod.Length * rod.Length / 11);
    }
}
