using Ramwright.Power;

namespace Ramwright.Tests.Power;

public class StrokeCourseTest
{
    private static StrokeTimes Times(double? pressing, double? back, double part = 0.04) =>
        new(10, part, 1e5, 4, pressing, back is null ? ReturnBy.Unknown : ReturnBy.Oil, back, 4 + pressing + back, 1);

    [Fact]
    public void OutUnderLoadAndHome() => Assert.Equal(
        [new(0, 0, StrokePhase.Up), new(4, 0.16, StrokePhase.Approach), new(10, 0.2, StrokePhase.Pressing), new(13, 0, StrokePhase.Return)],
        StrokeCourse.Of(Times(6, 3), 0.2));

    [Fact]
    public void ItEndsWhereTheLoadHoldsTheRam() => Assert.Equal(StrokePhase.Approach, StrokeCourse.Of(Times(null, 3), 0.2)[^1].Phase);

    [Fact]
    public void ItEndsWhereTheWayHomeCannotBeTold() => Assert.Equal(0.2, StrokeCourse.Of(Times(6, null), 0.2)[^1].Travel);

    [Fact]
    public void AStrokeShorterThanItsPressingPartIsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StrokeCourse.Of(Times(6, 3), 0.03));
}
