using AngleSharp.Dom;
using Bunit;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Web.Bench;

namespace Ramwright.Web.Tests.Components;

public sealed class LadderViewTest : BenchContext
{
    private readonly PressCheck _check = Check("wherry-yard");

    private IRenderedComponent<LadderView> Ladder(double at, UnitSystem units = UnitSystem.Metric, string part = "", string opened = "") => Render<LadderView>(p => p
        .Add(l => l.Check, _check).Add(l => l.Units, units).Add(l => l.At, at).Add(l => l.AtWords, "a force").Add(l => l.Part, part).Add(l => l.Opened, opened));

    [Fact]
    public void TheLowestRungStandsFirstAndIsNamedTheWeakest()
    {
        IElement first = Ladder(_check.Rig.Wanted).FindAll(".rungs > li")[0];

        Assert.Contains("governing", first.ClassName, StringComparison.Ordinal);
        Assert.NotNull(first.QuerySelector($"#rung-{_check.Ladder.Governing.Id}"));
    }

    [Fact]
    public void HighRungsComeOnDemand()
    {
        IRenderedComponent<LadderView> ladder = Ladder(_check.Rig.Wanted);
        Assert.True(ladder.FindAll(".rungs > li").Count < _check.Ladder.Rungs.Count);

        ladder.FindAll("button").Single(b => b.TextContent.StartsWith("Show the other", StringComparison.Ordinal)).Click();

        Assert.Equal(_check.Ladder.Rungs.Count, ladder.FindAll(".rungs > li").Count);
    }

    [Fact]
    public void WantedTrueAndMostPossibleAreThreeLinesOfTheirOwn()
    {
        IRenderedComponent<LadderView> ladder = Ladder(_check.Rig.Wanted);
        string[] places = [.. new[] { "wanted", "true", "most" }.Select(c => ladder.Find($".bar line.{c}").GetAttribute("x1")!)];

        Assert.Equal(3, places.Distinct().Count());
        Assert.Contains(ladder.FindAll(".legend li"), l => l.TextContent.Contains("true force", StringComparison.Ordinal) && l.TextContent.Contains("256", StringComparison.Ordinal));
    }

    [Fact]
    public void WhatIsUsedFollowsTheForceLookedAt()
    {
        Rung lowest = _check.Ladder.Governing;
        string Used(double force) => Ladder(force).FindAll(".rungs > li")[0].QuerySelectorAll(".figures span")[^1].TextContent;

        Assert.Contains("50 %", Used(lowest.SafeTo / 2), StringComparison.Ordinal);
        Assert.Contains("200 %", Used(2 * lowest.SafeTo), StringComparison.Ordinal);
    }

    [Fact]
    public void RungsOfTheChosenPartAreMarked()
    {
        IRenderedComponent<LadderView> ladder = Ladder(_check.Rig.Wanted, part: "crown joint");

        Assert.Contains(ladder.FindAll(".rungs > li.chosen .what b"), b => b.TextContent == "Bolts of the crown joint");
        Assert.DoesNotContain(ladder.FindAll(".rungs > li.chosen .what b"), b => b.TextContent == "Crown");
    }

    [Fact]
    public void AnOpenedRungShowsItsFormulaAsMathematicsWithItsSource()
    {
        IRenderedComponent<LadderView> ladder = Ladder(_check.Rig.Wanted, opened: "crown-bending");

        Assert.NotEmpty(ladder.FindAll("#work-crown-bending math"));
        Assert.All(ladder.FindAll("#work-crown-bending .source"), s => Assert.NotEmpty(s.TextContent.Trim()));
    }
}
