using Ramwright.Geometry;
using Ramwright.Solids;

namespace Ramwright.Tests.Solids;

public class SolidPlaceTest
{
    private const double Fy = 275e6;

    /// <summary>Bent alike from end to end by what a straight beam has at its ends; σ = M/W at its edge, whatever its proportions.</summary>
    [Theory]
    [InlineData("square", 0.1, 0.1, 0.02)]
    [InlineData("lying flat", 0.2, 0.05, 0.01)]
    [InlineData("on edge", 0.05, 0.2, 0.02)]
    [InlineData("a wall of two cells", 0.2, 0.01, 0.005)]
    [InlineData("a wall of three cells", 0.2, 0.012, 0.004)]
    [InlineData("a wall of one cell", 0.2, 0.01, 0.01)]
    public void ABentBarYieldsAtMOverW(string how, double b, double h, double cell)
    {
        double W = b * h * h / 6, M = 1e3;
        var bar = new SolidPart(how, [new Cuboid(-0.3, 0.3, -b / 2, b / 2, -h / 2, h / 2)]);
        SolidPlace place = Bent([bar], new CellSizes(cell, 3 * cell), z => M * z / (b * h * h * h / 12));

        Near.Relative(Fy * W / M, place.GivesAt, 0.005, how);
        Assert.Equal(h / 2, Math.Abs(place.At.Z), 9);
        Assert.False(place.IsSharp);
    }

    [Fact]
    public void ABentISectionYieldsAtMOverW()
    {
        (double h, double b, double tw, double tf, double M) = (0.2, 0.1, 0.006, 0.009, 1e3);
        double I = (b * h * h * h - (b - tw) * Math.Pow(h - 2 * tf, 3)) / 12;
        var part = new SolidPart("beam",
        [
            new Cuboid(-0.4, 0.4, -b / 2, b / 2, h / 2 - tf, h / 2), new Cuboid(-0.4, 0.4, -tw / 2, tw / 2, tf - h / 2, h / 2 - tf),
            new Cuboid(-0.4, 0.4, -b / 2, b / 2, -h / 2, tf - h / 2),
        ]);
        SolidPlace place = Bent([part], new CellSizes(0.0045, 0.02), z => M * z / I);

        Near.Relative(Fy * I / (h / 2) / M, place.GivesAt, 0.01, "2 I f_y / (h M)");
    }

    /// <summary>At a sharp corner the cells' peak grows as they shrink; what is carried to the surface hardly does.</summary>
    [Fact]
    public void ASharpCornerIsToldFromBendingAndHardlyHangsOnTheCells()
    {
        SolidPlace Notched(double cell)
        {
            var bar = new SolidPart("bar", [new Cuboid(-0.3, 0.3, -0.02, 0.02, -0.05, 0.05)]) { Cuts = [new Cuboid(-0.02, 0.02, -0.1, 0.1, 0.02, 0.1)] };
            return Bent([bar], new CellSizes(cell, 4 * cell), z => 1e3 * z / (0.04 * 0.001 / 12));
        }

        SolidPlace coarse = Notched(0.005), fine = Notched(0.0025);
        Assert.True(fine.IsSharp);
        Assert.True(fine.Peak > 1.2 * coarse.Peak, $"peaks {coarse.Peak} and {fine.Peak}");
        Assert.InRange(fine.Carried / coarse.Carried, 0.93, 1.07);
        Assert.Equal(0.02, fine.At.Z, 3);
        // more than the net section has, which is 30 mm lower
        Assert.True(fine.Carried > 1e3 / (0.04 * 0.07 * 0.07 / 6));
    }

    private static SolidPlace Bent(IReadOnlyList<SolidPart> parts, CellSizes cells, Func<double, double> stress)
    {
        SolidMesh mesh = SolidMesh.Of(parts, [], cells);
        var forces = new Dictionary<int, Vector>();
        double end = parts[0].Blocks[0].X1;
        foreach (int sign in (int[])[-1, 1])
        {
            // pulled evenly over each cell's face, by what its corners take
            for (int c = 0; c < mesh.CellCount; c++)
            {
                Cuboid box = mesh.CellBox(c);
                if (Math.Abs((sign > 0 ? box.X1 : box.X0) - sign * end) > 1e-9)
                    continue;
                double area = box.Along(1) * box.Along(2), low = stress(box.Z0), high = stress(box.Z1);
                ReadOnlySpan<int> nodes = mesh.NodesOf(c);
                for (int n = 0; n < 8; n++)
                {
                    if ((n & 1) != 0 != sign > 0)
                        continue;
                    // a linear pressure on an edge: (2 near + far) / 6 of it at each end
                    double share = (n & 4) != 0 ? (2 * high + low) / 6 : (2 * low + high) / 6;
                    forces[nodes[n]] = forces.GetValueOrDefault(nodes[n], Vector.Zero) + sign * share * area / 2 * new Vector(1, 0, 0);
                }
            }
        }

        return SolidPlace.Weakest(new SolidSolver(mesh).Solve(forces, 1e-6), [Fy], [])!;
    }
}
