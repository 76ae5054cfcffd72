using Ramwright.Geometry;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Files.Tests;

/// <summary>A block in an even state of stress, all six components unlike, written and read back by the published format: places, movements and stresses must be those of elasticity.</summary>
public class SolidVtuTest
{
    private const double E = 210e9, Nu = 0.3;
    private static readonly Cuboid Block = new(0, 0.3, -0.05, 0.05, 0.1, 0.3);
    private static readonly StressState Even = new(1e6, 2e6, -3e6, 4e6, -5e6, 6e6);

    [Fact]
    public void AnEvenStressIsReadBack()
    {
        SolidMesh mesh = SolidMesh.Of(
            [new SolidPart("left", [Block with { X1 = 0.13 }]), new SolidPart("right", [Block with { X0 = 0.13 }])], [new Bond(0, 1, Cuboid.Everywhere)],
            new CellSizes(0.03, 0.07), [new Cuboid(0.05, 0.2, -0.02, 0.04, 0.111, 0.25)]);
        using var written = new MemoryStream();
        SolidVtu.Write(new SolidSolver(mesh).Solve(Pulls(mesh), 1e-9), written);
        var file = new VtuFile(written.ToArray());
        int[] cells = [.. Enumerable.Range(0, file.Cells.Length)];

        Assert.True(cells.Length > 100);
        Assert.All(cells, c => Assert.True(file.LeastJacobian(c) > 0, $"cell {c} is turned inside out"));
        double[] part = file.Numbers("CellData/part");
        Near.Relative(0.13 * 0.1 * 0.2, cells.Where(c => part[c] == 0).Sum(file.Volume), 1e-12, "volume of the left part");
        Near.Relative(0.17 * 0.1 * 0.2, cells.Where(c => part[c] == 1).Sum(file.Volume), 1e-12, "volume of the right part");

        double[] stress = [Even.XX, Even.YY, Even.ZZ, Even.XY, Even.YZ, Even.XZ];
        double[][] read = file.Rows("CellData/stress");
        // Mises: (σx−σy)² + (σy−σz)² + (σz−σx)² + 6 (τxy² + τyz² + τxz²), half of it, its root
        double mises = Math.Sqrt((1 + 25 + 16 + 6 * (16 + 25 + 36)) / 2.0) * 1e6;
        double[] equivalent = file.Numbers("CellData/equivalent stress");
        double[] strain = [Strain(0, 1, 2), Strain(1, 2, 0), Strain(2, 0, 1), stress[3] * (1 + Nu) / E, stress[4] * (1 + Nu) / E, stress[5] * (1 + Nu) / E];
        Vector[] moved = file.Vectors("PointData/displacement");
        foreach (int c in cells)
        {
            (Vector x, Vector y, Vector z) = file.Gradient(c, moved);
            double[] of = [x.X, y.Y, z.Z, (x.Y + y.X) / 2, (y.Z + z.Y) / 2, (x.Z + z.X) / 2];
            for (int i = 0; i < 6; i++)
            {
                Near.Absolute(stress[i], read[c][i], 100, $"stress {i} of cell {c}, Pa");
                Near.Absolute(strain[i], of[i], 1e-9, $"strain {i} of cell {c}, from the movements at its corners");
            }

            Near.Relative(mises, equivalent[c], 1e-4, "equivalent stress");
        }

        double Strain(int along, int other, int third) => (stress[along] - Nu * (stress[other] + stress[third])) / E;
    }

    [Fact]
    public void WhatFailsHalfWayLeavesTheOldFile()
    {
        string folder = Directory.CreateTempSubdirectory("ramwright-vtu-").FullName, file = Path.Combine(folder, "press.vtu");
        try
        {
            File.WriteAllText(file, "old");
            Assert.Throws<IOException>(() => WholeWrite.Replace(file, stream =>
            {
                stream.Write("half"u8);
                throw new IOException("the disk is full");
            }));

            Assert.Equal("old", File.ReadAllText(file));
            Assert.Equal([file], Directory.EnumerateFiles(folder));
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static Dictionary<int, Vector> Pulls(SolidMesh mesh)
    {
        var forces = new Dictionary<int, Vector>();
        foreach ((int part, int axis, double at, double outward) in ((int, int, double, double)[])
            [(0, 0, Block.X0, -1), (1, 0, Block.X1, 1), (0, 1, Block.Y0, -1), (1, 1, Block.Y0, -1), (0, 1, Block.Y1, 1), (1, 1, Block.Y1, 1), (0, 2, Block.Z0, -1), (1, 2, Block.Z0, -1), (0, 2, Block.Z1, 1), (1, 2, Block.Z1, 1)])
        {
            Vector pull = axis switch
            {
                0 => new Vector(Even.XX, Even.XY, Even.XZ),
                1 => new Vector(Even.XY, Even.YY, Even.YZ),
                _ => new Vector(Even.XZ, Even.YZ, Even.ZZ),
            };
            foreach ((int node, double share) in mesh.Face(part, axis, at, Cuboid.Everywhere))
                forces[node] = forces.GetValueOrDefault(node) + outward * share * pull;
        }

        return forces;
    }
}
