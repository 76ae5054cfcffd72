using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>Uniform loads along all or part of a beam.</summary>
public class MemberLoadTest
{
    private const double L = 2.4, E = Sketch.E, G = Sketch.G, q = 30e3, I = 2.5e-5;
    private static readonly SectionProperties Slender = Sketch.Section(5e-3, I);
    private static readonly SectionProperties Deep = Slender with { Asz = 1.5e-3 };

    private static Reference Row(string id, string source, Trust trust = Trust.Recomputed) => new(id, source, trust);

    private static Sketch Beam(SectionProperties section)
    {
        var sketch = new Sketch();
        sketch.Member(sketch.Node(0, 0, 0), sketch.Node(L, 0, 0), section);
        return sketch.Flat();
    }

    private static MemberLoad Down(double from, double to) => new(0, new Vector(0, 0, -q), from, to);

    [Fact]
    public void ProppedCantileverUnderAFullLoad()
    {
        Reference row = Row("BM-02", "Roark 7th ed. Table 8.1; Shigley 9th ed. Table A-9", Trust.FromMemoryAndRecomputed);
        FrameSolution s = Beam(Slender).Clamp(0).Hold(1, "uz").Solve(Down(0, L));

        row.Near("reaction of the prop 3qL/8, N", 3 * q * L / 8, s.Reaction(1).Force.Z, 1e-9);
        row.Near("moment at the root qL²/8, N·m", q * L * L / 8, s.At(0, 0).My, 1e-9);
        // The books round the divisor to three figures.
        row.Near("greatest sag qL⁴/185EI, m", q * Math.Pow(L, 4) / (185 * E * I), -s.DisplacementAlong(0, 0.5785 * L).Z, 0.5 / 185);
    }

    [Fact]
    public void ProppedCantileverUnderAPartLoad()
    {
        // A load P at s from the clamped end puts P s²(3L − s)/2L³ on the prop; summed from a to b.
        Reference row = Row("BM-03", "influence line of the propped cantilever, integrated");
        const double a = 0.5, b = 1.7;
        FrameSolution s = Beam(Slender).Clamp(0).Hold(1, "uz").Solve(Down(a, b));

        double R = q / (2 * L * L * L) * (L * (b * b * b - a * a * a) - (Math.Pow(b, 4) - Math.Pow(a, 4)) / 4);
        row.Near("reaction of the prop, N", R, s.Reaction(1).Force.Z, 1e-9);
        row.Near("moment at the root, N·m", q * (b - a) * (a + b) / 2 - R * L, s.At(0, 0).My, 1e-9);
    }

    [Fact]
    public void FixedBeamLoadedFromAPointToItsEnd()
    {
        Reference row = Row("BM-04", "Roark 7th ed. Table 8.1, case 2d", Trust.FromMemoryAndRecomputed);
        const double a = 0.9, p = L - a;
        FrameSolution s = Beam(Slender).Clamp(0).Clamp(1).Solve(Down(a, L));

        row.Near("R_A, N", q * p * p * p * (L + a) / (2 * L * L * L), s.Reaction(0).Force.Z, 1e-9);
        row.Near("M_A, N·m", q * p * p * p * (L + 3 * a) / (12 * L * L), s.At(0, 0).My, 1e-9);
    }

    [Fact]
    public void DeepFixedBeamSagsByShearToo()
    {
        Reference row = Row("BM-05", "qL⁴/384EI + qL²/8GAs: Timoshenko, Strength of Materials Part I, shear added");
        FrameSolution s = Beam(Deep).Clamp(0).Clamp(1).Solve(Down(0, L));

        row.Near("sag, m", q * Math.Pow(L, 4) / (384 * E * I) + q * L * L / (8 * G * Deep.Asz), -s.DisplacementAlong(0, L / 2).Z, 1e-9);
        row.Near("end moment qL²/12, N·m", q * L * L / 12, s.At(0, 0).My, 1e-9);
        row.Near("moment at the centre qL²/24, N·m", -q * L * L / 24, s.At(0, L / 2).My, 1e-9);
    }

    [Fact]
    public void DeepProppedBeamGivesThePropLess()
    {
        Reference row = Row("BM-06", "force method: (qL⁴/8EI + qL²/2GAs)/(L³/3EI + L/GAs)");
        FrameSolution s = Beam(Deep).Clamp(0).Hold(1, "uz").Solve(Down(0, L));

        double gA = G * Deep.Asz;
        double R = (q * Math.Pow(L, 4) / (8 * E * I) + q * L * L / (2 * gA)) / (L * L * L / (3 * E * I) + L / gA);
        row.Near("reaction of the prop, N", R, s.Reaction(1).Force.Z, 1e-9);
    }

    [Fact]
    public void LoadAlongTheAxis()
    {
        Reference row = Row("BM-07", "bar between two walls, loaded along part of itself: force method");
        const double a = 0.3, b = 1.5;
        FrameSolution s = Beam(Slender).Clamp(0).Clamp(1).Solve(new MemberLoad(0, new Vector(q, 0, 0), a, b));

        double atFirst = q * (b - a) * (2 * L - a - b) / 2 / L;
        row.Near("N at the first end, N", atFirst, s.At(0, 0).N, 1e-9);
        row.Near("N at the second end, N", atFirst - q * (b - a), s.At(0, L).N, 1e-9);
        row.Near("N where the load ends, N", atFirst - q * (b - a), s.At(0, b).N, 1e-9);
        row.Near("shift where the load starts, m", atFirst * a / (E * Slender.A), s.DisplacementAlong(0, a).X, 1e-9);
    }

    [Fact]
    public void NarrowLoadActsLikeAPointLoad()
    {
        Reference row = Row("BM-08", "fixed beam, point load: P a b²/L²; Roark 7th ed. Table 8.1, case 1d", Trust.FromMemoryAndRecomputed);
        const double at = 0.7, width = 1e-7;
        FrameSolution s = Beam(Slender).Clamp(0).Clamp(1)
            .Solve(new MemberLoad(0, new Vector(0, 0, -1e4 / width), at - width / 2, at + width / 2));

        row.Near("M_A, N·m", 1e4 * at * (L - at) * (L - at) / (L * L), s.At(0, 0).My, 1e-8);
    }
}
