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
            RigWeldedJoint => WithGusset(joint, OnFace(joint, plane, weld)),
            // the plate on a bolted end is as large as the end
            _ => WithGusset(joint, WeldAround.Edge(plane, joint.Beam.Shape.CentredOutline, weld.Throat, butt)),
        };
    }

    /// <summary>Length of the beam's edge that a torch reaches, and of the weld that finds steel on both parts, without gussets, m; null where all of the edge does, or the face is not known.</summary>
    public static (double Edge, double OnSteel)? PartOf(PlanJoint joint)
    {
        if (joint.Joint is not RigWeldedJoint { Fit: not BeamFit.Lapped } welded || JointFace.Of(joint, welded.Weld) is not { } face)
            return null;
        var plane = new WeldPlane(joint.Centre, joint.U, joint.V);
        double Length(WeldLanding? on) => WeldAround.Runs(plane, joint.Beam.Shape.CentredOutline, welded.Weld.Throat, welded.Weld.Kind == WeldKind.Butt, on).Sum(s => s.Length);
        (double edge, double onSteel) = (Length(null), Length(face));
        return onSteel < edge * (1 - 1e-6) ? (edge, onSteel) : null;
    }

    /// <summary>Only what lies on steel is welded.</summary>
    /// <exception cref="PressFaultsException">Nothing does.</exception>
    private static WeldGroup OnFace(PlanJoint joint, WeldPlane plane, RigWeld weld)
    {
        List<WeldSegment> runs = WeldAround.Runs(plane, joint.Beam.Shape.CentredOutline, weld.Throat, weld.Kind == WeldKind.Butt, JointFace.Of(joint, weld));
        return runs.Count > 0 ? new WeldGroup(runs) : throw new PressFaultsException([JointFace.Missed(joint, weld)]);
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
