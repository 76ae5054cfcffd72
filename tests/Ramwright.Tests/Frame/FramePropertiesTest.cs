using CsCheck;
using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Tests.Frame;

/// <summary>What must hold of every frame, whatever its shape.</summary>
public class FramePropertiesTest
{
    private const int Frames = 300;

    private static FrameSolution Solve(FrameModel model, LoadCase c) => FrameSolver.Solve(model, [c])[0];

    private static void Sample(Action<RandomFrame> holds) =>
        RandomFrame.Gen.Sample(f => { holds(f); return true; }, iter: Frames, threads: 1);

    /// <summary>Largest difference of node movements, as a share of the largest movement; rotations count per metre.</summary>
    private static double Apart(FrameModel model, FrameSolution a, Func<int, (Vector, Vector)> b)
    {
        double apart = 0, size = 0;
        for (int i = 0; i < model.Nodes.Count; i++)
        {
            (Vector u, Vector t) = b(i);
            apart = Math.Max(apart, Math.Max((a.Displacement(i) - u).Length, (a.Rotation(i) - t).Length));
            size = Math.Max(size, Math.Max(u.Length, t.Length));
        }
        return apart / Math.Max(size, 1e-12);
    }

    private static double Apart(Actions a, Actions b) =>
        Math.Abs(a.N - b.N) + Math.Abs(a.Vy - b.Vy) + Math.Abs(a.Vz - b.Vz) + Math.Abs(a.T - b.T) + Math.Abs(a.My - b.My) + Math.Abs(a.Mz - b.Mz);

    [Fact]
    public void EverythingBalances() => Sample(f =>
    {
        foreach (FrameSolution s in FrameSolver.Solve(f.Model, [f.First, f.Second]))
            Near.Absolute(0, Equilibrium.Residual(f.Model, s), 1e-9, "left over, share of the loads");
    });

    [Fact]
    public void WorkOfOneLoadingOnTheOtherIsMutual() => Sample(f =>
    {
        FrameSolution a = Solve(f.Model, f.First), b = Solve(f.Model, f.Second);

        double ab = Work(a.Case, b), ba = Work(b.Case, a);
        double size = Math.Sqrt(Work(a.Case, a) * Work(b.Case, b));
        Near.Absolute(0, (ab - ba) / size, 1e-9, "Maxwell and Betti");
    });

    /// <summary>Work of a case's loads on a solution's movements. Along members by Gauss, exact for the quartics between load ends.</summary>
    private static double Work(LoadCase loads, FrameSolution s)
    {
        double work = 0;
        foreach (NodalLoad p in loads.OnNodes)
            work += p.Force.Dot(s.Displacement(p.Node)) + p.Moment.Dot(s.Rotation(p.Node));
        double g = Math.Sqrt(0.6);
        foreach (MemberLoad q in loads.OnMembers)
        {
            var breaks = new SortedSet<double> { q.From, q.To };
            foreach (MemberLoad other in s.Case.OnMembers)
                if (other.Member == q.Member)
                    breaks.UnionWith(new[] { other.From, other.To }.Where(x => x > q.From && x < q.To));
            double[] x = [.. breaks];
            for (int i = 0; i + 1 < x.Length; i++)
            {
                double mid = (x[i] + x[i + 1]) / 2, half = (x[i + 1] - x[i]) / 2;
                Vector u = 5.0 / 9 * (s.DisplacementAlong(q.Member, mid - g * half) + s.DisplacementAlong(q.Member, mid + g * half))
                    + 8.0 / 9 * s.DisplacementAlong(q.Member, mid);
                work += half * q.PerMetre.Dot(u);
            }
        }
        return work;
    }

    [Fact]
    public void LoadsAddAndScale() => Sample(f =>
    {
        const double s = -2.75;
        var both = new LoadCase("both",
            [.. f.First.OnNodes, .. f.Second.OnNodes.Select(p => p with { Force = s * p.Force, Moment = s * p.Moment })],
            [.. f.First.OnMembers, .. f.Second.OnMembers.Select(q => q with { PerMetre = s * q.PerMetre })]);

        FrameSolution a = Solve(f.Model, f.First), b = Solve(f.Model, f.Second), sum = Solve(f.Model, both);

        Near.Absolute(0, Apart(f.Model, sum, i => (a.Displacement(i) + s * b.Displacement(i), a.Rotation(i) + s * b.Rotation(i))), 1e-9);
    });

