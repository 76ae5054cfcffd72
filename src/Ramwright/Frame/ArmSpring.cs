using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>The spring that stands for the joint of an arm and its column, found from what both are made of.</summary>
internal static class ArmSpring
{
    /// <summary>Stiffness against turning in the plane of the frame, N·m/rad; infinity where no rule is known.</summary>
    public static double Of(RigJoint joint, RigMember arm, RigMember column, Working? w = null)
    {
        if (joint is RigPinnedJoint)
            return 0;
        if (joint is RigOnePieceJoint)
            return double.PositiveInfinity;
        if (ColumnOf(column.Shape) is not { } at)
            return double.PositiveInfinity;
        SectionProperties s = arm.Shape.Properties;
        double ratio = s.Height / at.Depth;
        if (ratio is < 0.5 or > 1.5)
            return double.PositiveInfinity;
        return joint is RigSlottedJoint
            ? JointGive.ThroughSlot(at, s.Height, s.A / s.Height, w: w)
            : arm.Shape is ISection i
                ? JointGive.ProfileOnFace(at, i.H, i.Tf, joint is RigWeldedJoint welded ? welded.Weld.Throat : 0, w: w)
                : JointGive.FlatOnFace(at, s.Height, w: w);
    }

    /// <summary>Whether a rule covers the two: otherwise the joint is taken as rigid, and the reader is told.</summary>
    public static bool IsKnown(RigJoint joint, RigMember arm, RigMember column) =>
        joint is RigOnePieceJoint || double.IsFinite(Of(joint, arm, column));

    private static JointColumn? ColumnOf(Shape shape) => shape switch
    {
        ISection i => new JointColumn(i.H, i.Tw, i.Tf, i.R, i.Properties.Avz),
        Pair { Half: ISection i } pair => new JointColumn(i.H, 2 * i.Tw, i.Tf, i.R, pair.Properties.Avz),
        Pair { Half: Channel c } pair => new JointColumn(c.H, 2 * c.Tw, c.Tf, c.R1, pair.Properties.Avz),
        Channel c => new JointColumn(c.H, c.Tw, c.Tf, c.R1, c.Properties.Avz),
        Box b => new JointColumn(b.H, 2 * b.Tw, b.Tf, 0, b.Properties.Avz),
        _ => null,
    };
}
