using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>Ends that are sprung or let go.</summary>
public class EndFixityTest
{
    private const double L = 2, E = Sketch.E, G = Sketch.G, q = 20e3, I = 2.5e-5;
    private static readonly SectionProperties Beam = Sketch.Section(5e-3, I);

    private static (Sketch, int) Span(EndFixity first, EndFixity second, SectionProperties? section = null)
    {
        var sketch = new Sketch();
        int member = sketch.Member(sketch.Node(0, 0, 0), sketch.Node(L, 0, 0), section ?? Beam, null, first, second);
        return (sketch.Clamp(0).Clamp(1), member);
    }

    private static MemberLoad Down(double from = 0, double to = L) => new(0, new Vector(0, 0, -q), from, to);

    [Theory]
    [InlineData(1e3)]
    [InlineData(2e6)]
    [InlineData(1e9)]
    public void TurningSpringsAtBothEnds(double k)
    {
        Reference row = new("BM-10", "beam in equal turning springs: M = (qL²/12)/(1 + 2EI/kL); slope-deflection", Trust.Recomputed);
        EndFixity spring = EndFixity.Rigid with { My = k };
        FrameSolution s = Span(spring, spring).Item1.Solve(Down());

        double M = q * L * L / 12 / (1 + 2 * E * I / (k * L));
        row.Near($"M at the end, k = {k:G3} N·m/rad", M, s.At(0, 0).My, 1e-9);
        row.Near($"turn of the beam's end, k = {k:G3} N·m/rad", M / k, s.RotationAlong(0, 0).Y, 1e-7);
        row.Near($"sag, k = {k:G3} N·m/rad", 5 * q * Math.Pow(L, 4) / (384 * E * I) - M * L * L / (8 * E * I),
            -s.DisplacementAlong(0, L / 2).Z, 1e-9);
    }

    [Fact]
    public void SpringsInARowAlongAndAbout()
    {
        Reference row = new("BM-11", "springs in series", Trust.Recomputed);
        var sketch = new Sketch();
        int root = sketch.Node(0, 0, 0), tip = sketch.Node(L, 0, 0);
        sketch.Member(root, tip, Sketch.Uneven, null, EndFixity.Rigid with { N = 3e8, T = 4e4 }, EndFixity.Rigid with { N = 7e8, T = 9e4 });
        FrameSolution s = sketch.Clamp(root).Solve(new NodalLoad(tip, new Vector(1e5, 0, 0), new Vector(500, 0, 0)));

        row.Near("pull, m", 1e5 * (1 / 3e8 + 1 / 7e8 + L / (E * Sketch.Uneven.A)), s.Displacement(tip).X, 1e-9);
        row.Near("twist, rad", 500 * (1 / 4e4 + 1 / 9e4 + L / (G * Sketch.Uneven.It)), s.Rotation(tip).X, 1e-9);
        row.Near("first end of the bar itself, m", 1e5 / 3e8, s.DisplacementAlong(0, 0).X, 1e-9);
        row.Near("first end of the bar itself, rad", 500 / 4e4, s.RotationAlong(0, 0).X, 1e-9);
    }

    [Fact]
    public void CantileverOnSidewaysAndTurningSprings()
    {
        Reference row = new("BM-12", "cantilever on springs: unit-load method", Trust.Recomputed);
        SectionProperties u = Sketch.Uneven;
        const double P = 8e3, kv = 5e6, kt = 2e6, kv2 = 9e6;
        var sketch = new Sketch();
        int root = sketch.Node(0, 0, 0), tip = sketch.Node(L, 0, 0);
        sketch.Member(root, tip, u, null,
            EndFixity.Rigid with { Vz = kv, My = kt, Vy = 2 * kv, Mz = 3 * kt }, EndFixity.Rigid with { Vz = kv2 });
        FrameSolution s = sketch.Clamp(root).Solve(new NodalLoad(tip, new Vector(0, P, -P)));

        row.Near("down, m", P * (L * L * L / (3 * E * u.Iy) + L / (G * u.Asz) + 1 / kv + L * L / kt + 1 / kv2), -s.Displacement(tip).Z, 1e-9);
        row.Near("sideways, m", P * (L * L * L / (3 * E * u.Iz) + L / (G * u.Asy) + 1 / (2 * kv) + L * L / (3 * kt)), s.Displacement(tip).Y, 1e-9);
    }

    [Fact]
    public void HingedAtBothEndsIsASimpleBeam()
    {
        Reference row = new("BM-13", "5qL⁴/384EI; Shigley 9th ed. Table A-9", Trust.FromMemoryAndRecomputed);
        FrameSolution s = Span(EndFixity.PinnedY, EndFixity.PinnedY).Item1.Solve(Down());

        row.Near("sag, m", 5 * q * Math.Pow(L, 4) / (384 * E * I), -s.DisplacementAlong(0, L / 2).Z, 1e-9);
        row.Within("M at the end, N·m", 0, s.At(0, 0).My, 1e-9);
        row.Near("turn of the beam's end qL³/24EI, rad", q * L * L * L / (24 * E * I), s.RotationAlong(0, 0).Y, 1e-9);
        Assert.Equal(default, s.Rotation(0));
    }

