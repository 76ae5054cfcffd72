using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>Where the welds of gussets run: along the leg in the joint's plane, and along the leg on the beam.</summary>
internal static class GussetWelds
{
    /// <summary>The leg in the joint's plane; it takes its share of what the joint carries.</summary>
    public static IReadOnlyList<WeldSegment> OnFace(PlanJoint joint, RigGusset gusset)
    {
        Vector corner = joint.Centre + Inside(joint) * joint.Inner;
        return Along(joint, gusset, corner, joint.Inner, gusset.InPlane(joint.Joint.Fit), Away(joint));
    }

    /// <summary>The leg on the beam; it hands over to the beam what the other leg takes.</summary>
    public static WeldGroup OnBeam(PlanJoint joint, RigGusset gusset, Vector away)
    {
        Vector corner = joint.Centre + Inside(joint) * joint.Inner;
        return new WeldGroup(Along(joint, gusset, corner, away, gusset.Square(joint.Joint.Fit), joint.Inner));
    }

    /// <summary>From the beam's centroid to the face that the gusset stands on, m.</summary>
    public static double Inside(PlanJoint joint)
    {
        SectionProperties s = joint.Beam.Shape.Properties;
        return joint.Inner.Dot(joint.V) > 0 ? s.Top : s.Bottom;
    }

    /// <summary>Resultant of the stress on some welds of a group, and its moment about a point.</summary>
    public static (Vector Force, Vector Moment) Carried(WeldGroup group, IReadOnlyList<WeldSegment> part, JointEnd end, Vector about)
    {
        Vector force = Vector.Zero, moment = Vector.Zero;
        foreach (WeldSegment weld in part)
        {
            // stress is linear along a weld, its moment a parabola: Simpson's rule is exact
            foreach ((double share, Vector at) in ((double, Vector)[])[(1 / 6.0, weld.From), (2 / 3.0, 0.5 * (weld.From + weld.To)), (1 / 6.0, weld.To)])
            {
                Vector f = share * weld.Area * group.StressAt(end.Force, end.Moment, end.At, at);
                force += f;
                moment += (at - about).Cross(f);
            }
        }

        return (force, moment);
    }

    private static Vector Away(PlanJoint joint) => joint.U.Cross(joint.V);

    private static List<WeldSegment> Along(PlanJoint joint, RigGusset gusset, Vector corner, Vector direction, double leg, Vector climbs)
    {
        double a = gusset.Weld.Throat, t = gusset.Thickness;
        var welds = new List<WeldSegment>();
        foreach (double aside in Corners.Abreast(gusset, joint.Beam, joint.Onto))
        {
            Vector middle = corner + aside * joint.U;
            if (gusset.Weld.Kind == WeldKind.Butt)
            {
                // two halves a third of the plate apart hold a tilt over the plate's thickness as a solid strip does: W = t² l / 6
                foreach (double side in (ReadOnlySpan<double>)[1, -1])
                {
                    Vector half = middle + side * t / 6 * joint.U;
                    welds.Add(WeldSegment.Butt(half, half + leg * direction, t / 2, climbs));
                }

                continue;
            }

            foreach (double side in (ReadOnlySpan<double>)[1, -1])
            {
                // a fillet begins and ends in the open: a throat less at each end
                Vector root = middle + side * t / 2 * joint.U;
                welds.Add(WeldSegment.Fillet(root + a * direction, root + (leg - a) * direction, a, side * joint.U, climbs));
            }
        }

        return welds;
    }
}
