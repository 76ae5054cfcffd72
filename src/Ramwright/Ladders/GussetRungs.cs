using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Gussets of welded corners: the plate itself, and the weld of its leg on the beam. The leg in the joint's plane is part of the joint's own weld.</summary>
internal static class GussetRungs
{
    private static readonly Citation Share = Citation.Mechanics("sum of the stress on the welds of the gusset's other leg, all welds of the joint as one group");

    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        PartialFactors factors = Factoring.Of(rig);
        JointRungs.Repeated(response, (name, joints) =>
        {
            if (joints[0].Joint is not RigWeldedJoint { Gusset: { } gusset } welded)
                return;
            Plate(rungs, rig, response, joints, name, gusset, factors);
            Weld(rungs, rig, response, joints, name, welded, gusset, factors);
        });
    }

    private static void Plate(List<Rung> rungs, Rig rig, FrameResponse response, PlanJoint[] joints, string name, RigGusset gusset, PartialFactors factors)
    {
        PlanJoint joint = joints[0];
        SectionProperties s = joint.Beam.Shape.Properties;
        double inside = GussetWelds.Inside(joint);
        var corner = new GussetedCorner(
            s.A, s.Iy, inside, s.Height - inside, gusset.InPlane(joint.Joint.Fit), gusset.Square(joint.Joint.Fit), gusset.Count * gusset.Thickness);
        Worst.Joint(response, joints, (i, end, w) =>
        {
            PlanJoint here = joints[i];
            Vector moment = end.Moment + (end.At - here.Centre).Cross(end.Force);
            if (w is not null)
            {
                double shorter = Math.Min(gusset.LegAlong, gusset.LegUp);
                w.Note($"A triangular plate whose shorter leg is up to {RigGusset.MostSlender(gusset.Fy):0.#} times its thickness yields before it buckles; here it is {shorter / gusset.Thickness:0.#} times.");
                w.Step("λ_g", "most that the shorter leg may be over the thickness", "250 √(6894757 / f_yp)", RigGusset.MostSlender(gusset.Fy), Dimension.Number,
                    GussetedCorner.SlenderSource, ("f_yp", gusset.Fy, Dimension.Stress));
            }

            return corner.Yields(end.Force.Dot(here.Normal), moment.Cross(here.Inner).Dot(here.Normal), gusset.Fy, joint.Beam.Fy, factors, w);
        })?.Into(rungs, new Words(Rung.IdOf(name) + "-gusset", $"gusset of the {name}", "yields along its edge, or the beam beside it", "yields along its edge, or the beam beside it"),
            RungGroup.Joints, Factoring.Load(rig), GussetedCorner.Source);
    }

    private static void Weld(
        List<Rung> rungs, Rig rig, FrameResponse response, PlanJoint[] joints, string name, RigWeldedJoint welded, RigGusset gusset, PartialFactors factors)
    {
        (double fu, double betaW, double fy) = JointRungs.Weaker(joints[0]);
        bool butt = gusset.Weld.Kind == WeldKind.Butt;
        WeldGroup[] groups = [.. joints.Select(j => JointWeld.Of(j, welded.Weld))];
        WeldGroup[] legs = [.. joints.Select(j => GussetWelds.OnBeam(j, gusset, Away(response, j)))];
        Worst.Joint(response, joints, (i, end, w) =>
        {
            Vector at = legs[i].Centroid;
            (Vector force, Vector moment) = GussetWelds.Carried(groups[i], GussetWelds.OnFace(joints[i], gusset), end, at);
            w?.Take("F_g", "what the gusset takes of the joint's force, per newton", force.Length, Dimension.Force, Share);
            w?.Take("M_g", "its moment about the weld on the beam", moment.Length, Dimension.Moment, Share);
            return butt ? ButtWeld.Yield(legs[i], force, moment, at, fy, factors, w) : FilletWeld.Directional(legs[i], force, moment, at, fu, betaW, factors, w);
        })?.Into(rungs, new Words(Rung.IdOf(name) + "-gusset-weld", $"weld of the gusset of the {name}", $"tears from the {joints[0].Beam.Part}", $"tears from the {joints[0].Beam.Part}"),
            RungGroup.Joints, butt ? Factoring.Load(rig) : Factoring.Break(rig), butt ? ButtWeld.Source : FilletWeld.DirectionalSource);
    }

    /// <summary>From the joint's face into the beam.</summary>
    private static Vector Away(FrameResponse response, PlanJoint joint)
    {
        Vector to = response.Axes(joint.Numbers[0]).At(joint.X) - joint.Centre;
        return Math.Sign(to.Dot(joint.Normal)) * joint.Normal;
    }
}
