using CsCheck;
using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class MemberSectionTest
{
    private static readonly PartialFactors One = new(1, 1, 1, 1);

    [Fact]
    public void VonMises()
    {
        // 150 MPa from N and 60 MPa from Vz, per newton, on a unit of area.
        SectionProperties s = Sections.Flat(0.02, 0.1);
        var a = new Actions(150e6 * s.A, 0, 60e6 * s.Avz, 0, 0, 0);
        new Reference("L-28", "von Mises stress, EN 1993-1-1 eq. 6.1: σ 150, τ 60 MPa", Trust.Recomputed)
            .Near("stress, MPa", 182.5, 235e6 / MemberSection.Yield(a, s, 235e6, One)!.Value.GivesAt / 1e6, 0.001);
    }

    [Fact]
    public void MomentResistances()
    {
        var r = new Reference("L-27", "EN 1993-1-1 6.2.5, eq. 6.13 and 6.14, section properties of EN 10365", Trust.OwnNumbers);
        var bend = new Actions(0, 0, 0, 0, 1, 0);
        r.Near("IPE 200 S275 elastic, kN·m", 53.4, MemberSection.Yield(bend, Sections.Ipe200, 275e6, One)!.Value.GivesAt / 1e3, 0.003);
        r.Near("IPE 200 S275 plastic, kN·m", 60.7, MemberSection.Plastic(bend, Sections.Ipe200, 275e6, One)!.Value.GivesAt / 1e3, 0.003);
        r.Near("HEB 160 S235 elastic, kN·m", 73.2, MemberSection.Yield(bend, Sections.Heb160, 235e6, One)!.Value.GivesAt / 1e3, 0.003);
        r.Near("HEB 160 S235 plastic, kN·m", 83.2, MemberSection.Plastic(bend, Sections.Heb160, 235e6, One)!.Value.GivesAt / 1e3, 0.003);
    }

    [Fact]
    public void WebShearResistances()
    {
        var r = new Reference("L-26", "EN 1993-1-1 6.2.6, eq. 6.18", Trust.OwnNumbers);
        var shear = new Actions(0, 0, 1, 0, 0, 0);
        r.Near("HEB 160 S235, kN", 238.7, WebShear.Shear(shear, Sections.Heb160, 235e6, One)!.Value.GivesAt / 1e3, 0.003);
        r.Near("IPE 200 S275, kN", 222.3, WebShear.Shear(shear, Sections.Ipe200, 275e6, One)!.Value.GivesAt / 1e3, 0.003);
        r.Near("HEB 220 S275, kN", 443.3, WebShear.Shear(shear, Sections.Heb220, 275e6, One)!.Value.GivesAt / 1e3, 0.003);
        new Reference("T-13", "EN 1993-1-1 6.2.6: shear of IPE 240 S275", Trust.Recomputed)
            .Near("kN", 303.9, WebShear.Resistance(1914e-6, 275e6) / 1e3, 0.001);
    }

    [Fact]
    public void ClosedFrameStresses()
    {
        // B-09: crown HEB 220 with 36.593 kN·m, upright HEB 160 with 100 kN and 3.407 kN·m under 200 kN.
        var r = new Reference("B-09", "closed rectangular frame, slope deflection: stresses", Trust.Recomputed);
        double crown = 235 / (MemberSection.Yield((1 / 200e3) * new Actions(0, 0, 0, 0, 36.593e3, 0), Sections.Heb220, 235e6, One)!.Value.GivesAt / 200e3);
        double upright = 235 / (MemberSection.Yield((1 / 200e3) * new Actions(100e3, 0, 0, 0, 3.407e3, 0), Sections.Heb160, 235e6, One)!.Value.GivesAt / 200e3);
        r.Near("crown, MPa", 49.75, crown, 0.001);
        r.Near("upright, inner face, MPa", 29.37, upright, 0.001);
    }

    [Fact]
    public void OpenFrontSpineStress()
    {
        SectionProperties flat = Sections.Flat(0.04, 0.2);
        var a = new Actions(1, 0, 0, 0, 0.35, 0);
        double at100kN = 235 / (MemberSection.Yield(a, flat, 235e6, One)!.Value.GivesAt / 100e3);
        new Reference("B-15", "straight-beam stress in the spine of an open-front frame", Trust.Recomputed).Near("inside, MPa", 143.75, at100kN, 0.001);
    }

    [Fact]
    public void TheSignsOfTheActionsAddUpAsTheConventionSays()
    {
        // My stretches +z, Mz stretches −y; on an unsymmetric section the far edge counts.
        SectionProperties tee = Sections.Flat(0.05, 0.1) with { Top = 0.03, Bottom = 0.07 };
        double pull = MemberSection.Yield(new Actions(1, 0, 0, 0, 1, 0), tee, 235e6, One)!.Value.GivesAt;
        double expectedTop = 1 / tee.A + 0.03 / tee.Iy, expectedBottom = 1 / tee.A - 0.07 / tee.Iy;
        Near.Relative(235e6 / Math.Max(Math.Abs(expectedTop), Math.Abs(expectedBottom)), pull, 1e-12);

        SectionProperties channel = Sections.Flat(0.05, 0.1) with { Left = 0.02, Right = 0.03 };
        double z = MemberSection.Yield(new Actions(1, 0, 0, 0, 0, 1), channel, 235e6, One)!.Value.GivesAt;
        Near.Relative(235e6 / Math.Max(1 / channel.A + 0.02 / channel.Iz, Math.Abs(1 / channel.A - 0.03 / channel.Iz)), z, 1e-12);
        SectionProperties deepLeft = channel with { Left = 0.03, Right = 0.02 };
        Near.Relative(235e6 / (1 / channel.A + 0.03 / channel.Iz), MemberSection.Yield(new Actions(1, 0, 0, 0, 0, 1), deepLeft, 235e6, One)!.Value.GivesAt, 1e-12);
    }

    [Fact]
    public void WorkingShowsEveryStep()
    {
        var a = new Actions(1, 0.2, 0.4, 0.01, 0.1, 0.1);
        var w = new Working();
        MemberSection.Yield(a, Sections.Heb160, 235e6, PartialFactors.Recommended, SectionClass.One, w);
        WorkingCheck.Shows(w, "σ τ σ_v u F_gives F_safe");
        Assert.Single(w.Notes);
        var three = new Working();
        MemberSection.Yield(a, Sections.Heb160, 235e6, PartialFactors.Recommended, SectionClass.Three, three);
        Assert.Empty(three.Notes);
        var two = new Working();
        MemberSection.Yield(a, Sections.Heb160, 235e6, PartialFactors.Recommended, SectionClass.Two, two);
        Assert.Single(two.Notes);
        var plastic = new Working();
        MemberSection.Plastic(a, Sections.Heb160, 235e6, PartialFactors.Recommended, plastic);
        WorkingCheck.Shows(plastic, "m τ v u F_gives F_safe");
        var fatigue = new Working();
        (double sigma, double tau) = MemberFatigue.Edge(a, Sections.Heb160, fatigue);
        WorkingCheck.Shows(fatigue, "Δσ_1 Δτ_1");
        WorkingCheck.Holds(fatigue);
        Assert.Equal((sigma, tau), MemberFatigue.Edge(a, Sections.Heb160));
        // nothing acting: nothing to show
        var none = new Working();
        MemberSection.Yield(default, Sections.Heb160, 235e6, PartialFactors.Recommended, SectionClass.One, none);
        WorkingCheck.Shows(none, "");
        Assert.Empty(none.Notes);
        Assert.Throws<ArgumentOutOfRangeException>(() => MemberSection.Yield(a, Sections.Heb160, 0, PartialFactors.Recommended));
        Assert.Throws<ArgumentOutOfRangeException>(() => MemberSection.Plastic(a, Sections.Heb160, 0, PartialFactors.Recommended));
        Assert.Throws<ArgumentOutOfRangeException>(() => MemberSection.Plastic(new Actions(0, 0, 0, 0, 0, double.NaN), Sections.Heb160, 235e6, PartialFactors.Recommended));
    }

    [Fact]
    public void PlasticShearInteraction()
    {
        // EN 1993-1-1 6.2.8: at V = V_pl nothing is left for bending; below half of V_pl nothing is lost.
        SectionProperties s = Sections.Heb160;
        double fy = 235e6, Vpl = s.Avz * fy / Math.Sqrt(3), Mpl = s.Wply * fy;
        Near.Relative(Vpl, MemberSection.Plastic(new Actions(0, 0, 1, 0, 0, 0), s, fy, One)!.Value.GivesAt, 1e-12);
        double arm = 2 * Mpl / Vpl;      // V = Vpl/2 when M = Mpl
        Near.Relative(Vpl / 2, MemberSection.Plastic(new Actions(0, 0, 1, 0, arm, 0), s, fy, One)!.Value.GivesAt, 1e-12);
        Gen.Double[0.01, 0.99].Sample(t =>
        {
            double F = MemberSection.Plastic(new Actions(0, 0, 1, 0, t * arm, 0), s, fy, One)!.Value.GivesAt;
            double rho = Math.Pow(2 * F / Vpl - 1, 2);
            Near.Relative(1 - rho, F * t * arm / Mpl, 1e-9);
        }, iter: 100);
    }

    [Fact]
    public void FactorsStandBetweenGivesAndSafe()
    {
        Limit limit = MemberSection.Yield(new Actions(1, 0, 0, 0, 0.2, 0), Sections.Heb160, 235e6, PartialFactors.Recommended)!.Value;
        Near.Relative(1.5, limit.Factor, 1e-12);
        Limit stricter = MemberSection.Yield(new Actions(1, 0, 0, 0, 0.2, 0), Sections.Heb160, 235e6, new PartialFactors(M0: 1.1))!.Value;
        Near.Relative(1.65, stricter.Factor, 1e-12);
    }

    [Fact]
    public void ClassFourIsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        MemberSection.Yield(new Actions(1, 0, 0, 0, 0, 0), Sections.Heb160, 235e6, One, SectionClass.Four));

    [Fact]
    public void NoActionDoesNotApply()
    {
        Assert.Null(MemberSection.Yield(default, Sections.Heb160, 235e6, One));
        Assert.Null(MemberSection.Plastic(default, Sections.Heb160, 235e6, One));
        Assert.Null(WebShear.Shear(default, Sections.Heb160, 235e6, One));
        Assert.Throws<ArgumentOutOfRangeException>(() => MemberSection.Yield(new Actions(double.NaN, 0, 0, 0, 0, 0), Sections.Heb160, 235e6, One));
    }

    internal static readonly Gen<Actions> AnyActions =
        Gen.Select(Gen.Double[-2, 2], Gen.Double[-2, 2], Gen.Double[-2, 2], Gen.Double[-0.05, 0.05], Gen.Double[-0.5, 0.5], Gen.Double[-0.5, 0.5])
            .Select((n, vy, vz, t, my, mz) => new Actions(n, vy, vz, t, my, mz))
            .Where(a => Math.Abs(a.N) > 0.01 && Math.Abs(a.Vz) > 0.01 && Math.Abs(a.My) > 0.001);

    [Fact]
    public void LimitsScaleInverselyAndDoNotMindTheSignOfEverything() => AnyActions.Sample(a =>
    {
        double F = MemberSection.Yield(a, Sections.Heb160, 235e6, One)!.Value.GivesAt;
        Near.Relative(F / 3, MemberSection.Yield(3 * a, Sections.Heb160, 235e6, One)!.Value.GivesAt, 1e-9);
        Near.Relative(F, MemberSection.Yield(-1 * a, Sections.Heb160, 235e6, One)!.Value.GivesAt, 1e-9);
        double P = MemberSection.Plastic(a, Sections.Heb160, 235e6, One)!.Value.GivesAt;
        Near.Relative(P / 3, MemberSection.Plastic(3 * a, Sections.Heb160, 235e6, One)!.Value.GivesAt, 1e-9);
    }, iter: 200);

    [Fact]
    public void AThickerFlatNeverHoldsLess() =>
        Gen.Select(AnyActions, Gen.Double[0.01, 0.05], Gen.Double[0.05, 0.3], Gen.Double[1, 1.5], Gen.Double[1, 1.5]).Sample((a, b, h, kb, kh) =>
        {
            double F = MemberSection.Yield(a, Sections.Flat(b, h), 235e6, One)!.Value.GivesAt;
            double G = MemberSection.Yield(a, Sections.Flat(b * kb, h * kh), 235e6, One)!.Value.GivesAt;
            Assert.True(G >= F * (1 - 1e-12), $"{F} fell to {G}");
        }, iter: 300);

    [Fact]
    public void WorkingHolds() => AnyActions.Sample(a =>
    {
        var w = new Working();
        MemberSection.Yield(a, Sections.Heb160, 235e6, PartialFactors.Recommended, SectionClass.One, w);
        MemberSection.Plastic(a, Sections.Heb160, 235e6, PartialFactors.Recommended, w);
        WebShear.Shear(a, Sections.Heb160, 235e6, PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }, iter: 100);

    [Fact]
    public void PlatesAreClassed()
    {
        var r = new Reference("EN-5.2", "EN 1993-1-1:2005 table 5.2", Trust.FromMemory);
        double s235 = 235e6;
        r.Exactly("web in bending, c/t 72", SectionClass.One, PlateClass.Internal(0.720, 0.010, s235, 0.5, -1));
        r.Exactly("web in bending, c/t 83", SectionClass.Two, PlateClass.Internal(0.830, 0.010, s235, 0.5, -1));
        r.Exactly("web in bending, c/t 124", SectionClass.Three, PlateClass.Internal(1.235, 0.010, s235, 0.5, -1));
        r.Exactly("web in bending, c/t 125", SectionClass.Four, PlateClass.Internal(1.250, 0.010, s235, 0.5, -1));
        r.Exactly("web in compression, c/t 33", SectionClass.One, PlateClass.Internal(0.3299, 0.010, s235, 1, 1));
        r.Exactly("web in compression, c/t 42.1", SectionClass.Four, PlateClass.Internal(0.421, 0.010, s235, 1, 1));
        r.Exactly("flange, c/t 9", SectionClass.One, PlateClass.Outstand(0.0899, 0.010, s235));
        r.Exactly("flange, c/t 14.1", SectionClass.Four, PlateClass.Outstand(0.141, 0.010, s235));
        r.Exactly("flange in S355, c/t 9 is class 2 or worse", SectionClass.Three, PlateClass.Outstand(0.0899, 0.010, 355e6));
        r.Exactly("tube, d/t 90.1", SectionClass.Four, PlateClass.Tube(0.901, 0.010, s235));
        r.Near("ε of S355", 0.8136, PlateClass.Epsilon(355e6), 0.0002);
    }
}
