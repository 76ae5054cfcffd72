using Ramwright.Fabrication.Welding;
using Ramwright.Stock;

namespace Ramwright.Tests.Welding;

public class PreheatTest
{
    [Theory]
    [InlineData("WD-15", .30, 20, 5, 1.0, 56.5)]
    [InlineData("WD-16", .32, 25, 5, 1.0, 87.0)]
    [InlineData("WD-17", .32, 40, 5, 1.5, 111.8)]
    [InlineData("WD-18", .338, 40, 5, 1.0, 132.9)]
    [InlineData("WD-19", .338, 40, 10, 1.0, 162.8)]
    [InlineData("WD-20", .36, 60, 3, 1.0, 151.0)]
    [InlineData("WD-21", .40, 50, 5, 2.0, 180.7)]
    [InlineData("WD-22", .40, 90, 10, 2.0, 226.1)]
    [InlineData("WD-23", .33475, 30, 5, 1.0, 111.1)]
    [InlineData("WD-25", .25, 12, 5, 1.2, -14.5)]
    public void MethodBOfPublishedFormula(string id, double cet, double d, double hd, double q, double expected) =>
        new Reference(id, "EN 1011-2:2001 C.3.3; formula on a calculator page", Trust.FoundAndRecomputed)
            .Within($"T_p at CET {cet}, {d} mm, HD {hd}, {q} kJ/mm, °C", expected, MethodB.Preheat(cet, d, hd, q), 0.2);

    [Fact]
    public void ItsFourPartsAddUp()
    {
        var r = new Reference("WD-24", "EN 1011-2:2001 C.3, its terms apart", Trust.FromMemoryAndRecomputed);
        double cet = .40, d = 50, hd = 5, q = 2;
        r.Within("by CET, °C", 150.0, 750 * cet - 150, 0.05);
        r.Within("by thickness, °C", 32.6, 160 * Math.Tanh(d / 35) - 110, 0.05);
        r.Within("by hydrogen, °C", 8.9, 62 * Math.Pow(hd, .35) - 100, 0.05);
        r.Within("by heat input, °C", -10.8, (53 * cet - 32) * q - (53 * cet - 32), 0.05);
        r.Within("sum, °C", 180.7, MethodB.Preheat(cet, d, hd, q), 0.1);
    }

    [Theory]
    [InlineData(.19, 20, 5, 1), InlineData(.51, 20, 5, 1), InlineData(.3, 9.9, 5, 1), InlineData(.3, 91, 5, 1), InlineData(.3, 20, .9, 1), InlineData(.3, 20, 21, 1)]
    [InlineData(.3, 20, 5, .49), InlineData(.3, 20, 5, 4.1), InlineData(double.NaN, 20, 5, 1)]
    public void OutsideItsRangeItRefuses(double cet, double d, double hd, double q) => Assert.Throws<ArgumentOutOfRangeException>(() => MethodB.Preheat(cet, d, hd, q));

    [Fact]
    public void SteelsOfTooMuchCarbonAreNotCovered()
    {
        var r = new Reference("WD-26", "EN 1011-2:2001 C.3, range of composition", Trust.FromMemory);
        foreach (string id in (string[])["WD-04", "WD-06", "WD-07", "WD-08", "WD-09"])
        {
            var row = CarbonEquivalentTest.Steels().First(s => (string)s[0] == id);
            r.Exactly($"{row[1]} covered", false, MethodB.Beyond((Composition)row[2]) is null);
        }

        r.Exactly("S355-type covered", true, MethodB.Beyond((Composition)CarbonEquivalentTest.Steels().First(s => (string)s[0] == "WD-02")[2]) is null);
        Assert.Contains("manganese", MethodB.Beyond(new Composition(.1, 0, 2.0)), StringComparison.Ordinal);
    }

