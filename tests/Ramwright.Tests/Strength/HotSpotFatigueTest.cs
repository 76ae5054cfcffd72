using Ramwright.Solids;
using Ramwright.Strength;

namespace Ramwright.Tests.Strength;

public class HotSpotFatigueTest
{
    private static readonly WeldToe Toe = new(0, "joint", 0, 0, 1, 0.01, 2, 0.1, 1, Cuboid.Everywhere);

    /// <summary>At the category's own range two million, at half of it the fifth power below five million; factors shorten it by their cube.</summary>
    [Fact]
    public void FollowsTheCurveOfItsCategory()
    {
        // 1.67 · 1 − 0.67 · 1 = 1 Pa/N
        var even = new HotSpot(Toe, 1, 1);
        Near.Relative(1, even.Stress, 1e-12, "an even stress is carried on as it is");
        Near.Relative(2e6, HotSpotFatigue.Squeezes(even, 90e6, new FatigueFactors(1, 1))!.Value, 1e-9, "at its category");
        Near.Relative(2e6 / Math.Pow(1.35, 3), HotSpotFatigue.Squeezes(even, 90e6, new FatigueFactors(1.35, 1))!.Value, 1e-9, "with the factor on strength");
        Assert.Null(HotSpotFatigue.Squeezes(even, 1e6, new FatigueFactors(1, 1)));
        Near.Relative(0.67 * 0.6, new HotSpot(Toe, 1, 0.4).Stress - 1, 1e-12, "what grows towards the toe is carried on");
    }

    [Fact]
    public void PressedCountsAsPulled() => Assert.Equal(
        HotSpotFatigue.Squeezes(new HotSpot(Toe, 1, 0.8), 2e8, new FatigueFactors()), HotSpotFatigue.Squeezes(new HotSpot(Toe, -1, -0.8), 2e8, new FatigueFactors()));
}
