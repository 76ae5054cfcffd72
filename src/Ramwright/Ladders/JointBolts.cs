using Ramwright.Presses;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>How the bolts of a joint stand: in two columns where four or more are even in number, else in one along the upright.</summary>
internal static class JointBolts
{
    public static BoltGroup Of(RigBoltedJoint joint)
    {
        (int across, int up) = joint.Columns;
        return BoltGroup.Grid(new Bolt(joint.Thread, Counted(joint)), across, up, joint.Pitch, joint.Gauge, joint.ShearPlanes);
    }

    public static BoltedPlate Plate(RigBoltedJoint joint, BoltGroup group, double fu)
    {
        (int across, int up) = joint.Columns;
        return new BoltedPlate(
            joint.Plate, fu, group.Bolt.UsualHole, joint.Edge, joint.Edge, up > 1 ? joint.Gauge : null, across > 1 ? joint.Pitch : null);
    }

    /// <summary>EN 1993-1-8 knows no class above 10.9; a harder bolt is counted as 10.9.</summary>
    private static string Counted(RigBoltedJoint joint) => BoltStrength.Covers(joint.Class.Name) ? joint.Class.Name : "10.9";
}
