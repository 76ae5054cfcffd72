using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

/// <summary>A weld counts where the beam's end stands on steel, and nowhere else.</summary>
public class JointFaceTest
{
    private static Rig Rig(string frame) => Frame.Described.Rig("kind: closed\ndaylight: 600 mm\nwidth: 500 mm\nsteel: S235\n" + frame);

    private static string Crown(double apart, string upright = "{ section: 2 x UPN 200 }", string joint = "{ kind: weld, weld: { leg: 8 mm } }") => FormattableString.Invariant(
        $"crown: {{ section: 2 x UPN 260, apart: {apart} mm }}\nbed: {{ section: 2 x UPN 140 }}\nupright: {upright}\ncrown-joint: {joint}\nbed-joint: {{ kind: weld, weld: {{ leg: 8 mm }} }}");

    private static PlanJoint Joint(Rig rig) => FramePlan.Of(rig).Joints.First(j => j.Key == "frame.crown-joint");

    private static Rung Weld(PressCheck check) => check.Ladder.Rungs.Single(r => r.Id == "crown-joint-weld");

    [Fact]
    public void OnlyTheEdgeThatLiesOnTheUprightIsCounted()
    {
        // the upright's face reaches 75 mm to each side of the middle, and the webs of the crown stand from 65 to 75 mm
        (double Edge, double OnSteel)? part = JointWeld.PartOf(Joint(Rig(Crown(130))));

        Assert.NotNull(part);
        // of each half: its back, 10 mm of both flanges' outsides and 2 more that the weld fills, the straight of the web, both roots of 14 mm as far as 2 mm,
        // and where the upright's edge stands against the ends of the flanges, which go on for more than the leg of a throat of 3 mm
        double foot = 3 * Math.Sqrt(2), flange = 30 - Math.Sqrt(14 * 14 - (14 - foot) * (14 - foot));
        double half = 260 + 2 * 12 + 200 + 2 * 14 * Math.Acos(12 / 14.0) + 2 * flange;
        new Reference("JF-01", "DIN 1026-1: UPN 260, h 260, tw 10, r1 14, 200 between the roots; lengths along the outline by hand", Trust.FromMemory)
            .Near("weld of a pair of UPN 260, 130 mm apart, on a face 150 mm wide, m", 2e-3 * half, part.Value.OnSteel, 0.003);
        // no weld stands out beside the face
        Assert.All(JointWeld.Of(Joint(Rig(Crown(130))), ((RigWeldedJoint)Joint(Rig(Crown(130))).Joint).Weld).Segments,
            s => Assert.True(Math.Max(Math.Abs(s.From.Y), Math.Abs(s.To.Y)) <= 77e-3 + 1e-9));
    }

    [Fact]
    public void AWeldThatIsHeldByLessGivesSoonerAndSaysSo()
    {
        PressCheck apart = PressCheck.Of(Rig(Crown(130))), near = PressCheck.Of(Rig(Crown(10)));

        Assert.True(Weld(apart).SafeTo < Weld(near).SafeTo);
        Assert.Contains(apart.Cautions(UnitSystem.Metric), c => c.Contains("The end of the crown stands out beside the upright"));
        var w = new Working();
        Weld(apart).Work(w);
        Assert.Contains(w.Steps, s => s.Symbol == "l_w");
    }

    [Theory]
    [InlineData(145)]       // webs from 72.5 mm on: no throat's width of them on the face
    [InlineData(149.8)]     // a tenth of a millimetre on either side
    [InlineData(150)]       // an edge
    [InlineData(200)]       // nothing
    public void ACrownThatPassesTheUprightByIsRefusedAndItsGapNamed(double apart)
    {
        Rig rig = Rig(Crown(apart));

        var refused = Assert.Throws<PressFaultsException>(() => PressCheck.Of(rig));
        Fault fault = Assert.Single(refused.Faults);
        Assert.Equal("frame.crown.apart", fault.Path);
        Assert.StartsWith("130 mm or less", fault.Wanted.Text(), StringComparison.Ordinal);
        // what is asked for is taken
        PressCheck.Of(Rig(Crown(130)));
    }

    [Fact]
    public void AnUprightThatMeetsNothingOverItIsRefused()
    {
        const string over = "{ kind: weld, fit: over, weld: { leg: 8 mm } }";
        var refused = Assert.Throws<PressFaultsException>(() => PressCheck.Of(Rig(Crown(200, joint: over))));
        Assert.Equal("frame.crown.apart", Assert.Single(refused.Faults).Path);

        // flanges of the crown from 30 mm on find the upright
        PressCheck.Of(Rig(Crown(60, joint: over)));
    }

