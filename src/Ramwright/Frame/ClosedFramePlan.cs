using Ramwright.Geometry;
using Ramwright.Presses;
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
        SectionProperties upright = frame.Upright.Shape.Properties;
        double half = ClosedFrameBody.HalfSpan(frame);
        var plan = new PlanBuilder();
        var ends = new CrownAndBed(plan, frame.Crown, frame.Bed, half, Hold(frame.CrownJoint), Hold(frame.BedJoint), rig);
        double height = ends.Height, above = ends.AboveBed, below = ends.BelowCrown;
        var upward = new Twist(height, Cantilever: false);
        int[] left = plan.Beam(frame.Upright, ends.BedLeftEnd, ends.CrownLeftEnd, -Vector.Across, upward);
        int[] right = plan.Beam(frame.Upright, ends.BedRightEnd, ends.CrownRightEnd, Vector.Across, upward);

        double face = upright.Bottom;       // a beam's clear span starts at the upright's inner face
        string crown = FrameWords.Crown(rig.Frame), bed = FrameWords.Bed(rig.Frame);
        string atBed = frame.Horizontal ? $"at the {bed}" : "above the bed", atCrown = frame.Horizontal ? $"at the {crown}" : "below the crown";
        string atMiddle = frame.Horizontal ? "at half length" : "at half height";
        PlanCut middle = frame.BedPins is null ? PlanCut.Openings : PlanCut.Both;      // rows of pin holes go all the way up
        PlanPart[] parts =
        [
            ends.Crown(face, "at the upright"),
            ends.Bed(face, "at the upright"),
            new(frame.Upright, [.. left, .. right], height,
            [
                .. plan.At(left, above, atBed, PlanCut.Both, false),
                .. plan.At(left, height / 2, atMiddle, middle, true),
                .. plan.At(left, below, atCrown, PlanCut.Both, false),
                .. plan.At(right, above, atBed, PlanCut.Both, false),
                .. plan.At(right, height / 2, atMiddle, middle, true),
                .. plan.At(right, below, atCrown, PlanCut.Both, false),
            ]),
        ];

        PlanJoint[] joints =
        [
            Corner($"{crown} joint, left", "frame.crown-joint", frame.CrownJoint, frame.Crown, ends.CrownLeft, face, left, -1, height),
            Corner($"{crown} joint, right", "frame.crown-joint", frame.CrownJoint, frame.Crown, ends.CrownRight, half - face, right, 1, height),
            Corner($"{bed} joint, left", "frame.bed-joint", frame.BedJoint, frame.Bed, ends.BedLeft, face, left, -1, 0),
            Corner($"{bed} joint, right", "frame.bed-joint", frame.BedJoint, frame.Bed, ends.BedRight, half - ends.Aside - face, right, 1, 0),
        ];

        PlanJoint Corner(string name, string key, RigJoint joint, RigMember beam, int[] beams, double beamX, int[] uprights, int side, double z)
        {
            SectionProperties s = beam.Shape.Properties;
            var corner = new Vector(side * half, 0, z);
            bool top = z > 0;
            switch (joint.Fit)
            {
                case BeamFit.Over:      // the upright's end stands against the beam's inner face
                    return new PlanJoint(name, key, joint, frame.Upright, beam, uprights, top ? below : above,
                        corner + (top ? -s.Bottom : s.Top) * Vector.Up, Vector.Up, side * Vector.Deep, side * Vector.Across);
                case BeamFit.Lapped:    // the beam's halves clasp the upright
                    return new PlanJoint(name, key, joint, beam, frame.Upright, beams, beamX, corner, Vector.Deep, -Vector.Across, Vector.Up);
                default:                // the beam's end stands against the upright's inner face
                    return new PlanJoint(name, key, joint, beam, frame.Upright, beams, beamX,
                        corner - side * upright.Bottom * Vector.Across, Vector.Across, Vector.Deep, Vector.Up);
            }
        }

        return new FramePlan(
            plan.Model(ends.Foot),
            ends.Cases(rig), parts, joints, Upper: ends.CrownMid, Lower: ends.BedMid,
            [
                "The frame is taken as beams from centre line to centre line; corners turn with the members joined there.",
                "The halves of a pair bend each by itself, tied at the corners and under the ram.",
                UnitLoads.InWords(rig.Loading),
                .. frame.Horizontal ? (string[])[] : ["Weight is left out: it is small beside the ram force, and presses the parts together."],
                .. frame.CrownJoint is RigBoltedJoint || frame.BedJoint is RigBoltedJoint ? (string[])["Bolted corners are taken not to slip: ordinary bolts do once, until they bear."] : [],
            ]);
    }

    private static EndFixity Hold(RigJoint joint) => joint is RigPinnedJoint ? EndFixity.PinnedY : EndFixity.Rigid;
}
