using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class LocalChecksTest
{
    private static readonly PartialFactors One = new(1, 1, 1, 1);

    [Fact]
    public void WebUnderAForce()
    {
        var one = new Reference("L-01", "EN 1993-1-5 section 6, type a: h 400, bf 180, tw 8.6, tf 13.5, fy 355, ss 75, a 3000", Trust.FoundAndRecomputed);
        one.Near("FRd, kN", 626.4, WebCrushing.Inside(new PressedBeam(0.4, 0.18, 0.0086, 0.0135, 355e6, 355e6), 0.075, 3.0) / 1e3, 0.002);
        var two = new Reference("L-02", "EN 1993-1-5 section 6, type a: HEB 200, S235, ss 50", Trust.OwnNumbers);
        two.Near("FRd, kN", 468.3, WebCrushing.Inside(new PressedBeam(0.2, 0.2, 0.009, 0.015, 235e6, 235e6), 0.050) / 1e3, 0.003);
        var three = new Reference("L-03", "EN 1993-1-5 section 6, type a: HEB 220, S275, ss 80", Trust.OwnNumbers);
        three.Near("FRd, kN", 694.9, WebCrushing.Inside(new PressedBeam(0.22, 0.22, 0.0095, 0.016, 275e6, 275e6), 0.080) / 1e3, 0.003);
        var ipe = new PressedBeam(0.24, 0.12, 0.0062, 0.0098, 275e6, 275e6);
        new Reference("L-04", "EN 1993-1-5 section 6, type a: IPE 240, S275, ss 60, the lower of two answers", Trust.OwnNumbers)
            .Near("FRd, kN", 282.7, WebCrushing.Inside(ipe, 0.060) / 1e3, 0.003);
        new Reference("L-05", "EN 1993-1-5 section 6, type c: IPE 240, S275, ss 60, c 0, the lower of two answers", Trust.OwnNumbers)
            .Near("FRd, kN", 175.8, WebCrushing.AtEnd(ipe, 0.060, 0) / 1e3, 0.003);
        Near.Relative(1.65, WebCrushing.Crushes(0.5, 100e3, new PartialFactors(M1: 1.1))!.Value.Factor, 1e-12);
        Assert.Null(WebCrushing.Crushes(0, 100e3, One));
    }

    [Fact]
    public void AnEndIsNeverStrongerThanTheInside() => Gen.Select(Gen.Double[0, 0.1], Gen.Double[0.7, 1.5], Gen.Double[0, 0.2]).Sample((ss, k, c) =>
    {
        var beam = new PressedBeam(0.24, 0.12, 0.0062 * k, 0.0098, 275e6, 275e6);
        Assert.True(WebCrushing.Inside(beam, ss * 1.2) >= WebCrushing.Inside(beam, ss) * 0.9);
        Assert.True(WebCrushing.AtEnd(beam, ss, c) <= WebCrushing.Inside(beam, ss) * (1 + 1e-12));
    }, iter: 100);

    [Fact]
    public void RoundOnFlat()
    {
        var line = new Reference("L-23", "Hertz, cylinder R 25 on a flat, L 100 mm, 100 kN, steel", Trust.FromMemoryAndRecomputed);
        (double p, double b) = Contact.Line(100e3, 0.025, 0.1);
        line.Near("p0, MPa", 1212, p / 1e6, 0.005);
        line.Near("half width, mm", 0.525, b * 1e3, 0.005);
        line.Near("τmax, MPa", 364, Contact.ShearUnderLine * p / 1e6, 0.005);
        line.Near("E*, MPa", 115_385, Contact.Modulus() / 1e6, 1e-5);
        var ball = new Reference("L-24", "Hertz, ball R 25 on a flat, 10 kN, steel", Trust.FromMemoryAndRecomputed);
        (double q, double a) = Contact.Point(10e3, 0.025);
        ball.Near("a, mm", 1.1757, a * 1e3, 0.005);
        ball.Near("p0, MPa", 3454, q / 1e6, 0.005);
        new Reference("L-25", "pad of 60 x 60 mm under 150 kN", Trust.Recomputed)
            .Near("pressure, MPa", 41.7, 235e6 * 150e3 / Contact.PadYields(1, 0.0036, 235e6, One)!.Value.GivesAt / 1e6, 0.001);
        double F = Contact.LineYields(1, 0.025, 0.1, 355e6, One)!.Value.GivesAt;
        Near.Relative(355e6 / 2, Contact.ShearUnderLine * Contact.Line(F, 0.025, 0.1).Pressure, 1e-9);
        // the pressure grows with the root of the force, so the factor on the strength counts twice
        Near.Relative(1.1 * 1.1 * 1.5, Contact.LineYields(1, 0.025, 0.1, 355e6, new PartialFactors(M0: 1.1))!.Value.Factor, 1e-12);
    }

    [Fact]
    public void PlateUnderAPatch()
    {
        var beta = new Reference("L-08", "Roark 7th ed. table 11.4, supported: β", Trust.FoundAndRecomputed);
        var alpha = new Reference("L-09", "Roark 7th ed. table 11.4, supported: α", Trust.FoundAndRecomputed);
        var fixedEdges = new Reference("L-10", "handbook coefficients of fixed edges", Trust.Found);
        double[] ratio = [1, 1.2, 1.4, 1.6, 1.8, 2, double.PositiveInfinity];
        double[] b = [0.435, 0.650, 0.789, 0.875, 0.927, 0.958, 1.0], a = [0.1267, 0.1480, 0.1623, 0.1715, 0.1771, 0.1804, 0.1851], e = [0.7542, 0.8940, 0.9624, 0.9906, 1.000, 1.004, 1.008];
        for (int i = 0; i < ratio.Length; i++)
        {
            beta.Near($"a/b {ratio[i]}", b[i], PlatePatch.Supported(ratio[i]).Beta, 0.005);
            alpha.Near($"a/b {ratio[i]}, against the Navier series", a[i], PlatePatch.Supported(ratio[i]).Alpha, 0.002);
            fixedEdges.Near($"edge, a/b {ratio[i]}", e[i], PlatePatch.Fixed(ratio[i]).Edge, 0.005);
        }

        var r = new Reference("L-11", "Roark 7th ed. table 11.4: W 100 kN, a = b = 300, t 30, r0 40", Trust.OwnNumbers);
        (double s, double y) = PlatePatch.RectangleSupported(100e3, 0.3, 0.3, 0.03, 0.04);
        r.Near("σ, MPa", 130.9, s / 1e6, 0.003);
        r.Near("y, mm", 0.2011, y * 1e3, 0.003);
        var small = new Reference("L-12", "the same, r0 10", Trust.OwnNumbers);
        small.Near("r0′, mm", 12.31, PlatePatch.PatchRadius(0.01, 0.03) * 1e3, 0.003);
        small.Near("σ, MPa", 212.2, PlatePatch.RectangleSupported(100e3, 0.3, 0.3, 0.03, 0.01).Stress / 1e6, 0.003);
        var round = new Reference("L-13", "Roark 7th ed. table 11.2: a 150, t 40, r0 40, 100 kN, supported", Trust.FromMemoryAndRecomputed);
        round.Near("σ, MPa", 81.1, PlatePatch.RoundSupported(100e3, 0.15, 0.04, 0.04).Stress / 1e6, 0.005);
        round.Near("y, mm", 0.0923, PlatePatch.RoundSupported(100e3, 0.15, 0.04, 0.04).Deflection * 1e3, 0.005);
        var clamped = new Reference("L-14", "the same, clamped", Trust.FromMemoryAndRecomputed);
        clamped.Near("σ, MPa", 51.3, PlatePatch.RoundClamped(100e3, 0.15, 0.04, 0.04).Stress / 1e6, 0.005);
        clamped.Near("y, mm", 0.0364, PlatePatch.RoundClamped(100e3, 0.15, 0.04, 0.04).Deflection * 1e3, 0.005);
        Assert.Throws<ArgumentOutOfRangeException>(() => PlatePatch.RectangleSupported(1, 0.2, 0.3, 0.03, 0.01));

        double[] centre = [-0.238, -0.078, 0.011, 0.053, 0.068, 0.067, 0.067];
        for (int i = 0; i < ratio.Length; i++)
            fixedEdges.Within($"centre, a/b {ratio[i]}", centre[i], PlatePatch.Fixed(ratio[i]).Centre, 1e-9);
        // 3·100e3/(2π·900) = 53.05 MPa times 1.3 ln(600/40π) − 0.238 = 1.7943; edge −0.7542·100e3/900
        var held = new Reference("MB-47", "Roark 7th ed. table 11.4, fixed edges: W 100 kN, b 300, t 30, r0 40", Trust.OwnNumbers);
        (double c, double edge, double bow) = PlatePatch.RectangleFixed(100e3, 0.3, 0.3, 0.03, 0.04);
        held.Near("centre, MPa", 95.19, c / 1e6, 0.001);
        held.Near("edge, MPa", -83.8, edge / 1e6, 0.001);
        held.Near("y, mm", 0.0611 * 1e5 * 9e4 / (210e3 * 27e3), bow * 1e3, 1e-9);
        held.Near("edge at a/b 1.2, MPa", -0.8940 * 1e5 / 900, PlatePatch.RectangleFixed(100e3, 0.36, 0.3, 0.03, 0.04).Edge / 1e6, 1e-9);
    }

    [Fact]
    public void WorkingOfAnyWebHolds() =>
        Gen.Select(Gen.Double[0.1, 1], Gen.Double[0.05, 0.5], Gen.Double[0.003, 0.03], Gen.Double[0.004, 0.03], Gen.Double[0, 0.2], Gen.Double[0, 0.3], Gen.Double[0.1, 1]).Sample((h, b, tw, tf, ss, c, a) =>
        {
            var beam = new PressedBeam(h, b + tw, tw, tf, 235e6, 355e6);
            var w = new Working();
            WebCrushing.Inside(beam, ss, a, w);
            Assert.Equal(w.Steps[^1].Si, WebCrushing.Inside(beam, ss, a));
            WorkingCheck.Shows(w, "m_1 m_2 k_F l_y F_cr λ_F F_R");
            WebCrushing.Inside(beam, ss, null, w);
            double end = WebCrushing.AtEnd(beam, ss, c, w);
            Assert.Equal(end, w.Steps[^1].Si);
            WorkingCheck.Holds(w);
            Assert.True(WebCrushing.Inside(beam, ss, a) <= a * tw * 235e6 * (1 + 1e-12));
        }, iter: 200);

    [Fact]
    public void NoMoreOfAWideFlangeCounts()
    {
        // 15 ε t_f on each side of the web, ε 0.8136 in S355: 8 + 30·0.8136·12 = 300.9 mm
        new Reference("MB-48", "EN 1993-1-5 6.5: flange that counts, S355, t_w 8, t_f 12", Trust.OwnNumbers)
            .Near("mm", 300.9, new PressedBeam(0.3, 0.5, 0.008, 0.012, 235e6, 355e6).CountedFlange * 1e3, 0.0005);
        Assert.Equal(0.3, new PressedBeam(0.3, 0.3, 0.008, 0.012, 235e6, 355e6).CountedFlange);
    }

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        var stocky = new PressedBeam(0.2, 0.2, 0.009, 0.015, 235e6, 235e6);
        var slender = new PressedBeam(0.4, 0.18, 0.0086, 0.0135, 355e6, 355e6);
        WebCrushing.Inside(stocky, 0.05, null, w);
        WebCrushing.Inside(slender, 0.075, 3, w);
        WebCrushing.AtEnd(slender, 0.075, 0.02, w);
        WebCrushing.Crushes(0.5, 468e3, PartialFactors.Recommended, w);
        Contact.Line(1e5, 0.025, 0.1, w);
        Contact.Point(1e4, 0.025, w);
        Contact.LineYields(0.5, 0.025, 0.1, 355e6, PartialFactors.Recommended, w);
        Contact.PadYields(0.5, 0.0036, 355e6, PartialFactors.Recommended, w);
        PlatePatch.Yields(0.5, 0.4, 0.3, 0.03, 0.04, 235e6, PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }
}
