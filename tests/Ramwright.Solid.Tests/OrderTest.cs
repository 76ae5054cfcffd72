using Ramwright.Geometry;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>How fast the cells close in where nothing is sharp: with the square of their length. What frames show beside it is their corners'.</summary>
public class OrderTest
{
    private const double E = 210e9, Nu = 0.3, C = 0.06, Wave = 0.2, Q = 1e6;

    /// <summary>
    /// A strip in plane strain, pressed on both edges by q cos αx. By Airy's function φ = cos αx (A cosh αy + B y sinh αy), no shear on the edges, the edge gives v = 2 q sinh² αc/(α E′ (sinh αc cosh αc + αc)).
    /// </summary>
    [Fact]
    public void AStripPressedInWaves()
    {
        double alpha = Math.PI / Wave, s = Math.Sinh(alpha * C), c = Math.Cosh(alpha * C);
        double exact = 2 * Q * s * s / (alpha * E / (1 - Nu * Nu) * (s * c + alpha * C));
        double[] found = [Amplitude(alpha, 0.02), Amplitude(alpha, 0.01), Amplitude(alpha, 0.005)];

        new Reference("SO-01", "Airy's stress function of a strip under q cos αx on both edges, after Timoshenko and Goodier, Theory of Elasticity, art. 24; worked out again", Trust.FromMemoryAndRecomputed)
            .Near("give of the edge, µm", exact * 1e6, found[2] * 1e6, 1e-3);
        double[] missing = [.. found.Select(v => Math.Abs(v - exact))];
        Assert.InRange(Math.Log2(missing[0] / missing[1]), 1.85, 2.15);
        Assert.InRange(Math.Log2(missing[1] / missing[2]), 1.85, 2.15);
    }

    // a quarter of the strip over half a wave, on its planes of symmetry; by the work that the pressure does
    private static double Amplitude(double alpha, double cell)
    {
        SolidMesh mesh = SolidMesh.Of([new SolidPart("strip", [new Cuboid(0, Wave, 0, 0.02, 0, C)])], [], new CellSizes(cell, cell));
        var supports = new Supports();
        supports.HoldPlane(mesh, 0, 0, 0);
        supports.HoldPlane(mesh, 0, Wave, 0);
        supports.HoldPlane(mesh, 1, 0, 1);
        supports.HoldPlane(mesh, 1, 0.02, 1);
        supports.HoldPlane(mesh, 2, 0, 2);
        Dictionary<int, double> edge = mesh.Face(0, 2, C, Cuboid.Everywhere);
        double Cos(int node) => Math.Cos(alpha * mesh.At(node).X);
        SolidSolution solution = new SolidSolver(mesh, supports).Solve(edge.ToDictionary(n => n.Key, n => n.Value * Q * Cos(n.Key) * Vector.Up), 1e-9);
        return edge.Sum(n => n.Value * Cos(n.Key) * solution.Displacement(n.Key).Z) / edge.Sum(n => n.Value * Cos(n.Key) * Cos(n.Key));
    }
}
