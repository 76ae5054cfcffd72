using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>Rigid arms between a node and a beam's end.</summary>
public class RigidArmTest
{
    [Fact]
    public void BracketOnAnArmMatchesTheClosedForm()
    {
        // A cantilever along X whose tip node hangs on an arm: a force across the arm bends and twists the beam.
        Reference row = new("BM-20", "cantilever and lever: statics and superposition", Trust.Recomputed);
        const double L = 1.2, e = 0.3, P = 5e3, E = Sketch.E, G = Sketch.G;
        SectionProperties s = Sketch.Uneven;
        var sketch = new Sketch();
        int root = sketch.Node(0, 0, 0), tip = sketch.Node(L, e, 0);
        sketch.Member(root, tip, s);
        sketch.Change(0, m => m with { ArmTo = new Vector(0, -e, 0) });
        FrameSolution solved = sketch.Clamp(root).Solve(new NodalLoad(tip, new Vector(0, 0, P)));

        double twist = P * e * L / (G * s.It);
        row.Near("length of the beam, m", L, solved.Length(0), 1e-12);
        row.Near("twist, rad", twist, solved.Rotation(tip).X, 1e-9);
        row.Near("rise of the node, m", P * L * L * L / (3 * E * s.Iy) + P * L / (G * s.Asz) + twist * e, solved.Displacement(tip).Z, 1e-9);
        row.Near("T in the beam, N·m", P * e, solved.At(0, 0.5).T, 1e-9);
    }

    [Fact]
    public void ArmsAreVeryStiffMembers()
    {
        SectionProperties very = Sketch.Section(1e3, 1e2);
        NodalLoad load = new(1, new Vector(2e3, -3e3, 5e3), new Vector(700, -400, 900));

        // A portal whose beam and post meet off the node, once by arms and once by stiff members.
        var arms = new Sketch();
        int foot = arms.Node(0, 0, 0), corner = arms.Node(0.1, 0.05, 1.2), end = arms.Node(1.5, 0.2, 1.4);
        arms.Member(foot, corner, Sketch.Uneven, Vector.Across);
        arms.Member(corner, end, Sketch.Uneven);
        arms.Change(0, m => m with { ArmFrom = new Vector(0.05, 0.02, 0.1), ArmTo = new Vector(-0.04, -0.05, -0.1) });
        arms.Change(1, m => m with { ArmFrom = new Vector(0.15, 0.03, 0.06), ArmTo = new Vector(-0.1, 0, 0.07) });
        FrameSolution byArms = arms.Clamp(foot).Clamp(end).Solve([load], [new MemberLoad(1, new Vector(0, 500, -4e3), 0.2, 0.8)]);

        var stiff = new Sketch();
        stiff.Node(0, 0, 0);
        stiff.Node(0.1, 0.05, 1.2);
        stiff.Node(1.5, 0.2, 1.4);
        int a = stiff.Node(0.05, 0.02, 0.1), b = stiff.Node(0.06, 0, 1.1), c = stiff.Node(0.25, 0.08, 1.26), d = stiff.Node(1.4, 0.2, 1.47);
        stiff.Member(a, b, Sketch.Uneven, Vector.Across);
        stiff.Member(c, d, Sketch.Uneven);
        Vector aslant = new(0.3, 0.9, -0.2);
        stiff.Member(0, a, very, aslant);
        stiff.Member(b, 1, very, aslant);
        stiff.Member(1, c, very, aslant);
        stiff.Member(d, 2, very, aslant);
        FrameSolution byMembers = stiff.Clamp(0).Clamp(2).Solve([load], [new MemberLoad(1, new Vector(0, 500, -4e3), 0.2, 0.8)]);

        Near.Absolute(0, (byArms.Displacement(1) - byMembers.Displacement(1)).Length / byMembers.Displacement(1).Length, 1e-4, "displacement");
        Near.Absolute(0, (byArms.Rotation(1) - byMembers.Rotation(1)).Length / byMembers.Rotation(1).Length, 1e-4, "rotation");
        foreach (int member in new[] { 0, 1 })
        {
            Near.Relative(byMembers.Length(member), byArms.Length(member), 1e-12, "length");
            Actions expected = byMembers.At(member, 0.4), computed = byArms.At(member, 0.4);
            Near.Relative(expected.N, computed.N, 1e-3, "N");
            Near.Relative(expected.My, computed.My, 1e-3, "My");
            Near.Relative(expected.Mz, computed.Mz, 1e-3, "Mz");
            Near.Relative(expected.T, computed.T, 1e-3, "T");
        }
    }
}
