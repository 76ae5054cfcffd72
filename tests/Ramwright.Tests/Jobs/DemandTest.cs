using CsCheck;
using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Jobs;

/// <summary>What every formula implies of a whole demand: more steel, stronger steel, a tighter fit ask for more.</summary>
public sealed class DemandTest
{
    private static readonly WorkSteel S275 = new("S275", 275e6, 410e6, true);
    private static readonly Citation Own = Citation.Mechanics("test");

    private static RigVBend Bend(double t, double V) => new()
    {
        Name = "bend",
        Kind = "v-bend",
        Path = "jobs.0",
        Assumed = [],
        Thickness = t,
        Length = 0.3,
        Steel = S275,
        Angle = Math.PI / 2,
        Opening = V,
        Dies = [],
        PunchRadius = t,
    };

    private static RigCut Hole(double d, double t) => new()
    {
        Name = "hole",
        Kind = "punch",
        Path = "jobs.0",
        Assumed = [],
        Thickness = t,
        Edge = Math.PI * d,
        Hole = d,
        IsPunch = true,
        Steel = S275,
        Slope = 0,
    };

    private static RigPressFit Fit(double δ) => new()
    {
        Name = "fit",
        Kind = "press-fit",
        Path = "jobs.0",
        Assumed = [],
        Joint = new RigFitJoint
        {
            D = 0.05,
            Length = 0.05,
            HubOutside = 0.1,
            ShaftBore = 0,
            Least = δ,
            Most = δ,
            Hub = FitMetal.Steel,
            Shaft = FitMetal.Steel,
            IsBearing = false,
            Friction = 0.12,
        },
    };

    private static RigStraighten Shaft(double bow, double span) => new()
    {
        Name = "shaft",
        Kind = "straighten",
        Path = "jobs.0",
        Assumed = [],
        Bar = new Round(0.03) { Name = "round 30", Source = Own },
        Steel = S275,
        Span = span,
        Bow = bow,
    };

    [Fact]
    public void ThickerPlateTakesMoreAndAWiderVeeLess() =>
        Gen.Select(Gen.Double[1, 10], Gen.Double[6, 18], Gen.Double[1.05, 1.5]).Sample((t, ratio, more) =>
        {
            double V = ratio * t / 1e3, F = BendDemand.Of(Bend(t / 1e3, V)).Peak.Likely;
            Assert.True(BendDemand.Of(Bend(t * more / 1e3, V)).Peak.Likely > F);
            Assert.True(BendDemand.Of(Bend(t / 1e3, V * more)).Peak.Likely < F);
        }, iter: 300);

    [Fact]
    public void WiderHolesAndThickerPlateTakeMore() =>
        Gen.Select(Gen.Double[5, 40], Gen.Double[2, 20], Gen.Double[1.05, 2]).Sample((d, t, more) =>
        {
            Demand hole = CutDemand.Of(Hole(d / 1e3, t / 1e3));
            Assert.True(CutDemand.Of(Hole(d * more / 1e3, t / 1e3)).Peak.Likely > hole.Peak.Likely);
            Assert.True(CutDemand.Of(Hole(d / 1e3, t * more / 1e3)).Peak.Likely > hole.Peak.Likely);
            // slope spares the peak and not the work
            Demand sloped = CutDemand.Of(Hole(d / 1e3, t / 1e3) with { Slope = t / 1e3 });
            Assert.True(sloped.Peak.Likely < hole.Peak.Likely);
            Near.Relative(hole.Energy, sloped.Energy, 0.01);
        }, iter: 300);

    [Fact]
    public void ATighterFitTakesMoreAndGoesInWithTheDepth() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[1.05, 3]).Sample((δ, more) =>
        {
            Demand fit = FitDemand.Of(Fit(δ * 1e-6));
            Near.Relative(fit.Peak.Likely * more, FitDemand.Of(Fit(δ * more * 1e-6)).Peak.Likely, 1e-9);
            Near.Relative(fit.Peak.Likely / 2, fit.Resistance.Force(0.025, 0, 20), 1e-9);
        }, iter: 100);

    [Fact]
    public void ALongerBowTakesMoreUntilTheBarJustFolds() =>
        Gen.Select(Gen.Double[0.05, 3], Gen.Double[1.05, 2], Gen.Double[0.3, 1.2]).Sample((bow, more, span) =>
        {
            Demand shaft = StraightenDemand.Of(Shaft(bow / 1e3, span)), longer = StraightenDemand.Of(Shaft(bow * more / 1e3, span));
            Assert.True(longer.Peak.Likely >= shaft.Peak.Likely * (1 - 1e-9));
            Assert.True(longer.Travel >= shaft.Travel * (1 - 1e-9));
        }, iter: 200);

    [Fact]
    public void UnknownSteelIsReckonedAsItMayBe()
    {
        Demand known = BendDemand.Of(Bend(0.006, 0.05)), unknown = BendDemand.Of(Bend(0.006, 0.05) with { Steel = S275 with { HasPapers = false } });

        Assert.True(unknown.Peak.High > 2 * known.Peak.High);
        Assert.Contains(unknown.Flags, f => f.Text().Contains("far stronger", StringComparison.Ordinal));
    }

    [Fact]
    public void ABendOutsideOehlersRangeIsFlagged()
    {
        Assert.DoesNotContain(BendDemand.Of(Bend(0.006, 0.05)).Flags, f => f.Text().Contains("Oehler", StringComparison.Ordinal));
        Assert.Contains(BendDemand.Of(Bend(0.016, 0.16)).Flags, f => f.Text().Contains("Oehler", StringComparison.Ordinal));
        Assert.Contains(BendDemand.Of(Bend(0.006, 0.05) with { Leg = 0.02 }).Flags, f => f.Text().Contains("slips into this V", StringComparison.Ordinal));
    }

    [Fact]
    public void AlloyedSteelTakesAFifthMore()
    {
        var plain = new ShidaFlow(0.0042);
        Near.Relative(1.2, new ShidaFlow(0.0042, ForgingSteel.ChromeMoly).Stress(0.3, 1, 1100) / plain.Stress(0.3, 1, 1100), 1e-12);
    }

    [Fact]
    public void TheForceThatFitsTheSpeedIsFound()
    {
        var bite = new HotBite { Law = new ShidaFlow(0.002), Height = 0.03, Width = 0.03, Bite = 0.03, Target = 0.015 };
        // a ram that slows evenly to a stop at 120 kN
        static double SpeedAt(double F) => 0.05 * Math.Max(0, 1 - F / 120e3);
        foreach (ForceAt at in Demand.Sampled(bite, SpeedAt, 1100))
            Near.Absolute(bite.Force(at.Travel, SpeedAt(at.Force), 1100), at.Force, 1);
    }
}
