using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

public class ExamplesTest
{
    public static TheoryData<string> Names() => [.. Directory.GetFiles(Repository.Folder("examples"), "*.press.yaml").Select(f => Path.GetFileName(f)!)];

    private static PressCheck Check(string name)
    {
        PressOnDisk press = PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), name));
        Assert.True(press.Faults.Count == 0, FaultText.All(press.Faults));
        return PressCheck.Of(press.Rig!);
    }

    [Theory, MemberData(nameof(Names))]
    public void EveryRungsWorkingFollowsFromItsOwnText(string name)
    {
        foreach (Rung rung in Check(name).Ladder.Rungs)
        {
            var working = new Working();
            rung.Work(working);

            Assert.NotEmpty(working.Steps);
            WorkingCheck.Holds(working);
            // the working must arrive at the very numbers that the ladder shows
            Assert.Contains(working.Steps, s => Math.Abs(s.Si - rung.SafeTo) <= 1e-9 * rung.SafeTo);
            Assert.Contains(working.Steps, s => Math.Abs(s.Si - rung.GivesAt) <= 1e-9 * rung.GivesAt);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void EveryNumberIsFinite(string name)
    {
        PressCheck check = Check(name);

        Assert.All(check.Ladder.Rungs, r => Assert.True(double.IsFinite(r.GivesAt) && double.IsFinite(r.SafeTo) && r.SafeTo > 0, r.Id));
        Assert.True(double.IsFinite(check.DaylightGrowth) && check.DaylightGrowth > 0);
        Assert.True(double.IsFinite(check.Opening));
    }

    [Fact]
    public void TheBoatyardsPressHolds() => Assert.Equal(Verdict.Holds, Check("wherry-yard.press.yaml").AgainstWanted);

    [Fact]
    public void TheMillsPullerHolds() => Assert.Equal(Verdict.Holds, Check("drainage-mill-puller.press.yaml").Verdict);

    [Fact]
    public void TheRailingShopsFirstDraftDoesNot()
    {
        PressCheck check = Check("railing-shop.press.yaml");

        Assert.False(check.MeetsWanted);
        Assert.NotEqual(Verdict.Holds, check.Verdict);
    }
}
