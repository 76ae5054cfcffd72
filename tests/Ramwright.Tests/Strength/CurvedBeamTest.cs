using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class CurvedBeamTest
{
    private const double Inch = 0.0254, Lbf = 4.4482216, Kpsi = 6.894757e6;

    [Fact]
    public void CraneHook()
    {
        var r = new Reference("B-17", "Shigley 9th ed. crane hook, b 0.75, h 4, ri 2 in, 5000 lbf", Trust.FoundAndRecomputed);
        CurvedSection s = CurvedSection.Rectangle(0.75 * Inch, 4 * Inch, 2 * Inch);
        r.Near("rn, in", 3.641, s.Rn / Inch, 0.003);
        r.Near("rc, in", 4, s.Rc / Inch, 0.003);
        r.Near("e, in", 0.3590, s.E / Inch, 0.003);
        (double i, double o) = CurvedBeam.Stress(s, 5000 * Lbf, 5000 * Lbf * s.Rc);
        r.Near("inside, kpsi", 16.90, i / Kpsi, 0.003);
        r.Near("outside, kpsi", -5.63, o / Kpsi, 0.003);
        new Reference("B-18", "Shigley eq. 3-66: quick estimate e = I/(rc A)", Trust.FoundAndRecomputed)
            .Near("e over that, 0.3590/0.3333", 1.0771, s.E / (Math.Pow(4 * Inch, 2) / 12 / s.Rc), 0.001);
        new Reference("B-19", "the same hook by the straight-beam formula reads low inside", Trust.Recomputed)
            .Within("low by", 0.31, 1 - 11.67 * Kpsi / i, 0.002);
    }

    [Fact]
    public void SpineOfAnOpenFrontFrame()
    {
        var r = new Reference("B-16", "Winkler-Bach: 40 x 200 flat, 100 kN at 350 mm from the centroid", Trust.OwnNumbers);
        foreach ((double ri, double i, double o) in (ReadOnlySpan<(double, double, double)>)[(100, 212.5, -83.3), (50, 265.0, -73.0), (25, 352.6, -64.2)])
        {
            (double inside, double outside) = CurvedBeam.Stress(CurvedSection.Rectangle(0.04, 0.2, ri / 1e3), 100e3, 100e3 * 0.35);
            r.Near($"ri {ri}, inside, MPa", i, inside / 1e6, 0.002);
            r.Near($"ri {ri}, outside, MPa", o, outside / 1e6, 0.002);
        }

        new Reference("T-08", "trap: straight-beam stress at the inside corner", Trust.Recomputed)
            .Near("ratio at ri 50", 1.84, CurvedBeam.Stress(CurvedSection.Rectangle(0.04, 0.2, 0.05), 100e3, 35e3).Inside / 143.75e6, 0.005);
    }

    [Fact]
    public void RoundBar() => new Reference("B-20", "Shigley table 3-4: round d 50, rc 60", Trust.FromMemoryAndRecomputed)
        .Near("rn, mm", 57.2718, CurvedSection.Circle(0.05, 0.06).Rn * 1e3, 0.0001);

    [Fact]
    public void TrapezoidHook()
    {
        var r = new Reference("B-21", "Shigley table 3-4: trapezoid bi 80, bo 40, h 120, ri 80, 50 kN on the centre of curvature", Trust.FromMemoryAndRecomputed);
        CurvedSection s = CurvedSection.Trapezoid(0.08, 0.04, 0.12, 0.08);
        r.Near("A, mm²", 7200, s.A * 1e6, 0.002);
        r.Near("rc, mm", 133.333, s.Rc * 1e3, 0.002);
        r.Near("rn, mm", 124.702, s.Rn * 1e3, 0.002);
        (double i, double o) = CurvedBeam.Stress(s, 50e3, 50e3 * s.Rc);
        r.Near("inside, MPa", 66.9, i / 1e6, 0.002);
        r.Near("outside, MPa", -33.4, o / 1e6, 0.002);
    }

    [Fact]
    public void FactorsOfARectangle()
    {
        var r = new Reference("B-22", "Timoshenko; handbook table of curved-beam factors, rectangle in pure bending", Trust.FromMemoryAndRecomputed);
        double[] ratio = [1.2, 1.4, 1.6, 1.8, 2, 3, 4, 6];
        double[] ki = [2.888, 2.103, 1.798, 1.631, 1.523, 1.288, 1.200, 1.124], ko = [0.566, 0.628, 0.671, 0.704, 0.730, 0.810, 0.853, 0.898];
        for (int n = 0; n < ratio.Length; n++)
        {
            double c = 0.05, b = 0.03, I = b * Math.Pow(2 * c, 3) / 12;
            (double i, double o) = CurvedBeam.Factors(CurvedSection.Rectangle(b, 2 * c, ratio[n] * c - c), I);
            r.Near($"Ki, rc/c {ratio[n]}", ki[n], i, 0.002);
            r.Near($"Ko, rc/c {ratio[n]}", ko[n], o, 0.002);
        }
    }

    [Fact]
    public void StripsAgreeWithTheWhole() => Gen.Select(Gen.Double[0.01, 0.1], Gen.Double[0.01, 0.1], Gen.Double[0.05, 0.2], Gen.Double[0.02, 0.5], Gen.Double[0.1, 0.9]).Sample((bi, bo, h, ri, cut) =>
    {
        double middle = bi + (bo - bi) * cut;
        CurvedSection whole = CurvedSection.Trapezoid(bi, bo, h, ri), parts = CurvedSection.Strips([(bi, middle, h * cut), (middle, bo, h * (1 - cut))], ri);
        Near.Relative(whole.Rn, parts.Rn, 1e-9);
        Near.Relative(whole.Rc, parts.Rc, 1e-9);
    }, iter: 100);

    [Fact]
    public void ARoundBarIsManyThinStrips() => Gen.Select(Gen.Double[0.01, 0.1], Gen.Double[0.6, 5], Gen.Double[-1, 1], Gen.Double[-1, 1]).Sample((d, k, N, M) =>
    {
        // chords of a polygon of 2000 sides; its area is short of the circle's by 2e-6
        const int n = 1000;
        double Depth(int j) => d / 2 * (1 - Math.Cos(Math.PI * j / n));
        double Width(int j) => Math.Max(d * Math.Sin(Math.PI * j / n), 1e-9 * d);
        CurvedSection round = CurvedSection.Circle(d, d * k);
        CurvedSection strips = CurvedSection.Strips([.. from j in Enumerable.Range(0, n) select (Width(j), Width(j + 1), Depth(j + 1) - Depth(j))], d * k - d / 2);
        Near.Relative(Math.PI / 4 * d * d, round.A, 1e-12);
        (double inside, double outside) = CurvedBeam.Stress(round, N, M);
        (double i, double o) = CurvedBeam.Stress(strips, N, M);
        double size = Math.Abs(N) / round.A + Math.Abs(M) / (d * d * d);
        Near.Absolute(i, inside, 1e-3 * size * 40);
        Near.Absolute(o, outside, 1e-3 * size * 40);
        Near.Relative(strips.Rc, round.Rc, 1e-6);
    }, iter: 20);

    [Fact]
    public void ALargeRadiusIsAStraightBeam()
    {
        (double i, double o) = CurvedBeam.Factors(CurvedSection.Rectangle(0.03, 0.1, 100), 0.03 * 0.001 / 12);
        Near.Absolute(1, i, 0.001);
        Near.Absolute(1, o, 0.001);
        Assert.Throws<ArgumentOutOfRangeException>(() => CurvedSection.Rectangle(0.03, 0.1, 0.001));
    }

    [Fact]
    public void LimitScalesAndItsWorkingHolds()
    {
        CurvedSection s = CurvedSection.Rectangle(0.04, 0.2, 0.05);
        var w = new Working();
        Limit limit = CurvedBeam.Yield(s, 1, 0.35, 235e6, PartialFactors.Recommended, w)!.Value;
        WorkingCheck.Holds(w);
        Near.Relative(235e6 / 265.0e6 * 100e3, limit.GivesAt, 0.002);
        Near.Relative(limit.GivesAt / 2, CurvedBeam.Yield(s, 2, 0.7, 235e6, PartialFactors.Recommended)!.Value.GivesAt, 1e-12);
        Assert.Null(CurvedBeam.Yield(s, 0, 0, 235e6, PartialFactors.Recommended));
    }
}
