using Ramwright.Ladders;
using Ramwright.Proving;

namespace Ramwright.Tests.Proving;

public class ServiceTest
{
    private static readonly DateOnly Today = new(2026, 9, 1);

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("drainage-mill-puller")]
    public void AtTheWantedForceALifeIsUsedAfterTheSqueezesOfTheCheck(string example)
    {
        PressCheck check = ProvedPress.Press(example);
        FatigueLife least = check.SqueezesUntilInspection!;
        double p = check.Rig.Wanted / check.Power.Areas.Force;
        LifeUsed used = LifeUsed.Of(check, [new SqueezeBlock(Today, least.Squeezes!.Value, p, 0)])[0];
        Near.Relative(1, used.Used, 1e-6, "used");
        Assert.Equal(least.Rung, used.Life.Rung);
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (rung.Fatigue is { } life)
                Assert.Equal(life.Squeezes, life.At(check.Rig.Wanted));
        }
    }

    [Fact]
    public void HalfTheForceUsesFarLess()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        double p = check.Rig.Wanted / check.Power.Areas.Force;
        double full = LifeUsed.Of(check, [new SqueezeBlock(Today, 1000, p, 0)])[0].Used, half = LifeUsed.Of(check, [new SqueezeBlock(Today, 1000, p / 2, 0)])[0].Used;
        // slope 3 at the least
        Assert.True(half <= full / 7.99, $"{half} of {full}");
        double kept = LifeUsed.Of(check, [new SqueezeBlock(Today, 1000, p, p / 2)])[0].Used;
        Near.Relative(half, kept, 1e-9, "the range counts, not the peak");
    }

    [Fact]
    public void ACounterPutsACourseIntoAFewSizes()
    {
        var course = new List<double>();
        for (int i = 0; i < 40; i++)
            course.AddRange([0, 60e5, 118e5 + i % 3 * 1e5, 60e5]);
        for (int i = 0; i < 5; i++)
            course.AddRange([0, 199e5, 198.5e5, 200e5]);
        IReadOnlyList<SqueezeBlock> blocks = SqueezeLog.Count(course, Today, 5e5);
        Assert.Equal(45, blocks.Sum(b => b.Count));
        Assert.Equal(5, blocks.Where(b => b.Peak > 190e5).Sum(b => b.Count));
        // written at the upper edge of its size, never below
        Assert.All(blocks, b => Assert.True(b.Peak >= 118e5));
        Near.Relative(200e5, blocks.Max(b => b.Peak), 1e-9, "peak");
    }

    [Fact]
    public void APressureThatIsKeptOnIsCountedByItsRange()
    {
        IReadOnlyList<SqueezeBlock> blocks = SqueezeLog.Count([0, 100e5, 60e5, 100e5, 60e5, 100e5, 0], Today, 1e5);
        Assert.Equal(1, blocks.Where(b => b.Low < 1e5).Sum(b => b.Count));
        Assert.Equal(2, blocks.Where(b => Math.Abs(b.Low - 60e5) < 1e5).Sum(b => b.Count));
    }

    [Fact]
    public void WhatIsDueComesFromTheLog()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        ServiceState state = ServiceState.Of(check, ProvedPress.Book(check, "service oil-change", "service bolts", "squeezes 100 pressure=100 bar"), Today);
        Assert.Equal(new DateOnly(2028, 5, 9), state.Due.Single(d => d.What == "oil change").Due);
        Assert.Equal(new DateOnly(2027, 5, 9), state.Due.Single(d => d.What == "bolts tried").Due);
        Assert.False(state.Due.Single(d => d.What == "oil change").IsDue(Today));
        ServiceState bare = ServiceState.Of(check, ProvedPress.Book(check, "note begun"), new DateOnly(2027, 9, 1));
        Assert.True(bare.Due.Single(d => d.What == "oil change").IsDue(new DateOnly(2027, 9, 1)));
    }

    [Fact]
    public void AQuarterOfALifeCallsForALook()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        double n = Math.Ceiling(0.3 * check.SqueezesUntilInspection!.Squeezes!.Value);
        string squeezes = FormattableString.Invariant($"squeezes {n} pressure={check.Rig.Wanted / check.Power.Areas.Force / 1e5:0.###} bar");
        ServiceState state = ServiceState.Of(check, ProvedPress.Book(check, squeezes), Today);
        Assert.True(state.Due.Single(d => d.What == "look for cracks").IsDue(Today));
        Assert.Equal(check.SqueezesUntilInspection.Rung, state.LookAt[0].Life.Rung);
        ServiceState little = ServiceState.Of(check, ProvedPress.Book(check, squeezes.Replace(FormattableString.Invariant($"{n}"), "10", StringComparison.Ordinal)), Today);
        Assert.False(little.Due.Single(d => d.What == "look for cracks").IsDue(Today));
    }
}
