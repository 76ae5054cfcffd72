using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Ramwright.Web.Opened;
using Ramwright.Web.Pages;

namespace Ramwright.Web.Tests.Components;

public sealed class PapersPageTest : BenchContext
{
    private IRenderedComponent<PapersPage> Open(string example)
    {
        Folder.Copy(example);
        return Render<PapersPage>(p => p.Add(x => x.Name, example));
    }

    [Theory]
    [InlineData("wherry-yard"), InlineData("railing-shop"), InlineData("drainage-mill-puller")]
    public void EveryPaperOfAnExampleIsThereWithItsDownloads(string example)
    {
        IRenderedComponent<PapersPage> page = Open(example);
        Assert.Equal(["dossier", "weld", "holes", "circuit", "costs", "plate", "open"], page.FindAll("section[id]").Select(s => s.Id).Where(id => id is not ("" or null)).Where(id => page.Find("#" + id).ClassList.Contains("plotted")));
        string[] files = [.. page.FindAll("a[download]").Select(a => a.GetAttribute("href")!)];
        Assert.Contains($"/press/{example}/made/dossier.pdf?units=metric", files);
        Assert.All(files, f => Assert.StartsWith($"/press/{example}/made/", f, StringComparison.Ordinal));
        Assert.Equal(3, page.FindAll("#circuit svg, #plate svg").Count);
    }

    [Fact]
    public void UnknownSteelIsSentToTheTestsFirst()
    {
        IRenderedComponent<PapersPage> page = Open("railing-shop");
        IElement weld = page.Find("#weld");
        Assert.Contains(weld.QuerySelectorAll("p.warn"), p => p.TextContent.Contains("is not known", StringComparison.Ordinal));
        Assert.Contains(weld.QuerySelectorAll("ol li"), l => l.TextContent.StartsWith("Spark it", StringComparison.Ordinal));
    }

    [Fact]
    public void ItFollowsThePressAsItIsChanged()
    {
        IRenderedComponent<PapersPage> page = Open("railing-shop");
        OpenPress press = Services.GetRequiredService<BenchFolder>().Find("railing-shop")!;

        press.Set("frame.upper-arm.steel", "S355");
        press.Set("frame.lower-arm.steel", "S355");

        page.WaitForAssertion(() => Assert.Contains("Heat to", page.Find("#weld").TextContent, StringComparison.Ordinal));
        Assert.DoesNotContain("Spark it", page.Find("#weld").TextContent, StringComparison.Ordinal);
    }
}
