using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>A rectangle of beams and uprights with rigid corners, pushed apart at the middle of both beams.</summary>
public class ClosedFrameTest
{
    private const double F = 200e3, Wb = 735.5e-6, Wc = 311.5e-6, Ac = 5425e-6;
    private static readonly SectionProperties Heb220 = Sketch.Section(9104e-6, 8091e-8);
    private static readonly SectionProperties Heb160 = Sketch.Section(Ac, 2492e-8);

    private static Reference Row(string id) =>
        new(id, "slope-deflection, with the stiffness ratio k of Kleinlogel's portal formulas", Trust.Recomputed);

    private const int Crown = 2, LeftUpright = 4;      // members

    private static FrameSolution Push(SectionProperties beam, SectionProperties upright, double L, double H, EndFixity? corner = null)
    {
        var sketch = new Sketch();
        int a = sketch.Node(0, 0, 0), bed = sketch.Node(L / 2, 0, 0), b = sketch.Node(L, 0, 0);
        int c = sketch.Node(0, 0, H), crown = sketch.Node(L / 2, 0, H), d = sketch.Node(L, 0, H);
        sketch.Member(a, bed, beam);
        sketch.Member(bed, b, beam);
        sketch.Member(c, crown, beam);
        sketch.Member(crown, d, beam);
        sketch.Member(a, c, upright, Vector.Across, corner, corner);
        sketch.Member(b, d, upright, Vector.Across, corner, corner);
        // Symmetry keeps the crown over the bed; with pinned uprights nothing else would.
        return sketch.Flat().Hold(bed, "ux uz ry").Hold(crown, "ux").Solve(Sketch.Down(bed, F), Sketch.Lift(crown, F));
    }

    private static double Opening(FrameSolution s) => s.Displacement(4).Z - s.Displacement(1).Z;

    [Fact]
    public void Moments()
    {
        FrameSolution s = Push(Heb220, Heb160, 0.8, 1.2);

        Actions mid = s.At(Crown, 0.4), corner = s.At(Crown, 0), upright = s.At(LeftUpright, 0.7);
        Row("B-09").Near("Mc, kN·m", 3.407, -corner.My / 1e3, 1e-3);
        Row("B-09").Near("Mm, kN·m", 36.593, mid.My / 1e3, 1e-3);
        Row("B-09").Near("N, kN", 100, upright.N / 1e3, 1e-9);
        Row("B-09").Near("σ of the beam, MPa", 49.75, mid.My / Wb / 1e6, 1e-3);
        Row("B-09").Near("σ of the upright, inner face, MPa", 29.37, (upright.N / Ac + upright.My / Wc) / 1e6, 1e-3);
        Row("B-09").Near("σ of the upright, outer face, MPa", 7.50, (upright.N / Ac - upright.My / Wc) / 1e6, 1e-3);
    }

    [Fact]
    public void OpeningFromBendingAndStretch()
    {
        FrameSolution s = Push(Heb220, Heb160, 0.8, 1.2);

        Row("B-10").Near("δb of each beam, mm", 0.1095, (s.Displacement(4).Z - s.Displacement(3).Z) * 1e3, 1e-3);
        Row("B-10").Near("stretch of the uprights, mm", 0.1053, (s.Displacement(3).Z - s.Displacement(0).Z) * 1e3, 1e-3);
        Row("B-10").Near("opening, mm", 0.3244, Opening(s) * 1e3, 1e-3);
        Row("B-10").Near("bow of an upright inward, mm", 0.1172,
            (s.DisplacementAlong(LeftUpright, 0.6).X - s.Displacement(0).X) * 1e3, 1e-3);
    }

    [Fact]
    public void ShearMoreThanDoublesTheOpening()
    {
        double bending = Opening(Push(Heb220, Heb160, 0.8, 1.2));
        double all = Opening(Push(Heb220 with { Asz = 2792e-6 }, Heb160, 0.8, 1.2));

        Row("B-11").Near("shear of each beam, mm", 0.1774, (all - bending) / 2 * 1e3, 1e-3);
        Row("B-11").Near("opening, mm", 0.6791, all * 1e3, 1e-3);
    }

    [Fact]
    public void SquareOfEqualMembers()
    {
        FrameSolution s = Push(Heb160, Heb160, 0.8, 0.8);

        Row("B-12").Near("Mc, kN·m", 10.0, -s.At(Crown, 0).My / 1e3, 1e-4);
        Row("B-12").Near("Mm, kN·m", 30.0, s.At(Crown, 0.4).My / 1e3, 1e-4);
    }

    [Fact]
    public void LimitsOfTheUprights()
    {
        FrameSolution stiff = Push(Heb160, Heb160 with { Iy = 2492e-8 * 1e7 }, 0.8, 0.8);
        FrameSolution pinned = Push(Heb160, Heb160, 0.8, 0.8, EndFixity.PinnedY);

        Row("B-13").Near("very stiff uprights: Mc, kN·m", 20, -stiff.At(Crown, 0).My / 1e3, 1e-6);
        Row("B-13").Near("very stiff uprights: Mm, kN·m", 20, stiff.At(Crown, 0.4).My / 1e3, 1e-6);
        Row("B-13").Within("pinned uprights: Mc, kN·m", 0, pinned.At(Crown, 0).My / 1e3, 1e-9);
        Row("B-13").Near("pinned uprights: Mm, kN·m", 40, pinned.At(Crown, 0.4).My / 1e3, 1e-9);
    }
}
