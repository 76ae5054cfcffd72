using CsCheck;
using Ramwright.Jobs;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Jobs;

public sealed class StraighteningTest
{
    private static readonly Citation Own = Citation.Mechanics("test");

    private static PlasticBar Round(double d, double Y) => PlasticBar.Of(new Round(d) { Name = "a", Source = Own }, Y);

    private static PlasticBar Flat(double h, double b, double Y) => PlasticBar.Of(new Flat(h, b) { Name = "a", Source = Own }, Y);

    [Theory]
    [InlineData(1.1, 1.1015, 0.0015)]
    [InlineData(1.2, 1.2130, 0.0130)]
    [InlineData(1.3, 1.3494, 0.0494)]
    [InlineData(1.4, 1.5471, 0.1471)]
    [InlineData(1.45, 1.7088, 0.2588)]
    public void RectangleBeyondYield(double load, double sag, double set)
    {
        PlasticBar bar = Flat(0.02, 0.02, 300e6);
        double κ = bar.CurvatureFor(load * bar.F_y(0.5), 0.5);
        var reference = new Reference("W8-01", "Prager and Hodge; Timoshenko", Trust.FromMemoryAndRecomputed);
        reference.Within($"δ/δ_y, P/P_y {load}", sag, bar.SagAt(κ, 0.5) / bar.δ_y(0.5), 0.0002);
        reference.Within($"set/δ_y, P/P_y {load}", set, bar.SetAt(κ, 0.5) / bar.δ_y(0.5), 0.0002);
        // the printed closed form
        double q = 1 / load;
        Near.Relative(q * q * (5 - (3 + load) * Math.Sqrt(3 - 2 * load)), bar.SagAt(κ, 0.5) / bar.δ_y(0.5), 1e-6);
    }

    [Theory]
    [InlineData(1.1, 1.1004, 0.0004)]
    [InlineData(1.2, 1.2045, 0.0045)]
    [InlineData(1.3, 1.3177, 0.0177)]
    [InlineData(1.4, 1.4487, 0.0487)]
    [InlineData(1.5, 1.6135, 0.1135)]
    [InlineData(1.6, 1.8551, 0.2551)]
    [InlineData(1.65, 2.0535, 0.4035)]
    public void RoundBeyondYield(double load, double sag, double set)
    {
        PlasticBar bar = Round(0.03, 355e6);
        double κ = bar.CurvatureFor(load * bar.F_y(0.5), 0.5);
        var reference = new Reference("W8-02", "moment and curvature of a round bar", Trust.Recomputed);
        reference.Within($"δ/δ_y, P/P_y {load}", sag, bar.SagAt(κ, 0.5) / bar.δ_y(0.5), 0.001);
        reference.Within($"set/δ_y, P/P_y {load}", set, bar.SetAt(κ, 0.5) / bar.δ_y(0.5), 0.001);
    }

    [Theory]
    [InlineData(1.05, 1.0511, 0.0011)]
    [InlineData(1.1, 1.1078, 0.0078)]
    [InlineData(1.15, 1.1760, 0.0260)]
    [InlineData(1.2, 1.2684, 0.0684)]
    public void ThinTubeBeyondYield(double load, double sag, double set)
    {
        // as thin as makes no difference
        PlasticBar bar = PlasticBar.Of(new CircularHollow(0.05, 0.00001) { Name = "a", Source = Own }, 235e6);
        double κ = bar.CurvatureFor(load * bar.F_y(0.5), 0.5);
        var reference = new Reference("W8-03", "moment and curvature of a thin tube", Trust.Recomputed);
        reference.Within($"δ/δ_y, P/P_y {load}", sag, bar.SagAt(κ, 0.5) / bar.δ_y(0.5), 0.001);
        reference.Within($"set/δ_y, P/P_y {load}", set, bar.SetAt(κ, 0.5) / bar.δ_y(0.5), 0.001);
    }

