using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Frame;

public class GussetTest
{
    private const string Centred = "off-centre-across: 0 mm, off-centre-deep: 0 mm, side-load: 0 %";

    private static string Gusset(double along, double up, double t = 20, int count = 1) =>
        $"kind: weld, weld: {{ leg: 8 mm }}, gusset: {{ leg-along: {along:0.###} mm, leg-up: {up:0.###} mm, thickness: {t:0.###} mm, count: {count}, steel: S275, weld: {{ leg: 6 mm }} }}";

    private static string Closed(string joint, string section = "flat 100x20", string more = "") => $$"""
        kind: closed
        daylight: 500 mm
        ram-drop: 100 mm
        width: 500 mm
        section: {{section}}
        steel: S275
        crown-joint: { {{joint}}{{more}} }
        bed-joint: { {{joint}}{{more}} }
        """;

    private static string OpenFront(string joint) => $$"""
        kind: open-front
        daylight: 300 mm
        throat: 250 mm
        section: HEB 200
        steel: S275
        arm-joint: { {{joint}} }
        """;

    private static FrameResponse Solve(string frame) => FrameResponse.Of(FramePlan.Of(Described.Rig(frame, Centred)));

    private static double Safe(PressCheck check, string id) => check.Ladder.Rungs.Single(r => r.Id == id).SafeTo;

    /// <summary>Plane stress, eight-node quadrilaterals of 10 mm, a quarter of the frame, in one piece with its gussets.</summary>
    [Theory]
    [InlineData(80, 0.919, 0.02)]
    [InlineData(120, 0.864, 0.05)]
    [InlineData(160, 0.791, 0.105)]
    public void HalfTheLegStiffensAboutAsMuchAsAPlaneModel(double leg, double printed, double tolerance)
    {
        double bare = Solve(Closed("kind: weld, weld: { leg: 8 mm }")).DaylightGrowth, stiff = Solve(Closed(Gusset(leg, leg))).DaylightGrowth;

        new Reference("GU-01", "plane-stress model of a closed frame of flat bars 100 x 20, gussets of 20 mm", Trust.OwnNumbers)
            .Near($"opening over opening without gussets, leg {leg:0} mm", printed, stiff / bare, tolerance);
        Assert.True(stiff / bare >= printed, "on the safe side");
    }

    [Fact]
    public void AGussetOfNoSizeIsNone()
    {
        Rig rig = Described.Rig(Closed(Gusset(100, 100)), Centred);
        var frame = (RigClosedFrame)rig.Frame;
        RigJoint Small(RigJoint j) => j with { Gusset = j.Gusset! with { LegAlong = 1e-9, LegUp = 1e-9 } };
        FrameResponse nearly = FrameResponse.Of(FramePlan.Of(rig with { Frame = frame with { CrownJoint = Small(frame.CrownJoint), BedJoint = Small(frame.BedJoint) } }));

        Near.Relative(Solve(Closed("kind: weld, weld: { leg: 8 mm }")).DaylightGrowth, nearly.DaylightGrowth, 1e-6, "growth of the daylight");
    }

    [Theory]
    [InlineData("fit: between")]
    [InlineData("fit: over")]
    public void JointsCarryWhatStaticsSays(string fit)
    {
        FrameResponse response = Solve(Closed(Gusset(120, 100), more: ", " + fit));
        FrameSolution s = response.Solutions[0];
        PlanPart crown = response.Plan.Parts[0];
        double middle = crown.Stations.First(x => x.Where == "under the cylinder").Actions(s).My;
        // half the ram's newton at half of clear width and 50 mm more: the axis of the upright
        double axis = middle - 0.5 * 0.3;

        foreach (PlanJoint joint in response.Plan.Joints.Where(j => j.Key == "frame.crown-joint"))
        {
            JointEnd end = JointEnd.Of(response, s, joint);
            Vector moment = end.Moment + (end.At - joint.Centre).Cross(end.Force);
            // between: the upright's face is 50 mm inside its axis; over: the moment does not change along the upright
            Near.Relative(Math.Abs(fit == "fit: between" ? axis + 0.5 * 0.05 : axis), moment.Length, 1e-9, joint.Name);
            Assert.True(moment.Cross(joint.Inner).Dot(joint.Normal) > 0, "a press that is opened pulls on its inner corners");
        }
    }

    [Fact]
    public void AllWeldsOfTheCornerShareItsLoad()
    {
        FrameResponse response = Solve(Closed(Gusset(120, 100, 10, 2)));
        PlanJoint joint = response.Plan.Joints[1];
        WeldGroup group = JointWeld.Of(joint, ((RigWeldedJoint)joint.Joint).Weld);
        JointEnd end = JointEnd.Of(response, response.Solutions[0], joint);

        (Vector force, Vector moment) = GussetWelds.Carried(group, group.Segments, end, end.At);

        Assert.True((force - end.Force).Length < 1e-9, "the welds' forces add up to the joint's");
        Assert.True((moment - end.Moment).Length < 1e-9, "and so do their moments");
        Near.Relative(4 * (0.1 - 2 * 0.006 / Math.Sqrt(2)), GussetWelds.OnFace(joint, joint.Joint.Gusset!).Sum(w => w.Length), 1e-9, "two plates, two fillets each");
    }

