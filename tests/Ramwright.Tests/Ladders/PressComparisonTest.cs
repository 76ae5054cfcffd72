using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Ladders;

namespace Ramwright.Tests.Ladders;

public class PressComparisonTest
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repository.Folder("examples"), "wherry-yard.press.yaml"));

    private static PressCheck Check(string text) => CheckedPress.Of(PressOnDisk.Read(text, "x.press.yaml", "x")).Check!;

    [Fact]
    public void APressAgainstItselfMovesNothing()
    {
        PressComparison same = PressComparison.Of(Check(Text), Check(Text), 2);

        Assert.Empty(same.Moved);
        Assert.Equal(Check(Text).Ladder.Rungs.Count, same.Rungs.Count);
        Assert.Equal(0, same.AddedPrice);
    }

    [Fact]
    public void AHeavierCrownLiftsItsRungsAndCostsItsSteel()
    {
        PressCheck before = Check(Text), after = Check(Text.Replace("crown: { section: 2 x UPN 220", "crown: { section: 2 x UPN 260", StringComparison.Ordinal));
        PressComparison change = PressComparison.Of(before, after, 1.5);

        RungMove bends = change.Rungs.Single(r => r.Rung.Id == "crown-bending");
        Assert.Equal(RungChange.Up, bends.Change);
        Assert.Equal(after.Ladder.Rungs.Single(r => r.Id == "crown-bending").SafeTo - before.Ladder.Rungs.Single(r => r.Id == "crown-bending").SafeTo, bends.SafeToBy);
        Assert.Equal(RungChange.Stays, change.Rungs.Single(r => r.Rung.Part == "relief valve").Change);
        double added = FrameBody.Of(after.Rig).Mass - FrameBody.Of(before.Rig).Mass;
        Assert.True(added > 10);
        Near.Relative(1.5 * added, change.AddedPrice!.Value, 1e-12, "price");
    }

    [Fact]
    public void WhatOnlyOneHasIsNewOrGone()
    {
        PressCheck open = Check(File.ReadAllText(Path.Combine(Repository.Folder("examples"), "railing-shop.press.yaml"))), closed = Check(Text);
        PressComparison change = PressComparison.Of(open, closed);

        Assert.Equal(RungChange.Gone, change.Rungs.Single(r => r.Rung.Id == "upper-arm-bending").Change);
        Assert.Equal(RungChange.New, change.Rungs.Single(r => r.Rung.Id == "crown-bending").Change);
        Assert.Null(change.AddedPrice);
    }
}
