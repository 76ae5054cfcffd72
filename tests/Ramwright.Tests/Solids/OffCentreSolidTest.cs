using Ramwright.Geometry;
using Ramwright.Solids;
using Ramwright.Tests.Frame;

namespace Ramwright.Tests.Solids;

/// <summary>Work that stands off presses where it stands, as far as there is steel under it; the rest is a moment. Either way it is the same line of force.</summary>
public class OffCentreSolidTest
{
    private static readonly PressSolid Closed = PressSolid.Of(Described.Rig("""
        kind: closed
        daylight: 500 mm
        width: 600 mm
        die-width: 80 mm
        section: HEB 160
        """));

    public static TheoryData<double, double> Offs => new() { { 0.1, 0 }, { -0.05, 0 }, { 0, -0.03 }, { 0.04, 0.02 }, { 0.5, 0 } };

    [Theory, MemberData(nameof(Offs))]
    public void TheLineOfForceIsWhereTheWorkIs(double across, double deep)
    {
        var off = new Vector(across, deep, 0);
        var one = new SolidCase("off", off, Vector.Up);
        PressSolid solid = Closed with { Cases = [one] };
        SolidMesh mesh = solid.Mesh(solid.Usual.Over(0.4));
        Dictionary<int, Vector> forces = DieLoads.Of(solid, mesh, one);

        foreach (bool upper in (bool[])[true, false])
        {
            var own = forces.Where(f => (mesh.At(f.Key).Z > 0.3) == upper).ToList();
            Vector force = own.Aggregate(Vector.Zero, (s, f) => s + f.Value), moment = own.Aggregate(Vector.Zero, (s, f) => s + mesh.At(f.Key).Cross(f.Value));
            Near.Absolute(0, (force - (upper ? 1 : -1) * Vector.Up).Length, 1e-9, "force");
            Near.Absolute(0, (moment - off.Cross(force)).Length, 1e-9, "moment about the ram's line");
        }
    }

    [Fact]
    public void TheDieMovesAlongTheBeamButNotOffItsWeb()
    {
        DieFace die = Closed.Lower[0];
        SolidPart bed = Closed.Parts[die.Part];

        DieFace aside = die.Aside(new Vector(0.1, 0.03, 0), bed);
        Near.Absolute(0.1, aside.On[0].Middle(0), 1e-12, "along the bed");
        Near.Absolute(0, aside.On[0].Middle(1), 1e-12, "on its web");
        // where it would hang over the end it stays, and the moment stands for it
        Assert.Equal(die, die.Aside(new Vector(2, 0, 0), bed));
    }

    /// <summary>Pressing beside the middle opens the middle less than the same force there with a moment: the beam bends less, and the die is not where it is looked at.</summary>
    [Fact]
    public void PressedAsideTheMiddleOpensLess()
    {
        var one = new SolidCase("off", 0.1 * Vector.Across, Vector.Up);
        PressSolid aside = Closed with { Cases = [one] }, middle = aside with { Upper = [.. aside.Upper.Select(f => f with { Free = [] })], Lower = [.. aside.Lower.Select(f => f with { Free = [] })] };
        (double here, double byMoment) = (Opening(aside, one), Opening(middle, one));
        Assert.InRange(here / byMoment, 0.7, 0.97);
    }

    private static double Opening(PressSolid solid, SolidCase one)
    {
        SolidMesh mesh = solid.Mesh(solid.Usual.Over(0.4));
        SolidSolution s = new SolidSolver(mesh).Solve(DieLoads.Of(solid, mesh, one));
        return s.Mean(PressSolid.Shares(mesh, solid.Upper)).Z - s.Mean(PressSolid.Shares(mesh, solid.Lower)).Z;
    }
}