    [Fact]
    public void ASingleButtWeldedPlateHoldsATiltAsASolidStripDoes()
    {
        string butt = Gusset(120, 120, 12).Replace("weld: { leg: 6 mm }", "weld: { kind: butt }", StringComparison.Ordinal);
        FrameResponse response = Solve(Closed(butt, "HEB 160"));
        PlanJoint joint = response.Plan.Joints[1];
        WeldGroup group = GussetWelds.OnBeam(joint, joint.Joint.Gusset!, joint.Normal);
        const double t = 0.012, fy = 275e6;

        Limit limit = ButtWeld.Yield(group, Vector.Zero, group.Segments[0].Along, group.Centroid, fy, new PartialFactors(1, 1, 1, 1))!.Value;

        new Reference("GU-05", "section modulus of a rectangle, t² l / 6, bent over its thickness", Trust.Recomputed)
            .Near("moment about a weld 120 long of a plate 12 thick, Nm", fy * t * t * group.Segments[0].Length / 6, limit.GivesAt, 1e-9);
        // the default loading stands off centre to the front too, which tilts the plate
        PressCheck check = PressCheck.Of(Described.Rig(Closed(butt, "HEB 160")));
        Assert.True(Safe(check, "crown-joint-gusset-weld") > 0);
    }

    /// <summary>A plate as thick as the bar it stands on makes one deeper bar.</summary>
    [Fact]
    public void ABarWithAPlateAsThickIsADeeperBar()
    {
        const double h = 0.1, b = 0.08, a = 0.16, t = 0.02, N = 0.3, M = 0.05, fy = 275e6;
        var corner = new GussetedCorner(h * t, t * h * h * h / 12, h / 2, h / 2, b, a, t);
        // N acts at the bar's own axis, half the plate's leg off the middle of both
        double deep = h + b, about = M - N * b / 2, edge = (N / (t * deep) + 6 * about / (t * deep * deep)) * (1 + b * b / (a * a));
        double far = Math.Abs(N / (t * deep) - 6 * about / (t * deep * deep));
        var w = new Working();

        Limit limit = corner.Yields(N, M, fy, fy, PartialFactors.Recommended, w)!.Value;

        new Reference("GU-02", "rectangle in bending, and the stress along a free edge from that square to a cut (Mohr's circle)", Trust.Recomputed)
            .Near("ram force at yield of the edge, kN", fy / Math.Max(edge, far) / 1e3, limit.GivesAt / 1e3, 1e-9);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void MostSlenderIsThatOfTheTests() =>
        new Reference("GU-03", "Salmon and Johnson, 13.5: b/t up to 250/√F_y, F_y in ksi; 36 ksi", Trust.FromMemory)
            .Near("b/t", 41.67, RigGusset.MostSlender(36 * 6.894757e6), 1e-3);

    [Theory]
    [InlineData("closed")]
    [InlineData("open-front")]
    public void ACornerWithGussetsHoldsMore(string kind)
    {
        string bare = "kind: weld, weld: { leg: 8 mm }";
        // work off to one side twists an arm, which no gusset hinders: centred
        PressCheck Check(string closed, string open) => PressCheck.Of(Described.Rig(kind == "closed" ? Closed(closed, "HEB 160") : OpenFront(open), Centred));
        PressCheck without = Check(bare, bare), with = Check(Gusset(120, 120, 12), Gusset(145, 145, 12, 2));
        string joint = kind == "closed" ? "crown-joint" : "upper-arm-joint", part = kind == "closed" ? "crown" : "upper-arm";

        // a single slight plate would not help: its far end is stressed before the rest of the weld
        Assert.True(Safe(with, joint + "-weld") > 1.05 * Safe(without, joint + "-weld"), $"its weld {Safe(with, joint + "-weld") / Safe(without, joint + "-weld")}");
        Assert.True(with.DaylightGrowth < without.DaylightGrowth);
        if (kind == "open-front")
            Assert.True(Safe(with, part + "-bending") > 1.1 * Safe(without, part + "-bending"), "an arm that is looked at where the gusset ends");
        foreach (Rung rung in with.Ladder.Rungs)
        {
            var working = new Working();
            rung.Work(working);
            WorkingCheck.Holds(working);
        }

        Assert.Contains(with.Ladder.Rungs, r => r.Id == joint + "-gusset");
        Assert.Contains(with.Ladder.Rungs, r => r.Id == joint + "-gusset-weld");
        Assert.Contains(with.Ladder.Rungs, r => r.Id.EndsWith("-toe-fatigue", StringComparison.Ordinal) && r.Part.Contains("end of the gusset", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("leg-along: 120 mm, leg-up: 120 mm, thickness: 2 mm", "would buckle")]
    [InlineData("leg-along: 120 mm, leg-up: 50 mm, thickness: 12 mm", "more than twice")]
    [InlineData("leg-along: 260 mm, leg-up: 200 mm, thickness: 12 mm", "run into each other")]
    [InlineData("leg-along: 35 mm, leg-up: 35 mm, thickness: 12 mm", "too short to carry load")]
    public void WhatCannotBeIsNamed(string gusset, string found)
    {
        string text = $$"""
            wanted: 10 t
            cylinder: { kind: double-acting, bore: 100 mm }
            pump: { kind: electric, motor: 2.2 kW }
            frame: { kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160, crown-joint: { kind: weld, gusset: { {{gusset}} } } }
            """;
        Ramwright.Files.PressReading reading = Ramwright.Files.PressFile.Read(text, "test.press.yaml", Ramwright.Files.StockTables.Built);
        string all = Ramwright.Files.FaultText.All(reading.Faults);
        if (reading.Faults.Count == 0)
            all = Assert.Throws<PressFaultsException>(() => Resolver.Resolve(reading.Press!, Ramwright.Files.StockTables.Built)).Faults[0].Found.Text();

        Assert.Contains(found, all, StringComparison.Ordinal);
    }
}
