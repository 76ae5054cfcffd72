using Ramwright.Geometry;
using Ramwright.Solids;

namespace Ramwright.Tests.Solids;

public class SolidSolverTest
{
    /// <summary>A portal of thin walls, held by nothing, pushed apart in its middle.</summary>
    private static (SolidMesh Mesh, Dictionary<int, Vector> Forces) Portal(double cell)
    {
        SolidPart Bar(string name, Cuboid flange, Cuboid web, Cuboid other) => new(name, [flange, web, other]);
        SolidPart Lying(string name, double z) => Bar(name, new Cuboid(-0.3, 0.3, -0.05, 0.05, z - 0.1, z - 0.09), new Cuboid(-0.3, 0.3, -0.004, 0.004, z - 0.09, z + 0.09),
            new Cuboid(-0.3, 0.3, -0.05, 0.05, z + 0.09, z + 0.1));
        SolidPart Standing(string name, double x) => new(name, [new Cuboid(x - 0.03, x + 0.03, -0.05, 0.05, -0.1, 0.9)]);
        SolidMesh mesh = SolidMesh.Of([Lying("crown", 0.8), Lying("bed", 0), Standing("right", 0.33), Standing("left", -0.33)],
            [new Bond(0, 2, Cuboid.Everywhere), new Bond(0, 3, Cuboid.Everywhere), new Bond(1, 2, Cuboid.Everywhere), new Bond(1, 3, Cuboid.Everywhere)],
            new CellSizes(cell, 1.5 * cell), [Cuboid.Everywhere with { X0 = -0.05, X1 = 0.05 }]);
        var forces = new Dictionary<int, Vector>();
        Cuboid die = Cuboid.Everywhere with { X0 = -0.05, X1 = 0.05 };
        foreach ((int part, double at, double sign) in ((int, double, double)[])[(0, 0.7, 1), (1, 0.1, -1)])
        {
            Dictionary<int, double> face = mesh.Face(part, 2, at, die);
            double all = face.Values.Sum();
            foreach ((int node, double share) in face)
                forces[node] = sign * share / all * Vector.Up;
        }

        return (mesh, forces);
    }

    [Fact]
    public void TurnsHardlyGrowAsCellsShrink()
    {
        (SolidMesh coarse, Dictionary<int, Vector> onCoarse) = Portal(0.02);
        (SolidMesh fine, Dictionary<int, Vector> onFine) = Portal(0.007);
        SolidSolution few = new SolidSolver(coarse).Solve(onCoarse), many = new SolidSolver(fine).Solve(onFine);

        Assert.True(fine.Unknowns > 6 * coarse.Unknowns, $"{coarse.Unknowns} and {fine.Unknowns}");
        Assert.True(many.Convergence.Iterations <= 1.3 * few.Convergence.Iterations, $"{few.Convergence.Iterations} and {many.Convergence.Iterations} turns");
        Assert.True(many.Convergence.Iterations < 80, $"{many.Convergence.Iterations} turns");
        // a cut anywhere between what pushes carries it, at the bed, half way and at the crown
        Assert.All([0.11, 0.37, 0.69], z => Near.Relative(1, many.Through(z), 1e-4, $"force through a level cut at {z} m"));
        Near.Absolute(0, many.Through(0.85), 1e-4, "force through a level cut above the crown's pressed face");
    }

    /// <summary>The estimate by which it stops is one of the error in energy: an answer solved a thousand times as far differs by no more.</summary>
    [Fact]
    public void StopsOnAnErrorInEnergyThatHolds()
    {
        (SolidMesh mesh, Dictionary<int, Vector> forces) = Portal(0.02);
        var solver = new SolidSolver(mesh);
        SolidSolution exact = solver.Solve(forces, 1e-8), near = solver.Solve(forces, 1e-3);
        double Work(SolidSolution s) => forces.Sum(f => f.Value.Dot(s.Displacement(f.Key)));

        Assert.InRange(near.Convergence.Error, 1e-6, 1e-3);
        Assert.True(near.Convergence.Iterations < exact.Convergence.Iterations);
        // the energy of the error is what is missing of the work
        double missing = Math.Sqrt(Math.Abs(1 - Work(near) / Work(exact)));
        Assert.True(missing <= near.Convergence.Error, $"missing {missing:E2}, said {near.Convergence.Error:E2}");
        Near.Relative(exact.Convergence.Energy, Work(exact), 1e-6, "twice the strain energy");
    }

    [Fact]
    public void OneHierarchyServesEveryCaseAndTheAnswerIsTheSameEveryTime()
    {
        (SolidMesh mesh, Dictionary<int, Vector> forces) = Portal(0.03);
        var solver = new SolidSolver(mesh);
        SolidSolution first = solver.Solve(forces);
        solver.Solve(forces.ToDictionary(f => f.Key, f => -2 * f.Value));
        SolidSolution again = solver.Solve(forces), fresh = new SolidSolver(mesh).Solve(forces);

        for (int i = 0; i < mesh.NodeCount; i++)
        {
            Assert.Equal(first.Displacement(i), again.Displacement(i));
            Assert.Equal(first.Displacement(i), fresh.Displacement(i));
        }
    }

    [Fact]
    public void CanBeStopped()
    {
        (SolidMesh mesh, Dictionary<int, Vector> forces) = Portal(0.02);
        var solver = new SolidSolver(mesh);
        using var stop = new CancellationTokenSource();
        int told = 0;

        Assert.Throws<OperationCanceledException>(() => solver.Solve(forces, 1e-9, _ =>
        {
            if (++told == 3)
                stop.Cancel();
        }, stop.Token));
        Assert.Equal(3, told);
    }
}