    [Fact]
    public void MethodAsTable()
    {
        var r = new Reference("WD-11", "BS EN 1011-2:2001 table C.1, standard text", Trust.Found);
        double[] hd = [20, 12, 8, 4, 2];
        double[][] table = [[25, 50, 40, 80], [30, 55, 50, 90], [35, 65, 60, 100], [50, 100, 100, 100], [60, 100, 100, 100]];
        for (int i = 0; i < hd.Length; i++)
        {
            r.Exactly($"CE 0.49, HD {hd[i]}, 1.0 kJ/mm, mm", table[i][0], MethodA.WithoutPreheat(.49, hd[i], 1.0)!.Value);
            r.Exactly($"CE 0.49, HD {hd[i]}, 2.0 kJ/mm, mm", table[i][1], MethodA.WithoutPreheat(.49, hd[i], 2.0)!.Value);
            r.Exactly($"CE 0.43, HD {hd[i]}, 1.0 kJ/mm, mm", table[i][2], MethodA.WithoutPreheat(.43, hd[i], 1.0)!.Value);
            r.Exactly($"CE 0.43, HD {hd[i]}, 2.0 kJ/mm, mm", table[i][3], MethodA.WithoutPreheat(.43, hd[i], 2.0)!.Value);
        }

        // equivalent up, heat down
        Assert.Equal(35, MethodA.WithoutPreheat(.4447, 8, 1.9));
        Assert.Null(MethodA.WithoutPreheat(.50, 8, 1.5));
        Assert.Null(MethodA.WithoutPreheat(.40, 8, .99));
    }

    [Theory]
    [InlineData(16, HydrogenScale.A), InlineData(15, HydrogenScale.B), InlineData(10, HydrogenScale.C), InlineData(5, HydrogenScale.D), InlineData(3, HydrogenScale.E)]
    public void ScalesOfHydrogen(double hd, HydrogenScale scale) =>
        new Reference("WD-12", "EN 1011-2:2001 table C.2", Trust.FromMemory).Exactly($"{hd} mL/100 g", scale, MethodA.Scale(hd));

    [Fact]
    public void CombinedThicknessCountsEveryWayOut()
    {
        var r = new Reference("WD-13", "EN 1011-2:2001 C.2.4", Trust.FromMemoryAndRecomputed);
        r.Exactly("butt 25 + 25, mm", 50.0, MethodA.Combined(25, 25, 1));
        r.Exactly("corner 12 + 30, mm", 42.0, MethodA.Combined(12, 30, 1));
        r.Exactly("web of 12 on a flange of 30, mm", 72.0, MethodA.Combined(12, 30, 2));
        new Reference("WD-14", "EN 1011-2:2001 table C.1: CE 0.4447, HD 8, 1.0 kJ/mm, 72 mm combined", Trust.FoundAndRecomputed)
            .Exactly("preheat is asked for", true, 72 > MethodA.WithoutPreheat(.4447, 8, 1));
    }

    [Theory]
    [InlineData("S355", .18, 1.45, .05, .01, .05, 30, 136.8)]
    [InlineData("C45", .46, .65, .10, .02, .10, 30, 216.6)]
    [InlineData("42CrMo4", .41, .75, 1.05, .22, 0, 30, 240.2)]
    [InlineData("5160", .60, .85, .80, 0, 0, 12, 266.6)]
    public void SeferianReachesToHigherCarbon(string steel, double c, double mn, double cr, double mo, double ni, double t, double expected) =>
        new Reference("WD-60", "Séférian, Métallurgie de la soudure", Trust.FromMemoryAndRecomputed)
            .Within($"{steel} at {t} mm, °C", expected, Seferian.Preheat(new Composition(c, 0, mn, cr, mo, ni), t), 0.5);

    [Theory]
    [InlineData(20, 0, 0), InlineData(25, 65, 10), InlineData(38, 65, 10), InlineData(50, 110, 65), InlineData(65, 110, 65), InlineData(70, 150, 110)]
    public void LeastPreheatByThickness(double t, double any, double low)
    {
        new Reference("WD-28", "AWS D1.1/D1.1M:2015 table 3.3, category A, reposted", Trust.Found).Exactly($"{t} mm, °C", any, ThicknessTable.NotLowHydrogen(t / 1000));
        new Reference("WD-29", "AWS D1.1/D1.1M:2015 table 3.3, category B", Trust.Found).Exactly($"{t} mm, °C", low, ThicknessTable.LowHydrogen(t / 1000));
    }

    [Fact]
    public void AnInchOfMildSteelNeedsTenDegreesNotSixtySix() =>
        new Reference("WD-32", "AWS D1.1:2015 table 3.3; a page that says 150 °F misreads it", Trust.Found).Exactly("A36, 25 mm, low hydrogen, °C", 10.0, ThicknessTable.LowHydrogen(.025));
}
