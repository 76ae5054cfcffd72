using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Ladders;

/// <summary>What a joint passes on for one newton at the ram, global axes.</summary>
/// <param name="Force">N per newton.</param>
/// <param name="Moment">N·m per newton, about <paramref name="At"/>.</param>
/// <param name="At">The point on the beam's axis where both act, m.</param>
internal readonly record struct JointEnd(Vector Force, Vector Moment, Vector At)
{
    /// <summary>Takes the actions of the beams at the joint, all strands together.</summary>
    public static JointEnd Of(FrameResponse response, FrameSolution solution, PlanJoint joint)
    {
        Vector force = Vector.Zero, moment = Vector.Zero;
        Vector at = response.Axes(joint.Numbers[0]).At(joint.X);
        foreach (int number in joint.Numbers)
        {
            MemberAxes axes = response.Axes(number);
            Actions a = solution.At(number, joint.X);
            Vector f = axes.ToGlobal(a.N, a.Vy, a.Vz);
            force += f;
            moment += axes.ToGlobal(a.T, a.My, a.Mz) + (axes.At(joint.X) - at).Cross(f);
        }

        return new JointEnd(force, moment, at);
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
