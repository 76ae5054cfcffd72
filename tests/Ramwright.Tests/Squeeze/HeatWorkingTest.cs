using Ramwright.Jobs;
using Ramwright.Squeeze;
using Ramwright.Workings;

namespace Ramwright.Tests.Squeeze;

public class HeatWorkingTest
{
    [Fact]
    public void EveryStepIsWhatItsTextSays()
    {
        var w = new Working();
        new HotSurface().Loses(1100, w);
        BarCooling.ByRadiation(0.005, 1200, 900, w: w);
        BarCooling.SkinBelowHeart(0.03, 1000, new HotSurface(), w);
        BarCooling.WorkWarms(100e6, 0.5, w: w);
        DieContact.Between(11_802, 1100, 10_598, 200, w);

        Assert.Equal(6, w.Steps.Count);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void WhatCannotBeIsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HotSteel.Enthalpy(1401));
        Assert.Throws<ArgumentOutOfRangeException>(() => HotSteel.SpecificHeat(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => HotSteel.Temperature(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => HotSteel.Temperature(2e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => new HotSurface(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new HotSurface(0.8, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => BarCooling.Time(0.005, 900, 1000, new HotSurface()));
        Assert.Throws<ArgumentOutOfRangeException>(() => BarCooling.Time(0.005, 1000, 20, new HotSurface()));
        Assert.Throws<ArgumentOutOfRangeException>(() => DieContact.After(1000, 1, 1100, 1, 200, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RoundBar(0.02, 1200, 3, new HotSurface()));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RoundBar(0.02, 1200, 10, new HotSurface()).CoolTo(1250));
    }
}
