using Bunit;
using Ramwright.Files;
using Ramwright.Web.Pages;

namespace Ramwright.Web.Tests.Components;

public sealed class SolidPageTest : BenchContext
{
    [Fact]
    public void ItKeepsTheJointsWhenAskedAndSaysSoAfterwards()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Folder.Copy("railing-shop");
        IRenderedComponent<SolidPage> page = Render<SolidPage>(p => p.Add(s => s.Name, "railing-shop"));
        page.WaitForElement("#keep-joints", TimeSpan.FromSeconds(120));
        Assert.Contains("Keep them beside the press file", page.Markup, StringComparison.Ordinal);

        page.Find("#keep-joints").Click();

        page.WaitForAssertion(() => Assert.Contains("They are kept beside the press file", page.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(60));
        Assert.Empty(page.FindAll("#keep-joints"));
        Assert.True(File.Exists(JointsFile.PathOf(Folder.Path("railing-shop"))));

        page.Find("#drop-joints").Click();

        page.WaitForAssertion(() => Assert.False(File.Exists(JointsFile.PathOf(Folder.Path("railing-shop")))), TimeSpan.FromSeconds(60));
    }
}
