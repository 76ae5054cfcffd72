using Ramwright.Geometry;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solids;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>The deck writer and reader by themselves, against closed forms.</summary>
public class DeckTest
{
    private const double E = 210e9, G = E / 2.6;

    [SolidFact]
    public void Cantilever()
    {
        // 40 x 100 on edge, 1 m long, held at x = 0 without hindering its Poisson swelling
        const double b = 0.04, h = 0.1, L = 1, F = 10e3;
        var mesh = new BrickMesh([(0, new Cuboid(0, L, -b / 2, b / 2, -h / 2, h / 2))], [], [], [], 0.025, 0.1);
        var model = new SolidModel(mesh);
        model.HoldPlane(0, 0, 0);
        model.HoldPlane(0, 0, 2, new Cuboid(0, 0, -1, 1, 0, 0));
        model.HoldPlane(0, 0, 1, new Cuboid(0, 0, 0, 0, -1, 1));
        Dictionary<int, double> tip = mesh.Face(0, 0, L, Cuboid.Everywhere);
        model.Push(tip, F * Vector.Up);
        model.Cuts.Add(new Cut("C1", 0, 0, 0.4));
        SolidAnswer solid = Solver.Solve(model);

        double I = b * h * h * h / 12, A = b * h;
        Near.Relative(F * L * L * L / (3 * E * I) + 1.2 * F * L / (G * A), solid.Mean(tip).Z, 0.005, "deflection of the tip, FL³/3EI + 1.2FL/GA");
        (double N, double M, double at) = solid.Through(model.Cuts[0], 2, 0);
        Near.Relative(-F * (L - at), M, 1e-3, "moment at a cut");
        Near.Absolute(0, N, 1, "force along the bar at the cut");
        Near.Relative(-F, solid.Reaction.Z, 1e-4, "reaction");
    }

    [SolidFact]
    public void DeepBeam()
    {
        // half of a beam on two supports, 40 x 200 over 600 mm: shear is a quarter of the deflection
        const double b = 0.04, h = 0.2, L = 0.6, F = 200e3;
        var mesh = new BrickMesh([(0, new Cuboid(0, L / 2, 0, b / 2, -h / 2, h / 2))], [], [], [], 0.02, 0.05);
        var model = new SolidModel(mesh);
        model.HoldPlane(0, 0, 0);
        model.HoldPlane(1, 0, 1);
        model.HoldPlane(0, L / 2, 2, new Cuboid(L / 2, L / 2, -1, 1, 0, 0));
        Dictionary<int, double> end = mesh.Face(0, 0, L / 2, Cuboid.Everywhere), middle = mesh.Face(0, 0, 0, Cuboid.Everywhere);
        model.Push(end, F / 4 * Vector.Up);
        model.Push(middle, -F / 4 * Vector.Up);
        SolidAnswer solid = Solver.Solve(model);

        double I = b * h * h * h / 12, A = b * h;
        Near.Relative(F * L * L * L / (48 * E * I) + 1.2 * F * L / (4 * G * A), (solid.Mean(end) - solid.Mean(middle)).Z, 0.015, "deflection, FL³/48EI + 1.2FL/4GA");
    }
}
