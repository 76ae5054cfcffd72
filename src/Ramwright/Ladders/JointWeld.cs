using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>Where the welds of a joint run.</summary>
internal static class JointWeld
{
    public static WeldGroup Of(PlanJoint joint, RigWeld weld)
    {
        bool butt = weld.Kind == WeldKind.Butt;
        var plane = new WeldPlane(joint.Centre, joint.U, joint.V);
        return joint.Joint switch
        {
            RigSlottedJoint => BothFaces(joint, weld, butt),
            { Fit: BeamFit.Lapped } => Lap(joint, weld),
            _ => WithGusset(joint, WeldAround.Edge(plane, joint.Beam.Shape.CentredOutline, weld.Throat, butt)),
        };
    }

    /// <summary>Beam and gusset stand on one face: their welds share what the joint carries.</summary>
    private static WeldGroup WithGusset(PlanJoint joint, WeldGroup beam) =>
        joint.Joint.Gusset is { } gusset ? new WeldGroup([.. beam.Segments, .. GussetWelds.OnFace(joint, gusset)]) : beam;

    /// <summary>A bar through a slot is welded where it enters and where it leaves the column.</summary>
    private static WeldGroup BothFaces(PlanJoint joint, RigWeld weld, bool butt)
    {
        double depth = joint.Onto.Shape.Properties.Height;
        Outline edge = joint.Beam.Shape.CentredOutline;
        var front = new WeldPlane(joint.Centre, joint.U, joint.V);
        // seen from behind, left and right change places, and so does a section's y
        var back = new WeldPlane(joint.Centre - depth * joint.Normal, -joint.U, joint.V);
        return new WeldGroup(
        [
            .. WeldAround.Edge(front, edge, weld.Throat, butt).Segments,
            .. WeldAround.Edge(back, edge.Mirrored(), weld.Throat, butt).Segments,
        ]);
    }

    /// <summary>Fillets round the lap on both faces of the upright.</summary>
    private static WeldGroup Lap(PlanJoint joint, RigWeld weld)
    {
        double wide = joint.Onto.Shape.Properties.Height, high = joint.Beam.Shape.Properties.Height;
        double half = joint.Onto.Shape.Properties.Width / 2;
        var front = new WeldPlane(joint.Centre + half * joint.Normal, joint.U, joint.V);
        var back = new WeldPlane(joint.Centre - half * joint.Normal, -joint.U, joint.V);
        return new WeldGroup(
        [
            .. WeldOutline.Rectangle(front, wide, high, weld.Throat).Segments,
            .. WeldOutline.Rectangle(back, wide, high, weld.Throat).Segments,
        ]);
    }
}
