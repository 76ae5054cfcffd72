using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>A frame put together line by line.</summary>
internal sealed class Sketch
{
    public const double E = 210e9, G = 210e9 / 2.6;

    private readonly List<Node> _nodes = [];
    private readonly List<FrameMember> _members = [];
    private readonly List<Support> _supports = [];

    public FrameModel Model => new(_nodes, _members, _supports);

    public int Node(double x, double y, double z)
    {
        _nodes.Add(new Node($"point {_nodes.Count}", new Vector(x, y, z)));
        return _nodes.Count - 1;
    }

    public int Member(int from, int to, SectionProperties section, Vector? up = null, EndFixity? first = null, EndFixity? second = null)
    {
        _members.Add(new FrameMember
        {
            Part = "beam",
            From = from,
            To = to,
            Section = section,
            Up = up ?? Vector.Up,
            E = E,
            G = G,
            FixityFrom = first ?? EndFixity.Rigid,
            FixityTo = second ?? EndFixity.Rigid,
        });
        return _members.Count - 1;
    }

    public void Change(int member, Func<FrameMember, FrameMember> change) => _members[member] = change(_members[member]);

    /// <summary>Holds a node: any of ux uy uz rx ry rz.</summary>
    public Sketch Hold(int node, string ways)
    {
        bool Held(string way) => ways.Contains(way, StringComparison.Ordinal);
        _supports.Add(new Support(node, Held("ux"), Held("uy"), Held("uz"), Held("rx"), Held("ry"), Held("rz")));
        return this;
    }

    public Sketch Clamp(int node) => Hold(node, "ux uy uz rx ry rz");

    /// <summary>Keeps every node in the X-Z plane.</summary>
    public Sketch Flat()
    {
        for (int i = 0; i < _nodes.Count; i++)
            Hold(i, "uy rx rz");
        return this;
    }

    public FrameSolution Solve(params NodalLoad[] loads) => Solve(loads, []);

    public FrameSolution Solve(MemberLoad load) => Solve([], [load]);

    public FrameSolution Solve(NodalLoad[] onNodes, MemberLoad[] onMembers) =>
        FrameSolver.Solve(Model, [new LoadCase("test", onNodes, onMembers)])[0];

    public static NodalLoad Down(int node, double F) => new(node, new Vector(0, 0, -F));

    public static NodalLoad Lift(int node, double F) => new(node, new Vector(0, 0, F));

    /// <summary>A section by its area and second moments; no shear deflection unless shear areas are given.</summary>
    public static SectionProperties Section(
        double A, double Iy, double Iz = 0, double It = 0, double Asz = double.PositiveInfinity, double Asy = double.PositiveInfinity) =>
        new()
        {
            A = A,
            Iy = Iy,
            Iz = Iz > 0 ? Iz : Iy,
            It = It > 0 ? It : Iy,
            Asz = Asz,
            Asy = Asy,
            Avz = A,
            Avy = A,
            Wely = 1,
            Welz = 1,
            Wply = 1,
            Wplz = 1,
            Iw = 0,
            Wt = 1,
            Top = 0.1,
            Bottom = 0.1,
            Left = 0.1,
            Right = 0.1,
            Thickness = 0.01,
        };

    /// <summary>A section with everything different, for tests that would miss a swapped axis.</summary>
    public static readonly SectionProperties Uneven = Section(5.4e-3, 2.5e-5, 0.9e-5, 3.1e-7, 1.76e-3, 3.2e-3);
}
