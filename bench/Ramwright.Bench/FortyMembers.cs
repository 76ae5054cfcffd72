using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Bench;

/// <summary>
/// Two upright frames a hand apart, front and back, each of five points up either side and five across bed and crown,
/// joined by distance pieces: 40 members.
/// </summary>
internal static class FortyMembers
{
    private const double Width = 0.8, Height = 1.6, Depth = 0.25;
    private const int Steps = 4;
    private static readonly SectionProperties Beam = Section(9.1e-3, 8.1e-5, 2.8e-5, 7.7e-7, 2.8e-3, 5.9e-3);
    private static readonly SectionProperties Post = Section(5.4e-3, 2.5e-5, 8.9e-6, 3.1e-7, 1.8e-3, 3.5e-3);

    public static FrameModel Model { get; } = Build();

    public static LoadCase[] Cases { get; } =
    [
        Push("centred", 0, 0), Push("to the left", -0.1, 0), Push("to the right", 0.1, 0), Push("to the front", 0, -0.1),
        Push("to the back", 0, 0.1),
        new("own weight", [], [.. Enumerable.Range(0, Model.Members.Count).Select(i =>
            new MemberLoad(i, new Vector(0, 0, -500), 0, MemberAxes.Of(Model, i).Length))]),
    ];

    /// <summary>Points of one rectangle, round from the lower left: bed, right upright, crown, left upright; back after front.</summary>
    private const int Round = 4 * Steps;

    private static FrameModel Build()
    {
        var nodes = new List<Node>();
        var members = new List<FrameMember>();
        for (int plane = 0; plane < 2; plane++)
            for (int i = 0; i < Round; i++)
            {
                double t = i % Steps / (double)Steps;
                (double x, double z) = (i / Steps) switch
                {
                    0 => (t * Width, 0.0),
                    1 => (Width, t * Height),
                    2 => ((1 - t) * Width, Height),
                    _ => (0.0, (1 - t) * Height),
                };
                nodes.Add(new Node($"plane {plane}, point {i}", new Vector(x, plane * Depth, z)));
            }
        for (int plane = 0; plane < 2; plane++)
            for (int i = 0; i < Round; i++)
            {
                bool upright = i / Steps % 2 == 1;
                members.Add(Member(upright ? "upright" : "beam", plane * Round + i, plane * Round + (i + 1) % Round,
                    upright ? Post : Beam, upright ? Vector.Across : Vector.Up));
            }
        foreach (int i in new[] { 0, 2, 4, 6, 8, 10, 12, 14 })
            members.Add(Member("distance piece", i, Round + i, Post, i is 6 or 14 ? Vector.Across : Vector.Up));
        return new FrameModel(nodes, members,
            [new Support(0, true, true, true, false, false, false), new Support(4, false, true, true, false, false, false),
                new Support(16, true, false, true, false, false, false), new Support(20, false, false, true, false, false, false)]);
    }

    private static FrameMember Member(string part, int from, int to, SectionProperties section, Vector up) =>
        new() { Part = part, From = from, To = to, Section = section, Up = up };

    /// <summary>One newton, off the middle of the bed and crown by the given distances.</summary>
    private static LoadCase Push(string name, double x, double y)
    {
        var loads = new List<NodalLoad>();
        foreach ((int node, double up) in new[] { (2, -0.5), (18, -0.5), (10, 0.5), (26, 0.5) })
            loads.Add(new NodalLoad(node, new Vector(0, 0, up), new Vector(y * up, -x * up, 0)));
        return new LoadCase(name, loads, []);
    }

    private static SectionProperties Section(double A, double Iy, double Iz, double It, double Asz, double Asy) =>
        new()
        {
            A = A,
            Iy = Iy,
            Iz = Iz,
            It = It,
            Asz = Asz,
            Asy = Asy,
            Avz = Asz,
            Avy = Asy,
            Iw = 0,
            Wt = 2e-5,
            Thickness = 0.016,
            Wely = Iy / 0.1,
            Welz = Iz / 0.1,
            Wply = Iy / 0.09,
            Wplz = Iz / 0.07,
            Top = 0.1,
            Bottom = 0.1,
            Left = 0.1,
            Right = 0.1,
        };
}
