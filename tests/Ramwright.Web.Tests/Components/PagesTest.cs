using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Web.Opened;
using Ramwright.Web.Pages;

namespace Ramwright.Web.Tests.Components;

public sealed class PagesTest : BenchContext
{
    private BenchFolder Bench => Services.GetRequiredService<BenchFolder>();

    [Fact]
    public void TheFirstAnswerGivesAVerdictAndTheRestIsTakenForNow()
    {
        IRenderedComponent<BeginPage> page = Render<BeginPage>();
        Assert.Empty(page.FindAll(".verdict"));

        page.Find("#q-bore").Input("4 in");

        Assert.Single(page.FindAll(".verdict"));
        Assert.Contains("psi, or strengthen what the ladder names", page.Find("#to-do").TextContent.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Contains("US ton", page.Find(".jumps.so").TextContent, StringComparison.Ordinal);
        Assert.Contains(page.FindAll(".taken li"), l => l.TextContent.Contains("20 US ton", StringComparison.Ordinal));
        Assert.DoesNotContain(page.FindAll(".taken li"), l => l.TextContent.Contains("bore", StringComparison.Ordinal));
    }

    [Fact]
    public void AWrongAnswerIsToldAtItsQuestionAndTheLastGoodOneStays()
    {
        IRenderedComponent<BeginPage> page = Render<BeginPage>();
        page.Find("#q-bore").Input("4 in");
        string safe = page.Find("#safe-to").TextContent;

        page.Find("#q-wanted").Input("20 tons");

        Assert.Contains("ton", page.Find("#q-wanted-fault").TextContent, StringComparison.Ordinal);
        Assert.Equal(safe, page.Find(".stale #safe-to").TextContent);
        Assert.True(page.Find("#keep").HasAttribute("disabled"));
    }

    [Fact]
    public void ItGrowsIntoAPressFileWithTheSameAnswer()
    {
        IRenderedComponent<BeginPage> page = Render<BeginPage>();
        page.Find("#q-bore").Input("4 in");
        page.Find("#q-frame").Change("open-front");
        page.Find("#q-wanted").Input("12 t");
        page.Find("#new-name").Input("mine");

        page.Find("#keep").Click();

        PressNow kept = Bench.Find("mine")!.Now;
        Assert.Equal(page.Find("#safe-to").TextContent, ForceText.Of(kept.Check!.Ladder.SafeRating, kept.Read.Press.Reading.Units));
        Assert.Contains("# taken for now:", kept.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void AgainstWhatIsSavedOnlyWhatWasChangedMoves()
    {
        Folder.Copy("wherry-yard");
        OpenPress press = Bench.Find("wherry-yard")!;
        IRenderedComponent<ComparePage> page = Render<ComparePage>(p => p.Add(c => c.Name, "wherry-yard"));
        Assert.Empty(page.FindAll("#moves tr"));

        press.Set("price-per-kg", "2");
        press.Set("frame.crown.section", "2 x UPN 260");

        PressComparison change = PressComparison.Of(press.Saved.Check!, press.Now.Check!, 2);
        page.WaitForAssertion(() => Assert.Equal(change.Moved.Count(), page.FindAll("#moves tbody tr").Count));
        Assert.Contains("▲", page.Find("#move-crown-bending").TextContent, StringComparison.Ordinal);
        Assert.Contains(Readout.Number(change.AddedPrice!.Value), page.Find("#forces-moved").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void AgainstAnotherPressOfTheFolder()
    {
        Folder.Copy("wherry-yard");
        Folder.Copy("railing-shop");
        IRenderedComponent<ComparePage> page = Render<ComparePage>(p => p.Add(c => c.Name, "wherry-yard"));

        page.Find("#against").Change("railing-shop");

        Assert.Contains("gone", page.Find("#move-upper-arm-bending").TextContent, StringComparison.Ordinal);
        Assert.Contains("new", page.Find("#move-crown-bending").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    [InlineData("drainage-mill-puller")]
    public void EveryPlotHasAxesWithUnitsAndATableBesideIt(string example)
    {
        Folder.Copy(example);
        IRenderedComponent<PowerPage> power = Render<PowerPage>(p => p.Add(c => c.Name, example));
        IRenderedComponent<OffCentrePage> off = Render<OffCentrePage>(p => p.Add(c => c.Name, example));

        IElement[] figures = [.. power.FindAll("figure.plot"), .. off.FindAll("figure.plot")];
        Assert.True(figures.Length >= 3);
        foreach (IElement figure in figures)
        {
            string[] texts = [.. figure.QuerySelectorAll(".wide text").Select(t => t.TextContent)];
            Assert.Contains(texts, t => t.EndsWith(", bar", StringComparison.Ordinal) || t.EndsWith(", mm", StringComparison.Ordinal) || t.EndsWith(", s", StringComparison.Ordinal));
            Assert.Empty(figure.QuerySelectorAll("[style]"));
            Assert.NotEmpty(figure.Closest("section")!.QuerySelectorAll("table tbody tr"));
        }
    }

    [Fact]
    public void AWrongPauseIsToldAndTheSeriesStays()
    {
        Folder.Copy("railing-shop");
        IRenderedComponent<PowerPage> page = Render<PowerPage>(p => p.Add(c => c.Name, "railing-shop"));
        int rows = page.FindAll("#air tbody tr").Count;

        page.Find("#pause").Change("5 bananas");

        Assert.NotEmpty(page.Find("#air-fault").TextContent);
        Assert.Equal(rows, page.FindAll("#air tbody tr").Count);
        page.Find("#squeezes").Change("1");
        Assert.Equal("", page.Find("#air-fault").TextContent);
        Assert.Single(page.FindAll("#air tbody tr"));
    }

    [Fact]
    public void TheThreeForcesStandOnEveryPageOfAPress()
    {
        Folder.Copy("wherry-yard");
        PressCheck check = Check("wherry-yard");
        void Has<T>() where T : PressView
        {
            IRenderedComponent<T> page = Render<T>(p => p.Add(c => c.Name, "wherry-yard"));
            Assert.Equal(ForceText.Of(check.Rig.Wanted, UnitSystem.Metric), page.Find("#wanted-force").TextContent);
            Assert.Equal(ForceText.Of(check.Ladder.SafeRating, UnitSystem.Metric), page.Find("#safe-to").TextContent);
            Assert.Equal(ForceText.Of(check.Power.MostPossibleForce, UnitSystem.Metric), page.Find("#most-possible").TextContent);
        }

        Has<PressPage>();
        Has<OffCentrePage>();
        Has<PowerPage>();
        Has<ComparePage>();
    }
}