    [Fact]
    public void AMirroredFrameMovesMirrored() => Sample(f =>
    {
        static Vector Polar(Vector v) => v with { X = -v.X };
        static Vector Axial(Vector v) => new(v.X, -v.Y, -v.Z);
        RandomFrame g = Map(f, Polar, Axial, s => s);
        g = g with { Model = g.Model with { Supports = f.Model.Supports } };

        FrameSolution a = Solve(f.Model, f.First), b = Solve(g.Model, g.First);

        Near.Absolute(0, Apart(g.Model, b, i => (Polar(a.Displacement(i)), Axial(a.Rotation(i)))), 1e-9);
        Actions expected = a.At(0, 0.1), computed = b.At(0, 0.1);
        Near.Absolute(0, Apart(new(expected.N, -expected.Vy, expected.Vz, -expected.T, expected.My, -expected.Mz), computed), 1e-4);
    });

    [Fact]
    public void ATurnedFrameMovesTurned() => Sample(f =>
    {
        var r = new Random(f.Model.Members.Count);
        Vector x = new Vector(r.NextDouble() - 0.5, r.NextDouble() - 0.5, r.NextDouble() + 0.1).Unit;
        Vector y = x.Cross(new Vector(0.3, -0.8, 0.4)).Unit, z = x.Cross(y);
        Vector Turn(Vector v) => v.X * x + v.Y * y + v.Z * z;
        // Supports hold along the axes, so only the full one can be turned.
        RandomFrame clamped = f with { Model = f.Model with { Supports = [f.Model.Supports[0]] } };
        RandomFrame g = Map(clamped, Turn, Turn, s => s);

        FrameSolution a = Solve(clamped.Model, f.First), b = Solve(g.Model, g.First);

        Near.Absolute(0, Apart(g.Model, b, i => (Turn(a.Displacement(i)), Turn(a.Rotation(i)))), 1e-8);
        double L = a.Length(0);
        Near.Absolute(0, (Turn(a.DisplacementAlong(0, 0.3 * L)) - b.DisplacementAlong(0, 0.3 * L)).Length, 1e-8);
        Near.Absolute(0, Apart(a.At(0, 0.3 * L), b.At(0, 0.3 * L)), 1e-3);
    });

    [Fact]
    public void NumberingDoesNotMatter() => Sample(f =>
    {
        int n = f.Model.Nodes.Count;
        int[] to = Enumerable.Range(0, n).ToArray();
        new Random(n + f.Model.Members.Count).Shuffle(to);
        var nodes = new Node[n];
        for (int i = 0; i < n; i++)
            nodes[to[i]] = f.Model.Nodes[i];
        var model = new FrameModel(nodes,
            [.. f.Model.Members.Select(m => m with { From = to[m.From], To = to[m.To] })],
            [.. f.Model.Supports.Select(s => s with { Node = to[s.Node] })]);
        var load = f.First with { OnNodes = [.. f.First.OnNodes.Select(p => p with { Node = to[p.Node] })] };

        FrameSolution a = Solve(f.Model, f.First), b = Solve(model, load);

        Near.Absolute(0, Apart(f.Model, a, i => (b.Displacement(to[i]), b.Rotation(to[i]))), 1e-8);
    });

    [Fact]
    public void AMemberTurnedEndForEndIsTheSame() => Sample(f =>
    {
        int last = f.Model.Members.Count - 1;
        double L = MemberAxes.Of(f.Model, last).Length;
        FrameModel model = f.Model with
        {
            Members = [.. f.Model.Members.Take(last), f.Model.Members[last] with
            {
                From = f.Model.Members[last].To, To = f.Model.Members[last].From,
                ArmFrom = f.Model.Members[last].ArmTo, ArmTo = f.Model.Members[last].ArmFrom,
                FixityFrom = f.Model.Members[last].FixityTo, FixityTo = f.Model.Members[last].FixityFrom,
            }],
        };
        var load = f.First with
        {
            OnMembers = [.. f.First.OnMembers.Select(q => q.Member == last ? q with { From = L - q.To, To = L - q.From } : q)],
        };

        FrameSolution a = Solve(f.Model, f.First), b = Solve(model, load);

        Near.Absolute(0, Apart(f.Model, a, i => (b.Displacement(i), b.Rotation(i))), 1e-8);
        // Axes x and y turn round: the far face's forces reverse, then x and y do.
        Actions p = a.At(last, 0.3 * L), q = b.At(last, 0.7 * L);
        Near.Absolute(0, Apart(p, new Actions(q.N, q.Vy, -q.Vz, q.T, q.My, -q.Mz)), 1e-3);
        Near.Absolute(0, (a.DisplacementAlong(last, 0.3 * L) - b.DisplacementAlong(last, 0.7 * L)).Length, 1e-8);
    });

