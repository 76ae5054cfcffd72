using Ramwright.Jobs;
using Ramwright.Workings;

namespace Ramwright.Tests.Jobs;

public sealed class ShidaFlowTest
{
    private const string Shida = "S. Shida, J. Japan Soc. Technol. Plasticity 10 (1969) 610";

    // MPa at strain rates of 0.1, 1, 10 /s, each for strains of 0.1, 0.3, 0.6
    public static TheoryData<double, double, double[]> Grid() => new()
    {
        { 0.1, 800, [81.8, 106.1, 110.4, 106.1, 137.6, 143.2, 137.6, 178.5, 185.6] },
        { 0.1, 900, [94.5, 122.6, 127.5, 119.8, 155.5, 161.7, 151.9, 197.1, 205.0] },
        { 0.1, 1000, [63.9, 82.8, 86.2, 83.3, 108.1, 112.4, 108.7, 141.0, 146.7] },
        { 0.1, 1100, [45.3, 58.8, 61.1, 60.8, 78.9, 82.1, 81.7, 105.9, 110.2] },
        { 0.1, 1200, [33.4, 43.4, 45.1, 46.2, 59.9, 62.3, 63.8, 82.7, 86.0] },
        { 0.2, 800, [108.4, 139.3, 143.4, 138.8, 178.3, 183.6, 177.6, 228.2, 235.0] },
        { 0.2, 900, [95.3, 122.4, 126.1, 122.3, 157.1, 161.8, 156.9, 201.6, 207.6] },
        { 0.2, 1000, [64.4, 82.8, 85.3, 85.1, 109.3, 112.5, 112.3, 144.2, 148.5] },
        { 0.2, 1100, [45.8, 58.8, 60.5, 62.1, 79.8, 82.2, 84.3, 108.4, 111.6] },
        { 0.2, 1200, [33.8, 43.4, 44.7, 47.2, 60.6, 62.4, 65.9, 84.6, 87.1] },
        { 0.45, 800, [145.7, 182.7, 183.5, 187.7, 235.3, 236.3, 241.6, 302.9, 304.3] },
        { 0.45, 900, [92.8, 116.4, 116.9, 122.8, 153.9, 154.6, 162.4, 203.6, 204.5] },
        { 0.45, 1000, [62.9, 78.9, 79.2, 85.5, 107.2, 107.7, 116.2, 145.7, 146.3] },
        { 0.45, 1100, [44.8, 56.1, 56.4, 62.5, 78.4, 78.7, 87.3, 109.4, 109.9] },
        { 0.45, 1200, [33.1, 41.5, 41.7, 47.5, 59.6, 59.8, 68.2, 85.5, 85.8] },
        { 0.8, 800, [137.3, 166.3, 161.2, 184.7, 223.8, 216.9, 248.5, 301.1, 291.8] },
        { 0.8, 900, [87.7, 106.2, 102.9, 121.0, 146.6, 142.1, 167.1, 202.4, 196.1] },
        { 0.8, 1000, [59.6, 72.2, 70.0, 84.4, 102.3, 99.1, 119.5, 144.8, 140.3] },
        { 0.8, 1100, [42.6, 51.6, 50.0, 61.8, 74.9, 72.6, 89.8, 108.8, 105.4] },
        { 0.8, 1200, [31.6, 38.3, 37.1, 47.1, 57.0, 55.2, 70.1, 85.0, 82.3] },
    };

    [Theory, MemberData(nameof(Grid))]
    public void FlowStressOverCarbonHeatRateAndStrain(double carbon, double T, double[] expected)
    {
        var reference = new Reference("W1-01", Shida, Trust.FromMemoryAndRecomputed);
        var law = new ShidaFlow(carbon / 100);
        double[] rates = [0.1, 1, 10], strains = [0.1, 0.3, 0.6];
        for (int i = 0; i < 9; i++)
        {
            reference.Within($"σ, MPa; C {carbon} %, {T} °C, {rates[i / 3]} /s, ε {strains[i % 3]}", expected[i],
                law.Stress(strains[i % 3], rates[i / 3], T) / 1e6, 0.1);
        }
    }

    [Theory]
    [InlineData(0.07, -1.42)]
    [InlineData(0.1, -1.28)]
    [InlineData(0.2, -0.35)]
    [InlineData(0.45, 0.81)]
    [InlineData(0.8, 1.10)]
    [InlineData(1.2, 1.10)]
    public void TheTwoBranchesNearlyMeet(double carbon, double step)
    {
        var law = new ShidaFlow(carbon / 100);
        double T = law.BranchChange;

        new Reference("W1-02", "own check on Shida's formula", Trust.Recomputed)
            .Within($"step where the branches meet, %; C {carbon} %", step, 100 * (law.Stress(0.2, 1, T + 1e-6) / law.Stress(0.2, 1, T - 1e-6) - 1), 0.02);
        new Reference("W1-02", "own check on Shida's formula", Trust.Recomputed)
            .Within($"step in m; C {carbon} %", 0, law.RateExponent(T + 1e-6) - law.RateExponent(T - 1e-6), 0.001);
    }

