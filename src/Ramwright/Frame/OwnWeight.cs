using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>A press that lies on its back is bent by its own steel: one more load case, the work centred and the weight across.</summary>
/// <remarks>
/// The answer is in proportion to the ram force, weight is not: it is taken as it stands at the wanted force. The press lies on a
/// foot under each end, and the feet carry what hangs between them; cylinder and work are taken to have feet of their own.
/// </remarks>
internal static class OwnWeight
{
    private const double g = 9.81;

    /// <summary>Adds the case where the press lies.</summary>
    public static FramePlan On(FramePlan plan, Rig rig)
    {
        if (!rig.Frame.Horizontal)
            return plan;
        LoadCase centred = plan.Cases[0];
        var onMembers = new List<MemberLoad>(centred.OnMembers);
        Vector down = Vector.Deep;
        (int lowerFoot, int upperFoot) = plan.Feet ?? (plan.Lower, plan.Upper);
        Vector lower = plan.Model.Nodes[lowerFoot].At, upper = plan.Model.Nodes[upperFoot].At;
        double weight = 0, atUpper = 0;
        var onNodes = new List<NodalLoad>(centred.OnNodes);

        // the lever between the two feet shares it
        void Weigh(double w, double z)
        {
            weight += w;
            atUpper += w * (z - lower.Z) / (upper.Z - lower.Z);
        }

        void OnNode(int node, double w)
        {
            Weigh(w, plan.Model.Nodes[node].At.Z);
            onNodes.Add(new NodalLoad(node, w / rig.Wanted * down));
        }

        for (int i = 0; i < plan.Model.Members.Count; i++)
        {
            MemberAxes axes = MemberAxes.Of(plan.Model, i);
            FrameMember member = plan.Model.Members[i];
            double perMetre = Steel.Density * g * member.Section.A;
            Weigh(perMetre * axes.Length, axes.At(axes.Length / 2).Z);
            if (member.InJoints > 0)            // what lies within the joints hangs on the nodes
            {
                OnNode(member.From, perMetre * member.ArmFrom.Dot(axes.X));
                OnNode(member.To, -perMetre * member.ArmTo.Dot(axes.X));
            }

            onMembers.Add(new MemberLoad(i, perMetre / rig.Wanted * down, 0, axes.Length));
        }

        NodalLoad[] feet =
        [
            new(upperFoot, -atUpper / rig.Wanted * down),
            new(lowerFoot, -(weight - atUpper) / rig.Wanted * down),
        ];
        var across = new LoadCase("own weight across", [.. onNodes, .. feet], onMembers);
        return plan with
        {
            Cases = [.. plan.Cases, across],
            Notes =
            [
                .. plan.Notes,
                new Remark("The press lies on its back on a foot under each end. Its frame weighs about {0}, which bends it across at the wanted force; "
                    + "cylinder and work are taken to stand on feet of their own.", Remark.Of(weight / g, Dimension.Mass)),
            ],
        };
    }
}
