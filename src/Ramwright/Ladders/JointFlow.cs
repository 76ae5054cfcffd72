using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Ladders;

/// <summary>What the rest of a beam or arm does to its joint, in the plane of the frame, at the face where it enters, for one newton at the ram.</summary>
/// <param name="M">Moment that stretches the beam's inner face, N·m.</param>
/// <param name="V">Force away from the frame's opening, N.</param>
/// <param name="N">Pull along the beam, N.</param>
internal readonly record struct JointFlow(double M, double V, double N)
{
    /// <summary>Takes it from the beams.</summary>
    /// <param name="response">The frame.</param>
    /// <param name="solution">The load case.</param>
    /// <param name="joint">A joint of a closed or open-front frame, not lapped.</param>
    /// <param name="upper">Whether it is the crown's or the upper arm's.</param>
    public static JointFlow Of(FrameResponse response, FrameSolution solution, PlanJoint joint, bool upper)
    {
        JointEnd end = JointEnd.Of(response, solution, joint);
        MemberAxes axes = response.Axes(joint.Numbers[0]);
        bool over = joint.Joint.Fit == BeamFit.Over;
        // resultants are those on a face whose normal is the member's x: what lies beyond it does that to what lies before it
        double sign = joint.X < axes.Length / 2 ? 1 : -1;
        // where the beam lies over, the upright ends here, and the rest of the beam does the opposite
        if (over)
            sign = -sign;
        Vector force = sign * end.Force, moment = sign * end.Moment, outward = (upper ? 1 : -1) * Vector.Up;
        Vector along = over ? joint.Inner : axes.X * (joint.X < axes.Length / 2 ? 1 : -1), at = end.At;
        if (over)
        {
            SectionProperties beam = joint.Onto.Shape.Properties, upright = joint.Beam.Shape.Properties;
            at = joint.Centre + upright.Bottom * along + (upper ? beam.Bottom : beam.Top) * outward;
        }

        Vector there = moment + (end.At - at).Cross(force);
        return new JointFlow(there.Dot(along.Cross(outward)), force.Dot(outward), force.Dot(along));
    }
}
