using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>
/// Crown and bed between two uprights, centreline to centreline. Beams bend about their y in the plane of the frame;
/// uprights turn their top edge outward.
/// </summary>
internal static class ClosedFramePlan
{
    public static FramePlan Of(RigClosedFrame frame, Rig rig)
    {
        SectionProperties crown = frame.Crown.Shape.Properties;
        SectionProperties bed = frame.Bed.Shape.Properties;
        SectionProperties upright = frame.Upright.Shape.Properties;

        double half = ClosedFrameBody.HalfSpan(frame);
        double height = ClosedFrameBody.Height(frame);
        double off = Math.Min(rig.Loading.Across, 0.95 * frame.Width / 2);
        bool split = off > 0;

        var plan = new PlanBuilder();
        int bedLeftEnd = plan.Node("bed, left end", new Vector(-half, 0, 0));
        int bedMid = plan.Node("bed, under the ram", Vector.Zero);
        int bedRightEnd = plan.Node("bed, right end", new Vector(half, 0, 0));
        int crownLeftEnd = plan.Node("crown, left end", new Vector(-half, 0, height));
        int crownMid = plan.Node("crown, above the ram", new Vector(0, 0, height));
        int crownRightEnd = plan.Node("crown, right end", new Vector(half, 0, height));
        int bedAside = split ? plan.Node("bed, under off-centre work", new Vector(off, 0, 0)) : bedMid;

        // where a rule is known for the corner, beams end at its faces and springs stand for what it gives; else they run to the centre lines
        JointSprings? top = JointSprings.OfCorner(frame.CrownJoint, frame.Crown, frame.Upright), foot = JointSprings.OfCorner(frame.BedJoint, frame.Bed, frame.Upright);
        EndFixity crownEnd = top?.Beam ?? Hold(frame.CrownJoint), bedEnd = foot?.Beam ?? Hold(frame.BedJoint);
        double crownArm = top is null ? 0 : upright.Bottom, bedArm = foot is null ? 0 : upright.Bottom;
        Vector atBed = (foot is null ? 0 : bed.Top) * Vector.Up, atCrown = (top is null ? 0 : -crown.Bottom) * Vector.Up;
        var across = new Twist(2 * half, Cantilever: false);
        var upward = new Twist(height, Cantilever: false);
        int[] crownLeft = plan.Beam(frame.Crown, crownLeftEnd, crownMid, Vector.Up, across, start: crownArm * Vector.Across, holdStart: crownEnd, giving: true);
        int[] crownRight = plan.Beam(frame.Crown, crownMid, crownRightEnd, Vector.Up, across, end: -crownArm * Vector.Across, holdEnd: crownEnd, giving: true);
        int[] bedLeft = plan.Beam(frame.Bed, bedLeftEnd, bedMid, Vector.Up, across, start: bedArm * Vector.Across, holdStart: bedEnd, giving: true);
        int[] bedMiddle = split ? plan.Beam(frame.Bed, bedMid, bedAside, Vector.Up, across) : [];
        int[] bedRight = plan.Beam(frame.Bed, bedAside, bedRightEnd, Vector.Up, across, end: -bedArm * Vector.Across, holdEnd: bedEnd, giving: true);
        int[] left = plan.Beam(frame.Upright, bedLeftEnd, crownLeftEnd, -Vector.Across, upward, atBed, atCrown, foot?.Upright, top?.Upright, giving: true);
        int[] right = plan.Beam(frame.Upright, bedRightEnd, crownRightEnd, Vector.Across, upward, atBed, atCrown, foot?.Upright, top?.Upright, giving: true);

        double contact = Math.Max(bed.Top, height - crown.Bottom - frame.RamDrop - rig.Cylinder.Stroke);
        var loads = new UnitLoads(new Vector(0, 0, height), Vector.Zero, new Vector(0, 0, contact));
        var die = new DieSpread(half - Math.Max(crownArm, bedArm), frame.DieWidth);
        Stretch[] onCrown = [new(crownLeft, crownArm - half, 0), new(crownRight, 0, half - crownArm)];
        Stretch[] onBed = split
            ? [new(bedLeft, bedArm - half, 0), new(bedMiddle, 0, off), new(bedRight, off, half - bedArm)]
            : [new(bedLeft, bedArm - half, 0), new(bedRight, 0, half - bedArm)];

        LoadCase Case(UnitLoads.Pair pair)
        {
            // work off to one side presses on the bed there, not at the middle
            bool aside = pair.Off.X > 0 && split;
            Vector moment = aside ? pair.LowerMoment - (off * Vector.Across).Cross(pair.LowerForce) : pair.LowerMoment;
            var onNodes = new List<NodalLoad>();
            var onBeams = new List<MemberLoad>();
            die.Lay(pair.UpperForce, pair.UpperMoment, 0, crownMid, onCrown, onNodes, onBeams);
            die.Lay(pair.LowerForce, moment, aside ? off : 0, aside ? bedAside : bedMid, onBed, onNodes, onBeams);
            return new LoadCase(pair.Name, onNodes, onBeams);
        }

        double face = upright.Bottom;       // a beam's clear span starts at the upright's inner face
        double above = bed.Top, below = height - crown.Bottom;
        var bedStations = new List<PlanStation>(
        [
            .. plan.At(bedLeft, face, "at the upright", PlanCut.Joint, false),
            .. plan.At(bedLeft, half, "under the work", PlanCut.Openings, true),
            .. plan.At(bedRight, half - off - face, "at the upright", PlanCut.Joint, false),
            .. plan.At(bedRight, 0, "under the work", PlanCut.Openings, true),
        ]);
        if (split)
        {
            bedStations.AddRange(plan.At(bedMiddle, 0, "under the work", PlanCut.Openings, true));
            bedStations.AddRange(plan.At(bedMiddle, off, "under the work", PlanCut.Openings, true));
        }

        PlanPart[] parts =
        [
            new(frame.Crown, [.. crownLeft, .. crownRight], 2 * half,
            [
                .. plan.At(crownLeft, face, "at the upright", PlanCut.Joint, false),
                .. plan.At(crownLeft, half, "under the cylinder", PlanCut.Openings, true),
                .. plan.At(crownRight, 0, "under the cylinder", PlanCut.Openings, true),
                .. plan.At(crownRight, half - face, "at the upright", PlanCut.Joint, false),
            ]),
            new(frame.Bed, [.. bedLeft, .. bedMiddle, .. bedRight], 2 * half, bedStations),
            new(frame.Upright, [.. left, .. right], height,
            [
                .. plan.At(left, above, "above the bed", PlanCut.Both, false),
                .. plan.At(left, height / 2, "at half height", PlanCut.Openings, true),
                .. plan.At(left, below, "below the crown", PlanCut.Both, false),
                .. plan.At(right, above, "above the bed", PlanCut.Both, false),
                .. plan.At(right, height / 2, "at half height", PlanCut.Openings, true),
                .. plan.At(right, below, "below the crown", PlanCut.Both, false),
            ]),
        ];

        PlanJoint[] joints =
        [
            Corner("crown joint, left", "frame.crown-joint", frame.CrownJoint, frame.Crown, crownLeft, face, left, -1, height),
            Corner("crown joint, right", "frame.crown-joint", frame.CrownJoint, frame.Crown, crownRight, half - face, right, 1, height),
            Corner("bed joint, left", "frame.bed-joint", frame.BedJoint, frame.Bed, bedLeft, face, left, -1, 0),
            Corner("bed joint, right", "frame.bed-joint", frame.BedJoint, frame.Bed, bedRight, half - off - face, right, 1, 0),
        ];

        PlanJoint Corner(string name, string key, RigJoint joint, RigMember beam, int[] beams, double beamX, int[] uprights, int side, double z)
        {
            SectionProperties s = beam.Shape.Properties;
            var corner = new Vector(side * half, 0, z);
            bool top = z > 0;
            switch (joint.Fit)
            {
                case BeamFit.Over:      // the upright's end stands against the beam's inner face
                    return new PlanJoint(name, key, joint, frame.Upright, beam, uprights, plan.Along(uprights[0], top ? below : above),
                        corner + (top ? -s.Bottom : s.Top) * Vector.Up, Vector.Up, side * Vector.Deep, side * Vector.Across);
                case BeamFit.Lapped:    // the beam's halves clasp the upright
                    return new PlanJoint(name, key, joint, beam, frame.Upright, beams, plan.Along(beams[0], beamX), corner, Vector.Deep, -Vector.Across, Vector.Up);
                default:                // the beam's end stands against the upright's inner face
                    return new PlanJoint(name, key, joint, beam, frame.Upright, beams, plan.Along(beams[0], beamX),
                        corner - side * upright.Bottom * Vector.Across, Vector.Across, Vector.Deep, Vector.Up);
            }
        }

        return new FramePlan(
            plan.Model(new Support(bedMid, true, true, true, true, true, true)),
            [.. loads.Cases(rig.Loading).Select(Case)], parts, joints, Upper: crownMid, Lower: bedMid,
            [
                top is null || foot is null
                    ? "Where no rule is known for a corner, the frame is taken as beams from centre line to centre line; corners turn with the members joined there."
                    : "The frame is taken as beams between the faces of its corners; springs stand for what the corners give, and for the dies sinking into the webs. "
                        + $"Against solid models such frames opened within {Readout.Text(Math.Max(top.Value.Within, foot.Value.Within), Dimension.Ratio)} of what is shown.",
                "How far the dies turn from front to back, under work off to the front, is less sure: bars came within 15 % of solid models, boxes and pairs turned up to two and a "
                    + "third times as far as shown, because their sections distort; end plates and ties between the halves hold them.",
                "The halves of a pair bend each by itself, tied at the corners and under the ram.",
                UnitLoads.InWords(rig.Loading),
                "Weight is left out: it is small beside the ram force, and presses the parts together.",
                .. frame.CrownJoint is RigBoltedJoint || frame.BedJoint is RigBoltedJoint ? (string[])["Bolted corners are taken not to slip."] : [],
            ])
        { Pressing = DiePressing.Of(frame.Crown.Shape, frame.DieWidth) + DiePressing.Of(frame.Bed.Shape, frame.DieWidth) };
    }

    private static EndFixity Hold(RigJoint joint) => joint is RigPinnedJoint ? EndFixity.PinnedY : EndFixity.Rigid;
}
