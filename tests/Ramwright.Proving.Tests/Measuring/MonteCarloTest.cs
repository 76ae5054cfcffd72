using Ramwright.Measuring;
using Ramwright.Quantities;

namespace Ramwright.Tests.Measuring;

public class MonteCarloTest
{
    private static UncertainInput In(double value, double u, Spread spread = Spread.Normal, double nu = double.PositiveInfinity) =>
        new("x", "x", Dimension.Number, new Estimate(value, u, nu, spread), "x");

    private static double Sum(ReadOnlySpan<double> x) => x[0] + x[1] + x[2] + x[3];

    [Fact]
    public void TheAdditiveModelsComeOutAsPublished()
    {
        var row = new Reference("MC-9.2", "JCGM 101:2008, 9.2: additive model", Trust.FromMemoryAndRecomputed);
        MonteCarlo normal = MonteCarlo.Of(Sum, [In(0, 1), In(0, 1), In(0, 1), In(0, 1)], level: 0.95, digits: 2, most: 1_000_000);
        row.Within("four normal inputs: u", 2.00, normal.U, 0.01);
        row.Within("upper end", 3.92, normal.High, 0.03);
        row.Within("lower end", -3.92, normal.Low, 0.03);
        MonteCarlo flat = MonteCarlo.Of(Sum, [.. Enumerable.Repeat(In(0, 1, Spread.Rectangular), 4)], level: 0.95, most: 1_000_000);
        row.Within("four rectangular inputs: upper end", 3.88, flat.High, 0.03);
        MonteCarlo ruled = MonteCarlo.Of(Sum, [In(0, 1, Spread.Rectangular), In(0, 1, Spread.Rectangular), In(0, 1, Spread.Rectangular), In(0, 10, Spread.Rectangular)], level: 0.95, most: 1_000_000);
        row.Within("one rules: u", 10.1, ruled.U, 0.1);
        row.Within("one rules: upper end", 17.0, ruled.High, 0.1);
        Uncertainty first = Uncertainty.Of(Sum, [In(0, 1, Spread.Rectangular), In(0, 1, Spread.Rectangular), In(0, 1, Spread.Rectangular), In(0, 10, Spread.Rectangular)], level: 0.95);
        row.Within("one rules: upper end by first order", 19.9, first.High, 0.05);
        Assert.False(ruled.Against(first, digits: 2).Agree);
    }

    [Fact]
    public void TheMassCalibrationShowsWhereFirstOrderIsNotEnough()
    {
        var row = new Reference("MC-9.3", "JCGM 101:2008, 9.3: mass calibration, mg", Trust.FromMemoryAndRecomputed);
        UncertainInput[] inputs =
        [
            In(100_000, 0.050), In(1.234, 0.020),
            new("ρ_a", "air", Dimension.Number, Estimate.Within(1.20, 0.10), "air"),
            new("ρ_W", "weight", Dimension.Number, Estimate.Within(8000, 1000), "weight"),
            new("ρ_R", "reference", Dimension.Number, Estimate.Within(8000, 50), "reference"),
        ];
        static double Mass(ReadOnlySpan<double> x) => (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
        Uncertainty first = Uncertainty.Of(Mass, inputs, level: 0.95);
        row.Within("value by first order", 1.2340, first.Value, 0.00005);
        row.Within("u by first order", 0.0539, first.Combined, 0.00005);
        MonteCarlo drawn = MonteCarlo.Of(Mass, inputs, level: 0.95, most: 1_000_000);
        row.Within("value drawn", 1.2341, drawn.Value, 0.0004);
        row.Within("u drawn", 0.0754, drawn.U, 0.0004);
        row.Within("lower end", 1.0834, drawn.Low, 0.002);
        row.Within("upper end", 1.3825, drawn.High, 0.002);
        Assert.False(drawn.Against(first).Agree);
    }

    [Fact]
    public void ItIsTheSameEachTime()
    {
        UncertainInput[] inputs = [In(3, 1), In(2, 0.5, Spread.Triangular), In(0, 1, Spread.Rectangular), In(1, 1, nu: 6)];
        Assert.Equal(MonteCarlo.Of(Sum, inputs, most: 50_000), MonteCarlo.Of(Sum, inputs, most: 50_000));
        Assert.NotEqual(MonteCarlo.Of(Sum, inputs, most: 50_000), MonteCarlo.Of(Sum, inputs, most: 50_000, seed: 2));
    }

    [Fact]
    public void ALinearModelAgreesToItsStatisticalErrorWithCorrelationToo()
    {
        UncertainInput[] inputs = [In(10, 2), In(4, 1), In(1, 0.5), In(-3, 1.5)];
        Correlation[] together = [new(0, 1, 0.7), new(1, 3, -0.4), new(0, 3, 0.1)];
        Uncertainty first = Uncertainty.Of(Sum, inputs, together);
        MonteCarlo drawn = MonteCarlo.Of(Sum, inputs, together, most: 400_000, digits: 2);
        Near.Absolute(first.Value, drawn.Value, 5 * drawn.ErrorOfValue, "value");
        Near.Absolute(first.Combined, drawn.U, 5 * drawn.ErrorOfU, "u");
        Assert.True(drawn.Against(first).Agree);
        Assert.True(drawn.Settled);
    }

    [Fact]
    public void FewDegreesOfFreedomAreDrawnWider()
    {
        // Student's variance is ν/(ν − 2) of the normal one
        MonteCarlo drawn = MonteCarlo.Of(x => x[0], [In(0, 1, nu: 8)], most: 400_000, digits: 2);
        Near.Absolute(Math.Sqrt(8 / 6.0), drawn.U, 0.01, "u");
        Near.Absolute(StudentT.Coverage(StudentT.TwoSigma, 8), drawn.High, 0.03, "upper end");
    }

    [Theory]
    [InlineData(0.0353, 2, 0.0005)]
    [InlineData(0.0353, 1, 0.005)]
    [InlineData(0.996, 2, 0.05)]
    [InlineData(32, 2, 0.5)]
    public void TheToleranceIsHalfAUnitOfTheLastFigure(double u, int digits, double delta) => Near.Relative(delta, MonteCarlo.Tolerance(u, digits), 1e-12);

    [Fact]
    public void CorrelationsThatContradictAreRefused() =>
        Assert.Throws<ArgumentException>(() => MonteCarlo.Of(Sum, [In(0, 1), In(0, 1), In(0, 1), In(0, 1)], [new(0, 1, 0.9), new(1, 2, 0.9), new(0, 2, -0.9)], most: 20_000));
}
