using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>What the solver found for one case, kept as movements of nodes and forces on first ends; the rest is statics.</summary>
internal sealed class SolvedCase(
    FactoredFrame frame, LoadCase loadCase, double[] movements, double[] firstEnds, double[] reactions, BeamLoads loads)
    : FrameSolution
{
    public override LoadCase Case => loadCase;

    public override Vector Displacement(int node) => Three(movements, CheckNode(node));

    public override Vector Rotation(int node) => Three(movements, CheckNode(node) + 3);

    public override (Vector Force, Vector Moment) Reaction(int node)
    {
        int at = CheckNode(node);
        return (Three(reactions, at), Three(reactions, at + 3));
    }

    public override double Length(int member) => CheckMember(member).Axes.Length;

    public override Actions At(int member, double x)
    {
        x = FrameCheck.Along(x, CheckMember(member).Axes.Length, nameof(x));
        ReadOnlySpan<double> f = firstEnds.AsSpan(member * Unknowns.PerNode, Unknowns.PerNode);
        double N = -f[0], Vy = -f[1], Vz = -f[2];
        double My = -f[4] - x * f[2], Mz = -f[5] + x * f[1];
        for (int i = loads.First(member); i >= 0; i = loads[i].Next)
        {
            ref readonly BeamLoad q = ref loads[i];
            double force = Ramp.Power1(x, q.From) - Ramp.Power1(x, q.To);
            double lever = (Ramp.Power2(x, q.From) - Ramp.Power2(x, q.To)) / 2;
            N -= q.X * force;
            Vy -= q.Y * force;
            Vz -= q.Z * force;
            My -= q.Z * lever;
            Mz += q.Y * lever;
        }
        return new Actions(N, Vy, Vz, -f[3], My, Mz);
    }

    public override Vector DisplacementAlong(int member, double x) => Moved(member, x).Displacement;

    public override Vector RotationAlong(int member, double x) => Moved(member, x).Rotation;

    /// <summary>The beam's own first end is found from its outer ends and springs, then the bending is followed along it.</summary>
    private (Vector Displacement, Vector Rotation) Moved(int member, double x)
    {
        ref readonly Beam beam = ref CheckMember(member);
        MemberAxes axes = beam.Axes;
        double L = axes.Length;
        x = FrameCheck.Along(x, L, nameof(x));
        ReadOnlySpan<double> f = firstEnds.AsSpan(member * Unknowns.PerNode, Unknowns.PerNode);
        (Vector u1, Vector t1) = End(beam.From, beam.ArmFrom, axes);
        (Vector u2, Vector t2) = End(beam.To, beam.ArmTo, axes);
        Actions a = At(member, L);

        (double stretch, (double v, double t) inXY, (double v, double t) inXZ) = Bent(member, beam, f, L);
        double u = beam.Stretch.Start(u1.X, u2.X, f[0], a.N, stretch);
        double twist = beam.Twist.Start(t1.X, t2.X, f[3], a.T, beam.Twist.Along(f[3], L));
        (double v, double tz) = beam.XY.Start((u1.Y, t1.Z), (u2.Y, t2.Z), (f[1], f[5]), (a.Vy, a.Mz), inXY);
        (double w, double ty) = beam.XZ.Start((u1.Z, -t1.Y), (u2.Z, -t2.Y), (f[2], -f[4]), (a.Vz, -a.My), inXZ);

        (stretch, inXY, inXZ) = Bent(member, beam, f, x);
        return (axes.ToGlobal(u + stretch, v + tz * x + inXY.v, w + ty * x + inXZ.v),
            axes.ToGlobal(twist + beam.Twist.Along(f[3], x), -(ty + inXZ.t), tz + inXY.t));
    }

    /// <summary>Stretch and bending at x relative to the beam's first end, x-z with θ = −θy.</summary>
    private (double, (double v, double t), (double v, double t)) Bent(
        int member, in Beam beam, ReadOnlySpan<double> f, double x)
    {
        double u = beam.Stretch.Along(f[0], x);
        (double v, double tz) = beam.XY.Along(f[1], f[5], x);
        (double w, double ty) = beam.XZ.Along(f[2], -f[4], x);
        for (int i = loads.First(member); i >= 0; i = loads[i].Next)
        {
            ref readonly BeamLoad q = ref loads[i];
            u += beam.Stretch.LoadAlong(q.X, q.From, q.To, x);
            (double dv, double dtz) = beam.XY.LoadAlong(q.Y, q.From, q.To, x);
            (double dw, double dty) = beam.XZ.LoadAlong(q.Z, q.From, q.To, x);
            (v, tz, w, ty) = (v + dv, tz + dtz, w + dw, ty + dty);
        }
        return (u, (v, tz), (w, ty));
    }

    /// <summary>Displacement and rotation at the outer end of an arm, own axes.</summary>
    private (Vector u, Vector t) End(int node, Vector arm, in MemberAxes axes)
    {
        Vector t = Three(movements, node * Unknowns.PerNode + 3);
        Vector u = Three(movements, node * Unknowns.PerNode) + t.Cross(arm);
        return (new Vector(u.Dot(axes.X), u.Dot(axes.Y), u.Dot(axes.Z)), new Vector(t.Dot(axes.X), t.Dot(axes.Y), t.Dot(axes.Z)));
    }

    private static Vector Three(double[] values, int at) => new(values[at], values[at + 1], values[at + 2]);

    private int CheckNode(int node) => (uint)node < (uint)frame.Model.Nodes.Count
        ? node * Unknowns.PerNode
        : throw new ArgumentOutOfRangeException(nameof(node), node, $"There are {frame.Model.Nodes.Count} nodes.");

    private ref readonly Beam CheckMember(int member)
    {
        if ((uint)member >= (uint)frame.Beams.Length)
            throw new ArgumentOutOfRangeException(nameof(member), member, $"There are {frame.Beams.Length} members.");
        return ref frame.Beams[member];
    }
}
