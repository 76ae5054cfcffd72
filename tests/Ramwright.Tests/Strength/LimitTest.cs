using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class LimitTest
{
    [Fact]
    public void FactorIsGivesOverSafe() => Near.Relative(3.5, new Limit(350e3, 100e3).Factor, 1e-12);

    [Fact]
    public void NothingActingDoesNotApply()
    {
        Assert.Null(Limit.FromUse(0, 1.25, 1.5, null));
        Assert.Null(Limit.FromUse(1e-14, 1.25, 1.5, null));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1e-6)]
    public void NonsenseIsRefused(double u) => Assert.Throws<ArgumentOutOfRangeException>(() => Limit.FromUse(u, 1, 1, null));

    [Fact]
    public void NonsenseForcesAreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Limit(double.PositiveInfinity, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Limit(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PartialFactors(M2: 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PartialFactors(Load: double.NaN));
    }

    [Fact]
    public void RecommendedFactors()
    {
        var r = new Reference("EN-1", "EN 1990 table A1.2(B); EN 1993-1-1 6.1; EN 1993-1-8 table 2.1, recommended values", Trust.FromMemory);
        r.Exactly("γM0", 1.0, PartialFactors.Recommended.M0);
        r.Exactly("γM1", 1.0, PartialFactors.Recommended.M1);
        r.Exactly("γM2", 1.25, PartialFactors.Recommended.M2);
        r.Exactly("γF", 1.5, PartialFactors.Recommended.Load);
    }

    [Fact]
    public void WorkingHolds() => Gen.Double[1e-9, 1e-3].Sample(u =>
    {
        var w = new Working();
        Limit? limit = Limit.FromUse(u, 1.25, 1.5, w);
        WorkingCheck.Holds(w);
        Near.Relative(1.875, limit!.Value.Factor, 1e-12);
    }, iter: 50);

    [Fact]
    public void LowerIgnoresWhatDoesNotApply()
    {
        Limit a = new(10, 5), b = new(8, 6);
        Assert.Equal(a, Limit.Lower(a, b));
        Assert.Equal(a, Limit.Lower(null, a));
        Assert.Equal(b, Limit.Lower(b, null));
        Assert.Null(Limit.Lower(null, null));
    }
}