    [Fact]
    public void StepByStep()
    {
        var reference = new Reference("W1-03", Shida, Trust.FromMemoryAndRecomputed);
        var hot = new ShidaFlow(0.002);
        var w = new Working();
        double σ = hot.Stress(0.3, 1, 1000, w);

        reference.Near("t_d", 1.11442, (hot.BranchChange + 273) / 1000, 1e-4);
        reference.Near("f", 1.07643, hot.StrainFactor(0.3), 1e-4);
        reference.Near("σ_f, kgf/mm²", 13.6640, w.Steps.Single(s => s.Symbol == "σ_f").Si, 1e-4);
        reference.Near("m", 0.120561, hot.RateExponent(1000), 1e-4);
        reference.Near("σ, MPa", 109.28, σ / 1e6, 1e-4);
        WorkingCheck.Holds(w);

        var cold = new ShidaFlow(0.001);
        w = new Working();
        σ = cold.Stress(0.3, 1, 850, w);
        reference = new Reference("W1-03b", Shida, Trust.FromMemoryAndRecomputed);
        reference.Near("t_d", 1.15357, (cold.BranchChange + 273) / 1000, 1e-4);
        reference.Near("f", 1.08076, cold.StrainFactor(0.3), 1e-4);
        reference.Near("σ_f, kgf/mm²", 18.0453, w.Steps.Single(s => s.Symbol == "σ_f").Si, 1e-4);
        reference.Near("m", 0.105540, cold.RateExponent(850), 1e-4);
        reference.Near("σ, MPa", 149.99, σ / 1e6, 1e-4);
        WorkingCheck.Holds(w);

        reference = new Reference("W1-03c", Shida, Trust.FromMemoryAndRecomputed);
        reference.Near("σ, MPa; C 0.45 %, 1100 °C, 1 /s, ε 0.3", 78.37, new ShidaFlow(0.0045).Stress(0.3, 1, 1100) / 1e6, 5e-4);
        reference.Near("σ, MPa; C 0.8 %, 1150 °C, 0.5 /s, ε 0.5", 57.78, new ShidaFlow(0.008).Stress(0.5, 0.5, 1150) / 1e6, 5e-4);
    }

    [Theory]
    [InlineData(0.1, 0.6327, 0.8380)]
    [InlineData(0.3, 0.8684, 1.0764)]
    [InlineData(0.6, 0.9888, 1.1086)]
    public void MeanFactorOfTheStrain(double ε, double mean, double f)
    {
        var reference = new Reference("W1-04", "integral of Shida's f", Trust.Recomputed);
        var law = new ShidaFlow(0.002);
        reference.Near($"mean f, ε {ε}", mean, law.MeanStrainFactor(ε), 5e-4);
        reference.Near($"f, ε {ε}", f, law.StrainFactor(ε), 5e-4);
    }

    [Theory, InlineData(0.1), InlineData(0.45), InlineData(0.6), InlineData(1.2)]
    public void TheMeanIsTheIntegralOfWhatIsHeld(double ε)
    {
        var law = new ShidaFlow(0.002);
        double sum = 0;
        const int n = 20000;
        for (int i = 0; i < n; i++)
            sum += law.Held(ε * (i + 0.5) / n, 1, 1000) / n;

        Near.Relative(sum, law.Mean(ε, 1, 1000), 1e-4);
    }

    [Fact]
    public void BeyondItsGreatestValueTheStressIsHeld()
    {
        var law = new ShidaFlow(0.002);
        double most = law.Held(law.HeldFrom, 1, 1000);

        Near.Relative(most, law.Held(1.5, 1, 1000), 1e-12);
        Assert.True(law.Stress(law.HeldFrom * 0.99, 1, 1000) < most && law.Stress(law.HeldFrom * 1.01, 1, 1000) < most);
    }

    [Fact]
    public void OutsideItsRangeItIsRefusedAndSaid()
    {
        var law = new ShidaFlow(0.002);
        Assert.Throws<ArgumentOutOfRangeException>(() => new ShidaFlow(0.0005));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ShidaFlow(0.013));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ShidaFlow(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => law.Stress(0.3, 1, 650));
        Assert.Throws<ArgumentOutOfRangeException>(() => law.Stress(0.3, 0.01, 1000));
        Assert.Throws<ArgumentOutOfRangeException>(() => law.Stress(0.8, 1, 1000));
        Assert.Throws<ArgumentOutOfRangeException>(() => law.Stress(0.3, 1, double.NaN));
        Assert.Empty(law.Range.Outside(0.3, 1, 1000));
        Assert.Equal("a strain rate of 0.01 /s is slower than the 0.1 /s the formula begins at", Assert.Single(law.Range.Outside(0.3, 0.01, 1000)).Text());
        Assert.Equal("650 °C is colder than the 700 °C the formula begins at", Assert.Single(law.Range.Outside(0.3, 1, 650)).Text());
    }
}