    [Fact]
    public void AGapInTheFaceHoldsNoWeld()
    {
        // the crown's flanges end 40 mm from the middle, the faces of the upright begin at 60 mm
        Rig rig = Rig("section: 2 x UPN 200\ncrown: { section: UPE 80 }\nupright: { apart: 120 mm }");
        var refused = Assert.Throws<PressFaultsException>(() => PressCheck.Of(rig));

        Assert.Equal("frame.upright.apart", Assert.Single(refused.Faults).Path);
    }

    [Fact]
    public void ABeamMayReachBetweenFlangesToTheWeb()
    {
        Rig rig = Rig("section: HEB 100\nupright: { section: HEB 200, turned: yes }");

        Assert.Null(JointWeld.PartOf(Joint(rig)));
    }

    // arms of bar wider than the column: its edges are welded to the ends of the bars, with a leg as long as they stand out
    [Fact]
    public void ABeamWiderThanTheUprightIsWeldedAlongTheUprightsEdges()
    {
        PlanJoint joint = Joint(Rig("crown: { section: flat 230x60 }\nbed: { section: flat 230x40 }\nupright: { section: flat 190x40 }\ncrown-joint: { kind: weld, weld: { leg: 20 mm } }"));

        (double Edge, double OnSteel)? part = JointWeld.PartOf(joint);
        Assert.NotNull(part);
        Near.Absolute(2 * 0.230 + 2 * 0.044, part.Value.OnSteel, 1e-9);
        Near.Absolute(0.010 / Math.Sqrt(2), JointWeld.Of(joint, ((RigWeldedJoint)joint.Joint).Weld).Thinnest, 1e-9);
    }

    [Theory]
    [InlineData(20, false)]
    [InlineData(170, true)]
    public void ABarOfAFreeFrameIsHeldToTheSame(double apart, bool refused)
    {
        Rig rig = Frame.Described.Rig(FormattableString.Invariant($$"""
            kind: free
            daylight: 600 mm
            section: HEB 160
            cylinder-at: c2
            work-at: b2
            points:
              - { name: b1 }
              - { name: b2, right: 350 mm }
              - { name: b3, right: 700 mm }
              - { name: c1, up: 900 mm }
              - { name: c2, right: 350 mm, up: 900 mm }
              - { name: c3, right: 700 mm, up: 900 mm }
            bars:
              - { name: left leg, from: b1, to: c1 }
              - { name: right leg, from: b3, to: c3 }
              - { name: bed left, from: b1, to: b2 }
              - { name: bed right, from: b2, to: b3 }
              - { name: crown left, from: c1, to: c2, member: { section: 2 x UPN 180, apart: {{apart}} mm }, from-joint: { kind: weld, weld: { leg: 8 mm } } }
              - { name: crown right, from: c2, to: c3 }
            """));
        if (!refused)
        {
            Assert.Null(JointWeld.PartOf(FramePlan.Of(rig).Joints.Single()));
            PressCheck.Of(rig);
        }
        else
        {
            Assert.Equal("frame.bars.4.member.apart", Assert.Single(Assert.Throws<PressFaultsException>(() => PressCheck.Of(rig)).Faults).Path);
        }
    }

    public static TheoryData<string, UnitSystem> Starters()
    {
        var all = new TheoryData<string, UnitSystem>();
        foreach (string kind in Starter.Kinds)
        {
            all.Add(kind, UnitSystem.Metric);
            all.Add(kind, UnitSystem.Imperial);
        }

        return all;
    }

    [Theory, MemberData(nameof(Starters))]
    public void TheFirstFilesStandOnSteelAllRound(string kind, UnitSystem units)
    {
        PressReading reading = PressFile.Read(Starter.First(kind, units), kind, StockTables.Built);

        Assert.All(FramePlan.Of(Resolver.Resolve(reading.Press!, StockTables.Built)).Joints, j => Assert.Null(JointWeld.PartOf(j)));
    }

    [Theory]
    [InlineData("section: HEB 160")]
    [InlineData("section: 2 x UPN 200")]
    [InlineData("section: SHS 100x100x6")]
    [InlineData("section: CHS 88.9x5")]
    [InlineData("section: flat 200x40")]
    [InlineData("section: HEB 160\ncrown-joint: { kind: weld, fit: over }")]
    [InlineData("section: 2 x UPN 200\ncrown: { section: 2 x UPN 160 }")]
    public void MembersAsWideAsEachOtherKeepTheirWholeWeld(string frame) => Assert.Null(JointWeld.PartOf(Joint(Rig(frame))));
}
