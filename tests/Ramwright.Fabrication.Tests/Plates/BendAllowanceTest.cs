using Ramwright.Fabrication;
using Ramwright.Workings;

namespace Ramwright.Tests.Fabrication.Plates;

public class BendAllowanceTest
{
    private const double Degree = Math.PI / 180;

    private static readonly Reference Din = new("W5-11", "DIN 6935 (1975/2011): k and the compensating value v, from memory; 6/3, 4/2 and 2.5/2.5 agree with its rounded table as remembered", Trust.FromMemoryAndRecomputed);

    [Theory]
    [InlineData(3, 3, 90, -5.756), InlineData(6, 3, 90, -6.689), InlineData(4, 2, 90, -4.459), InlineData(2.5, 2.5, 90, -4.797), InlineData(10, 10, 90, -19.187), InlineData(30, 5, 90, -18.949)]
    [InlineData(6, 3, 60, -2.919), InlineData(6, 3, 120, -2.852)]
    public void TheCompensatingValueIsThatOfTheStandard(double r, double s, double opening, double v)
    {
        double α = Math.PI - opening * Degree;

        Din.Within($"v, mm, r {r} s {s} opening {opening}°", v, 1000 * BendAllowance.Value(α, r / 1000, s / 1000), 0.01);
    }

    [Theory]
    [InlineData(3, 3, 0.65), InlineData(6, 3, 0.8005), InlineData(30, 5, 1.0)]
    public void TheNeutralFibreIsThatOfTheStandard(double r, double s, double k) => Din.Within($"k, r {r} s {s}", k, BendAllowance.Fibre(r / 1000, s / 1000), 0.0001);

    [Fact]
    public void TwoLegsOfFiftyMakeNinetyFour() =>
        Din.Within("flat length of legs 50/50, s 3, r 3, mm", 94.24, 1000 * BendAllowance.Flat([0.05, 0.05], [Math.PI / 2], 0.003, 0.003), 0.01);

    [Theory]
    [InlineData(30.0), InlineData(89.9), InlineData(90.0), InlineData(120.0)]
    public void TheWorkingFollowsFromItsText(double bent)
    {
        var working = new Working();
        double v = BendAllowance.Value(bent * Degree, 0.006, 0.004, working);

        WorkingCheck.Holds(working);
        Assert.Equal(v, working.Steps[^1].Si);
    }

    [Fact]
    public void ThePatternIsAsLongAsItsStraightPartsAndItsArcs()
    {
        var plate = new BentPlate(0.1, 0.005, [0.06, 0.1, 0.04], [Math.PI / 2, -Math.PI / 2], 0.008);

        var bends = plate.Bends();

        Assert.True(plate.IsPossible);
        double back = 0.013, straight = 0.06 - back + 0.1 - 2 * back + 0.04 - back;
        Assert.Equal(plate.Flat, straight + bends.Sum(b => b.Width), 1e-12);
        Assert.True(bends[0].Up);
        Assert.False(bends[1].Up);
    }

    [Fact]
    public void LegsTooShortForTheirBendsAreNotBent()
    {
        Assert.False(new BentPlate(0.1, 0.01, [0.015, 0.1], [Math.PI / 2], 0.01).IsPossible);
        Assert.False(new BentPlate(0.1, 0.01, [0.1, 0.1], [Math.PI / 2], 0.0005).IsPossible);
        Assert.Throws<InvalidOperationException>(() => new BentPlate(0.1, 0.01, [0.015, 0.1], [Math.PI / 2], 0.01).Bends());
    }

    [Theory]
    [InlineData(0, 0.005), InlineData(0.005, 0), InlineData(-1, 0.005), InlineData(double.NaN, 0.005)]
    public void WhatIsNoPlateIsRefused(double r, double s) => Assert.Throws<ArgumentOutOfRangeException>(() => BendAllowance.Value(1, r, s));
}
