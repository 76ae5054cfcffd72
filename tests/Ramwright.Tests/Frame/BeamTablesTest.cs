using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>Beams that stand in every handbook, as one or two members of a frame.</summary>
public class BeamTablesTest
{
    private const string Book =
        "Timoshenko, Strength of Materials Part I; Roark 7th ed. Table 8.1; Shigley 9th ed. Table A-9";
    private const double I = 2492e-8, W = 311.5e-6, Avz = 1759e-6;      // HEB 160
    private static readonly SectionProperties Heb160 = Sketch.Section(5425e-6, I);

    private static Reference Row(string id) => new(id, Book, Trust.FromMemoryAndRecomputed);

    /// <summary>A beam along X through the given points.</summary>
    private static Sketch Beam(SectionProperties section, params double[] at)
    {
        var sketch = new Sketch();
        foreach (double x in at)
            sketch.Node(x, 0, 0);
        for (int i = 0; i + 1 < at.Length; i++)
            sketch.Member(i, i + 1, section);
        return sketch.Flat();
    }

    [Fact]
    public void SimplySupportedWithALoadAtTheCentre()
    {
        FrameSolution s = Beam(Heb160, 0, 0.5, 1).Hold(0, "ux uz").Hold(2, "uz").Solve(Sketch.Down(1, 100e3));

        double M = -s.At(0, 0.5).My;
        Row("B-01").Near("M, kN·m", 25.0, M / 1e3, 1e-9);
        Row("B-01").Near("σ, MPa", 80.26, M / W / 1e6, 1e-3);
        Row("B-01").Near("δ, mm", 0.3981, -s.Displacement(1).Z * 1e3, 1e-3);
    }

    [Fact]
    public void ShearAddsToTheSag()
    {
        FrameSolution s = Beam(Heb160 with { Asz = Avz }, 0, 0.5, 1).Hold(0, "ux uz").Hold(2, "uz").Solve(Sketch.Down(1, 100e3));
        FrameSolution bending = Beam(Heb160, 0, 0.5, 1).Hold(0, "ux uz").Hold(2, "uz").Solve(Sketch.Down(1, 100e3));

        Row("B-02").Near("δ, mm", 0.5741, -s.Displacement(1).Z * 1e3, 1e-3);
        Row("B-02").Near("δs, mm", 0.1760, (bending.Displacement(1).Z - s.Displacement(1).Z) * 1e3, 1e-3);
    }

    [Fact]
    public void FixedAtBothEndsWithALoadAtTheCentre()
    {
        FrameSolution s = Beam(Heb160, 0, 0.5, 1).Clamp(0).Clamp(2).Solve(Sketch.Down(1, 100e3));

        Row("B-03").Near("M at the centre, kN·m", 12.5, -s.At(0, 0.5).My / 1e3, 1e-9);
        Row("B-03").Near("M at the end, kN·m", 12.5, s.At(0, 0).My / 1e3, 1e-9);
        Row("B-03").Near("σ, MPa", 40.13, s.At(1, 0.5).My / W / 1e6, 1e-3);
        Row("B-03").Near("δ, mm", 0.09952, -s.Displacement(1).Z * 1e3, 1e-3);
    }

    [Fact]
    public void OverhangBowsTheSpanUp()
    {
        FrameSolution s = Beam(Heb160, 0, 1, 1.3).Hold(0, "ux uz").Hold(1, "uz").Solve(Sketch.Down(2, 50e3));

        Row("B-04").Near("M at the inner support, kN·m", 15.0, s.At(0, 1).My / 1e3, 1e-9);
        Row("B-04").Near("δ of the tip, mm", 0.3726, -s.Displacement(2).Z * 1e3, 1e-3);
        Row("B-04").Near("R0, kN", -15, s.Reaction(0).Force.Z / 1e3, 1e-9);
        Row("B-04").Near("R1, kN", 65, s.Reaction(1).Force.Z / 1e3, 1e-9);
        Row("B-04").Near("bow of the span, mm", 0.1839, s.DisplacementAlong(0, 0.5774).Z * 1e3, 1e-3);
        Row("B-04").Within("slope where it bows most, rad", 0, s.RotationAlong(0, 1 / Math.Sqrt(3)).Y, 1e-12);
    }

    [Fact]
    public void TwoEqualLoads()
    {
        FrameSolution s = Beam(Heb160, 0, 0.25, 0.75, 1).Hold(0, "ux uz").Hold(3, "uz")
            .Solve(Sketch.Down(1, 50e3), Sketch.Down(2, 50e3));

        Row("B-05").Near("M, kN·m", 12.5, -s.At(1, 0.1).My / 1e3, 1e-9);
        Row("B-05").Near("δ, mm", 0.2737, -s.DisplacementAlong(1, 0.25).Z * 1e3, 1e-3);
    }

    [Fact]
    public void LoadSpreadOverTheCentre()
    {
        FrameSolution s = Beam(Heb160, 0, 1).Hold(0, "ux uz").Hold(1, "uz")
            .Solve(new MemberLoad(0, new Vector(0, 0, -500e3), 0.4, 0.6));

        Row("B-06").Near("M, kN·m", 22.5, -s.At(0, 0.5).My / 1e3, 1e-9);
        Row("B-06").Near("δ, mm", 0.3905, -s.DisplacementAlong(0, 0.5).Z * 1e3, 1e-3);
    }

    [Fact]
    public void LoadOffCentre()
    {
        FrameSolution s = Beam(Heb160, 0, 0.3, 1).Hold(0, "ux uz").Hold(2, "uz").Solve(Sketch.Down(1, 100e3));

        Row("B-07").Near("M, kN·m", 21.0, -s.At(0, 0.3).My / 1e3, 1e-9);
        Row("B-07").Near("δ at the load, mm", 0.2809, -s.Displacement(1).Z * 1e3, 1e-3);
        Row("B-07").Near("δ at mid-span, mm", 0.3153, -s.DisplacementAlong(1, 0.2).Z * 1e3, 1e-3);
        Row("B-07").Near("R at the near end, kN", 70, s.Reaction(0).Force.Z / 1e3, 1e-9);
        Row("B-07").Near("R at the far end, kN", 30, s.Reaction(2).Force.Z / 1e3, 1e-9);
    }

    [Fact]
    public void DeepBeam()
    {
        const double b = 0.04, h = 0.2, A = b * h, Ib = b * h * h * h / 12;
        FrameSolution Sag(double Asz) => Beam(Sketch.Section(A, Ib, Asz: Asz), 0, 0.3, 0.6).Hold(0, "ux uz").Hold(2, "uz")
            .Solve(Sketch.Down(1, 200e3));

        FrameSolution s = Sag(A * 5 / 6);
        double sag = -s.Displacement(1).Z, bending = -Sag(double.PositiveInfinity).Displacement(1).Z;
        Row("B-08").Near("δb, mm", 0.1607, bending * 1e3, 1e-3);
        Row("B-08").Near("δs, mm", 0.0557, (sag - bending) * 1e3, 1e-3);
        Row("B-08").Near("δ, mm", 0.2164, sag * 1e3, 1e-3);
        Row("B-08").Near("σ, MPa", 112.5, -s.At(0, 0.3).My / (b * h * h / 6) / 1e6, 1e-3);
        Row("B-08").Near("τmax, MPa", 18.75, 1.5 * Math.Abs(s.At(0, 0.1).Vz) / A / 1e6, 1e-3);
    }
}
