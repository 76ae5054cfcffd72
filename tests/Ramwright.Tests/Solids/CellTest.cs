using Ramwright.Geometry;
using Ramwright.Solids;

namespace Ramwright.Tests.Solids;

/// <summary>One kind of cell, and the patch test of a graded grid of them.</summary>
public class CellTest
{
    private static readonly CellKind Kind = new(0.03, 0.011, 0.05, 210e9, 0.3);

    private static double[] Full(CellKind kind)
    {
        (var families, var full) = (new double[CellStiffness.Numbers], new double[576]);
        CellStiffness.Fill(kind, families);
        CellStiffness.Unfold(families, full);
        var matrix = new double[576];
        for (int a = 0; a < 8; a++)
            for (int b = 0; b < 8; b++)
                for (int i = 0; i < 3; i++)
                    for (int j = 0; j < 3; j++)
                        matrix[(3 * a + i) * 24 + 3 * b + j] = full[(a * 8 + b) * 9 + 3 * i + j];
        return matrix;
    }

    [Fact]
    public void HasSixRigidMovementsAndNoOther()
    {
        (double[] values, _) = SmallEigen.Of(Full(Kind), 24);
        double[] sorted = [.. values.Order()];

        Assert.All(sorted[..6], v => Near.Absolute(0, v / sorted[^1], 1e-12, "a rigid movement"));
        Assert.True(sorted[6] > 1e-4 * sorted[^1], "no seventh movement is free: no hourglass");
        Assert.All(sorted[6..], v => Assert.True(v > 0));
    }

    /// <summary>Bending of one cell as a beam: M = E I/ρ in plane stress between narrow faces, exactly.</summary>
    [Fact]
    public void BendsAsABeamDoes()
    {
        double[] k = Full(Kind);
        // u = −x z κ, w = x² κ/2 at the corners, and across the swelling of plane stress, which the cell finds by itself: v free
        const double kappa = 1e-3;
        var u = new double[24];
        for (int n = 0; n < 8; n++)
        {
            double x = Kind.X / 2 * ((n & 1) == 0 ? -1 : 1), z = Kind.Z / 2 * ((n & 4) == 0 ? -1 : 1), y = Kind.Y / 2 * ((n & 2) == 0 ? -1 : 1);
            u[3 * n] = -x * z * kappa;
            u[3 * n + 1] = 0.3 * y * z * kappa;     // what a narrow beam does across
        }

        double twice = 0;
        for (int i = 0; i < 24; i++)
            for (int j = 0; j < 24; j++)
                twice += u[i] * k[24 * i + j] * u[j];
        double I = Kind.Y * Math.Pow(Kind.Z, 3) / 12;
        Near.Relative(210e9 * I * kappa * kappa * Kind.X, twice, 1e-9, "twice the strain energy, E I κ² L");
    }

    public static TheoryData<int> Six => [0, 1, 2, 3, 4, 5];

    /// <summary>A graded block in an even state of stress, pulled and sheared on all its faces and held by nothing: every cell must show that stress.</summary>
    [Theory, MemberData(nameof(Six))]
    public void PassesThePatchTest(int which)
    {
        var wanted = new StressState(which == 0 ? 1e6 : 0, which == 1 ? 1e6 : 0, which == 2 ? 1e6 : 0, which == 3 ? 1e6 : 0, which == 4 ? 1e6 : 0, which == 5 ? 1e6 : 0);
        var block = new Cuboid(0, 0.3, 0, 0.1, 0, 0.2);
        SolidMesh mesh = SolidMesh.Of(
            [new SolidPart("left", [block with { X1 = 0.13 }]), new SolidPart("right", [block with { X0 = 0.13 }])], [new Bond(0, 1, Cuboid.Everywhere)],
            new CellSizes(0.02, 0.05), [new Cuboid(0.05, 0.2, 0.03, 0.09, 0.011, 0.15)]);
        var forces = new Dictionary<int, Vector>();
        for (int part = 0; part < 2; part++)
            for (int axis = 0; axis < 3; axis++)
                foreach (bool far in (bool[])[true, false])
                {
                    if (axis == 0 && far == (part == 0))
                        continue;
                    Vector pull = axis switch
                    {
                        0 => new Vector(wanted.XX, wanted.XY, wanted.XZ),
                        1 => new Vector(wanted.XY, wanted.YY, wanted.YZ),
                        _ => new Vector(wanted.XZ, wanted.YZ, wanted.ZZ),
                    };
                    foreach ((int node, double share) in mesh.Face(part, axis, far ? block.To(axis) : block.From(axis), Cuboid.Everywhere))
                        forces[node] = forces.GetValueOrDefault(node) + (far ? share : -share) * pull;
                }

        SolidSolution solution = new SolidSolver(mesh).Solve(forces, 1e-9);

        Assert.True(mesh.CellCount > 200);
        for (int c = 0; c < mesh.CellCount; c++)
            foreach (double at in (double[])[-1, 0.3, 1])
            {
                StressState s = solution.Stress(c, at, -at, at);
                Near.Absolute(0, (s + -1 * wanted).Equivalent / 1e6, 1e-5, "stress beside the even one");
            }

    }

    [Fact]
    public void CantileverWithTwoCellsThroughItsDepthIsWithinTwoPerCent()
    {
        double coarse = Tip(0.05, 0.1), fine = Tip(0.0125, 0.02);
        // Timoshenko: F L³/3EI + F L/(κ G A)
        const double b = 0.04, h = 0.1, L = 1.0;
        double beam = L * L * L / (3 * 210e9 * b * h * h * h / 12) + 1.2 * L / (210e9 / 2.6 * b * h);

        Near.Relative(fine, coarse, 0.02, "two cells through the depth, of the converged tip");
        Near.Relative(beam, fine, 0.005, "converged, of the beam with shear");
    }

    private static double Tip(double fine, double coarse)
    {
        SolidMesh mesh = SolidMesh.Of([new SolidPart("bar", [new Cuboid(0, 1, -0.02, 0.02, -0.05, 0.05)])], [], new CellSizes(fine, coarse));
        var supports = new Supports();
        supports.HoldPlane(mesh, 0, 0, 0);
        supports.HoldPlane(mesh, 0, 0, 2, Cuboid.Everywhere with { Z0 = 0, Z1 = 0 });
        supports.HoldPlane(mesh, 0, 0, 1, Cuboid.Everywhere with { Y0 = -0.02, Y1 = -0.02 });
        Dictionary<int, double> tip = mesh.Face(0, 0, 1, Cuboid.Everywhere);
        double all = tip.Values.Sum();
        SolidSolution solution = new SolidSolver(mesh, supports).Solve(tip.ToDictionary(t => t.Key, t => t.Value / all * Vector.Up));
        Near.Absolute(-1, solution.Reaction.Z, 1e-5, "reaction");
        Near.Absolute(0, solution.Reaction.X, 1e-5, "reaction that should be nothing");
        return solution.Mean(tip).Z;
    }
}
