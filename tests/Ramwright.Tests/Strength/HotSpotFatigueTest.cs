using CsCheck;
using Ramwright.Solids;
using Ramwright.Strength;

namespace Ramwright.Tests.Strength;

public class HotSpotFatigueTest
{
    private const double Fy = 275e6;
    private static readonly WeldToe Toe = new(0, "joint", 0, 0, 1, 0.01, 2, 0.1, 1, Cuboid.Everywhere) { Leg = 0.008 };

    [Fact]
    public void CategoriesAreThoseOfTheTable()
    {
        var table = new Reference("HS-B1", "EN 1993-1-9:2005, annex B, table B.1, page 33, as transcribed by an open library of details", Trust.Found);
        table.Exactly("detail 7, cruciform joint with fillets that carry the load, MPa", 90.0, HotSpotFatigue.Category(butt: false, onEdge: false).Strength / 1e6);
        table.Exactly("detail 3, cruciform joint with K-butt welds, MPa", 100.0, HotSpotFatigue.Category(butt: true, onEdge: false).Strength / 1e6);
    }

    /// <summary>The severer of two readings: the recommendation has 100 MPa for attachments up to 100 mm, and for a joint through the whole wall.</summary>
    [Fact]
    public void OnAnEdgeNoWeldCountsForMoreThanALongAttachment()
    {
        var table = new Reference("HS-b", "IIW-1823-07, 3.3, type b joint with long attachment, L > 100 mm: FAT 90", Trust.FromMemory);
        foreach (bool butt in (bool[])[true, false])
            table.Exactly($"on an edge, {(butt ? "butt" : "fillet")}, MPa", 90.0, HotSpotFatigue.Category(butt, onEdge: true).Strength / 1e6);
    }

    [Fact]
    public void ThickWallsStandLess()
    {
        var rule = new Reference("HS-t", "IIW-1823-07, 3.5.2: (25/t)^n above 25 mm, n = 0.3 for cruciform and T-joints as welded", Trust.FromMemory);
        rule.Near("k_s at 50 mm", 0.8123, HotSpotFatigue.Size(0.05), 1e-4);
        rule.Exactly("k_s at 25 mm", 1.0, HotSpotFatigue.Size(0.025));
        rule.Exactly("k_s at 10 mm", 1.0, HotSpotFatigue.Size(0.01));
    }

    [Fact]
    public void StressIsCarriedOnFromTwoPlaces()
    {
        var rule = new Reference("HS-line", "IIW-1823-07 and DNV-RP-C203: 1.67 σ(0.4t) − 0.67 σ(1.0t), 200 and 180 MPa, as open libraries have it", Trust.Found);
        rule.Near("at the toe, MPa", 213.4, new HotSpot(Toe, [200, 180]).Stress, 1e-12);
    }

    /// <summary>Whatever parabola stress follows before the toe, it is carried on along it.</summary>
    [Fact]
    public void OnAnEdgeStressIsCarriedOnAlongAParabola()
    {
        WeldToe edge = Toe with { OnEdge = true };
        var rule = new Reference("HS-parabola", "IIW-1823-07, 2.2.3, type b: 3 σ(4 mm) − 3 σ(8 mm) + σ(12 mm)", Trust.FromMemoryAndRecomputed);
        rule.Near("at the toe of 200, 180 and 170 MPa", 230, new HotSpot(edge, [200, 180, 170]).Stress, 1e-12);
        Gen.Double[-300, 300].Array[3].Sample(c =>
        {
            double At(double x) => c[0] + c[1] * x + c[2] * x * x;
            Near.Absolute(c[0], new HotSpot(edge, [.. Enumerable.Range(0, 3).Select(i => At(Math.Abs(edge.Place(i) - edge.At)))]).Stress, 1e-9, "at the toe");
        });
        Assert.Equal([0.004, 0.008, 0.012], Enumerable.Range(0, 3).Select(i => edge.Reading.Before(i, 0.05)));
    }

    /// <summary>At the category's own range two million, at half of it the fifth power below five million; factors shorten it by their cube.</summary>
    [Fact]
    public void FollowsTheCurveOfItsCategory()
    {
        // 1.67 · 1 − 0.67 · 1 = 1 Pa/N
        var even = new HotSpot(Toe, [1, 1]);
        Near.Relative(1, even.Stress, 1e-12, "an even stress is carried on as it is");
        Near.Relative(2e6, HotSpotFatigue.Squeezes(even, Fy, 90e6, new FatigueFactors(1, 1))!.Value, 1e-9, "at its category");
        Near.Relative(2e6, HotSpotFatigue.Squeezes(new HotSpot(Toe with { Leg = 0 }, [1, 1]), Fy, 100e6, new FatigueFactors(1, 1))!.Value, 1e-9, "at a butt weld's");
        Near.Relative(2e6 / Math.Pow(1.35, 3), HotSpotFatigue.Squeezes(even, Fy, 90e6, new FatigueFactors(1.35, 1))!.Value, 1e-9, "with the factor on strength");
        Near.Relative(2e6 * Math.Pow(0.5, 0.9), HotSpotFatigue.Squeezes(new HotSpot(Toe with { Thickness = 0.05 }, [1, 1]), Fy, 90e6, new FatigueFactors(1, 1))!.Value, 1e-9, "in a wall of 50 mm");
        Assert.Null(HotSpotFatigue.Squeezes(even, Fy, 1e6, new FatigueFactors(1, 1)));
        Near.Relative(0.67 * 0.6, new HotSpot(Toe, [1, 0.4]).Stress - 1, 1e-12, "what grows towards the toe is carried on");
    }

    [Fact]
    public void PressedCountsAsPulled() => Assert.Equal(
        HotSpotFatigue.Squeezes(new HotSpot(Toe, [1, 0.8]), Fy, 2e8, new FatigueFactors()), HotSpotFatigue.Squeezes(new HotSpot(Toe, [-1, -0.8]), Fy, 2e8, new FatigueFactors()));

    /// <summary>As in the ladder: a range of more than one and a half times yield, factors counted, is not read off the curve.</summary>
    [Theory, InlineData(1.49, true), InlineData(1.51, false)]
    public void BeyondOneAndAHalfTimesYieldNothingIsPromised(double share, bool read)
    {
        double force = share * Fy / 1.35;
        Assert.Equal(read, HotSpotFatigue.Squeezes(new HotSpot(Toe, [1, 1]), Fy, force, new FatigueFactors(1.35, 1)) > 0);
    }
}
