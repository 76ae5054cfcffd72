using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Ladders;

/// <summary>What a joint passes on for one newton at the ram, global axes.</summary>
/// <param name="Force">N per newton.</param>
/// <param name="Moment">N·m per newton, about <paramref name="At"/>.</param>
/// <param name="At">The point on the beam's axis where both act, m.</param>
internal readonly record struct JointEnd(Vector Force, Vector Moment, Vector At)
{
    /// <summary>Takes the actions of the beam at the joint.</summary>
    public static JointEnd Of(FrameResponse response, FrameSolution solution, PlanJoint joint)
    {
        MemberAxes axes = MemberAxes.Of(response.Plan.Model, joint.Number);
        Actions a = solution.At(joint.Number, joint.X);
        return new JointEnd(axes.ToGlobal(a.N, a.Vy, a.Vz), axes.ToGlobal(a.T, a.My, a.Mz), axes.At(joint.X));
    }

    /// <summary>The same in the joint's own plane, about its centre: x along the normal.</summary>
    public Actions In(PlanJoint joint)
    {
        Vector moment = Moment + (At - joint.Centre).Cross(Force);
        return new Actions(
            Force.Dot(joint.Normal), Force.Dot(joint.U), Force.Dot(joint.V),
            moment.Dot(joint.Normal), moment.Dot(joint.U), moment.Dot(joint.V));
    }
}
