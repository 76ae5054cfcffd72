using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>
/// Crown and bed between two uprights. Beams end at the faces of their corners, with springs for what the corners give; where no rule is known they run from centre line to
/// centre line. Beams bend about their y in the plane of the frame;
/// uprights turn their top edge outward.
/// </summary>
internal static class ClosedFramePlan
{
    public static FramePlan Of(RigClosedFrame frame, Rig rig)
    {
        SectionProperties upright = frame.Upright.Shape.Properties;
        double half = ClosedFrameBody.HalfSpan(frame);
        var plan = new PlanBuilder();
        // where there is no gusset its legs are nothing
        (double crownAlong, double crownUp) = Legs(frame.CrownJoint);
        (double bedAlong, double bedUp) = Legs(frame.BedJoint);
        JointSprings? top = JointSprings.Of(rig.Springs?.Upper) ?? JointSprings.OfCorner(frame.CrownJoint, frame.Crown, frame.Upright);
        JointSprings? foot = JointSprings.Of(rig.Springs?.Lower) ?? JointSprings.OfCorner(frame.BedJoint, frame.Bed, frame.Upright);
        (double stiffTop, double stiffFoot) = (Corners.StiffWith(rig.Springs?.Upper), Corners.StiffWith(rig.Springs?.Lower));
        var ends = new CrownAndBed(plan, frame.Crown, frame.Bed, half, top?.Beam ?? Hold(frame.CrownJoint), foot?.Beam ?? Hold(frame.BedJoint), rig,
            crownArm: (top is null ? 0 : upright.Bottom) + stiffTop * crownAlong, bedArm: (foot is null ? 0 : upright.Bottom) + stiffFoot * bedAlong);
        // the uprights are looked at where beams or gussets end
        double height = ends.Height, above = ends.AboveBed + bedUp, below = ends.BelowCrown - crownUp;
        var upward = new Twist(height, Cantilever: false);
        Vector lowArm = ((foot is null ? 0 : ends.AboveBed) + stiffFoot * bedUp) * Vector.Up;
        Vector highArm = ((top is null ? 0 : ends.BelowCrown - height) - stiffTop * crownUp) * Vector.Up;
        int[] left = plan.Beam(frame.Upright, ends.BedLeftEnd, ends.CrownLeftEnd, -Vector.Across, upward, lowArm, highArm, foot?.Upright, top?.Upright, giving: true);
        int[] right = plan.Beam(frame.Upright, ends.BedRightEnd, ends.CrownRightEnd, Vector.Across, upward, lowArm, highArm, foot?.Upright, top?.Upright, giving: true);

        double face = upright.Bottom;       // a beam's clear span starts at the upright's inner face
        string crown = FrameWords.Crown(rig.Frame), bed = FrameWords.Bed(rig.Frame);
        string atBed = frame.Horizontal ? $"at the {bed}" : "above the bed", atCrown = frame.Horizontal ? $"at the {crown}" : "below the crown";
        if (bedUp > 0)
            atBed = $"where the gusset at the {bed} ends";
        if (crownUp > 0)
            atCrown = $"where the gusset at the {crown} ends";
        string atMiddle = frame.Horizontal ? "at half length" : "at half height";
        PlanCut middle = frame.BedPins is null ? PlanCut.Openings : PlanCut.Both;      // rows of pin holes go all the way up
        PlanPart[] parts =
        [
            ends.Crown(face + crownAlong, crownAlong > 0 ? "at the gusset's end" : "at the upright"),
            ends.Bed(face + bedAlong, bedAlong > 0 ? "at the gusset's end" : "at the upright"),
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
            Corner($"{crown} joint, left", "frame.crown-joint", frame.CrownJoint, frame.Crown, ends.CrownLeft, face + crownAlong, left, -1, height),
            Corner($"{crown} joint, right", "frame.crown-joint", frame.CrownJoint, frame.Crown, ends.CrownRight, half - face - crownAlong, right, 1, height),
            Corner($"{bed} joint, left", "frame.bed-joint", frame.BedJoint, frame.Bed, ends.BedLeft, face + bedAlong, left, -1, 0),
            Corner($"{bed} joint, right", "frame.bed-joint", frame.BedJoint, frame.Bed, ends.BedRight, half - ends.Aside - face - bedAlong, right, 1, 0),
        ];

        PlanJoint Corner(string name, string key, RigJoint joint, RigMember beam, int[] beams, double beamX, int[] uprights, int side, double z)
        {
            SectionProperties s = beam.Shape.Properties;
            var corner = new Vector(side * half, 0, z);
            bool high = z > 0;
            switch (joint.Fit)
            {
                case BeamFit.Over:      // the upright's end stands against the beam's inner face
                    return new PlanJoint(name, key, joint, frame.Upright, beam, uprights, plan.Along(uprights[0], high ? below : above),
                        corner + (high ? -s.Bottom : s.Top) * Vector.Up, Vector.Up, side * Vector.Deep, side * Vector.Across)
                    { Inner = -side * Vector.Across, Face = new PlanFace(Vector.Deep, Vector.Up, high ? -Vector.Up : Vector.Up) };
                case BeamFit.Lapped:    // the beam's halves clasp the upright
                    return new PlanJoint(name, key, joint, beam, frame.Upright, beams, plan.Along(beams[0], beamX), corner, Vector.Deep, -Vector.Across, Vector.Up);
                default:                // the beam's end stands against the upright's inner face
                    return new PlanJoint(name, key, joint, beam, frame.Upright, beams, plan.Along(beams[0], beamX),
                        corner - side * upright.Bottom * Vector.Across, Vector.Across, Vector.Deep, Vector.Up)
                    { Inner = high ? -Vector.Up : Vector.Up, Face = new PlanFace((side * Vector.Across).Cross(Vector.Up), side * Vector.Across, -side * Vector.Across) };
            }
        }

        double? within = top is null || foot is null || frame.CrownJoint is RigPinnedJoint || frame.BedJoint is RigPinnedJoint ? null : Math.Max(top.Value.Within, foot.Value.Within);
        return new FramePlan(
            plan.Model(ends.Foot),
            ends.Cases(rig), parts, joints, Upper: ends.CrownMid, Lower: ends.BedMid,
            [
                frame.CrownJoint is RigPinnedJoint || frame.BedJoint is RigPinnedJoint
                    ? "Corners on pins turn freely: there is no spring to find for them, and the frame is taken as beams from centre line to centre line. How far pins and holes give is left out: two such frames opened 42 % further as solids. Solve yours: ramwright solid FILE."
                    : top is null || foot is null
                    ? "Where no rule is known for a corner, the frame is taken as beams from centre line to centre line; corners turn with the members joined there."
                    : "The frame is taken as beams between the faces of its corners; springs stand for what the corners give, and for the dies sinking into the webs. "
                        + $"Against solid models such frames opened within {Readout.Text(within!.Value, Dimension.Ratio)} of what is shown.",
                "How far the dies turn from front to back, under work off to the front, is less sure: bars came within 15 % of solid models, boxes and pairs turned up to two and a "
                    + "third times as far as shown, because their sections distort; end plates and ties between the halves hold them.",
                "The halves of a pair bend each by itself, tied at the corners and under the ram.",
                .. crownAlong + bedAlong > 0 ? (string[])[Corners.NoteWith(rig.Springs)] : [],
                .. rig.Springs is not null ? (string[])[JointSprings.FromSolids] : [],
                UnitLoads.InWords(rig.Loading),
                .. frame.Horizontal ? (string[])[] : ["Weight is left out: it is small beside the ram force, and presses the parts together."],
                .. frame.CrownJoint is RigBoltedJoint || frame.BedJoint is RigBoltedJoint ? (string[])["Bolted corners are taken not to slip: ordinary bolts do once, until they bear."] : [],
            ])
        { Within = within, Pressing = DiePressing.Of(frame.Crown.Shape, frame.DieWidth) + DiePressing.Of(frame.Bed.Shape, frame.DieWidth) };
    }

    private static (double Along, double Up) Legs(RigJoint joint) => (joint.Gusset?.LegAlong ?? 0, joint.Gusset?.LegUp ?? 0);

    private static EndFixity Hold(RigJoint joint) => joint is RigPinnedJoint ? EndFixity.PinnedY : EndFixity.Rigid;
}
