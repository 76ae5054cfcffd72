using CsCheck;
using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>Random frames that hold together: a tree of rigid joints from a clamped node, and further members held anyhow.</summary>
internal sealed record RandomFrame(FrameModel Model, LoadCase First, LoadCase Second)
{
    /// <summary>Frames with few nodes first, so that a failure shrinks to a small one.</summary>
    public static readonly Gen<RandomFrame> Gen =
        CsCheck.Gen.Select(CsCheck.Gen.Int[2, 9], CsCheck.Gen.Int[0, 6], CsCheck.Gen.Int[0, 1_000_000], Make);

    public static RandomFrame Make(int nodes, int extra, int seed)
    {
        var r = new Random(seed);
        var at = new List<Node>();
        while (at.Count < nodes)
        {
            Vector p = Within(r, 1);
            if (at.TrueForAll(n => (n.At - p).Length > 0.4))
                at.Add(new Node($"n{at.Count}", p));
        }
        var members = new List<FrameMember>();
        for (int i = 1; i < nodes; i++)
            members.Add(Member(r, at, r.Next(i), i, false));
        for (int i = 0; i < extra; i++)
        {
            int a = r.Next(nodes), b = r.Next(nodes);
            if (a != b)
                members.Add(Member(r, at, a, b, true));
        }
        var supports = new List<Support> { new(0, true, true, true, true, true, true) };
        if (nodes > 3)
            supports.Add(new Support(nodes - 1, Coin(r), Coin(r), Coin(r), Coin(r), Coin(r), Coin(r)));
        var model = new FrameModel(at, members, supports);
        return new RandomFrame(model, Case(r, model, "first"), Case(r, model, "second"));
    }

    private static FrameMember Member(Random r, List<Node> at, int from, int to, bool joints)
    {
        Vector along = (at[to].At - at[from].At).Unit, up;
        do
            up = Within(r, 1);
        while (up.Cross(along).Length < 0.2);
        var m = new FrameMember
        {
            Part = "strut",
            From = from,
            To = to,
            Up = up,
            Section = Section(r),
            ArmFrom = Coin(r) ? Within(r, 0.1) : default,
            ArmTo = Coin(r) ? Within(r, 0.1) : default,
        };
        // What one end lets go the other holds, so that no member moves by itself.
        return joints
            ? m with { FixityFrom = Springs(r) with { T = 3e5, My = Coin(r) ? 0 : 4e5 }, FixityTo = Springs(r) with { Mz = Coin(r) ? 0 : 1e6, N = Coin(r) ? 0 : 1e8 } }
            : m with { FixityFrom = Coin(r) ? Springs(r) : EndFixity.Rigid };
    }

    private static EndFixity Springs(Random r) =>
        new(Spring(r, 1e8), Spring(r, 1e7), Spring(r, 1e7), Spring(r, 1e5), Spring(r, 1e6), Spring(r, 1e6));

    private static double Spring(Random r, double about) =>
        Coin(r) ? double.PositiveInfinity : about * Math.Exp(4 * r.NextDouble() - 2);

    private static SectionProperties Section(Random r)
    {
        double A = 2e-3 + 8e-3 * r.NextDouble(), i = 0.03 + 0.05 * r.NextDouble(), j = 0.02 + 0.03 * r.NextDouble();
        return Sketch.Section(A, A * i * i, A * j * j, A * 1e-4, A * (0.2 + 0.5 * r.NextDouble()), A * (0.2 + 0.5 * r.NextDouble()));
    }

    private static LoadCase Case(Random r, FrameModel model, string name)
    {
        var onNodes = new List<NodalLoad>();
        var onMembers = new List<MemberLoad>();
        for (int i = 0; i < 3; i++)
        {
            onNodes.Add(new NodalLoad(r.Next(model.Nodes.Count), Within(r, 1e4), Within(r, 1e3)));
            int member = r.Next(model.Members.Count);
            double L = MemberAxes.Of(model, member).Length, a = L * r.NextDouble(), b = L * r.NextDouble();
            if (Math.Abs(a - b) > 1e-3)
                onMembers.Add(new MemberLoad(member, Within(r, 1e4), Math.Min(a, b), Math.Max(a, b)));
        }
        return new LoadCase(name, onNodes, onMembers);
    }

    private static bool Coin(Random r) => r.Next(2) == 0;

    private static Vector Within(Random r, double s) =>
        new(s * (2 * r.NextDouble() - 1), s * (2 * r.NextDouble() - 1), s * (2 * r.NextDouble() - 1));
}
