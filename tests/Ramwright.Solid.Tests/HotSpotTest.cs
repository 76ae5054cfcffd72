using Ramwright.Geometry;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>The reading of hot-spot stress itself, on details whose structural stress is known by other means.</summary>
public class HotSpotTest
{
    /// <summary>A strip of a cruciform joint whose two plates stand off each other, pulled between hinges.</summary>
    [Theory, InlineData(0.1), InlineData(0.25), InlineData(0.5)]
    public void PlatesThatMissEachOther(double share)
    {
        const double t = 0.02, l = 0.4, half = 0.01, w = 0.01;
        double e = share * t;
        var left = new Cuboid(-half - l, -half, 0, w, 0, t);
        var toe = new WeldToe(0, "left plate", 0, -half, -1, t, 2, t, 1, left);
        var mesh = new BrickMesh(
            [(0, left), (1, new Cuboid(-half, half, 0, w, -0.06, t + 0.06)), (2, new Cuboid(half, half + l, 0, w, e, t + e))], [],
            [new Bond(0, 1, Cuboid.Everywhere), new Bond(1, 2, Cuboid.Everywhere)],
            [.. toe.Planes.Select(x => Cuboid.Everywhere.With(0, x, x)), Cuboid.Everywhere.With(2, t / 2, t / 2 + e)], 0.002, 0.01, middles: false);
        var model = new SolidModel(mesh);
        model.HoldPlane(0, -half - l, 2, Cuboid.Everywhere.With(2, t / 2, t / 2));
        model.HoldPlane(0, half + l, 2, Cuboid.Everywhere.With(2, t / 2 + e, t / 2 + e));
        model.HoldPlane(0, -half - l, 0, Cuboid.Everywhere.With(2, t / 2, t / 2));
        model.HoldPlane(1, 0, 1);
        model.Push(mesh.Mesh.Face(0, 0, -half - l, Cuboid.Everywhere), -w * t * Vector.Across);
        model.Push(mesh.Mesh.Face(2, 0, half + l, Cuboid.Everywhere), w * t * Vector.Across);

        double stress = HotSpot.Along(toe, Solve(model)).Values.Max(h => h.Stress);

        // λ e l_1 / (t (l_1 + l_2)) with λ = 6 for ends that may turn, plates alike; that is bending alone, without the little that the plate across gathers
        new Reference($"HS-{share:0.00}", "IIW-1823-07, 3.8.2, misaligned cruciform joints, unrestrained: K_m = 1 + 3 e/t", Trust.FromMemoryAndRecomputed)
            .Near($"K at the toe, e/t = {share:0.00}", 1 + 3 * share, stress, 0.06);
    }

    /// <summary>A plate with a plate across it on both sides that carries nothing: no stress flows into it, and the structural stress is the plain one.</summary>
    [Fact]
    public void PlatesAcrossThatCarryNothing()
    {
        const double t = 0.02, w = 0.01;
        var plate = new Cuboid(-0.2, 0.2, 0, w, 0, t);
        var toe = new WeldToe(0, "plate", 0, -0.0075, -1, t, 2, t, 1, plate);
        var mesh = new BrickMesh(
            [(0, plate), (1, new Cuboid(-0.0075, 0.0075, 0, w, t, t + 0.06)), (2, new Cuboid(-0.0075, 0.0075, 0, w, -0.06, 0))], [],
            [new Bond(0, 1, Cuboid.Everywhere), new Bond(0, 2, Cuboid.Everywhere)], [.. toe.Planes.Select(x => Cuboid.Everywhere.With(0, x, x))], 0.002, 0.01, middles: false);
        var model = new SolidModel(mesh);
        model.HoldPlane(1, 0, 1);
        model.Push(mesh.Mesh.Face(0, 0, -0.2, Cuboid.Everywhere), -w * t * Vector.Across);
        model.Push(mesh.Mesh.Face(0, 0, 0.2, Cuboid.Everywhere), w * t * Vector.Across);

        new Reference("HS-across", "IMO, Common Structural Rules, part 1, chapter 9, section 5, 5.1.1: no stress flows into the plate across a simple cruciform joint", Trust.Found)
            .Near("hot-spot over plain stress", 1, HotSpot.Along(toe, Solve(model)).Values.Max(h => h.Stress), 0.08);
    }

