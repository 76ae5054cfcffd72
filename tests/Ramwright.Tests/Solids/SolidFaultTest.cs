using Ramwright.Geometry;
using Ramwright.Solids;

namespace Ramwright.Tests.Solids;

/// <summary>Geometry that cannot be solved ends in a message that names the part.</summary>
public class SolidFaultTest
{
    private static readonly CellSizes Cells = new(0.05, 0.1);

    private static SolidFaultException Refused(params SolidPart[] parts) =>
        Assert.Throws<SolidFaultException>(() => SolidMesh.Of(parts, [], Cells));

    [Fact]
    public void ASliver()
    {
        SolidFaultException fault = Refused(
            new SolidPart("column", [new Cuboid(0, 0.2, 0, 0.2, 0, 2)]), new SolidPart("end plate", [new Cuboid(0, 0.2, 0.2, 0.25, 0, 0.3001), new Cuboid(0, 0.1, 0.25, 0.3, 0, 0.3)]));
        Assert.Contains("end plate", fault.Message);
        Assert.Contains("0.1 mm", fault.Message);
    }

    [Fact]
    public void TwoPartsInOnePlace()
    {
        SolidFaultException fault = Refused(
            new SolidPart("arm", [new Cuboid(0, 0.3, 0, 0.1, 0, 0.1)]), new SolidPart("column", [new Cuboid(0.2, 0.5, 0, 0.1, 0, 0.3)]));
        Assert.Contains("arm", fault.Message);
        Assert.Contains("column", fault.Message);
    }

    [Fact]
    public void AJointWithoutContact() => Assert.Contains("lug", Assert.Throws<SolidFaultException>(() => SolidMesh.Of(
        [new SolidPart("column", [new Cuboid(0, 0.2, 0, 0.2, 0, 1)]), new SolidPart("lug", [new Cuboid(0.3, 0.4, 0, 0.2, 0, 0.2)])], [new Bond(0, 1, Cuboid.Everywhere)], Cells)).Message);

    /// <summary>Face to face along an edge only is no joint: the part is loose, and pressed.</summary>
    [Fact]
    public void APartThatTouchesAlongAnEdgeOnly()
    {
        SolidMesh mesh = SolidMesh.Of(
            [new SolidPart("column", [new Cuboid(0, 0.2, 0, 0.2, 0, 1)]), new SolidPart("lug", [new Cuboid(0.2, 0.4, 0.2, 0.4, 0, 0.2)])], [], Cells);
        Assert.Equal(2, mesh.Bodies);
        Assert.Contains("lug", Loose(mesh).Message);
    }

    [Fact]
    public void APartThatNothingHolds()
    {
        SolidMesh mesh = SolidMesh.Of(
            [new SolidPart("column", [new Cuboid(0, 0.2, 0, 0.2, 0, 1)]), new SolidPart("lug", [new Cuboid(0.2, 0.4, 0, 0.2, 0, 0.2)])], [], Cells);
        Assert.Equal(2, mesh.Bodies);       // side by side, but joined nowhere
        Assert.Contains("lug", Loose(mesh).Message);
    }

    /// <summary>A cell length that the machine has no room for is refused before memory is taken.</summary>
    [Fact]
    public void CellsThatWouldBeTooMany()
    {
        SolidFaultException fault = Assert.Throws<SolidFaultException>(() => SolidMesh.Of([new SolidPart("block", [new Cuboid(0, 2, 0, 2, 0, 2)])], [], new CellSizes(0.001, 0.001)));
        Assert.Contains("times as long", fault.Message);
    }

    /// <summary>What is not pressed would stand still by itself and show nothing: it is no part of the frame.</summary>
    [Fact]
    public void APartThatIsJoinedToNothingAndNotPressed()
    {
        SolidMesh mesh = SolidMesh.Of(
            [new SolidPart("column", [new Cuboid(0, 0.2, 0, 0.2, 0, 1)]), new SolidPart("lug", [new Cuboid(0.2, 0.4, 0, 0.2, 0, 0.2)])], [], Cells);
        var forces = new Dictionary<int, Vector>();
        foreach ((double z, double sign) in ((double, double)[])[(0, -1), (1, 1)])
            foreach ((int node, double share) in mesh.Face(0, 2, z, Cuboid.Everywhere))
                forces[node] = sign * share / 0.04 * Vector.Up;

        string said = Assert.Throws<SolidFaultException>(() => new SolidSolver(mesh).Solve(forces)).Message;
        Assert.StartsWith("lug is joined to nothing", said, StringComparison.Ordinal);
    }

    private static SolidFaultException Loose(SolidMesh mesh)
    {
        var forces = new Dictionary<int, Vector>();
        foreach ((int part, double z, double sign) in ((int, double, double)[])[(1, 0.2, 1), (0, 1, -1)])
        {
            Dictionary<int, double> face = mesh.Face(part, 2, z, Cuboid.Everywhere);
            double all = face.Values.Sum();
            foreach ((int node, double share) in face)
                forces[node] = sign * share / all * Vector.Up;
        }

        return Assert.Throws<SolidFaultException>(() => new SolidSolver(mesh).Solve(forces));
    }

    [Fact]
    public void FacesThatDifferByRoundingAreOne() =>
        Assert.Equal(2, SolidMesh.Of([new SolidPart("a", [new Cuboid(0, 0.1, 0, 0.1, 0, 0.1)]), new SolidPart("b", [new Cuboid(0.1 + 1e-9, 0.2, 0, 0.1, 0, 0.1)])],
            [new Bond(0, 1, Cuboid.Everywhere)], new CellSizes(0.2, 0.2)).CellCount);
}
