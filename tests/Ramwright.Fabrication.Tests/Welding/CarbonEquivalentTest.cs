using Ramwright.Fabrication.Welding;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Welding;

public class CarbonEquivalentTest
{
    private const string Formulas = "CE, CET and Pcm as EN 1011-2 C.2.1, C.3.2.1 and preheat pages print them; composition typical";

    public static TheoryData<string, string, Composition, double, double, double> Steels() => new()
    {
        { "WD-01", "S235-type", new(.15, .20, .80, .05, .01, .05, .10), .3053, .2397, .2057 },
        { "WD-02", "S355-type", new(.18, .35, 1.45, .05, .01, .05, .10, .005), .4447, .3347, .2737 },
        { "WD-03", "S690QL-type", new(.16, .30, 1.20, .40, .30, .30, .05, .03, .002), .5293, .3400, .2905 },
        { "WD-04", "C45 bar", new(.46, .25, .65, .10, .02, .10, .15), .6090, .5420, .5163 },
        { "WD-05", "4130 mid-range", new(.305, .25, .50, .95, .20), .6183, .4225, .3992 },
        { "WD-06", "42CrMo4", new(.41, .25, .75, 1.05, .22), .7890, .5595, .5230 },
        { "WD-07", "5160 spring", new(.60, .25, .85, .80), .9017, .7250, .6908 },
        { "WD-08", "51CrV4 spring", new(.51, .25, .90, 1.05, V: .15), .9000, .6525, .6308 },
        { "WD-09", "boron fork bar", new(.33, .25, 1.35, .45, B: .003), .6450, .4875, .4433 },
    };

    [Theory, MemberData(nameof(Steels))]
    public void ThreeEquivalentsOfASteel(string id, string steel, Composition s, double ce, double cet, double pcm)
    {
        var reference = new Reference(id, Formulas, Trust.FoundAndRecomputed);
        reference.Within($"CE of {steel}, %", ce, CarbonEquivalent.Iiw(s), 5e-5 + 1e-9);
        reference.Within($"CET of {steel}, %", cet, CarbonEquivalent.Cet(s), 5e-5 + 1e-9);
        reference.Within($"Pcm of {steel}, %", pcm, CarbonEquivalent.Pcm(s), 5e-5 + 1e-9);
    }

    [Fact]
    public void MartensiteBeginsLowerTheMoreCarbon()
    {
        var r = new Reference("WD-59", "Andrews 1965, linear formula", Trust.FromMemoryAndRecomputed);
        foreach ((string id, double ms) in ((string, double)[])[("WD-02", 417.2), ("WD-04", 321.5), ("WD-06", 328.4), ("WD-07", 249.7), ("WD-08", 283.2), ("WD-09", 352.9)])
        {
            Composition s = (Composition)Steels().First(row => (string)row[0] == id)[2];
            r.Within($"Ms of {id}, °C", ms, CarbonEquivalent.MartensiteStart(s), 0.3);
        }
    }

    [Fact]
    public void TheWorkingHoldsItsFormulas()
    {
        var w = new Working();
        var s = new Composition(.18, .35, 1.45, .05, .01, .05, .10, .005, .001);
        CarbonEquivalent.Iiw(s, w);
        CarbonEquivalent.Cet(s, w);
        CarbonEquivalent.Pcm(s, w);
        CarbonEquivalent.MartensiteStart(s, w);
        Seferian.Preheat(s, 30, w);
        MethodB.Preheat(.33, 30, 5, 1, w);
        CoolingTime.Of(1, 100, 20, RunPlace.Tee, w);
        HeatInput.Of(0.8, 24, 200, 5, w);
        HeatUp.HeatOf(40, 130, w);
        Shrinkage.Across(56.95e-6, 0.01, w);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void TheWorstThatAStandardAllowsKeepsToItsCap()
    {
        var cast = new Reference("MW-01", "EN 10025-2:2004 table 2, quality JR, up to 40 mm", Trust.Found);
        foreach ((string grade, double c, double mn) in ((string, double, double)[])[("S235", .17, 1.40), ("S275", .21, 1.50), ("S355", .24, 1.60)])
        {
            GradeLimits limits = GradeLimits.Of(grade, 0.03)!;
            cast.Exactly($"most carbon of {grade}, %", c, limits.Most.C);
            cast.Exactly($"most manganese of {grade}, %", mn, limits.Most.Mn);
            Composition worst = limits.Worst();
            Near.Absolute(limits.Cap!.Value, CarbonEquivalent.Iiw(worst), 1e-9, grade);
            Assert.True(worst.Mn <= limits.Most.Mn && worst.Cu <= limits.Most.Cu);
        }

        // by hand: 0.24 carbon, 0.55 copper, and (0.45 - 0.24 - 0.55/15)·6 manganese
        new Reference("MW-02", "greatest CET under a cap of CE, by hand", Trust.OwnNumbers)
            .Within("CET of S355 at 20 mm, %", .24 + .55 / 20 + (.45 - .24 - .55 / 15) * .6, CarbonEquivalent.Cet(GradeLimits.Of("S355", 0.02)!.Worst()), 1e-9);
    }

    [Fact]
    public void NoOtherCompositionUnderTheCapIsWorse()
    {
        foreach (string grade in (string[])["S235", "S275", "S355", "S355J0H", "A992"])
        {
            GradeLimits limits = GradeLimits.Of(grade, 0.015)!;
            double worst = CarbonEquivalent.Cet(limits.Worst());
            var random = new Random(7);
            for (int i = 0; i < 4000; i++)
            {
                Composition m = limits.Most;
                double R() => random.NextDouble();
                var s = new Composition(m.C * R(), 0, m.Mn * R(), m.Cr * R(), m.Mo * R(), m.Ni * R(), m.Cu * R());
                if (CarbonEquivalent.Iiw(s) <= limits.Cap)
                    Assert.True(CarbonEquivalent.Cet(s) <= worst + 1e-12, grade);
            }
        }
    }

    [Fact]
    public void UnknownSteelHasNoComposition()
    {
        foreach (string name in (string[])["unknown", "spring steel", "rail steel", "fork tine", "tool steel", "shaft", "rebar", "wrought iron", "St 37-2", "St 44-2", "St 52-3"])
            Assert.Null(GradeLimits.Of(name, 0.02));
    }
}
