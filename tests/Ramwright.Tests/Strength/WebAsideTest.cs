using Ramwright.Geometry;
using Ramwright.Solids;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class WebAsideTest
{
    private static readonly ISection Heb160 = Plain(0.16, 0.16, 0.008, 0.013);

    private static ISection Plain(double h, double b, double tw, double tf) => new(h, b, tw, tf, 0) { Name = "made up", Source = Citation.Mechanics("three plates") };

    [Fact]
    public void AsTheFormulaIsWorkedByHand()
    {
        var r = new Reference("MB-53", "EN 1993-6 5.7.3: I 160 x 160, web 8, flange 13, held 600 apart, 1 kN 20 mm beside the web", Trust.OwnNumbers);
        // I_t = 160·13³/3 = 117173; π·134/600 = 0.7016: sinh² 0.5788 over 1.9114 − 1.4032 = 1.1388; η = √(0.75·600·512·1.1388/117173) = 1.4964; tanh 0.9045
        // 6·20000/(600·64)·1.4964·0.9045 = 4.230 MPa
        r.Near("σ_T, MPa", 4.230, WebAside.Stress(Heb160, 0.6, 20) / 1e6, 0.001);
        Assert.Equal(WebAside.Stress(Heb160, 0.6, 20), WebAside.Stress(Heb160, 0.6, -20));
        var w = new Working();
        WebAside.Stress(Heb160, 0.6, 0.02, w);
        WorkingCheck.Holds(w);
    }

    /// <summary>Held far apart, the flange's turning dies away by itself and the length between no longer counts.</summary>
    [Fact]
    public void FarApartTheLengthDoesNotCount() =>
        Near.Relative(WebAside.Stress(Heb160, 30, 1), WebAside.Stress(Heb160, 60, 1), 1e-3, "stress of a web held 30 and 60 m apart");

    /// <summary>Against solids, which lie a fifth to a quarter below, so that the formula is on the safe side: a couple on a short piece of the upper flange of a beam whose ends are held.</summary>
    [Theory]
    [InlineData(0.6, 0.008, 0.013)]
    [InlineData(0.5, 0.006, 0.010)]
    [InlineData(0.9, 0.010, 0.016)]
    public void AgreesWithASolid(double a, double tw, double tf)
    {
        (double h, double b, double half) = (0.16, 0.16, 0.01);
        var beam = new SolidPart("beam",
        [
            new Cuboid(-a / 2, a / 2, -b / 2, b / 2, h - tf, h), new Cuboid(-a / 2, a / 2, -tw / 2, tw / 2, tf, h - tf), new Cuboid(-a / 2, a / 2, -b / 2, b / 2, 0, tf),
        ]);
        Cuboid pressed = Cuboid.Everywhere with { X0 = -half, X1 = half };
        SolidMesh mesh = SolidMesh.Of([beam], [], new CellSizes(tw / 2, 0.02), [pressed, pressed with { Y0 = -b / 4, Y1 = b / 4 }]);
        var supports = new Supports();
        foreach (double end in (double[])[-a / 2, a / 2])
            for (int direction = 0; direction < 3; direction++)
                supports.HoldPlane(mesh, 0, end, direction);
        var forces = new Dictionary<int, Vector>();
        foreach (int side in (int[])[-1, 1])
        {
            Dictionary<int, double> face = mesh.Face(0, 2, h, pressed with { Y0 = side < 0 ? -b / 2 : b / 4, Y1 = side < 0 ? -b / 4 : b / 2 });
            double all = face.Values.Sum(), arm = face.Sum(f => f.Value * Math.Abs(mesh.At(f.Key).Y)) / all;
            foreach ((int node, double share) in face)
                forces[node] = side * 0.5 / arm * share / all * Vector.Up;
        }

        SolidSolution s = new SolidSolver(mesh, supports).Solve(forces, 1e-6);
        // the wall's faces under the flange, a wall's half thickness below the corner whose sharpness is no bending
        double most = 0;
        for (int c = 0; c < mesh.CellCount; c++)
        {
            Cuboid box = mesh.CellBox(c);
            if (Math.Abs(box.Y1 - tw / 2) < 1e-9 && Math.Abs(box.X0 + box.X1) < 0.02 && box.Z1 < h - tf - tw / 4 && box.Z1 > h - tf - 1.2 * tw)
                most = Math.Max(most, Math.Abs(s.Stress(c, 0, 1, 0).ZZ));
        }

        // the solid's couple stands on 20 mm and not on a point, and its stress is read a little below the flange
        Assert.InRange(most / WebAside.Stress(Plain(h, b, tw, tf), a, 1), 0.75, 0.85);
    }
}
