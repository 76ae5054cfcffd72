using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Frame;

/// <summary>An open-front (C) frame of one section along its centre lines, pushed apart at the tips of its arms.</summary>
public class OpenFrameTest
{
    private const double F = 100e3, a = 0.35, h = 0.5, A = 8000e-6, I = 0.04 * 0.2 * 0.2 * 0.2 / 12;

    private static Reference Row(string id) => new(id, "unit-load method on the centre lines", Trust.Recomputed);

    private static FrameSolution Push(SectionProperties arm, SectionProperties spine)
    {
        var sketch = new Sketch();
        int low = sketch.Node(0, 0, 0), mid = sketch.Node(0, 0, h / 2), high = sketch.Node(0, 0, h);
        int lowTip = sketch.Node(a, 0, 0), highTip = sketch.Node(a, 0, h);
        sketch.Member(low, mid, spine, Vector.Across);
        sketch.Member(mid, high, spine, Vector.Across);
        sketch.Member(low, lowTip, arm);
        sketch.Member(high, highTip, arm);
        return sketch.Flat().Hold(mid, "ux uz ry").Solve(Sketch.Down(lowTip, F), Sketch.Lift(highTip, F));
    }

    private static double Opening(FrameSolution s) => s.Displacement(4).Z - s.Displacement(3).Z;

    [Fact]
    public void OpeningOfTheTips()
    {
        SectionProperties bar = Sketch.Section(A, I);
        FrameSolution s = Push(bar, bar);
        double stretch = s.Displacement(2).Z - s.Displacement(0).Z;
        double withShear = Opening(Push(bar with { Asz = A / 1.2 }, bar with { Asz = A / 1.2 }));

        Row("B-14").Near("bending, mm", 1.6042, (Opening(s) - stretch) * 1e3, 1e-3);
        Row("B-14").Near("stretch of the spine, mm", 0.0298, stretch * 1e3, 2e-3);
        Row("B-14").Near("opening, mm", 1.6339, Opening(s) * 1e3, 1e-3);
        Row("B-14").Near("shear of the arms, mm", 0.1300, (withShear - Opening(s)) * 1e3, 1e-3);
        Row("B-14").Near("opening with shear, mm", 1.7639, withShear * 1e3, 1e-3);
        Row("B-14").Near("turn of the upper tip, rad", 2.656e-3, -s.Rotation(4).Y, 1e-3);
    }

    [Fact]
    public void StressInTheSpine()
    {
        SectionProperties bar = Sketch.Section(A, I);
        Actions spine = Push(bar, bar).At(0, h / 4);

        Row("B-15").Near("σ inside, MPa", 143.75, (spine.N / A + spine.My * 0.1 / I) / 1e6, 1e-3);
        Row("B-15").Near("σ outside, MPa", -118.75, (spine.N / A - spine.My * 0.1 / I) / 1e6, 1e-3);
    }
}
