using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Proving;

/// <summary>One thing that may be otherwise than the press file says, by how much as a factor.</summary>
/// <param name="Name">What it is: <c>crown joint</c>.</param>
/// <param name="Says">What a factor below one would mean.</param>
/// <param name="Look">Where to look.</param>
/// <param name="Least">The least factor that makes sense.</param>
/// <param name="Usual">How far such a thing is usually off, in natural logarithms: a wide one needs little evidence.</param>
/// <param name="On">The frame with the thing changed by a factor.</param>
public sealed record ModelChange(string Name, string Says, string Look, double Least, double Usual, Func<double, FrameModel> On)
{
    /// <summary>Everything that may make a frame softer than its model.</summary>
    /// <param name="response">The frame.</param>
    public static IReadOnlyList<ModelChange> Of(FrameResponse response)
    {
        ArgumentNullException.ThrowIfNull(response);
        FramePlan plan = response.Plan;
        var changes = new List<ModelChange>();
        foreach (IGrouping<string, PlanJoint> joints in plan.Joints.GroupBy(j => j.Key))
        {
            PlanJoint[] each = [.. joints];
            (string what, string look) = Words(each[0].Joint);
            string name = Bare(each[0].Name);
            changes.Add(new ModelChange(name, what, look.Replace("JOINT", name, StringComparison.Ordinal), 0.003, 1.5, f => Softened(plan, each, f)));
        }

        foreach (PlanPart part in plan.Parts)
        {
            changes.Add(new ModelChange($"section of the {part.Member.Part}", $"the {part.Member.Part} is lighter than said",
                $"measure depth, flange and web of the {part.Member.Part}; look for slots and holes that the file does not have", 0.3, 0.35, f => Scaled(plan, m => m.Part == part.Member.Part, f)));
        }

        if (plan.Rods.Count > 0)
        {
            changes.Add(new ModelChange("tie rods", plan.Rods[0].Closed ? "the tie rods have lost their preload, or are thinner than said" : "the tie rods are thinner or longer than said",
                "nuts run up to their torque again, threads, washers sunk into the plate; measure the rods", 0.4, 0.6, f => Scaled(plan, m => m.Part == "tie rod", f)));
        }

        return changes;
    }

    private static string Bare(string joint) => joint.Split(',')[0];

    private static (string Says, string Look) Words(RigJoint joint) => joint switch
    {
        RigBoltedJoint => ("the bolts slip, or have lost their preload", "bolts of the JOINT: torque each, look for bright rubbed marks at the washers and for holes drilled too large"),
        RigPinnedJoint => ("the pins have play", "pins and holes of the JOINT: wear, play"),
        RigOnePieceJoint => ("the corner gives more than said", "inner corner of the JOINT: a crack"),
        _ => ("a weld is missing, cracked or smaller than said", "welds of the JOINT, all round and on the far side: a run left out, a crack in the toe, lack of fusion"),
    };

    /// <summary>
    /// The springs at the ends of a joint, softened in turning, along and across: a joint that slips gives in all of these. What is put in series with the joint as it is
    /// is measured by the stiffness of the fixed end itself over its own depth.
    /// </summary>
    private static FrameModel Softened(FramePlan plan, PlanJoint[] joints, double factor)
    {
        if (factor >= 1)
            return plan.Model;
        var members = plan.Model.Members.ToArray();
        double left = factor / (1 - factor);    // at factor one there is nothing in the way
        foreach (PlanJoint joint in joints)
        {
            foreach (int beam in joint.Numbers)
            {
                FrameMember m = members[beam];
                double length = (plan.Model.Nodes[m.To].At + m.ArmTo - plan.Model.Nodes[m.From].At - m.ArmFrom).Length, depth = Math.Max(joint.Beam.Shape.Properties.Height, 1e-3);
                bool first = joint.X < length / 2;
                EndFixity hold = first ? m.FixityFrom : m.FixityTo;
                double shear = double.IsInfinity(m.Section.Asz) ? m.Section.A : m.Section.Asz;
                hold = hold with
                {
                    My = Series(hold.My, left * m.E * m.Section.Iy / depth),
                    N = Series(hold.N, left * m.E * m.Section.A / depth),
                    Vz = Series(hold.Vz, left * m.G * shear / depth),
                };
                members[beam] = first ? m with { FixityFrom = hold } : m with { FixityTo = hold };
            }
        }

        return plan.Model with { Members = members };
    }

    private static double Series(double a, double b) => double.IsInfinity(a) ? b : a == 0 ? 0 : 1 / (1 / a + 1 / b);

    /// <summary>The beams of one part with all their stiffness multiplied.</summary>
    private static FrameModel Scaled(FramePlan plan, Func<FrameMember, bool> which, double factor) =>
        plan.Model with { Members = [.. plan.Model.Members.Select(m => which(m) ? m with { E = m.E * factor, G = m.G * factor } : m)] };
}
