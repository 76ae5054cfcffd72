using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>A cantilever with every force and every moment on its tip, against the closed forms.</summary>
public class CantileverTest
{
    private const double L = 1.3, E = Sketch.E, G = Sketch.G, P = 12e3, C = 3e3;
    private static readonly SectionProperties S = Sketch.Uneven;

    private static readonly Reference Row =
        new("BM-01", "cantilever with tip load: Timoshenko, Strength of Materials Part I; shear and torsion added", Trust.Recomputed);

    private static FrameSolution Tip(Vector force, Vector moment = default, Vector? along = null, Vector? up = null)
    {
        var sketch = new Sketch();
        Vector x = L * (along ?? Vector.Across).Unit;
        int root = sketch.Node(0, 0, 0), tip = sketch.Node(x.X, x.Y, x.Z);
        sketch.Member(root, tip, S, up);
        return sketch.Clamp(root).Solve(new NodalLoad(tip, force, moment));
    }

    [Fact]
    public void PulledAlongItself()
    {
        FrameSolution s = Tip(new Vector(P, 0, 0));

        Row.Near("stretch, m", P * L / (E * S.A), s.Displacement(1).X, 1e-9);
        Assert.Equal(P, s.At(0, L / 2).N, 1e-6);
    }

    [Fact]
    public void BentUpwards()
    {
        FrameSolution s = Tip(new Vector(0, 0, P));

        Row.Near("rise, m", P * L * L * L / (3 * E * S.Iy) + P * L / (G * S.Asz), s.Displacement(1).Z, 1e-9);
        Row.Near("turn about −y, rad", P * L * L / (2 * E * S.Iy), -s.Rotation(1).Y, 1e-9);
        Row.Near("My at the root (stretches the lower edge), N·m", -P * L, s.At(0, 0).My, 1e-9);
        Row.Near("Vz, N", P, s.At(0, 0.4).Vz, 1e-9);
    }

    [Fact]
    public void BentSideways()
    {
        FrameSolution s = Tip(new Vector(0, P, 0));

        Row.Near("shift, m", P * L * L * L / (3 * E * S.Iz) + P * L / (G * S.Asy), s.Displacement(1).Y, 1e-9);
        Row.Near("turn about z, rad", P * L * L / (2 * E * S.Iz), s.Rotation(1).Z, 1e-9);
        Row.Near("Mz at the root (stretches the −y edge), N·m", P * L, s.At(0, 0).Mz, 1e-9);
        Row.Near("Vy, N", P, s.At(0, 0.4).Vy, 1e-9);
    }

    [Fact]
    public void Twisted()
    {
        FrameSolution s = Tip(default, new Vector(C, 0, 0));

        Row.Near("twist T L/(G It), rad", C * L / (G * S.It), s.Rotation(1).X, 1e-9);
        Row.Near("T, N·m", C, s.At(0, 0.1).T, 1e-9);
        Row.Near("twist at half length, rad", C * L / (G * S.It) / 2, s.RotationAlong(0, L / 2).X, 1e-9);
    }

    [Fact]
    public void MomentAboutY()
    {
        FrameSolution s = Tip(default, new Vector(0, C, 0));

        Row.Near("fall, m", C * L * L / (2 * E * S.Iy), -s.Displacement(1).Z, 1e-9);
        Row.Near("turn, rad", C * L / (E * S.Iy), s.Rotation(1).Y, 1e-9);
        Row.Near("My, N·m", C, s.At(0, 0.1).My, 1e-9);
    }

    [Fact]
    public void MomentAboutZ()
    {
        FrameSolution s = Tip(default, new Vector(0, 0, C));

        Row.Near("shift, m", C * L * L / (2 * E * S.Iz), s.Displacement(1).Y, 1e-9);
        Row.Near("turn, rad", C * L / (E * S.Iz), s.Rotation(1).Z, 1e-9);
        Row.Near("Mz, N·m", C, s.At(0, 0.1).Mz, 1e-9);
    }

    [Fact]
    public void StandingUprightItsOwnAxesFollowUp()
    {
        // x up, z to the right, so y = z × x points to the front (−Y).
        FrameSolution s = Tip(new Vector(P, P, 0), default, Vector.Up, Vector.Across);

        Row.Near("to the right, about Iy, m", P * L * L * L / (3 * E * S.Iy) + P * L / (G * S.Asz), s.Displacement(1).X, 1e-9);
        Row.Near("to the back, about Iz, m", P * L * L * L / (3 * E * S.Iz) + P * L / (G * S.Asy), s.Displacement(1).Y, 1e-9);
        Row.Near("Vz, N", P, s.At(0, 0).Vz, 1e-9);
        Row.Near("Vy, N", -P, s.At(0, 0).Vy, 1e-9);
        Row.Near("reaction to the right, N", -P, s.Reaction(0).Force.X, 1e-9);
        Row.Near("reaction moment about Y, N·m", -P * L, s.Reaction(0).Moment.Y, 1e-9);
        Row.Near("reaction moment about X, N·m", P * L, s.Reaction(0).Moment.X, 1e-9);
    }

    [Fact]
    public void ShapeBetweenTheEnds()
    {
        FrameSolution s = Tip(new Vector(0, 0, P));

        foreach (double x in new[] { 0, 0.2, 0.65, 1.1, L })
        {
            double w = P * x * x * (3 * L - x) / (6 * E * S.Iy) + P * x / (G * S.Asz);
            Row.Within($"w at {x} m, m", w, s.DisplacementAlong(0, x).Z, 1e-15);
        }
    }
}
