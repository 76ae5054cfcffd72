using Ramwright.Bench;
using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Proving;

namespace Ramwright.Tests.Proving;

/// <summary>Whether the intervals hold the truth as often as they say, over made-up presses with made-up noise. The bench draws more of them.</summary>
public class CoverageTest
{
    [Theory]
    [InlineData(FrictionFrom.File)]
    [InlineData(FrictionFrom.OneLoad)]
    [InlineData(FrictionFrom.SeveralLoads)]
    [InlineData(FrictionFrom.LoadCell)]
    public void TheTrueForceLiesInItsIntervalAsOftenAsStated(FrictionFrom from)
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        (int inside, int all) = CoverageTrial.Force(check, from, 200, 1);
        Assert.InRange(inside / (double)all, 0.91, 0.99);
    }

    [Fact]
    public void TheStiffnessLiesInItsIntervalAsOftenAsStated()
    {
        (int inside, int all) = CoverageTrial.Stiffness(ProvedPress.Press("wherry-yard"), 300, 2);
        Assert.InRange(inside / (double)all, 0.91, 0.99);
    }

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    public void ThePumpsFlowLiesInItsIntervalAsOftenAsStated(string example)
    {
        (int inside, int all) = CoverageTrial.Pump(ProvedPress.Press(example), 400, 3);
        Assert.InRange(inside / (double)all, 0.91, 0.99);
    }
}
