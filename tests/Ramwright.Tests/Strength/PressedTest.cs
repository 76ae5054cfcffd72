using CsCheck;
using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class PressedTest
{
    private static readonly PartialFactors One = new(1, 1, 1, 1);
    private static readonly PressedBeam Hea = new(0.3, 0.3, 0.008, 0.012, 235e6, 235e6);

    [Fact]
    public void AStiffenedWebIsAColumn()
    {
        var r = new Reference("MB-20", "EN 1993-1-5 9.1 and 9.4: h 300, t_w 8, t_f 12, S235, plates 100 x 12 on both sides", Trust.OwnNumbers);
        // A = 2·100·12 + (240 + 12)·8 = 4416 mm²; I = 2(12·100³/12 + 1200·54²) + 252·8³/12 = 9.009e6 mm⁴; λ̄ = 207/45.17/93.91 = 0.0488: χ = 1
        r.Near("F_R, kN", 4416 * 0.235, StiffenedWeb.Resistance(Hea, 0.012, 0.1, true, 0) / 1e3, 1e-6);
        // of a thin plate only t √(E / 5.3 f_y) = 4·12.98 = 51.9 mm count: A = 2·51.94·4 + 244·8 = 2367.5 mm²
        r.Near("F_R with plates of 4 mm, kN", 2367.5 * 0.235, StiffenedWeb.Resistance(Hea, 0.004, 0.1, true, 0) / 1e3, 0.001);
        Assert.Equal(9e6, StiffenedWeb.Resistance(Hea, 0.012, 0.1, true, 9e6));
    }

    [Fact]
    public void ItsPlatesAreTiedByTheirWelds()
    {
        var r = new Reference("MB-52", "EN 1993-1-8 4.5.3.3 and ANSI/AISC 360-16 J10: two plates 100 x 276 clipped by 20, fillets of 5 on both faces, S235", Trust.OwnNumbers);
        var plate = new WebPlate(0.1, 0.276, 0.02, 2);
        // f_vw 360 / (√3·0.8) = 259.8 MPa on 2 plates · 2 faces · 5 · 80 mm
        r.Near("F_wR, kN", 415.7, StiffenerWeld.Resistance(plate, 5e-3, 360e6, 0.8) / 1e3, 1e-4);
        // (300 + 415.7) / 0.5; (300 / 1.0 + 415.7 / 1.25) / 0.5 / 1.5
        Limit tears = StiffenerWeld.Tears(-0.5, 300e3, 1, 415.69e3, PartialFactors.Recommended)!.Value;
        r.Near("tears at, kN", 1431.4, tears.GivesAt / 1e3, 1e-4);
        r.Near("safe to, kN", 843.4, tears.SafeTo / 1e3, 1e-4);
        Assert.Equal(0, StiffenerWeld.Resistance(plate with { Width = 0.049 }, 5e-3, 360e6, 0.8));
        Assert.Null(StiffenerWeld.Tears(0, 1e5, 1, 1e5, PartialFactors.Recommended));

        var w = new Working();
        StiffenerWeld.Resistance(plate, 5e-3, 360e6, 0.8, w);
        StiffenerWeld.Tears(0.5, 3e5, 1, 4e5, PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void ATallStiffenedWebBowsOutOfItsPlane()
    {
        // cross of plates and web: t_s (2b + t_w)³/12 and the strip's t_w³/12; one-sided: two rectangles about their common centroid
        var tall = new PressedBeam(3.024, 0.3, 0.010, 0.012, 235e6, 235e6);
        double ts = 0.008, b = 0.05, tw = 0.010, strip = 30 * tw, L = 0.75 * 3, web = (strip + ts) * tw;
        double two = ts * Math.Pow(2 * b + tw, 3) / 12 + strip * Math.Pow(tw, 3) / 12;
        double arm = (b + tw) / 2, one = ts * Math.Pow(b, 3) / 12 + (strip + ts) * Math.Pow(tw, 3) / 12 + b * ts * web / (b * ts + web) * arm * arm;
        foreach ((bool both, double A, double I) in (ReadOnlySpan<(bool, double, double)>)[(true, 2 * b * ts + web, two), (false, b * ts + web, one)])
        {
            double lambda = L / Math.Sqrt(I / A) / (Math.PI * Math.Sqrt(210e9 / 235e6));
            Assert.True(lambda > 0.5);
            Near.Relative(ColumnBuckling.Chi(lambda, BucklingCurve.C) * A * 235e6, StiffenedWeb.Resistance(tall, ts, b, both, 0), 1e-9, $"both {both}");
        }

        var w = new Working();
        StiffenedWeb.Resistance(tall, ts, b, true, 0, w);
        WorkingCheck.Holds(w);
        WorkingCheck.Shows(w, "b_s A I_s L_cr N_crs λ_s Φ_s χ_s F_R");
    }

    [Fact]
    public void AThickerStiffenerNeverCarriesLess() =>
        Gen.Select(Gen.Double[0.003, 0.03], Gen.Double[1, 2], Gen.Double[0.02, 0.2], Gen.Bool).Sample((t, more, b, both) =>
            Assert.True(StiffenedWeb.Resistance(Hea, t * more, b, both, 1e5) >= StiffenedWeb.Resistance(Hea, t, b, both, 1e5) * (1 - 1e-9)), iter: 200);

    [Fact]
    public void AHollowSectionPressedOnItsFace()
    {
        var r = new Reference("MB-21", "EN 1993-1-8 table 7.11, T joint: SHS 100x100x6, S235, foot 60 long", Trust.OwnNumbers);
        RectangularHollow s = RectangularHollow.Hot("s", 0.1, 0.1, 0.006);
        // the face used to its yield, n = 1; β 0.5: k_n = 1.3 − 0.8 = 0.5; 0.5·235·36/0.5·(1.2 + 4·0.7071) = 34.08 kN
        r.Near("foot 50 wide, kN", 34.08, HollowCrushing.Crushes(s, 0.06, 0.05, 235e6, 1, 1 / 34.08e3, One)!.Value.GivesAt / 1e3, 0.001);
        r.Near("foot 50 wide, face not bent, kN", 68.16, HollowCrushing.Crushes(s, 0.06, 0.05, 235e6, 1, 0, One)!.Value.GivesAt / 1e3, 0.001);
        // β 1: k_n 0.9; λ̄ = 3.46·14.667/93.91 = 0.5404, curve a χ 0.9106; 0.9·0.9106·235·6·(120 + 60) = 208.0 kN
        r.Near("foot as wide as the face, kN", 208.0, HollowCrushing.Crushes(s, 0.06, 0.1, 235e6, 1, 1 / 208.0e3, One)!.Value.GivesAt / 1e3, 0.002);
        Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[0.01, 0.15], Gen.Double[1, 1.5]).Sample((l, w, more) =>
            Assert.True(HollowCrushing.Resistance(s, l, w * more, 235e6) >= HollowCrushing.Resistance(s, l, w, 235e6) * (1 - 1e-9)), iter: 100);
    }

    [Fact]
    public void AFaceBentAndPressedOnAPointStillCarriesSomething()
    {
        RectangularHollow s = RectangularHollow.Hot("s", 0.1, 0.1, 0.006);
        double point = Math.PI * 235e6 * 0.006 * 0.006;        // yield lines round a point in a plate held at its edges: 4 π m_p, m_p = f_y t²/4
        Gen.Select(Gen.Double[0, 0.025], Gen.Double[0, 1e-3]).Sample((across, eta1) =>
        {
            double gives = HollowCrushing.Crushes(s, 0, across, 235e6, 1, eta1, One)!.Value.GivesAt;
            Assert.True(gives > 0 && (across > 0.01 || gives <= point), $"{gives:0} of {point:0} N");
            Assert.True(gives <= HollowCrushing.Crushes(s, 0, 0.025, 235e6, 1, eta1, One)!.Value.GivesAt * (1 + 1e-9));
        }, iter: 200);
    }

    [Fact]
    public void APlateOverAGap()
    {
        var r = new Reference("MB-22", "B-06, load spread over a central length: M = F(2L − c)/8; F 100 kN, c 200, L 1000", Trust.FromMemoryAndRecomputed);
        r.Near("M, kNm", 22.5, 100 * SpanningPlate.Moment(1, 0.2), 1e-9);
        Near.Relative(SpanningPlate.Moment(0.2, 0.2), SpanningPlate.Moment(0.2, 0.2 + 1e-12), 1e-9);
        // a foot 100 long spreads at 45° to mid-span: 100 + 200/2, but no more than the plate is long
        Near.Relative(0.2, SpanningPlate.Carrying(1, 0.1, 0.2), 1e-12);
        Near.Relative(0.15, SpanningPlate.Carrying(0.15, 0.1, 0.2), 1e-12);
        double t = SpanningPlate.Thickness(100e3, 0.2, 0.1, 0.15, 235e6);
        Near.Relative(100e3, SpanningPlate.Yields(0.2, 0.15, t, 0.1, 0.1, 235e6, One)!.Value.GivesAt, 1e-9);
    }

    [Fact]
    public void WebAndBendingTogether()
    {
        // η₂ = 0.5/100, η₁ = 0.9/100: (0.5 + 0.72)/1.4 = 0.871 of a hundredth
        Near.Relative(100 / 0.8714285714, WebCrushing.Crushes(0.5, 100, 0.009, One)!.Value.GivesAt, 1e-6);
        Near.Relative(100 / 0.5, WebCrushing.Crushes(0.5, 100, 0, One)!.Value.GivesAt, 1e-9);
    }

    [Fact]
    public void CornersOfPlateFrames()
    {
        var plate = new Flat(0.2, 0.04) { Name = "p", Source = Citation.Practice("test") };
        var r = new Reference("B-16", "40 x 200 plate, 100 kN at 350 mm from the centroid, inner corner", Trust.OwnNumbers);
        foreach ((double ri, double inside) in ((double, double)[])[(0.1, 212.5), (0.05, 265.0), (0.025, 352.6)])
            r.Near($"r {ri * 1e3} mm, MPa", inside, CurvedBeam.Stress(InnerCorner.Curved(plate, ri)!, 100e3, 35e3).Inside / 1e6, 0.002);
        Assert.Null(InnerCorner.Curved(plate, 0.005));
        Assert.NotNull(InnerCorner.Curved(new Round(0.05) { Name = "r", Source = Citation.Practice("test") }, 0.05));
        Assert.Null(InnerCorner.Curved(RectangularHollow.Hot("s", 0.1, 0.1, 0.006), 0.1));
    }

    [Fact]
    public void ASharpCornerIsANotch()
    {
        // t/r 20: C = 4.779, −5.042, 4.237, −2.957, by hand from the same formulas
        new Reference("MB-23", "Peterson, shoulder fillets in bending, H/d 2, t/r 20", Trust.OwnNumbers).Near("K_t", 2.948, InnerCorner.Notch(0.2, 0.005), 0.003);
        Assert.Equal(InnerCorner.Notch(0.2, 0.005), InnerCorner.Notch(0.2, 0));
        Gen.Select(Gen.Double[0.005, 0.9], Gen.Double[1, 1.1]).Sample((r, more) =>
            Assert.True(InnerCorner.Notch(0.2, r * more) <= InnerCorner.Notch(0.2, r) * 1.01), iter: 100);
    }

    [Fact]
    public void AnUprightWhereABeamIsWelded()
    {
        var r = new Reference("MB-24", "EN 1993-1-8 6.2.6: IPE 240 (a 5) on HEB 160, both S275, M 30 kNm", Trust.OwnNumbers);
        // z 230.2; b_eff = 9.8 + 14.14 + 5·28 = 163.9; A_vc 1759: ω = 1/√(1 + 1.3·0.7456²) = 0.7620; λ_p = 0.932√(163.9·104·275/(210000·64)) = 0.5505
        var c = new JointColumn(0.16, 0.008, 0.013, 0.015, 1759e-6);
        var end = new BeamEnd(0.2302, 0.0098 + 2 * Math.Sqrt(2) * 0.005, 5, 0.0098, 0.12, 275e6);
        r.Near("V_wp, kN", 251.4, UprightPanel.Shear(c, 275e6) / 1e3, 0.001);
        r.Near("web, kN", 0.7620 * 163.9 * 8 * 0.275, UprightPanel.Web(c, end, 275e6) / 1e3, 0.002);
        // 8 + 30 + 7·13 = 129 > 120 wide
        r.Near("flange, kN", 120 * 9.8 * 0.275, UprightPanel.Flange(c, end, 275e6) / 1e3, 1e-6);
        r.Near("ram force for 30 kNm at 100 kN, kN", 100 / (30 / 0.2302 / 251.4), UprightPanel.Gives(0, 0.3, c, end, 275e6, null, One)!.Value.GivesAt / 1e3, 0.002);
        var slender = new JointColumn(0.6, 0.005, 0.010, 0.005, 3000e-6);
        Assert.True(UprightPanel.Web(slender, end, 275e6) < UprightPanel.Web(slender with { Web = 0.006 }, end, 275e6));
        var w = new Working();
        UprightPanel.Gives(0.1, 0.3, c, end, 275e6, null, PartialFactors.Recommended, w);
        UprightPanel.Gives(0.1, 0.3, slender, end with { Flange = null }, 275e6, null, PartialFactors.Recommended, w);
        UprightPanel.Gives(0.1, 0.3, c, end, 275e6, Stiffener(0.02), PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }

    /// <summary>HEB 160 again; plates of both sides, 61 wide.</summary>
    private static PanelStiffener Stiffener(double t) => new(new PressedBeam(0.16, 0.16, 0.008, 0.013, 275e6, 275e6), t, 0.061);

    [Fact]
    public void PlatesBehindTheFlangesHelpUntilThePanelShears()
    {
        var slender = new JointColumn(0.6, 0.005, 0.010, 0.005, 3000e-6);
        var end = new BeamEnd(0.2302, 0.0098 + 2 * Math.Sqrt(2) * 0.005, 5, 0.0098, 0.12, 275e6);
        PanelStiffener Plates(double t) => new(new PressedBeam(0.6, 0.2, 0.005, 0.010, 275e6, 275e6), t, 0.09);
        double Gives(PanelStiffener? p) => UprightPanel.Gives(0, 0.3, slender, end, 275e6, p, One)!.Value.GivesAt;
        double none = Gives(null), thin = Gives(Plates(0.006)), full = Gives(Plates(0.010));

        Assert.True(none < thin && thin <= full, $"{none:0}, {thin:0}, {full:0}");
        // as thick as the beam's flange: what is left is the panel's shear, 0.9·275·3000/√3
        new Reference("MB-25", "EN 1993-1-8 6.2.6.1, panel in shear with stiffeners behind both flanges", Trust.OwnNumbers)
            .Near("ram force, kN", 0.2302 / 0.3 * 0.9 * 275 * 3000 / Math.Sqrt(3) / 1e3, full / 1e3, 1e-9);
        var w = new Working();
        UprightPanel.Gives(0.1, 0.3, slender, end, 275e6, Plates(0.006), PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void PlatesBehindAThinFlangeCarryBesideIt()
    {
        // k = 6/15; 12 + 10 + 7·0.4·6 = 38.8 wide; and two plates of 80 x 2
        var thin = new JointColumn(0.2, 0.012, 0.006, 0.005, 4000e-6);
        var end = new BeamEnd(0.2, 0.025, 5, 0.015, 0.2, 275e6);
        var plates = new PanelStiffener(new PressedBeam(0.2, 0.2, 0.012, 0.006, 275e6, 275e6), 0.002, 0.08);

        new Reference("MB-26", "flange of the upright after EN 1993-1-8 6.2.6.4.3, and what the plates carry beside it, by hand", Trust.OwnNumbers)
            .Near("ram force, kN", (38.8 * 15 + 2 * 80 * 2) * 0.275 * 2, UprightPanel.Gives(1, 0, thin, end, 275e6, plates, One)!.Value.GivesAt / 1e3, 1e-6);
    }

    [Fact]
    public void WhatNutsPressOn()
    {
        // M36, plain nut 54 wide, hole 39, plate S355 65 thick, f_u 470
        var r = new Reference("GU-04", "EN 1993-1-8 table 3.4, B_p = 0.6 π d_m t f_u; VDI 2230 pressure under nuts; by hand", Trust.OwnNumbers);
        double dm = 54 * (1 + 1 / Math.Cos(Math.PI / 6)) / 2;
        r.Near("punching, kN", 0.6 * Math.PI * dm * 65 * 0.470, NutBearing.Punches(1, dm / 1e3, 0.065, 470e6, One)!.Value.GivesAt / 1e3, 1e-9);
        r.Near("dent, kN", 2 * Math.PI / 4 * (54 * 54 - 39 * 39) * 0.355, NutBearing.Dents(1, 0.054, 0.039, 355e6, One)!.Value.GivesAt / 1e3, 1e-9);
        // 100 between webs, ring 54: 1/(0.025 − 0.054/2π) per newton; 71 left of 110, 30 thick: W 10 650 mm³, S235
        r.Near("washer, kN", 71 * 30 * 30 / 6.0 * 0.235 / (25 - 54 / (2 * Math.PI)), NutBearing.WasherBends(1, 0.1, 0.054, 0.071, 0.03, 235e6, One)!.Value.GivesAt / 1e3, 1e-9);
        Assert.Null(NutBearing.Dents(0, 0.054, 0.039, 355e6, One));
        var w = new Working();
        NutBearing.Punches(0.3, 0.058, 0.065, 470e6, PartialFactors.Recommended, w);
        NutBearing.Dents(0.3, 0.054, 0.039, 355e6, PartialFactors.Recommended, w);
        NutBearing.WasherBends(0.3, 0.1, 0.054, 0.071, 0.03, 235e6, PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        StiffenedWeb.Resistance(Hea, 0.004, 0.1, true, 0, w);
        StiffenedWeb.Resistance(Hea, 0.012, 0.1, false, 0, w);
        HollowCrushing.Crushes(RectangularHollow.Hot("s", 0.1, 0.1, 0.006), 0.06, 0.095, 235e6, 0.5, 1e-6, PartialFactors.Recommended, w);
        HollowCrushing.Crushes(RectangularHollow.Hot("s", 0.2, 0.1, 0.004), 0.06, 0.05, 355e6, 0.5, 0, PartialFactors.Recommended, w);
        HollowCrushing.Crushes(RectangularHollow.Hot("s", 0.2, 0.1, 0.004), 0.06, 0.015, 355e6, 0.5, 1e-5, PartialFactors.Recommended, w);
        SpanningPlate.Yields(0.2, 0.15, 0.04, 0.1, 0.1, 235e6, PartialFactors.Recommended, w);
        SpanningPlate.Yields(0.2, 0.15, 0.04, 0.3, 0.1, 235e6, PartialFactors.Recommended, w);
        WebCrushing.Crushes(0.5, 1e5, 1e-6, PartialFactors.Recommended, w);
        InnerCorner.Notch(0.2, 0.01, w);
        InnerCorner.Notch(0.2, 0.08, w);
        WorkingCheck.Holds(w);
    }
}
