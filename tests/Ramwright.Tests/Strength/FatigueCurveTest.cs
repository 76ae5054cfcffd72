using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class FatigueCurveTest
{
    private const double MPa = 1e6;

    private static DetailCategory Of(double category) => new("a detail", category * MPa, Citation.Practice("made up"));

    private static DetailCategory ShearOf(double category) => Of(category) with { Shear = true };

    [Fact]
    public void LimitsOfTheCurves()
    {
        var limit = new Reference("G-15", "EN 1993-1-9, 7.1(2): fatigue limit at 5 million", Trust.Recomputed);
        var cutOff = new Reference("G-16", "EN 1993-1-9, 7.1(3): cut-off at 100 million", Trust.Recomputed);
        foreach ((double category, double D, double L) in (ReadOnlySpan<(double, double, double)>)[
            (160, 117.9, 64.8), (125, 92.1, 50.6), (112, 82.5, 45.3), (100, 73.7, 40.5), (90, 66.3, 36.4), (80, 58.9, 32.4), (71, 52.3, 28.7),
            (63, 46.4, 25.5), (56, 41.3, 22.7), (50, 36.8, 20.2), (45, 33.2, 18.2), (40, 29.5, 16.2), (36, 26.5, 14.6)])
        {
            limit.Near($"category {category}, MPa", D, FatigueCurve.FatigueLimit(Of(category)) / MPa, 0.003);
            cutOff.Near($"category {category}, MPa", L, FatigueCurve.CutOff(Of(category)) / MPa, 0.003);
        }

        new Reference("G-16b", "EN 1993-1-9, 7.1(2): cut-off of shear", Trust.FromMemoryAndRecomputed)
            .Near("Δτ_L / Δτ_C", 0.457, FatigueCurve.CutOff(ShearOf(100)) / (100 * MPa), 0.001);
    }

    [Fact]
    public void RatiosOfTheCurve()
    {
        var r = new Reference("G-00", "S-N curve page: Δσ_D/Δσ_C, Δσ_L/Δσ_D, Δσ_L/Δσ_C", Trust.FoundAndRecomputed);
        DetailCategory d = Of(100);
        r.Near("D over C", 0.73681, FatigueCurve.FatigueLimit(d) / d.Strength, 1e-5);
        r.Near("L over D", 0.54928, FatigueCurve.CutOff(d) / FatigueCurve.FatigueLimit(d), 1e-5);
        r.Near("L over C", 0.40471, FatigueCurve.CutOff(d) / d.Strength, 1e-5);
    }

    [Fact]
    public void Lives()
    {
        var first = new Reference("G-17", "EN 1993-1-9, 7.1(2), category 71 at 120 MPa", Trust.OwnNumbers);
        first.Near("γ_Mf 1.0", 414_249, FatigueCurve.Life(Of(71), 120 * MPa)!.Value, 0.005);
        first.Near("γ_Mf 1.15", 272_375, FatigueCurve.Life(Of(71), 1.15 * 120 * MPa)!.Value, 0.005);
        first.Near("γ_Mf 1.35", 168_368, FatigueCurve.Life(Of(71), 1.35 * 120 * MPa)!.Value, 0.005);
        var root = new Reference("G-18", "EN 1993-1-9, 7.1(2), category 36 at 60 MPa", Trust.OwnNumbers);
        root.Near("γ_Mf 1.0", 432_000, FatigueCurve.Life(DetailCategory.Root, 60 * MPa)!.Value, 0.005);
        root.Near("γ_Mf 1.35", 175_583, FatigueCurve.Life(DetailCategory.Root, 1.35 * 60 * MPa)!.Value, 0.005);
        new Reference("G-19", "EN 1993-1-9, 7.1(3), category 80 at 45 MPa", Trust.OwnNumbers)
            .Near("second slope", 1.928e7, FatigueCurve.Life(Of(80), 45 * MPa)!.Value, 0.005);
        new Reference("G-20", "EN 1993-1-9, 7.1(3), category 80 at 20 MPa", Trust.OwnNumbers)
            .Exactly("no end", null, FatigueCurve.Life(Of(80), 20 * MPa));
    }

    [Fact]
    public void AllowedRanges()
    {
        var r = new Reference("G-21", "EN 1993-1-9, 7.1(2), range allowed with γ_Mf 1.35", Trust.OwnNumbers);
        double[] often = [1e4, 5e4, 1e5, 5e5, 1e6];
        foreach ((double category, double[] ranges) in (ReadOnlySpan<(double, double[])>)[
            (80, [346.6, 202.7, 160.9, 94.1, 74.7]), (71, [307.6, 179.9, 142.8, 83.5, 66.3]), (56, [242.6, 141.9, 112.6, 65.8, 52.3]),
            (50, [216.6, 126.7, 100.5, 58.8, 46.7]), (36, [155.9, 91.2, 72.4, 42.3, 33.6])])
        {
            for (int i = 0; i < often.Length; i++)
                r.Near($"category {category}, {often[i]:0} times, MPa", ranges[i], FatigueCurve.Range(Of(category), often[i]) / 1.35 / MPa, 0.003);
        }
    }

    [Fact]
    public void Miner()
    {
        var r = new Reference("G-22", "EN 1993-1-9, category 71, γ_Mf 1.15: 5000 at 150, 20 000 at 100, 100 000 at 40 MPa", Trust.OwnNumbers);
        double Life(double range) => FatigueCurve.Life(Of(71), 1.15 * range * MPa)!.Value;
        r.Near("N at 150", 139_456, Life(150), 0.005);
        r.Near("N at 100", 470_665, Life(100), 0.005);
        r.Near("N at 40", 9.511e6, Life(40), 0.005);
        r.Near("damage", 0.0889, 5000 / Life(150) + 20_000 / Life(100) + 100_000 / Life(40), 0.005);
    }

    [Fact]
    public void ASpectrumWorkedByOthers()
    {
        var r = new Reference("G-28", "worked example of an open-source weld fatigue library, EN 1993-1-9 curves: 1e5 at 90, 1e6 at 60, 1e7 at 40 MPa", Trust.FoundAndRecomputed);
        double Damage(double category) => 1e5 / FatigueCurve.Life(Of(category), 90 * MPa)!.Value + 1e6 / FatigueCurve.Life(Of(category), 60 * MPa)!.Value
            + 1e7 / FatigueCurve.Life(Of(category), 40 * MPa)!.Value;
        r.Within("damage, category 56 (printed to two figures)", 2.5, Damage(56), 0.05);
        r.Within("damage, category 90 (printed to two figures)", 0.33, Damage(90), 0.005);
    }

    [Fact]
    public void PrintedRowsOfButtWelds()
    {
        var r = new Reference("G-08", "EN 1993-1-9, table 8.3, rows as printed on a public page", Trust.Found);
        r.Exactly("ground flush, details 1 to 3", 112.0, DetailCategory.ButtFlush.Strength / MPa);
        r.Exactly("cap up to a tenth, details 5 to 7", 90.0, DetailCategory.ButtLowCap.Strength / MPa);
        r.Exactly("cap up to a fifth, details 9 to 11", 80.0, DetailCategory.ButtHighCap.Strength / MPa);
        r.Near("k_s at 50 mm, (25/t)^0.2", 0.87055, DetailCategory.PlateSize(0.050), 1e-4);
        r.Exactly("k_s at 25 mm", 1.0, DetailCategory.PlateSize(0.025));
        r.Exactly("k_s at 12 mm: no more for a thin plate", 1.0, DetailCategory.PlateSize(0.012));
        new Reference("G-01", "EN 1993-1-9, table 8.1: rolled section, category on public pages", Trust.Found)
            .Exactly("as rolled", 160.0, DetailCategory.Rolled.Strength / MPa);
    }

    [Fact]
    public void RowsFromMemory()
    {
        Exactly("G-02", "table 8.1, details 4 and 5", (140, DetailCategory.CutAndDressed), (125, DetailCategory.CutEdge));
        Exactly("G-03", "table 8.1, detail 11", (90, DetailCategory.Hole));
        Exactly("G-04", "table 8.1, detail 14", (50, DetailCategory.Thread));
        Exactly("G-05", "table 8.1, detail 15", (100, DetailCategory.BoltShear));
        Exactly("G-06", "table 8.2, manual longitudinal weld", (100, DetailCategory.LongWeld));
        Exactly("G-07", "table 8.2, intermittent", (80, DetailCategory.IntermittentWeld));
        Exactly("G-09", "table 8.3, one-sided", (71, DetailCategory.ButtOnBacking), (36, DetailCategory.ButtOneSided));
        Exactly("G-10", "table 8.4, gusset of 50, 80, 100, 101 mm", (80, DetailCategory.Gusset(0.05)), (71, DetailCategory.Gusset(0.08)), (63, DetailCategory.Gusset(0.1)),
            (56, DetailCategory.Gusset(0.101)));
        Exactly("G-12", "table 8.5, detail 1: l of 49, 80, 100, 120 mm", (80, DetailCategory.Toe(0.049, 0.1)), (71, DetailCategory.Toe(0.08, 0.1)),
            (63, DetailCategory.Toe(0.1, 0.1)), (56, DetailCategory.Toe(0.12, 0.1)));
        Exactly("G-12b", "table 8.5, detail 1: long and thick", (56, DetailCategory.Toe(0.4, 0.02)), (50, DetailCategory.Toe(0.2, 0.06)), (50, DetailCategory.Toe(0.25, 0.03)),
            (45, DetailCategory.Toe(0.3, 0.04)), (45, DetailCategory.Toe(0.4, 0.05)), (40, DetailCategory.Toe(0.31, 0.051)), (71, DetailCategory.Toe(0.05, 0.1)),
            (50, DetailCategory.Toe(0.2, 0.04)), (45, DetailCategory.Toe(0.3, 0.06)));
        Exactly("G-13", "table 8.5, detail 3", (36, DetailCategory.Root));
        Exactly("G-14", "table 8.5, detail 8", (80, DetailCategory.FilletShear));
        new Reference("G-26", "EN 1993-1-9, table 8.1, detail 14: size of M36", Trust.FromMemoryAndRecomputed)
            .Near("k_s", 0.9554, DetailCategory.ThreadSize(0.036), 0.002);
        var factors = new Reference("G-27", "EN 1993-1-9, table 3.1", Trust.FromMemory);
        factors.Exactly("damage tolerant, low", 1.0, FatigueFactors.Recommended(true, false));
        factors.Exactly("damage tolerant, high", 1.15, FatigueFactors.Recommended(true, true));
        factors.Exactly("safe life, low", 1.15, FatigueFactors.Recommended(false, false));
        factors.Exactly("safe life, high", 1.35, FatigueFactors.Recommended(false, true));
        Near.Relative(1.485, new FatigueFactors(1.35, 1.1).Both, 1e-12);

        static void Exactly(string id, string source, params ReadOnlySpan<(double Category, DetailCategory Detail)> rows)
        {
            var r = new Reference(id, "EN 1993-1-9:2005, " + source, Trust.FromMemory);
            foreach ((double category, DetailCategory detail) in rows)
                r.Exactly(detail.What, category, detail.Strength / MPa);
        }
    }

    [Fact]
    public void TheCurveIsOneLine()
    {
        foreach (DetailCategory detail in (DetailCategory[])[Of(71), ShearOf(80)])
        {
            foreach (double kink in (double[])[5e6, 1e8])
                Near.Relative(FatigueCurve.Range(detail, kink * (1 - 1e-12)), FatigueCurve.Range(detail, kink * (1 + 1e-12)), 1e-9, $"{detail.Shear} at {kink}");
        }
    }

    [Fact]
    public void LifeUndoesRange() =>
        Gen.Select(Gen.Double[4, 7.99], Gen.Double[36, 160], Gen.Bool, Gen.Double[0.8, 1]).Sample((lg, category, shear, ks) =>
        {
            double N = Math.Pow(10, lg);
            DetailCategory detail = Of(category) with { Shear = shear };
            Near.Relative(N, FatigueCurve.Life(detail, FatigueCurve.Range(detail, N, ks), ks)!.Value, 1e-9, "cycles");
        });

    [Fact]
    public void FewerThanTenThousandAllowsNoMore()
    {
        Assert.Equal(FatigueCurve.Range(Of(80), 1e4), FatigueCurve.Range(Of(80), 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => FatigueCurve.Range(Of(80), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => FatigueCurve.Range(Of(80), double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => FatigueCurve.Life(Of(80), double.PositiveInfinity));
        Assert.Throws<ArgumentException>(() => FatigueCurve.FatigueLimit(ShearOf(80)));
    }

    [Theory]
    [InlineData(2e4, 1.0, false), InlineData(2e7, 0.9, false), InlineData(3e8, 0.9, false), InlineData(10, 1.0, true), InlineData(3e8, 0.9, true)]
    public void WorkingFollowsFromItsText(double N, double ks, bool shear)
    {
        DetailCategory detail = Of(80) with { Shear = shear };
        var w = new Working();
        double range = FatigueCurve.Range(detail, N, ks, w);
        FatigueCurve.Life(detail, 1.01 * range, ks, w);
        FatigueCurve.Life(detail, 3 * range, ks, w);
        WorkingCheck.Holds(w);
        Assert.Contains(w.Steps, s => s.Si == range);
    }

    [Theory]
    [InlineData(2e4, 1.0, false, "Δσ_C Δσ_N", 0), InlineData(2e7, 0.9, false, "Δσ_C k_s Δσ_D Δσ_N", 0), InlineData(10, 1.0, true, "Δτ_C Δτ_N", 1)]
    public void WorkingShowsEveryStep(double N, double ks, bool shear, string symbols, int notes)
    {
        DetailCategory detail = Of(80) with { Shear = shear };
        var w = new Working();
        double range = FatigueCurve.Range(detail, N, ks, w);
        WorkingCheck.Shows(w, symbols);
        Assert.Equal(notes, w.Notes.Count);

        var life = new Working();
        FatigueCurve.Life(detail, range * 1.01, ks, life);
        WorkingCheck.Shows(life, symbols.Replace(shear ? "Δτ_N" : "Δσ_N", "N", StringComparison.Ordinal));
    }
}
