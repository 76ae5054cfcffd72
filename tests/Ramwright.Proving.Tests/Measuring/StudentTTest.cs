using MathNet.Numerics.Distributions;
using StudentT = Ramwright.Measuring.StudentT;

namespace Ramwright.Tests.Measuring;

public class StudentTTest
{
    [Theory]
    [InlineData(1, 0.9545, 13.97)]
    [InlineData(2, 0.9545, 4.53)]
    [InlineData(5, 0.9545, 2.65)]
    [InlineData(10, 0.9545, 2.28)]
    [InlineData(16, 0.99, 2.92)]
    [InlineData(50, 0.95, 2.01)]
    [InlineData(18, 0.95, 2.10)]
    [InlineData(1, 0.95, 12.71)]
    public void CoverageFactorsAreThoseOfTheTable(double nu, double p, double k)
    {
        var row = new Reference("GT-01", "JCGM 100:2008, table G.2", Trust.FromMemoryAndRecomputed);
        row.Within($"t at {nu} and {p}", k, StudentT.Coverage(p, nu), 0.0051);
    }

    [Fact]
    public void TheDistributionIsThatOfAnotherLibrary()
    {
        foreach (double nu in new[] { 0.5, 1, 2, 3.7, 8, 16.8, 60, 1e4 })
        {
            foreach (double t in new[] { -40, -5, -1.2, -0.01, 0, 0.3, 2, 7.5 })
            {
                double expected = MathNet.Numerics.Distributions.StudentT.CDF(0, 1, nu, t);
                Near.Absolute(expected, StudentT.Below(t, nu), 1e-10, $"t {t}, ν {nu}");
            }
        }
    }

    [Fact]
    public void WithEndlessFreedomItIsNormal()
    {
        foreach (double t in new[] { -8.0, -3, -1, -0.2, 0, 0.5, 1.96, 5 })
            Near.Relative(Normal.CDF(0, 1, t), StudentT.Below(t, double.PositiveInfinity), 1e-10, $"t {t}");
        Near.Absolute(2, StudentT.Coverage(StudentT.TwoSigma, double.PositiveInfinity), 1e-12, "k of two sigma");
    }

    [Fact]
    public void AQuantileIsWhereItsShareLies()
    {
        foreach (double nu in new[] { 1, 2.5, 9, 200, double.PositiveInfinity })
        {
            foreach (double p in new[] { 0.001, 0.2, 0.5, 0.7, 0.975, 0.9999 })
                Near.Absolute(p, StudentT.Below(StudentT.Quantile(p, nu), nu), 1e-12, $"p {p}, ν {nu}");
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void AShareThatIsNoneIsRefused(double share) => Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(share, 5));
}
