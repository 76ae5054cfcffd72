using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>Asks a solution whether everything in it balances, from its published results alone.</summary>
public static class Equilibrium
{
    /// <summary>The worst imbalance of any node and of the frame as a whole, as a share of the loads.</summary>
    /// <param name="model">The frame that was solved.</param>
    /// <param name="solution">What was found.</param>
    /// <returns>
    /// Largest left-over force over the sum of all forces, or left-over moment over the sum of all forces times the
    /// frame's extent plus the sum of all moments, whichever is greater; zero for a frame without loads.
    /// </returns>
    public static double Residual(FrameModel model, FrameSolution solution)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(solution);
        int nodes = model.Nodes.Count;
        var F = new Vector[nodes];
        var M = new Vector[nodes];
        Vector wholeF = default, wholeM = default;         // about the first node
        Vector origin = model.Nodes[0].At;
        double forces = 0, moments = 0, extent = 0;

        foreach (NodalLoad p in solution.Case.OnNodes)
        {
            F[p.Node] += p.Force;
            M[p.Node] += p.Moment;
            wholeF += p.Force;
            wholeM += p.Moment + (model.Nodes[p.Node].At - origin).Cross(p.Force);
            forces += p.Force.Length;
            moments += p.Moment.Length;
        }
        foreach (MemberLoad q in solution.Case.OnMembers)
        {
            MemberAxes axes = MemberAxes.Of(model, q.Member);
            Vector Q = q.PerMetre * (q.To - q.From);
            wholeF += Q;
            wholeM += (axes.At((q.From + q.To) / 2) - origin).Cross(Q);
            forces += Q.Length;
        }
        for (int i = 0; i < nodes; i++)
        {
            (Vector R, Vector C) = solution.Reaction(i);
            F[i] += R;
            M[i] += C;
            wholeF += R;
            wholeM += C + (model.Nodes[i].At - origin).Cross(R);
            extent = Math.Max(extent, (model.Nodes[i].At - origin).Length);
        }
        for (int i = 0; i < model.Members.Count; i++)
        {
            FrameMember m = model.Members[i];
            MemberAxes axes = MemberAxes.Of(model, i);
            extent = Math.Max(extent, Math.Max(m.ArmFrom.Length, m.ArmTo.Length) + axes.Length);
            // The face at the first end passes its actions to the node as they are; at the second end, reversed.
            Pass(axes, solution.At(i, 0), m.ArmFrom, 1, ref F[m.From], ref M[m.From]);
            Pass(axes, solution.At(i, axes.Length), m.ArmTo, -1, ref F[m.To], ref M[m.To]);
        }
        double worstF = wholeF.Length, worstM = wholeM.Length;
        for (int i = 0; i < nodes; i++)
        {
            worstF = Math.Max(worstF, F[i].Length);
            worstM = Math.Max(worstM, M[i].Length);
        }
        double turning = forces * extent + moments;
        if (turning == 0)
            return 0;
        return Math.Max(worstF * extent, worstM) / turning;
    }

    private static void Pass(in MemberAxes axes, Actions a, Vector arm, double sign, ref Vector F, ref Vector M)
    {
        Vector force = sign * axes.ToGlobal(a.N, a.Vy, a.Vz);
        F += force;
        M += sign * axes.ToGlobal(a.T, a.My, a.Mz) + arm.Cross(force);
    }
}
