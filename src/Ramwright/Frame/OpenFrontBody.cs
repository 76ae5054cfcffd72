using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>The steel of an open-front frame. The origin lies in the column's front face, at the height of the lower arm's centroid.</summary>
internal static class OpenFrontBody
{
    /// <summary>How far a column runs on past an arm in a slot, as a share of the arm's depth: the slot must not open to the end.</summary>
    private const double PastSlot = 0.5;

    public static FrameBody Of(RigOpenFrontFrame frame)
    {
        SectionProperties column = frame.Column.Shape.Properties, upper = frame.UpperArm.Shape.Properties, lower = frame.LowerArm.Shape.Properties;
        double height = lower.Top + frame.Daylight + frame.RamDrop + upper.Bottom;
        bool slotted = frame.ArmJoint is RigSlottedJoint;
        double past = slotted ? PastSlot : 0;
        double foot = -lower.Bottom - past * lower.Height, head = height + upper.Top + past * upper.Height;
        double root = slotted ? column.Top + column.Bottom : 0;
        Piece[] pieces =
        [
            .. Piece.Of("column", frame.Column, new Vector(0, column.Top, foot), new Vector(0, column.Top, head), -Vector.Deep),
            .. Arm("upper arm", frame.UpperArm, height),
            .. Arm("lower arm", frame.LowerArm, 0),
            .. GussetPlate.Of(frame.ArmJoint, frame.UpperArm, frame.Column, (height - upper.Bottom) * Vector.Up, -Vector.Deep, -Vector.Up),
            .. GussetPlate.Of(frame.ArmJoint, frame.LowerArm, frame.Column, lower.Top * Vector.Up, -Vector.Deep, Vector.Up),
        ];
        return new FrameBody(pieces, new Vector(0, -frame.Throat, lower.Top + frame.Daylight), new Vector(0, -frame.Throat, lower.Top));

        IEnumerable<Piece> Arm(string name, RigMember member, double z) =>
            Piece.Of(name, member, new Vector(0, root, z), new Vector(0, -frame.ArmReach, z), Vector.Up);
    }
}
