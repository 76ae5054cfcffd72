using CsCheck;
using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class TippingTest
{
    [Fact]
    public void CurvesOfTableSixFour()
    {
        var r = new Reference("MB-50", "EN 1993-1-1 table 6.4: rolled I, h/b up to 2 a, above b", Trust.FromMemory);
        static ISection I(double h) => new(h, 0.1, 0.006, 0.01, 0.012) { Name = "I", Source = Citation.Practice("made up") };
        r.Exactly("h/b 2", BucklingCurve.A, Tipping.Curve(I(0.2)));
        r.Exactly("h/b 2.1", BucklingCurve.B, Tipping.Curve(I(0.21)));
        r.Exactly("a flat", BucklingCurve.D, Tipping.Curve(new Flat(0.2, 0.01) { Name = "f", Source = Citation.Practice("made up") }));
    }

    private const double E = 210e9, G = E / 2.6;

    private static Shape Named(string text)
    {
        Assert.True(SectionText.TryRead(text, StockTables.Built, null, out Shape? shape, out _), text);
        return shape;
    }

    [Fact]
    public void AWorkedExampleUnderSpreadLoad()
    {
        var r = new Reference("MB-10", "Access Steel SX001a: IPE 330, S235, 5.70 m, load spread on the top flange", Trust.FromMemoryAndRecomputed);
        double Mcr = Tipping.Mcr(Named("IPE 330").Properties, 5.7, 1.127, 0.454, 0.165);
        r.Near("M_cr, kNm", 113.9, Mcr / 1e3, 0.01);
        r.Near("λ_LT with the plastic modulus", 1.288, Math.Sqrt(804.3e-6 * 235e6 / Mcr), 0.005);
    }

    [Fact]
    public void NarrowBarsTipAsTimoshenkoSays()
    {
        SectionProperties s = Sections.Flat(0.01, 0.2);
        double b = Math.Sqrt(E * s.Iz * G * s.It);
        var middle = new Reference("MB-11", "Timoshenko and Gere 6.3: narrow bar on two supports, force at mid-depth in the middle: 16.94", Trust.FromMemoryAndRecomputed);
        middle.Near("F L² / √(EI GJ)", 16.94, 4 * Tipping.Mcr(s, 2, Tipping.C1Middle, Tipping.C2Middle, 0) / 2 * 4 / b, 0.002);
        var tip = new Reference("MB-12", "Popov, Engineering Mechanics of Solids, problem 11-65, after Timoshenko: narrow cantilever 4.013", Trust.Found);
        tip.Near("F L² / √(EI GJ)", 4.013, Tipping.TipForce(s, 2, 0) * 4 / b, 1e-9);
        var even = new Reference("MB-13", "narrow bar under a moment that is the same all along: M_cr = π √(EI GJ) / L", Trust.Recomputed);
        even.Near("M_cr L / √(EI GJ)", Math.PI, Tipping.Mcr(s, 2, 1, 0, 0) * 2 / b, 1e-9);
    }

    [Theory]
    [InlineData(1, 1.00)]
    [InlineData(0.75, 1.14)]
    [InlineData(0.5, 1.31)]
    [InlineData(0.25, 1.52)]
    [InlineData(0, 1.77)]
    [InlineData(-0.25, 2.05)]
    [InlineData(-0.5, 2.33)]
    [InlineData(-0.75, 2.57)]
    public void EndMomentsAfterTheTable(double psi, double c1) =>
        new Reference("MB-14", "NCCI SN003, table of C1 for end moments", Trust.Found).Near($"ψ {psi}", c1, Tipping.EndMoments(psi), 1e-9);

    /// <summary>The critical tip force by finite differences: G J φ'' + (P(L − x))² φ / E I = 0, φ(0) = 0, G J φ'(L) = P z φ(L).</summary>
    private static double TipForceByShooting(SectionProperties s, double L, double z)
    {
        double EI = E * s.Iz, GJ = G * s.It;
        bool Past(double P)
        {
            int n = 4000;
            double h = L / n, phi = 0, slope = 1;
            double Curve(double x, double f) => -P * P * (L - x) * (L - x) * f / (EI * GJ);
            for (int i = 0; i < n; i++)
            {
                double x = i * h, k1 = slope, m1 = Curve(x, phi), k2 = slope + h / 2 * m1, m2 = Curve(x + h / 2, phi + h / 2 * k1);
                phi += h * k2;
                slope += h * m2;
                if (phi <= 0)
                    return true;
                _ = (k1, m1);
            }

            return GJ * slope <= P * z * phi;
        }

        double low = 0, high = 10 * Math.Sqrt(EI * GJ) / (L * L);
        for (int i = 0; i < 60; i++)
        {
            double mid = (low + high) / 2;
            if (Past(mid))
                high = mid;
            else
                low = mid;
        }

        return low;
    }

    [Fact]
    public void TheEdgeLoadedCantileverIsNeverRatedAboveTheExactAnswer()
    {
        Near.Relative(4.013, TipForceByShooting(Sections.Flat(0.01, 0.2), 2, 0) * 4 / Math.Sqrt(E * Sections.Flat(0.01, 0.2).Iz * G * Sections.Flat(0.01, 0.2).It), 0.001);
        Gen.Select(Gen.Double[0.005, 0.05], Gen.Double[0.06, 0.4], Gen.Double[0.1, 2]).Sample((t, h, L) =>
        {
            SectionProperties s = Sections.Flat(t, h);
            double exact = TipForceByShooting(s, L, h / 2), bound = Tipping.TipForce(s, L, h / 2);
            Assert.True(bound <= exact * 1.001, $"{bound} {exact}");
            Assert.True(bound >= exact * 0.75, $"{bound} {exact}");
        }, iter: 40);
    }

    [Fact]
    public void ATeeWithItsStemPushed()
    {
        var r = new Reference("MB-15", "AISC 360-16 F9-10: M_cr = (π/L) √(E I_y G J) (B + √(1 + B²)), B = −2.3 (d/L) √(I_y/J)", Trust.OwnNumbers);
        Tee t = Tee.HalfOf((ISection)Named("IPE 300"));
        SectionProperties s = t.Properties with { Iw = 0 };
        double B = -2.3 * t.H / 1.5 * Math.Sqrt(s.Iz / s.It), printed = Math.PI / 1.5 * Math.Sqrt(E * s.Iz * G * s.It) * (B + Math.Sqrt(1 + B * B));
        r.Near("M_cr, kNm", printed / 1e3, Tipping.Mcr(s, 1.5, 1, 1, Tipping.Lopsided(t)) / 1e3, 1e-9);
    }

    [Fact]
    public void WhatCannotTip()
    {
        Assert.False(Tipping.CanTip(Named("round 60")));
        Assert.False(Tipping.CanTip(RectangularHollow.Hot("s", 0.1, 0.1, 0.006)));
        Assert.False(Tipping.CanTip(new Turned(Named("IPE 200")) { Name = "t", Source = Citation.Practice("test") }));
        Assert.True(Tipping.CanTip(Named("IPE 200")));
        Assert.Null(Tipping.Tips(new Actions(0, 0, 0, 0, 1, 1), Sections.Ipe200, 1, 235e6, PartialFactors.Recommended));
    }

    [Fact]
    public void AThickerBarTipsLater() => Gen.Select(Gen.Double[0.003, 0.03], Gen.Double[0.1, 0.4], Gen.Double[0.2, 2], Gen.Double[1, 2]).Sample((t, h, L, more) =>
    {
        double F(double thick)
        {
            SectionProperties s = Sections.Flat(Math.Min(thick, h / 2), h);
            double chi = Tipping.Reduction(Tipping.Mcr(s, L, Tipping.C1Middle, Tipping.C2Middle, h / 2) / (L / 4), L / 4, s.Wely, 235e6, BucklingCurve.D);
            return chi * s.Wely;
        }

        Assert.True(F(t * more) >= F(t) * (1 - 1e-9));
    }, iter: 200);

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        Tipping.Mcr(Sections.Ipe200, 2, 1.348, 0.63, 0.1, w);
        Tipping.TipForce(Sections.Ipe200, 0.4, 0.1, w);
        Tipping.TipForce(Sections.Flat(0.01, 0.2), 0.4, 0.1, w);
        double chi = Tipping.Reduction(1e5, 0.3, Sections.Ipe200.Wely, 275e6, BucklingCurve.A, w);
        Tipping.Reduction(1e9, 0.3, Sections.Ipe200.Wely, 275e6, BucklingCurve.A, w);
        Tipping.Tips(new Actions(0, 0, 0, 0, 0.3, 0.01), Sections.Ipe200, chi, 275e6, PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }
}
