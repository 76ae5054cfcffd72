using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Tests.Frame;

/// <summary>What cannot be a frame or a load is refused at the door, saying which member, node or case it is.</summary>
public class FrameRefusalTest
{
    private static FrameModel Good()
    {
        var sketch = new Sketch();
        sketch.Member(sketch.Node(0, 0, 0), sketch.Node(1, 0, 0), Sketch.Uneven);
        return sketch.Clamp(0).Model;
    }

    private static FrameModel With(Func<FrameMember, FrameMember> change)
    {
        FrameModel good = Good();
        return good with { Members = [change(good.Members[0])] };
    }

    private static void Refused(string words, FrameModel model)
    {
        ArgumentException e = Assert.ThrowsAny<ArgumentException>(() => FrameSolver.Solve(model, []));
        Assert.Contains(words, e.Message, StringComparison.Ordinal);
    }

    private static void Refused(string words, LoadCase load)
    {
        ArgumentException e = Assert.ThrowsAny<ArgumentException>(() => FrameSolver.Solve(Good(), [load]));
        Assert.Contains(words, e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void TheGoodOneIsNot() => Assert.Empty(FrameSolver.Solve(Good(), []));

    [Fact]
    public void Shapes()
    {
        Refused("no members", Good() with { Members = [] });
        Refused("starts and ends at node 1", With(m => m with { From = 1 }));
        Refused("from node 0 to node 2; there are 2 nodes", With(m => m with { To = 2 }));
        Refused("from node -1", With(m => m with { From = -1 }));
        Refused("no length", With(m => m with { ArmTo = new Vector(-1, 0, 0) }));
        Refused("runs along its Up", With(m => m with { Up = new Vector(-2, 0, 0) }));
        Refused("runs along its Up", With(m => m with { Up = new Vector(1, 1e-8, 0) }));
        Refused("runs along its Up", With(m => m with { Up = default }));
        Refused("Support 0 names node 7", Good() with { Supports = [new Support(7, true, true, true, true, true, true)] });
    }

    [Fact]
    public void Numbers()
    {
        Refused("no finite place", Good() with { Nodes = [new Node("a", default), new Node("b", new Vector(double.NaN, 0, 0))] });
        Refused("Up or an arm", With(m => m with { ArmFrom = new Vector(0, double.PositiveInfinity, 0) }));
        Refused("Up or an arm", With(m => m with { Up = new Vector(0, double.NaN, 0) }));
        Refused("E is 0", With(m => m with { E = 0 }));
        Refused("G is NaN", With(m => m with { G = double.NaN }));
        Refused("A is -1", With(m => m with { Section = m.Section with { A = -1 } }));
        Refused("Iy is 0", With(m => m with { Section = m.Section with { Iy = 0 } }));
        Refused("Iz is", With(m => m with { Section = m.Section with { Iz = double.PositiveInfinity } }));
        Refused("It is 0", With(m => m with { Section = m.Section with { It = 0 } }));
        Refused("Asy and Asz", With(m => m with { Section = m.Section with { Asz = 0 } }));
        Refused("Asy and Asz", With(m => m with { Section = m.Section with { Asy = double.NaN } }));
        Refused("hold at its second end", With(m => m with { FixityTo = EndFixity.Rigid with { T = -1 } }));
        Refused("hold at its first end", With(m => m with { FixityFrom = EndFixity.Rigid with { My = double.NaN } }));
    }

    [Fact]
    public void MembersLetGoTooFar()
    {
        EndFixity rigid = EndFixity.Rigid;
        Refused("slide along itself", With(m => m with { FixityFrom = rigid with { N = 0 }, FixityTo = rigid with { N = 0 } }));
        Refused("spin about itself", With(m => m with { FixityFrom = rigid with { T = 0 }, FixityTo = rigid with { T = 0 } }));
        Refused("across its y", With(m => m with { FixityFrom = rigid with { Vy = 0 }, FixityTo = rigid with { Vy = 0 } }));
        Refused("across its z", With(m => m with { FixityFrom = rigid with { Vz = 0, My = 0 }, FixityTo = rigid with { My = 0 } }));
        Assert.Empty(FrameSolver.Solve(With(m => m with { FixityTo = rigid with { N = 0, T = 0, Vy = 0, Vz = 0, My = 0 } })
            with
        { Supports = [new Support(0, true, true, true, true, true, true), new Support(1, true, true, true, true, true, true)] }, []));
    }

    [Fact]
    public void Loads()
    {
        Refused("names node 5", new LoadCase("x", [new NodalLoad(5, Vector.Up)], []));
        Refused("not finite", new LoadCase("x", [new NodalLoad(1, new Vector(double.NaN, 0, 0))], []));
        Refused("not finite", new LoadCase("x", [new NodalLoad(1, default, new Vector(double.NegativeInfinity, 0, 0))], []));
        Refused("names member 1", new LoadCase("x", [], [new MemberLoad(1, Vector.Up, 0, 1)]));
        Refused("not finite", new LoadCase("x", [], [new MemberLoad(0, new Vector(0, 0, double.NaN), 0, 1)]));
        Refused("1 m long", new LoadCase("x", [], [new MemberLoad(0, Vector.Up, 0, 1.1)]));
        Refused("1 m long", new LoadCase("x", [], [new MemberLoad(0, Vector.Up, -0.1, 1)]));
        Refused("1 m long", new LoadCase("x", [], [new MemberLoad(0, Vector.Up, double.NaN, 1)]));
        Refused("must have a length", new LoadCase("x", [], [new MemberLoad(0, Vector.Up, 0.5, 0.5)]));
        Refused("too great", new LoadCase("x", [new NodalLoad(1, new Vector(1e308, 1e308, 1e308), new Vector(1e308, 1e308, 1e308))], []));
    }

    [Fact]
    public void Questions()
    {
        FrameSolution s = FrameSolver.Solve(Good(), [new LoadCase("x", [new NodalLoad(1, Vector.Up)], [])])[0];

        Assert.Throws<ArgumentOutOfRangeException>(() => s.Displacement(2));
        Assert.Throws<ArgumentOutOfRangeException>(() => s.Rotation(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => s.Reaction(2));
        Assert.Throws<ArgumentOutOfRangeException>(() => s.Length(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => s.At(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => s.At(0, 1.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => s.At(0, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => s.DisplacementAlong(0, -0.01));
        Assert.Equal(s.At(0, 1), s.At(0, 1 + 1e-12));
    }
}
