using Ramwright.Jobs;

namespace Ramwright.Tests.Jobs;

/// <summary>Heat by eye, and what a heat costs.</summary>
public sealed class HeatColourTest
{
    [Theory]
    [InlineData(425, ""), InlineData(426, "black red"), InlineData(593, "black red"), InlineData(600, "very dark red"), InlineData(704, "very dark red")]
    [InlineData(705, "dark red"), InlineData(814, "dark red"), InlineData(870, "cherry red"), InlineData(900, "light cherry red"), InlineData(981, "light cherry red")]
    [InlineData(982, "orange"), InlineData(1092, "orange"), InlineData(1093, "yellow"), InlineData(1258, "yellow"), InlineData(1290, "yellow white"), InlineData(1315, "white")]
    public void AsTheBookHasIt(double T, string colour) =>
        new Reference("W4-40", HeatColour.Source.ToString(), Trust.Found).Exactly($"colour at {T} °C", colour, HeatColour.At(T));

    [Theory]
    [InlineData("yellow", "; yellow in dim light is 1093 °C to 1259 °C, by eye 50 °C off is good")]
    [InlineData("White", "; white in dim light is 1315 °C and more, by eye 50 °C off is good")]
    [InlineData("mauve", "")]
    public void AColourIsSaidInDegrees(string colour, string words) => Assert.Equal(words, HeatColour.InWords(colour));

    [Fact]
    public void AKilogramByInductionAndInASmallFire()
    {
        const double kWh = 3.6e6;
        double one = HotSteel.Enthalpy(1200);
        var row = new Reference("W4-47", "arithmetic on the heat in steel at 1200 °C", Trust.Recomputed);
        row.Near("1 kg at 55 %, kWh", 0.418, one / HotSqueezeDemand.Induction / kWh, 0.002);
        row.Near("1 kg at 10 %, kWh", 2.30, one / 0.1 / kWh, 0.002);
        Assert.InRange(0.1, HotSqueezeDemand.GasFire.Low, HotSqueezeDemand.GasFire.High);
        var trade = new Reference("W4-45", "induction: 400 to 450 kWh a tonne, trade pages", Trust.FoundAndRecomputed);
        Assert.InRange(HotSqueezeDemand.Induction, 229.7 / 450, 229.7 / 400);
        trade.Near("share that reaches the steel at 418 kWh/t", 0.55, one / kWh * 1000 / 418, 0.005);
    }
}
