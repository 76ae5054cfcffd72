using Ramwright.Geometry;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

/// <summary>What of a weld round an end lies on bands of steel, beside lengths taken by hand.</summary>
public class WeldLandingTest
{
    private static readonly Citation Made = Citation.Practice("made up");
    private static readonly Outline Flat = new Flat(0.2, 0.04) { Name = "f", Source = Made }.CentredOutline;

    private static double Length(Outline edge, bool acrossV, params (double From, double To)[] bands) =>
        WeldAround.Runs(WeldPlane.OfSection, edge, 0.006, false, new WeldLanding(bands, acrossV, 0.006, 0.036)).Sum(s => s.Length);

    [Fact]
    public void AnEdgeThatLiesOnSteelAllRoundIsLeftAsItIs()
    {
        List<WeldSegment> all = WeldAround.Runs(WeldPlane.OfSection, Flat, 0.006, false, null);

        // wider, flush, and a rolling error narrower
        foreach (double half in (double[])[0.05, 0.02, 0.0195])
            Assert.Equal(all, WeldAround.Runs(WeldPlane.OfSection, Flat, 0.006, false, new WeldLanding([(-half, half)], false, 0.006, 0.036)));
    }

    [Fact]
    public void OnlyWhatLiesOnABandCounts()
    {
        // half the flat on steel, which ends 1 mm beyond its middle: one long edge and two half short ones
        Near.Absolute(0.2 + 2 * 0.021, Length(Flat, false, (-0.02, 0)), 1e-9);
        // a band across the middle of the long edges
        Near.Absolute(2 * 0.102, Length(Flat, true, (-0.05, 0.05)), 1e-9);
        // two bands that all but touch are one
        Near.Absolute(2 * 0.102, Length(Flat, true, (-0.05, -0.0005), (0.0005, 0.05)), 1e-9);
    }

    [Theory]
    [InlineData(0.02, 0.1)]         // the band begins where the flat ends
    [InlineData(0.0199, 0.1)]       // a sliver: no weld's throat behind the edge
    [InlineData(0.03, 0.1)]
    public void AlongAnEdgeOrOnASliverNothingCounts(double from, double to) => Assert.Equal(0, Length(Flat, false, (from, to)));

    // runs of 22 mm, shorter than six throats
    [Fact]
    public void RunsTooShortAreLeftOut() => Assert.Equal(0, Length(Flat, true, (-0.01, 0.01)));

    [Fact]
    public void ARunGoesOnRoundACorner() => Near.Absolute(0.04 + 2 * 0.021, Length(Flat, true, (0.08, 0.12)), 1e-9);
}