    [Theory]
    [InlineData(20, 300, 1000, 1270.4)]
    [InlineData(10, 250, 300, 335.9)]
    [InlineData(25, 355, 2500, 4881)]
    public void RadiusLeft(double h, double Y, double R, double left) =>
        new Reference("W8-05", "moment and curvature of a rectangle", Trust.Recomputed).Near($"R left, mm, h {h}, R {R}", left, 1e3 / Flat(h / 1e3, 0.05, Y * 1e6).CurvatureLeft(R / 1e3), 0.001);

    [Theory]
    [InlineData(0.25, 11.23, 3.75, 3.50)]
    [InlineData(0.5, 11.88, 4.21, 3.71)]
    [InlineData(1.0, 12.46, 4.89, 3.89)]
    public void ABowOutOfAShaft(double bow, double P, double press, double back)
    {
        PlasticBar bar = Round(0.03, 355e6);
        double κ = bar.CurvatureForSet(bow / 1e3, 0.5)!.Value;
        var reference = new Reference("W8-06", "round 30, 355 MPa, 500 mm", Trust.Recomputed);
        reference.Near($"P, kN, bow {bow}", P, bar.LoadAt(κ, 0.5) / 1e3, 0.01);
        reference.Near($"press from touch, mm, bow {bow}", press, bar.SagAt(κ, 0.5) * 1e3, 0.01);
        reference.Near($"springs back, mm, bow {bow}", back, bar.SagAt(κ, 0.5) * 1e3 - bow, 0.01);
    }

    [Theory]
    [InlineData(0.25, 4.454, 4.18, 3.93)]
    [InlineData(0.5, 4.667, 4.62, 4.12)]
    [InlineData(1.0, 4.855, 5.28, 4.28)]
    public void ABowOutOfAFlat(double bow, double P, double press, double back)
    {
        PlasticBar bar = Flat(0.012, 0.05, 275e6);
        double κ = bar.CurvatureForSet(bow / 1e3, 0.4)!.Value;
        var reference = new Reference("W8-07", "flat 50×12, 275 MPa, 400 mm", Trust.Recomputed);
        reference.Near($"P, kN, bow {bow}", P, bar.LoadAt(κ, 0.4) / 1e3, 0.005);
        reference.Near($"press, mm, bow {bow}", press, bar.SagAt(κ, 0.4) * 1e3, 0.005);
        reference.Near($"springs back, mm, bow {bow}", back, bar.SagAt(κ, 0.4) * 1e3 - bow, 0.005);
    }

    [Fact]
    public void TheLargestSetOfOnePressing()
    {
        PlasticBar bar = Flat(0.012, 0.05, 275e6);
        new Reference("W8-08", "rectangle where the load no longer rises", Trust.Recomputed).Near("set, mm", 2.10, bar.GreatestSet(0.4) * 1e3, 0.005);
        Assert.Null(bar.CurvatureForSet(0.003, 0.4));
        PlasticBar pipe = PlasticBar.Of(new CircularHollow(0.0483, 0.0032) { Name = "a", Source = Own }, 235e6);
        var reference = new Reference("W8-10", "pipe 48.3×3.2, 235 MPa, 800 mm", Trust.Recomputed);
        reference.Near("P_y, kN", 5.637, pipe.F_y(0.8) / 1e3, 0.001);
        reference.Near("δ_y, mm", 2.471, pipe.δ_y(0.8) * 1e3, 0.001);
    }

    [Fact]
    public void MoreLoadMoreSagAndMoreSet() =>
        Gen.Select(Gen.Double[1, 300], Gen.Double[1.01, 3]).Sample((c, more) =>
        {
            PlasticBar bar = Round(0.04, 300e6);
            double κ = c * bar.YieldCurvature;
            Assert.True(bar.SagAt(κ * more, 1) > bar.SagAt(κ, 1));
            Assert.True(bar.SetAt(κ * more, 1) > bar.SetAt(κ, 1) - 1e-12);
            Assert.True(bar.LoadAt(κ * more, 1) > bar.LoadAt(κ, 1));
        }, iter: 300);
}
