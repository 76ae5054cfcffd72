using Ramwright.Power;
using Ramwright.Presses;

namespace Ramwright.Tests.Power;

public class ReceiverCourseTest
{
    private const double Atm = 101325;

    private static readonly RigCompressor Compressor = new(0.1, 6e5, 8e5, null, null);

    private static AirSupply Air(double demand, double pressing, double? delivered, double wanted = 5e5) => new()
    {
        Demand = demand,
        PressingDemand = pressing,
        DemandStated = true,
        Delivered = delivered,
        DeliveryStated = true,
        RunningShare = null,
        ToCutIn = 0,
        AirForWanted = wanted,
        WantedInReach = true,
        ToLoseWanted = null,
        FillFromEmpty = null,
        FillFromCutIn = null,
        ForceAtCutIn = 0,
        PressureAtCutOut = 0,
        ThrustAtCutOut = 0,
    };

    private static StrokeTimes Times(double approach, double? pressing, double? back) =>
        new(approach, 0.02, 1e5, approach, pressing, ReturnBy.Spring, back, null, 1);

    [Fact]
    public void ByHandWithTheCompressorAtRest()
    {
        var reference = new Reference("RC-01", "gas law at one temperature, by hand: 100 L from 8 bar, 4 L/s for 5 s, then 1 L/s for 10 s", Trust.OwnNumbers);
        ReceiverCourse course = ReceiverCourse.Of(Compressor, Air(4e-3, 1e-3, 0.003), Times(5, 10, 2), 0, 1, 3)!;

        reference.Within("after the approach, Pa", 8e5 - 4e-3 * 5 * Atm / 0.1, course.Moments[1].Pressure, 1e-6);
        reference.Within("after pressing, Pa", 8e5 - (20e-3 + 10e-3) * Atm / 0.1, course.Moments[2].Pressure, 1e-6);
        Assert.Equal(20, course.Moments[^1].Time);
        Assert.DoesNotContain(course.Moments, m => m.Running);
    }

    [Theory]
    [InlineData(4e-3, 1e-3, 0.003)]
    [InlineData(9e-3, 6e-3, 0.002)]
    [InlineData(2e-3, 2e-3, 0.010)]
    public void AirIsNeitherMadeNorLost(double demand, double pressing, double delivered)
    {
        ReceiverCourse course = ReceiverCourse.Of(Compressor, Air(demand, pressing, delivered), Times(3, 4, 2), 0, 12, 5)!;
        double running = 0;
        for (int i = 1; i < course.Moments.Count; i++)
            running += course.Moments[i].Running ? course.Moments[i].Time - course.Moments[i - 1].Time : 0;

        double taken = 12 * (3 * demand + 4 * pressing), held = 0.1 * (course.Moments[^1].Pressure - 8e5) / Atm;

        Assert.True(course.Lowest > 0);
        Near.Relative(taken + held, running * delivered, 1e-9, "free air");
        Assert.All(course.Moments, m => Assert.InRange(m.Pressure, 0, 8e5 + 1e-6));
        Near.Relative(12 * 14, course.Moments[^1].Time, 1e-12, "time");
    }

    [Fact]
    public void ASmallCompressorLosesTheWantedForceAndSaysInWhichSqueeze()
    {
        ReceiverCourse course = ReceiverCourse.Of(Compressor, Air(8e-3, 4e-3, 0.001, wanted: 5.5e5), Times(4, 4, 1), 0, 20, 1)!;
        ReceiverMoment first = course.Moments.First(m => m.Pressure < 5.5e5);

        Assert.InRange(course.TooLowIn!.Value, first.Squeeze, first.Squeeze + 1);
    }

    [Fact]
    public void ALargeOneNeverDoes() =>
        Assert.Null(ReceiverCourse.Of(Compressor, Air(4e-3, 1e-3, 0.02), Times(5, 10, 2), 0, 100, 3)!.TooLowIn);

    [Fact]
    public void DrawnEmptyItStaysEmptyAndTheTimeGoesOn()
    {
        ReceiverCourse course = ReceiverCourse.Of(Compressor, Air(0.1, 0.1, 0.001), Times(20, 20, 1), 0, 3, 1)!;

        Assert.Equal(0, course.Lowest);
        Near.Relative(3 * 42, course.Moments[^1].Time, 1e-9, "time");
    }

    [Fact]
    public void ItEndsWithTheSqueezeInWhichThePumpStalls()
    {
        ReceiverCourse course = ReceiverCourse.Of(Compressor, Air(8e-3, 4e-3, 0.001), Times(4, 4, 1), 2e5, 50, 1)!;

        Assert.Equal(course.StallsIn, course.Moments[^1].Squeeze);
        Assert.True(course.Moments[^1].Pressure < 2e5);
        Assert.Single(course.Moments.GroupBy(m => m.Squeeze), g => g.Last().Pressure < 2e5);
    }

    [Fact]
    public void ALoadThatHoldsTheRamHasNoCourse() => Assert.Null(ReceiverCourse.Of(Compressor, Air(4e-3, 0, 0.02), Times(5, null, 2), 0, 3));
}