    [Fact]
    public void GuidedEndCarriesNoShear()
    {
        // Clamped at one end, free to slide across at the other: by symmetry half of a fixed beam of twice the length.
        Reference row = new("BM-14", "half of a fixed beam: qL²/12, qL²/24, qL⁴/384EI at twice the length", Trust.FromMemoryAndRecomputed);
        FrameSolution s = Span(EndFixity.Rigid, EndFixity.Rigid with { Vz = 0 }).Item1.Solve(Down());

        const double L2 = 2 * L;
        row.Near("M at the clamp, N·m", q * L2 * L2 / 12, s.At(0, 0).My, 1e-9);
        row.Near("M at the guide, N·m", -q * L2 * L2 / 24, s.At(0, L).My, 1e-9);
        row.Within("V at the guide, N", 0, s.At(0, L).Vz, 1e-9);
        row.Near("sag, m", q * Math.Pow(L2, 4) / (384 * E * I), -s.DisplacementAlong(0, L).Z, 1e-9);
        FrameSolution other = Span(EndFixity.Rigid with { Vz = 0 }, EndFixity.Rigid).Item1.Solve(Down());
        row.Near("the other way round: sag, m", q * Math.Pow(L2, 4) / (384 * E * I), -other.DisplacementAlong(0, 0).Z, 1e-9);
        row.Near("the other way round: M at the clamp, N·m", q * L2 * L2 / 12, other.At(0, L).My, 1e-9);
    }

    [Fact]
    public void LetGoAtOneEndEveryWayIsACantilever()
    {
        Reference row = new("BM-15", "cantilever, part load: statics and the moment-area method", Trust.Recomputed);
        const double a = 0.5, b = 1.2, Q = q * (b - a);
        var free = new EndFixity(0, 0, 0, 0, 0, 0);
        FrameSolution s = Span(free, EndFixity.Rigid).Item1.Solve(new MemberLoad(0, new Vector(q, 0, -q), a, b));

        row.Near("M at the clamp, N·m", Q * (L - (a + b) / 2), s.At(0, L).My, 1e-9);
        row.Near("N at the clamp, N", -Q, s.At(0, L).N, 1e-9);
        row.Within("V at the free end, N", 0, s.At(0, 0).Vz, 1e-9);
        // From the clamp: w(b′) plus slope times the rest, loads reaching from a′ = L − b to b′ = L − a.
        double a1 = L - b, b1 = L - a;
        double slope = q * (b1 * b1 * b1 - a1 * a1 * a1) / (6 * E * I);
        double tip = slope * L - q * (Math.Pow(b1, 4) - Math.Pow(a1, 4)) / (24 * E * I);
        row.Near("fall of the free end, m", tip, -s.DisplacementAlong(0, 0).Z, 1e-9);
    }

    [Fact]
    public void GerberBeam()
    {
        // A cantilever of length a carries, on a hinge at its tip, one end of a span b with a load P at its middle.
        Reference row = new("BM-16", "hinged (Gerber) beam: statics; tip of the cantilever Pa³/6EI", Trust.Recomputed);
        const double a = 1.1, b = 1.8, P = 40e3;
        var sketch = new Sketch();
        int root = sketch.Node(0, 0, 0), hinge = sketch.Node(a, 0, 0), mid = sketch.Node(a + b / 2, 0, 0), end = sketch.Node(a + b, 0, 0);
        sketch.Member(root, hinge, Beam);
        sketch.Member(hinge, mid, Beam, null, EndFixity.PinnedY);
        sketch.Member(mid, end, Beam);
        FrameSolution s = sketch.Flat().Clamp(root).Hold(end, "uz").Solve(Sketch.Down(mid, P));

        row.Near("M at the clamp, N·m", P * a / 2, s.At(0, 0).My, 1e-9);
        row.Within("M at the hinge, N·m", 0, s.At(1, 0).My, 1e-7);
        row.Near("reaction at the far end, N", P / 2, s.Reaction(end).Force.Z, 1e-9);
        double tip = P / 2 * a * a * a / (3 * E * I);
        row.Near("fall of the hinge, m", tip, -s.Displacement(hinge).Z, 1e-9);
        row.Near("fall under the load, m", tip / 2 + P * b * b * b / (48 * E * I), -s.Displacement(mid).Z, 1e-9);
    }

    [Fact]
    public void ExtremeSpringsMeetTheirLimits()
    {
        SectionProperties deep = Beam with { Asz = 1e-3 };
        FrameSolution With(EndFixity first, EndFixity second) => Span(first, second, deep).Item1.Solve(Down(0.3, 1.1));
        EndFixity rigid = EndFixity.Rigid, guided = rigid with { Vz = 0 };

        (EndFixity First, EndFixity Second, EndFixity LimitFirst, EndFixity LimitSecond)[] pairs =
        [
            (rigid with { My = 1e-9 }, rigid with { My = 1e-9 }, EndFixity.PinnedY, EndFixity.PinnedY),
            (rigid with { My = 1e-9 }, rigid, EndFixity.PinnedY, rigid),
            (rigid, rigid with { Vz = 1e-9 }, rigid, guided),
            (rigid with { My = 1e-9 }, rigid with { Vz = 1e-9 }, EndFixity.PinnedY, guided),
            (rigid with { My = 1e30 }, rigid with { My = 1e30, Vz = 1e30 }, rigid, rigid),
        ];
        foreach ((EndFixity first, EndFixity second, EndFixity limitFirst, EndFixity limitSecond) in pairs)
        {
            FrameSolution near = With(first, second), limit = With(limitFirst, limitSecond);
            foreach (double x in new[] { 0.2, 0.8, 1.9 })
            {
                Near.Absolute(limit.At(0, x).My, near.At(0, x).My, 1e-5, $"My at {x}");
                Near.Absolute(limit.At(0, x).Vz, near.At(0, x).Vz, 1e-5, $"Vz at {x}");
            }
            Near.Absolute(0, (limit.DisplacementAlong(0, 0.8) - near.DisplacementAlong(0, 0.8)).Length, 1e-9, "displacement");
        }
    }
}
