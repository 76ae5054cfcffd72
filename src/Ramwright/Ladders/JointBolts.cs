using Ramwright.Presses;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>How the bolts of a joint stand: in two columns where four or more are even in number, else in one along the upright.</summary>
internal static class JointBolts
{
    public static BoltGroup Of(RigBoltedJoint joint)
    {
        (int across, int up) = joint.Columns;
        return BoltGroup.Grid(new Bolt(joint.Thread, joint.Class), across, up, joint.Pitch, joint.Gauge, joint.ShearPlanes);
    }

    public static BoltedPlate Plate(RigBoltedJoint joint, BoltGroup group, double fu)
    {
        (int across, int up) = joint.Columns;
        return new BoltedPlate(
            joint.Plate, fu, group.Bolt.UsualHole, joint.Edge, joint.Edge, up > 1 ? joint.Gauge : null, across > 1 ? joint.Pitch : null);
    }
}