    [Fact]
    public void AMemberMayBeSplit() => Sample(f =>
    {
        // The first member becomes two, with a node between them on its beam.
        const double share = 0.37;
        FrameMember m = f.Model.Members[0];
        MemberAxes axes = MemberAxes.Of(f.Model, 0);
        double cut = share * axes.Length;
        int node = f.Model.Nodes.Count, second = f.Model.Members.Count;
        var model = new FrameModel(
            [.. f.Model.Nodes, new Node("cut", axes.At(cut))],
            [m with { To = node, ArmTo = default, FixityTo = EndFixity.Rigid }, .. f.Model.Members.Skip(1),
                m with { From = node, ArmFrom = default, FixityFrom = EndFixity.Rigid }],
            f.Model.Supports);
        var onMembers = new List<MemberLoad>();
        foreach (MemberLoad q in f.First.OnMembers)
        {
            if (q.Member != 0)
            {
                onMembers.Add(q);
                continue;
            }
            if (q.From < cut)
                onMembers.Add(q with { To = Math.Min(q.To, cut) });
            if (q.To > cut)
                onMembers.Add(q with { Member = second, From = Math.Max(q.From - cut, 0), To = q.To - cut });
        }

        FrameSolution a = Solve(f.Model, f.First), b = Solve(model, f.First with { OnMembers = onMembers });

        Near.Absolute(0, Apart(f.Model, a, i => (b.Displacement(i), b.Rotation(i))), 1e-8);
        Near.Absolute(0, (a.DisplacementAlong(0, cut) - b.Displacement(node)).Length, 1e-8, "displacement at the cut");
        Near.Absolute(0, (a.RotationAlong(0, cut) - b.Rotation(node)).Length, 1e-8, "rotation at the cut");
        Near.Absolute(0, Apart(a.At(0, cut), b.At(second, 0)), 1e-3, "actions at the cut");
        double x = 0.8 * axes.Length;
        Near.Absolute(0, (a.DisplacementAlong(0, x) - b.DisplacementAlong(second, x - cut)).Length, 1e-8, "beyond the cut");
        Near.Absolute(0, (a.DisplacementAlong(0, cut / 3) - b.DisplacementAlong(0, cut / 3)).Length, 1e-8, "before the cut");
    });

    [Fact]
    public void MoreStiffnessNeverGivesMore() => Sample(f =>
    {
        LoadCase load = f.First with { OnMembers = [] };
        double before = Work(load, Solve(f.Model, load));
        FrameMember m = f.Model.Members[0];
        FrameModel[] stiffer =
        [
            f.Model with { Members = [m with { E = 1.3 * m.E }, .. f.Model.Members.Skip(1)] },
            f.Model with { Members = [m with { G = 1.7 * m.G }, .. f.Model.Members.Skip(1)] },
            f.Model with { Members = [m with { FixityFrom = EndFixity.Rigid }, .. f.Model.Members.Skip(1)] },
            f.Model with { Members = [.. f.Model.Members, m with { Up = new Vector(m.Up.Y, m.Up.Z + 0.01, -m.Up.X) }] },
            f.Model with { Supports = [.. f.Model.Supports, new Support(f.Model.Nodes.Count - 1, true, false, false, false, true, false)] },
        ];

        foreach (FrameModel model in stiffer)
        {
            double after = Work(load, Solve(model, load));
            Assert.True(after <= before * (1 + 1e-9), $"compliance rose from {before:G9} to {after:G9}");
        }
    });

    /// <summary>Every vector of a frame through one map, moments through another.</summary>
    private static RandomFrame Map(RandomFrame f, Func<Vector, Vector> polar, Func<Vector, Vector> axial, Func<Support, Support> support)
    {
        LoadCase Case(LoadCase c) => c with
        {
            OnNodes = [.. c.OnNodes.Select(p => p with { Force = polar(p.Force), Moment = axial(p.Moment) })],
            OnMembers = [.. c.OnMembers.Select(q => q with { PerMetre = polar(q.PerMetre) })],
        };
        return new RandomFrame(
            new FrameModel(
                [.. f.Model.Nodes.Select(n => n with { At = polar(n.At) })],
                [.. f.Model.Members.Select(m => m with { Up = polar(m.Up), ArmFrom = polar(m.ArmFrom), ArmTo = polar(m.ArmTo) })],
                [.. f.Model.Supports.Select(support)]),
            Case(f.First), Case(f.Second));
    }
}
