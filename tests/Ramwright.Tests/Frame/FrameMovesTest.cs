using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>Frames that can move freely are refused in words.</summary>
public class FrameMovesTest
{
    private static FrameMovesException Refused(Sketch sketch) =>
        Assert.Throws<FrameMovesException>(() => new FactoredFrame(sketch.Model));

    [Fact]
    public void WithNoSupportsItSlides()
    {
        var sketch = new Sketch();
        sketch.Member(sketch.Node(0, 0, 0), sketch.Node(1, 0.3, 0.2), Sketch.Uneven);

        FrameMovesException e = Refused(sketch);

        Assert.StartsWith("can slide freely", e.Movement, StringComparison.Ordinal);
        Assert.Contains("another node moves with it", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rx ry", "can turn freely about the vertical (Z)")]
    [InlineData("ry rz", "can turn freely about the line from left to right (X)")]
    [InlineData("rx rz", "can turn freely about the line from front to back (Y)")]
    public void OnAPivotItTurns(string held, string words)
    {
        var sketch = new Sketch();
        int arm = sketch.Node(0.7, 1.1, 0.9), pivot = sketch.Node(0.2, 0.4, 0);
        sketch.Member(pivot, arm, Sketch.Uneven);

        FrameMovesException e = Refused(sketch.Hold(pivot, "ux uy uz " + held));

        Assert.Equal(words, e.Movement);
        Assert.Contains(words, e.Message, StringComparison.Ordinal);
        Assert.Equal(pivot, e.NodeNumber);
        Assert.Equal("point 1", e.Node!.Name);
        Assert.Equal(2, e.Mode.Count);
        // Rigid: what the far node moves is the turn crossed with the arm.
        Vector off = e.Mode[arm].Displacement - e.Mode[arm].Rotation.Cross(new Vector(0.5, 0.7, 0.9));
        Near.Absolute(0, off.Length, 1e-9, "the mode is rigid");
    }

    [Theory]
    [InlineData("uy uz rx ry rz", "can slide freely from left to right (X)")]
    [InlineData("ux uz rx ry rz", "can slide freely from front to back (Y)")]
    [InlineData("ux uy rx ry rz", "can slide freely up and down (Z)")]
    public void OnARailItSlides(string held, string words)
    {
        var sketch = new Sketch();
        sketch.Member(sketch.Node(0, 0, 0), sketch.Node(0.7, 1.1, 0.9), Sketch.Uneven);

        Assert.Equal(words, Refused(sketch.Hold(0, held)).Movement);
    }

    [Fact]
    public void ANodeBetweenTwoHingesTurns()
    {
        var sketch = new Sketch();
        int a = sketch.Node(0, 0, 0), b = sketch.Node(0.6, 0.8, 0), c = sketch.Node(1.2, 1.6, 0);
        sketch.Member(a, b, Sketch.Uneven, null, null, EndFixity.Rigid with { Mz = 0 });
        sketch.Member(b, c, Sketch.Uneven, null, EndFixity.Rigid with { Mz = 0 });

        FrameMovesException e = Refused(sketch.Clamp(a).Clamp(c));

        Assert.Equal(b, e.NodeNumber);
        Assert.Equal("can turn freely about the vertical (Z)", e.Movement);
        Assert.DoesNotContain("with it", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AHingeAslantIsFoundThoughNoAxisIsFree()
    {
        // The free turn is about the members' own y, which no global axis matches.
        var sketch = new Sketch();
        Vector along = new Vector(0.6, 0.5, 0.3).Unit;
        int a = sketch.Node(0, 0, 0), b = sketch.Node(along.X, along.Y, along.Z), c = sketch.Node(2 * along.X, 2 * along.Y, 2 * along.Z);
        sketch.Member(a, b, Sketch.Uneven, null, null, EndFixity.PinnedY);
        sketch.Member(b, c, Sketch.Uneven, null, EndFixity.PinnedY);
        Vector y = MemberAxes.Of(sketch.Model, 0).Y;

        FrameMovesException e = Refused(sketch.Clamp(a).Clamp(c));

        Assert.Equal(b, e.NodeNumber);
        Near.Absolute(1, Math.Abs(e.Mode[b].Rotation.Unit.Dot(y)), 1e-9, "the turn is about y");
        Assert.StartsWith("can turn freely about the direction", e.Movement, StringComparison.Ordinal);
    }

    [Fact]
    public void AHoldThatIsOnlyRoundingIsNone()
    {
        // One Up is turned by arithmetic: cos 90° leaves 6e-17, and its square a stiffness about the hinge.
        var sketch = new Sketch();
        var up = new Vector(0, Math.Cos(Math.PI / 2), 1);
        int a = sketch.Node(0, 0, 0), b = sketch.Node(1, 0, 0), c = sketch.Node(2, 0, 0);
        sketch.Member(a, b, Sketch.Uneven, up, null, EndFixity.PinnedY);
        sketch.Member(b, c, Sketch.Uneven, Vector.Up, EndFixity.PinnedY);

        FrameMovesException e = Refused(sketch.Clamp(a).Clamp(c));

        Assert.Equal(b, e.NodeNumber);
        Assert.Equal("can turn freely about the line from front to back (Y)", e.Movement);
    }

    [Fact]
    public void PortalOnFourHingesSways()
    {
        var sketch = new Sketch();
        int a = sketch.Node(0, 0, 0), b = sketch.Node(0, 0, 1), c = sketch.Node(2, 0, 1), d = sketch.Node(2, 0, 0);
        sketch.Member(a, b, Sketch.Uneven, Vector.Across, EndFixity.PinnedY, EndFixity.PinnedY);
        sketch.Member(b, c, Sketch.Uneven);
        sketch.Member(d, c, Sketch.Uneven, Vector.Across, EndFixity.PinnedY, EndFixity.PinnedY);

        FrameMovesException e = Refused(sketch.Clamp(a).Clamp(d));

        Assert.Equal("can slide freely from left to right (X)", e.Movement);
        Assert.Contains(e.NodeNumber, new[] { b, c });
    }

    [Fact]
    public void ANodeWithoutMembersMoves()
    {
        var sketch = new Sketch();
        sketch.Member(sketch.Node(0, 0, 0), sketch.Node(1, 0, 0), Sketch.Uneven);
        int lonely = sketch.Node(0, 0, 3);

        Assert.Equal(lonely, Refused(sketch.Clamp(0)).NodeNumber);
    }

    [Fact]
    public void FourBarChainIsFoundWhateverTheStiffnesses()
    {
        // A soft and a very stiff part beside the loose one: rounding in the stiff must not pass for a hold.
        for (int power = -3; power <= 4; power++)
        {
            double f = Math.Pow(10, power);
            var s = Sketch.Section(5e-3 * f, 2e-5 * f, 1e-5 * f, 1e-6 * f, 2e-3 * f, 2e-3 * f);
            var sketch = new Sketch();
            for (int i = 0; i <= 12; i++)
                sketch.Node(0.31 * i, 0.17 * i, 0.05 * i * i);
            for (int i = 0; i < 12; i++)
                sketch.Member(i, i + 1, i % 2 == 0 ? s : Sketch.Uneven);
            sketch.Hold(0, "ux uy uz rx ry");

            FrameMovesException e = Refused(sketch);

            Assert.Equal("can turn freely about the vertical (Z)", e.Movement);
        }
    }

    [Fact]
    public void ASoftSpringIsAHold()
    {
        const double k = 0.01;      // N·m/rad, beside bending stiffnesses of 10⁷
        var sketch = new Sketch();
        int a = sketch.Node(0, 0, 0), b = sketch.Node(1, 0, 0);
        for (int i = 0; i < 6; i++)
            sketch.Node(1 + 0.2 * (i + 1), 0, 0.1 * i);
        sketch.Member(a, b, Sketch.Uneven, null, EndFixity.Rigid with { Mz = k });
        for (int i = 0; i < 6; i++)
            sketch.Member(b + i, b + i + 1, Sketch.Uneven);
        FrameSolution s = sketch.Clamp(a).Solve(new NodalLoad(7, default, new Vector(0, 0, 1e-3)));

        Near.Relative(1e-3 / k, s.Rotation(7).Z, 1e-4, "turn on the spring");
    }

    [Fact]
    public void LongSlenderChainsAreNotTakenForLoose()
    {
        const int n = 60;
        const double L = 12, P = 100;
        SectionProperties thin = Sketch.Section(2e-4, 3e-9);
        var sketch = new Sketch();
        for (int i = 0; i <= n; i++)
            sketch.Node(L * i / n, 0, 0);
        for (int i = 0; i < n; i++)
            sketch.Member(i, i + 1, thin);
        FrameSolution s = sketch.Clamp(0).Solve(Sketch.Down(n, P));

        Near.Relative(P * L * L * L / (3 * Sketch.E * 3e-9), -s.Displacement(n).Z, 1e-6, "tip of a long rod");
    }
}
