using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Ramwright.Web.Pages;
using Ramwright.Web.Solid;

namespace Ramwright.Web.Tests.Components;

public sealed class SolidPageTest : BenchContext
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(120);

    [Fact]
    public void ItIsSolvedWhenAskedAndShowsFiguresAndSurface()
    {
        Folder.Copy("railing-shop");
        IRenderedComponent<SolidPage> page = Render<SolidPage>(p => p.Add(c => c.Name, "railing-shop"));
        Assert.Empty(page.FindAll("[data-solid]"));

        page.Find("#solid-start").Click();
        page.WaitForElement("[data-solid]", Long);

        Assert.Contains("column", page.Find(".solid-facts").TextContent, StringComparison.Ordinal);
        Assert.Contains("by beams", page.Find(".solid-facts").TextContent, StringComparison.Ordinal);
        Assert.Equal(8, page.FindAll(".solid-key li").Count);
        Assert.Equal(3, page.Find("[data-solid]").GetAttribute("data-weakest")!.Split(' ').Length);

        byte[] bytes = Services.GetRequiredService<SolidDesk>().Of("railing-shop")!.Surface!;
        uint corners = BitConverter.ToUInt32(bytes, 0), triangles = BitConverter.ToUInt32(bytes, 4);
        Assert.Equal(8L + corners * SurfaceBytes.Each * 4 + triangles * 12, bytes.Length);
        for (int i = 0; i < triangles * 3; i++)
            Assert.True(BitConverter.ToUInt32(bytes, (int)(8 + corners * SurfaceBytes.Each * 4 + 4 * i)) < corners);
    }

    [Fact]
    public void WhatIsStoppedSaysSo()
    {
        Folder.Copy("wherry-yard");
        IRenderedComponent<SolidPage> page = Render<SolidPage>(p => p.Add(c => c.Name, "wherry-yard"));

        page.Find("#solid-start").Click();
        page.Find("#solid-stop").Click();

        page.WaitForAssertion(() => Assert.Contains("stopped", page.Find("[role=alert].fault").TextContent, StringComparison.Ordinal), Long);
        Assert.Empty(page.FindAll("[data-solid]"));
    }
}
