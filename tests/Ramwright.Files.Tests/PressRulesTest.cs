using Ramwright.Presses;

namespace Ramwright.Files.Tests;

/// <summary>What lies just inside the impossible must be let through; what lies beyond stands in Bad/.</summary>
public sealed class PressRulesTest
{
    [Fact]
    public void NothingSaidIsNothingWrong() => Assert.Empty(PressRules.Of(new Press()));

    [Fact]
    public void HalfSaidIsNothingWrong()
    {
        Assert.Empty(PressRules.Of(new Press
        {
            Cylinder = new HollowPlunger { Rod = 0.1 },
            Pump = new HandPump { UnloadAt = 2e6, LowPerStroke = 1e-5 },
            Loading = new Loading { OffCentreAcross = 1, OffCentreDeep = 1 },
        }));
    }

    [Fact]
    public void APlungerMayFillItsBore() =>
        Assert.Empty(PressRules.Of(new Press { Cylinder = new SingleActing { Bore = 0.1, Rod = 0.1 } }));

    [Fact]
    public void AThreadMayBeAsThickAsItsRod() =>
        Assert.Empty(PressRules.Of(new Press { Cylinder = new DoubleActing { Rod = 0.036, RodThread = "M36x2" } }));

    [Fact]
    public void ASellersTonsMayBeGenerous()
    {
        // 100 mm at 250 bar: 196 kN.
        Press Sold(double force) => new() { Cylinder = new DoubleActing { Bore = 0.1, RatedPressure = 25e6, RatedForce = force } };

        Assert.Empty(PressRules.Of(Sold(290e3)));
        Assert.Single(PressRules.Of(Sold(300e3)));
    }

    [Fact]
    public void ReliefAboveARatingIsForTheLadder() => Assert.Empty(PressRules.Of(new Press
    {
        Cylinder = new DoubleActing { Bore = 0.1, RatedPressure = 16e6 },
        Pump = new ElectricPack { Motor = 2200, Relief = 25e6, RatedPressure = 21e6 },
    }));

    [Fact]
    public void StrokeMayBeLongerThanDaylight() => Assert.Empty(PressRules.Of(new Press
    {
        Cylinder = new DoubleActing { Bore = 0.1, Stroke = 0.8 },
        Frame = new ClosedFrame { Daylight = 0.6, Width = 0.5, Section = "HEB 160" },
    }));

    [Theory]
    [InlineData(8, 5.2, true)]
    [InlineData(8, 6, true)]
    [InlineData(10, 7, true)]
    [InlineData(8, 5, false)]
    [InlineData(8, 6.3, false)]
    public void LegAndThroatAgreeWithinATenth(double leg, double throat, bool agree)
    {
        var weld = new Weld { Leg = leg / 1000, Throat = throat / 1000 };

        var faults = PressRules.Of(new Press { Frame = new ClosedFrame { Section = "x", CrownJoint = new WeldedJoint { Weld = weld } } });

        Assert.Equal(agree, !faults.Any());
    }

    [Fact]
    public void AStallPressureALittleAboveRatioTimesAirIsRounding() => Assert.Empty(PressRules.Of(new Press
    {
        Pump = new AirPump { Ratio = 100, StallPressure = 70e6, RatedAir = 6.9e5, AirPressure = 6e5 },
    }));
}
