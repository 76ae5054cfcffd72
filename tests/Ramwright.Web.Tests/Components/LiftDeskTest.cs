using AngleSharp.Dom;
using Bunit;
using Ramwright.Web.Pages;

namespace Ramwright.Web.Tests.Components;

public sealed class LiftDeskTest : BenchContext
{
    private IRenderedComponent<PressPage> Page(string example)
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Folder.Copy(example);
        return Render<PressPage>(p => p.Add(s => s.Name, example));
    }

    [Fact]
    public void AWayIsFoundAndMadeAndThePressHolds()
    {
        IRenderedComponent<PressPage> page = Page("railing-shop");
        Assert.Equal("does not hold", page.Find("#verdict .stamp").TextContent, ignoreCase: true);

        page.Find("#find-lift").Click();
        page.WaitForElement(".ways-up button", TimeSpan.FromSeconds(60));
        IElement first = page.Find(".ways-up li");
        Assert.Contains("frame.upper-arm.section", first.TextContent, StringComparison.Ordinal);
        page.Find(".ways-up button").Click();

        page.WaitForAssertion(() => Assert.Equal("holds", page.Find("#verdict .stamp").TextContent, ignoreCase: true), TimeSpan.FromSeconds(60));
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#lift")), TimeSpan.FromSeconds(60));
    }

    [Fact]
    public void APressThatHoldsIsOfferedNone() => Assert.Empty(Page("wherry-yard").FindAll("#lift, #to-do"));
}
