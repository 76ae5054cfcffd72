using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>
/// A column with two arms. The column bends about its y with its top edge to the front; arms run from the column's
/// front face to the ram's centre line, and turn against the column on a spring that stands for the joint's own give.
/// </summary>
internal static class OpenFrontPlan
{
    public static FramePlan Of(RigOpenFrontFrame frame, Rig rig)
    {
        SectionProperties column = frame.Column.Shape.Properties;
        SectionProperties upper = frame.UpperArm.Shape.Properties;
        SectionProperties lower = frame.LowerArm.Shape.Properties;

        double back = column.Top;           // from the front face to the column's centre line
        double height = lower.Top + frame.Daylight + frame.RamDrop + upper.Bottom;
        double clear = height - lower.Top - upper.Bottom;
        (double along, double up) = (frame.ArmJoint.Gusset?.LegAlong ?? 0, frame.ArmJoint.Gusset?.LegUp ?? 0);
        double stiff = Corners.StiffWith(rig.Springs?.Upper), stiffUp = stiff * up;
        string at = along > 0 ? "at the gusset's end" : "at the column";
        var plan = new PlanBuilder();
        int atLower = plan.Node("column, at the lower arm", new Vector(0, back, 0));
        int atUpper = plan.Node("column, at the upper arm", new Vector(0, back, height));
        int underRam = plan.Node("lower arm, under the ram", new Vector(0, -frame.Throat, 0));
        int aboveRam = plan.Node("upper arm, above the ram", new Vector(0, -frame.Throat, height));

        JointSprings? low = JointSprings.Of(rig.Springs?.Lower) ?? JointSprings.OfArm(frame.ArmJoint, frame.LowerArm, frame.Column);
        JointSprings? high = JointSprings.Of(rig.Springs?.Upper) ?? JointSprings.OfArm(frame.ArmJoint, frame.UpperArm, frame.Column);
        int[] upward = plan.Beam(frame.Column, atLower, atUpper, -Vector.Deep, new Twist(clear, Cantilever: false),
            start: (lower.Top + stiffUp) * Vector.Up, end: -(upper.Bottom + stiffUp) * Vector.Up, holdStart: low?.Upright, holdEnd: high?.Upright);
        int[] lowerArm = Arm(frame.LowerArm, atLower, underRam, low);
        int[] upperArm = Arm(frame.UpperArm, atUpper, aboveRam, high);

        int[] Arm(RigMember arm, int from, int to, JointSprings? joint) => plan.Beam(arm, from, to, Vector.Up, new Twist(frame.Throat, Cantilever: true),
            start: -(back + stiff * along) * Vector.Deep, holdStart: joint?.Beam);

        double contact = Math.Max(lower.Top, height - upper.Bottom - frame.RamDrop - rig.Cylinder.Stroke);
        var loads = new UnitLoads(plan.Nodes[aboveRam].At, plan.Nodes[underRam].At, new Vector(0, -frame.Throat, contact));
        LoadCase[] cases =
        [
            .. loads.Cases(rig.Loading).Select(pair => new LoadCase(
                pair.Name,
                [new NodalLoad(aboveRam, pair.UpperForce, pair.UpperMoment), new NodalLoad(underRam, pair.LowerForce, pair.LowerMoment)],
                [])),
        ];

        PlanPart[] parts =
        [
            new(frame.Column, upward, clear,
            [
                .. plan.At(upward, lower.Top + up, "above the lower arm", PlanCut.Both, false),
                .. plan.At(upward, lower.Top + clear / 2, "at half height", PlanCut.None, true),
                .. plan.At(upward, lower.Top + clear - up, "below the upper arm", PlanCut.Both, false),
            ]) { Sideways = PlanHold.FreeEnd },
            new(frame.UpperArm, upperArm, frame.Throat, [.. plan.At(upperArm, back + along, at, PlanCut.Openings, true)]) { Sideways = PlanHold.LoadedTip },
            new(frame.LowerArm, lowerArm, frame.Throat, [.. plan.At(lowerArm, back + along, at, PlanCut.Openings, true)]) { Sideways = PlanHold.LoadedTip },
        ];
        PlanJoint[] joints =
        [
            Fixing("upper arm joint", frame.UpperArm, upperArm, height, -Vector.Up), Fixing("lower arm joint", frame.LowerArm, lowerArm, 0, Vector.Up),
        ];

        PlanJoint Fixing(string name, RigMember arm, int[] beams, double z, Vector inner) =>
            new(name, "frame.arm-joint", frame.ArmJoint, arm, frame.Column, beams, plan.Along(beams[0], back + along), new Vector(0, 0, z), -Vector.Deep, Vector.Across, Vector.Up)
            { Inner = inner, Face = new PlanFace((-Vector.Deep).Cross(Vector.Up), -Vector.Deep, -Vector.Deep) };

        double? within = low is { } below && high is { } above ? Math.Max(below.Within, above.Within) : null;
        return new FramePlan(
            plan.Model(new Support(atLower, true, true, true, true, true, true)),
            cases, parts, joints, Upper: aboveRam, Lower: underRam,
            [
                within is { } share
                    ? "Column and arms are taken as beams. Where they cross they are taken as rigid, with springs for what the joint gives and for the dies sinking into the arms. "
                        + $"Against solid models such frames opened within {Readout.Text(share, Dimension.Ratio)} of what is shown."
                    : "No rule is known for how much this joint gives: it is taken as rigid, so the dies will open more than shown, perhaps half as much again; "
                        + "a bar welded to the middle of a box's face bends the face, and opens many times as far.",
                .. along > 0 ? (string[])[Corners.NoteWith(rig.Springs)] : [],
                .. rig.Springs is not null ? (string[])[JointSprings.FromSolids] : [],
                UnitLoads.InWords(rig.Loading),
                .. frame.Horizontal ? (string[])[] : ["Weight is left out: it is small beside the ram force."],
            ])
        {
            Within = within,
            Feet = (atLower, atUpper),
            Pressing = DiePressing.Of(frame.UpperArm.Shape, frame.DieWidth) + DiePressing.Of(frame.LowerArm.Shape, frame.DieWidth),
        };
    }
}