    /// <summary>A plate with a gusset along it on both faces, a quarter of it, in engine's cells and in bricks of twenty nodes.</summary>
    [SolidFact]
    public void AGussetAlongAPlate()
    {
        const double t = 0.01, end = 0.05, far = 0.2;
        var plate = new Cuboid(0, far, 0, 0.04, 0, t / 2);
        var toe = new WeldToe(0, "plate", 0, end, 1, t, 2, t / 2, 1, plate) { From = 0, To = 0.004 };
        SolidModel Model(bool middles)
        {
            var mesh = new BrickMesh([(0, plate), (1, new Cuboid(0, end, 0, 0.004, t / 2, t / 2 + 0.04))], [], [new Bond(0, 1, Cuboid.Everywhere)],
                [.. toe.Planes.Select(x => Cuboid.Everywhere.With(0, x, x))], 0.0014, 0.006, middles);
            var model = new SolidModel(mesh);
            for (int axis = 0; axis < 3; axis++)
                model.HoldPlane(axis, 0, axis);
            model.Push(mesh.Mesh.Face(0, 0, far, Cuboid.Everywhere), 0.04 * t / 2 * Vector.Across);
            return model;
        }

        // nearest to the plane of symmetry, where the bricks' nodes are
        double own = HotSpot.Along(toe, Solve(Model(false))).Values.First().Stress;
        SolidModel fine = Model(true);
        SolidAnswer answer = Solver.Solve(fine);
        double At(double x) => OnFace(fine, answer, x, t / 2);
        double calculix = 1.67 * At(toe.Place(0)) - 0.67 * At(toe.Place(1));

        new Reference("HS-gusset", $"CalculiX {Solver.Version}, C3D20R bricks of the same length: gusset 100 by 8 along a plate 80 by 10 on both faces", Trust.Recomputed)
            .Near("hot-spot over plain stress", calculix, own, 0.04);
        Assert.InRange(own, 1.2, 2.2);
    }

    internal static SolidSolution Solve(SolidModel model)
    {
        var supports = new Supports();
        foreach ((int node, int direction) in model.Held)
            supports.Hold(node, direction);
        return new SolidSolver(model.Mesh.Mesh, supports).Solve(model.Forces, 1e-8);
    }

    // σ_x on the face at the plane of symmetry, from the movements of the nodes there: E/(1 − ν²) (ε_x + ν ε_y)
    internal static double OnFace(SolidModel model, SolidAnswer answer, double at, double z)
    {
        int[] line = [.. model.Mesh.Used.Where(n => Math.Abs(model.Mesh.Places[n].Z - z) < 1e-7 && Math.Abs(model.Mesh.Places[n].Y) < 1e-7).OrderBy(n => model.Mesh.Places[n].X)];
        double X(int n) => model.Mesh.Places[n].X;
        int here = Enumerable.Range(0, line.Length).MinBy(i => Math.Abs(X(line[i]) - at));
        (int a, int b, int c) = (line[here - 1], line[here], line[here + 1]);
        double h = X(b) - X(a), k = X(c) - X(b), before = (answer.Displacement(b).X - answer.Displacement(a).X) / h, after = (answer.Displacement(c).X - answer.Displacement(b).X) / k;
        double ex = (k * before + h * after) / (h + k);
        // the nearest two nodes across the plane of symmetry, which does not move across
        int[] across = [.. model.Mesh.Used.Where(n => Math.Abs(X(n) - X(b)) < 1e-7 && Math.Abs(model.Mesh.Places[n].Z - z) < 1e-7).OrderBy(n => model.Mesh.Places[n].Y)];
        double ey = answer.Displacement(across[1]).Y / model.Mesh.Places[across[1]].Y;
        return model.E / (1 - model.Nu * model.Nu) * (ex + model.Nu * ey);
    }
}
