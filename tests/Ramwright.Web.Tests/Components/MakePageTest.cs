using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Ramwright.Fabrication;
using Ramwright.Files.Making;
using Ramwright.Quantities;
using Ramwright.Web.Opened;
using Ramwright.Web.Pages;

namespace Ramwright.Web.Tests.Components;

public sealed class MakePageTest : BenchContext
{
    private IRenderedComponent<MakePage> Page(string name = "wherry-yard")
    {
        Folder.Copy(name);
        return Render<MakePage>(p => p.Add(c => c.Name, name));
    }

    private OpenPress Press(string name = "wherry-yard") => Services.GetRequiredService<BenchFolder>().Find(name)!;

    [Fact]
    public void EveryPlateIsDrawnAndEveryLinkLeadsToAFileThatIsMade()
    {
        IRenderedComponent<MakePage> page = Page();
        PartList parts = PartList.Of(Press().Now.Check!.Rig);

        Assert.Equal(parts.Plates.Count(), page.FindAll("#plates .card svg path[data-part]").Count);
        Assert.Equal(parts.Lengths.Count(), page.FindAll("#lengths tbody tr").Count);
        Assert.Equal(parts.Undecided.Count, page.FindAll("#undecided li").Count);
        string[] files = [.. page.FindAll("a[href*='/made/']").Select(a => a.GetAttribute("href")!.Split("/made/")[1].Split('?')[0])];
        Assert.True(files.Length > 20);
        var made = Services.GetRequiredService<MadeFiles>();
        Assert.All(files, f => Assert.True(made.File(Press().Now, UnitSystem.Metric, f) is { Bytes.Length: > 0 }, f));
    }

    [Fact]
    public void AChangeOfTheFileChangesTheParts()
    {
        IRenderedComponent<MakePage> page = Page();
        Assert.Contains("970 mm", page.Find("#lengths").TextContent, StringComparison.Ordinal);

        Press().Set("frame.width", "750 mm");

        page.WaitForAssertion(() => Assert.Contains("1070 mm", page.Find("#lengths").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void ASearchEndsWithNestsThatAreThenTheFilesToo()
    {
        IRenderedComponent<MakePage> page = Page();
        Assert.Equal(3, page.FindAll("figure.nest").Count);
        page.Find("#rounds").Change("30");

        page.Find("#search").Click();

        page.WaitForAssertion(() => Assert.Single(page.FindAll("#search")), TimeSpan.FromSeconds(20));
        Assert.Equal(3, page.FindAll("figure.nest").Count);
        MakeOf made = Services.GetRequiredService<MadeFiles>().Of(Press().Now, UnitSystem.Metric)!;
        Assert.Equal(30, made.Effort!.Rounds);
    }

    [Fact]
    public void AWrongNumberOfPlansIsSaid()
    {
        IRenderedComponent<MakePage> page = Page();
        page.Find("#rounds").Change("lots");

        page.Find("#search").Click();

        Assert.Contains("a number of plans", page.Find("#nests [role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileThatCannotBeReadKeepsTheLastGoodList()
    {
        IRenderedComponent<MakePage> page = Page();

        Press().Set("frame.width", "wide");

        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".faults")));
        Assert.NotEmpty(page.FindAll(".leaf.stale #plates .card"));
    }
}
