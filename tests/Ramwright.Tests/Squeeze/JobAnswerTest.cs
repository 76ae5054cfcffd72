using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>What is said of a job is never milder than either of its two answers.</summary>
public sealed class JobAnswerTest
{
    [Theory]
    [InlineData("railing-shop")]
    [InlineData("wherry-yard")]
    [InlineData("salvage")]
    [InlineData("drainage-mill-puller")]
    public void TheWorseAnswerIsTheOneThatIsSaid(string example)
    {
        PressCheck press = CheckedPress.Of(PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), example + ".press.yaml"))).Check!;

        Assert.All(JobAnswer.All(press), answer =>
        {
            Assert.True(answer.Verdict >= answer.Check.Verdict);
            if (answer.AsItCools is not { } cooled)
                return;
            Assert.True(answer.AsItCoolsAtMost >= cooled);
            bool can = answer.Time!.First.IsDone && answer.Time.Heats!.IsDone && cooled <= answer.Check.Available;
            Assert.True(can || answer.Verdict == Verdict.DoesNotHold, answer.Saying());
            Assert.Equal(answer.Verdict == Verdict.DoesNotHold, answer.Saying().StartsWith("This press cannot", StringComparison.Ordinal));
        });
    }

    [Fact]
    public void ABarThatCoolsUnderTheDiesIsSaidWithTheForceItThenTakes()
    {
        PressCheck press = CheckedPress.Of(PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), "railing-shop.press.yaml"))).Check!;
        RigJob leaf = press.Rig.Jobs.First(j => j.Name == "leaf blank");
        JobAnswer answer = JobAnswer.Of(press, leaf);

        Assert.True(answer.AsItCools > 1.2 * answer.Check.Demand.Peak.Likely, "the dies chill this thin bar");
        Assert.Contains(ForceText.Of(answer.AsItCools!.Value, Ramwright.Quantities.UnitSystem.Metric), answer.Saying(), StringComparison.Ordinal);
    }
}
