using Ramwright.Fabrication;
using Ramwright.Fabrication.Bars;
using Ramwright.Files;
using Ramwright.Presses;

namespace Ramwright.Tests.Fabrication.Bars;

public class BarPlanTest
{
    private static readonly Rig Wherry = PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), "wherry-yard.press.yaml")).Rig!;
    private static readonly PartList Parts = PartList.Of(Wherry);

    private static RigBarInStock Bar(double length, int count, bool buy, string section = "UPN 160")
    {
        LengthPart like = Parts.Lengths.First(l => l.Section.Name == section);
        return new RigBarInStock(like.Section, like.Steel!, length, count, buy);
    }

    private static BarGroup Group(RigCutting cutting, params RigBarInStock[] bars) =>
        BarPlan.Of(Parts, Wherry with { Bars = bars, Cutting = cutting }).Groups.Single(g => g.Section.Name == "UPN 160");

    [Fact]
    public void FourUprightsComeOutOfTwoBarsOnlyWhileTheSawAndTheRoughEndLeaveRoom()
    {
        // 2 x 1200 with one cut between them, and the rough end off
        RigCutting fine = RigCutting.Usual with { SawKerf = 0.002, RoughEnd = 0.005 };

        BarGroup fits = Group(fine, Bar(2.407, 2, false)), tight = Group(fine, Bar(2.4069, 2, false));

        Assert.Equal(2, fits.Bars.Count);
        Assert.Empty(fits.Without);
        Assert.All(fits.Bars, b => Assert.Equal(0, b.Left, 1e-9));
        Assert.Equal(2, tight.Without.Sum(w => w.Count));
    }

    [Fact]
    public void OffcutsAreUsedBeforeABarIsBought()
    {
        BarGroup group = Group(RigCutting.Usual, Bar(6, 0, true), Bar(1.25, 3, false));

        Assert.Equal(6, group.Bought);
        Assert.True(group.Proven);
        // one bought bar takes all four; then none of the rack is touched
        Assert.Equal(0, group.Used);

        BarGroup enough = Group(RigCutting.Usual, Bar(6, 0, true), Bar(1.25, 4, false));
        Assert.Equal(0, enough.Bought);
        Assert.Equal(4 * 1.25, enough.Used, 1e-12);
    }

    [Fact]
    public void WhatIsUsedForOneSectionIsNotThereForAnother()
    {
        BarPlan plan = BarPlan.Of(Parts, Wherry with { Bars = [Bar(2.0, 1, false, "UPN 220"), Bar(6, 0, true, "UPN 220")] });

        BarGroup group = plan.Groups.Single(g => g.Section.Name == "UPN 220");
        // crown and bed halves are four of 970 mm: one bought bar holds them all
        Assert.Equal(4, group.Bars.Sum(b => b.Pieces.Count));
        Assert.True(group.Bars.Count(b => !b.Bar.Buy) <= 1);
    }

    [Fact]
    public void WithoutBarsInTheFileTheUsualLengthIsTakenAndSaid()
    {
        BarPlan plan = BarPlan.Of(Parts, Wherry with { Bars = [] });

        Assert.All(plan.Groups, g => Assert.True(g.Assumed && g.Proven && g.Without.Count == 0 && g.Bought >= 6));
        Assert.Equal(Parts.Lengths.Sum(l => l.Count), plan.Groups.Sum(g => g.Bars.Sum(b => b.Pieces.Count)));
        foreach (SawnBar bar in plan.Groups.SelectMany(g => g.Bars))
            Assert.Equal(bar.Bar.Length, bar.Left + 0.005 + bar.Pieces.Sum(p => p.Length + 0.002), 1e-9);
    }
}
