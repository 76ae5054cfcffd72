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
        foreach (double half in (double[])[0.05, 0.02, 0.019])
            Assert.Equal(all, WeldAround.Runs(WeldPlane.OfSection, Flat, 0.006, false, new WeldLanding([(-half, half)], false, 0.006, 0.036)));
    }

    [Fact]
    public void OnlyWhatLiesOnABandCounts()
    {
        // half the flat on steel, which is filled 2 mm beyond its middle: one long edge, two half short ones, and the edge of the band against the flat's end
        Near.Absolute(2 * 0.2 + 2 * 0.022, Length(Flat, false, (-0.02, 0)), 1e-9);
        // a band across the middle of the long edges, with both its own edges
        Near.Absolute(2 * 0.104 + 2 * 0.04, Length(Flat, true, (-0.05, 0.05)), 1e-9);
        // two bands that all but touch are one
        Near.Absolute(2 * 0.104 + 2 * 0.04, Length(Flat, true, (-0.05, -0.0005), (0.0005, 0.05)), 1e-9);
    }

    // a flat of 40 on one of 28 stands out 6 mm: a leg of 6 mm finds room there, and the throat is 0.7 of it
    [Fact]
    public void BesideANarrowerBandTheLegIsNoLongerThanThePartStandsOut()
    {
        List<WeldSegment> runs = WeldAround.Runs(WeldPlane.OfSection, Flat, 0.006, false, new WeldLanding([(-0.014, 0.014)], false, 0.006, 0.036));

        WeldSegment[] beside = [.. runs.Where(s => s.Length > 0.1)];
        Assert.Equal(2, beside.Length);
        Assert.All(beside, s => Near.Absolute(0.006 / Math.Sqrt(2), s.Throat, 1e-9));
        Assert.All(runs.Except(beside), s => Near.Absolute(0.006, s.Throat, 1e-12));
    }

    [Theory]
    [InlineData(0.02, 0.1)]         // the band begins where the flat ends
    [InlineData(0.0199, 0.1)]       // a sliver: no weld's throat behind the edge
    [InlineData(0.03, 0.1)]
    public void AlongAnEdgeOrOnASliverNothingCounts(double from, double to) => Assert.Equal(0, Length(Flat, false, (from, to)));

    // a flat of 20 stands out 3 mm beside a band of 14, too little for a weld there, and its short edges hold runs of 18 mm, shorter than six throats
    [Fact]
    public void RunsTooShortAreLeftOut() => Assert.Equal(0, Length(new Flat(0.2, 0.02) { Name = "f", Source = Made }.CentredOutline, false, (-0.007, 0.007)));

    // to the end of the flat, round its corners, and back along the band's edge
    [Fact]
    public void ARunGoesOnRoundACorner() => Near.Absolute(2 * 0.04 + 2 * 0.022, Length(Flat, true, (0.08, 0.12)), 1e-9);
}
