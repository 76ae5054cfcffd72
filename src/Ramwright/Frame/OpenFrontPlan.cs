using Ramwright.Geometry;
using Ramwright.Presses;
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
        Node[] nodes =
        [
            new("column, at the lower arm", new Vector(0, back, 0)),
            new("column, at the upper arm", new Vector(0, back, height)),
            new("lower arm, under the ram", new Vector(0, -frame.Throat, 0)),
            new("upper arm, above the ram", new Vector(0, -frame.Throat, height)),
        ];
        Vector toFace = -back * Vector.Deep;
        FrameMember[] beams =
        [
            new()
            {
                Part = frame.Column.Part, From = 0, To = 1, Section = column, Up = -Vector.Deep,
                ArmFrom = lower.Top * Vector.Up, ArmTo = -upper.Bottom * Vector.Up,
            },
            Arm(frame.LowerArm, 0, 2),
            Arm(frame.UpperArm, 1, 3),
        ];

        FrameMember Arm(RigMember arm, int from, int to) => new()
        {
            Part = arm.Part, From = from, To = to, Section = arm.Shape.Properties, Up = Vector.Up, ArmFrom = toFace,
            FixityFrom = EndFixity.Rigid with { My = ArmSpring.Of(frame.ArmJoint, arm, frame.Column) },
        };

        double contact = Math.Max(lower.Top, height - upper.Bottom - frame.RamDrop - rig.Cylinder.Stroke);
        var loads = new UnitLoads(nodes[3].At, nodes[2].At, new Vector(0, -frame.Throat, contact));
        var cases = loads.Cases(rig.Loading)
            .Select(pair => new LoadCase(
                pair.Name,
                [new NodalLoad(3, pair.UpperForce, pair.UpperMoment), new NodalLoad(2, pair.LowerForce, pair.LowerMoment)],
                []))
            .ToArray();

        double clear = height - lower.Top - upper.Bottom;
        PlanPart[] parts =
        [
            new(frame.Column, [0], height,
            [
                new(0, 0, "above the lower arm", PlanCut.Both), new(0, clear / 2, "at half height", PlanCut.None),
                new(0, clear, "below the upper arm", PlanCut.Both),
            ]),
            new(frame.UpperArm, [2], frame.Throat, [new(2, 0, "at the column's face", PlanCut.Openings)]),
            new(frame.LowerArm, [1], frame.Throat, [new(1, 0, "at the column's face", PlanCut.Openings)]),
        ];
        bool rigid = !ArmSpring.IsKnown(frame.ArmJoint, frame.UpperArm, frame.Column) || !ArmSpring.IsKnown(frame.ArmJoint, frame.LowerArm, frame.Column);
        PlanJoint[] joints =
        [
            Fixing("upper arm joint", frame.UpperArm, 2, height), Fixing("lower arm joint", frame.LowerArm, 1, 0),
        ];

        PlanJoint Fixing(string name, RigMember arm, int beam, double z) =>
            new(name, "frame.arm-joint", frame.ArmJoint, arm, frame.Column, beam, 0, new Vector(0, 0, z), -Vector.Deep, Vector.Across, Vector.Up);

        return new FramePlan(
            new FrameModel(nodes, beams, [new Support(0, true, true, true, true, true, true)]),
            cases, parts, joints, Upper: 3, Lower: 2,
            ["Column and arms are taken as beams. Where they cross they are taken as rigid, and the arm turns against the column on a "
                + "spring that stands for the joint's own give; expect the opening to be right to a fifth or so.",
             .. rigid ? (string[])["No rule is known for the give of this joint: it is taken as rigid, so the dies will open more than shown, perhaps half as much again."] : [],
             "Weight is left out: it is small beside the ram force."]);
    }
}
