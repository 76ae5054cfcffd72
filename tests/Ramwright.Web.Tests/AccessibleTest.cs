using Microsoft.Playwright;

namespace Ramwright.Web.Tests;

/// <summary>Every page, light and dark, on a desk and on a phone, against the rules of axe-core.</summary>
[Collection("one browser at a time")]
public sealed class AccessibleTest(BenchWalk walk) : IClassFixture<BenchWalk>
{
    private static readonly string[] Pages =
        ["/", "/begin", "/press/axe", "/press/axe/off-centre", "/press/axe/power", "/press/axe/solid", "/press/axe/compare", "/press/faulty", "/press/none"];

    [AxeTheory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task NoPageHasASeriousFinding(int width, ColorScheme scheme)
    {
        await File.WriteAllTextAsync(walk.Folder.Path("axe"), Example.Text("railing-shop"));
        await File.WriteAllTextAsync(walk.Folder.Path("faulty"), Example.Text("railing-shop").Replace("bore: 75 mm", "bore: 75 mn", StringComparison.Ordinal));
        var found = new List<string>();
        IPage page = await walk.Open(Pages[0], width, 900, scheme);
        foreach (string path in Pages)
        {
            await walk.Go(page, path);
            switch (path)
            {
                case "/begin":
                    await page.GetByLabel("bore").FillAsync("4 in");
                    await page.GetByLabel("force").FillAsync("20 tons");
                    await page.Locator(".stale").First.WaitForAsync();
                    break;
                case "/press/axe":
                    await page.Locator("button.rung").First.ClickAsync();
                    await page.Locator("[data-pick='upper arm']").ClickAsync();
                    await page.Locator(".picked").WaitForAsync();
                    await page.Locator("#bent").ClickAsync();
                    await page.Locator("#bent-case").WaitForAsync();
                    break;
            }

            found.AddRange((await Axe.Findings(page)).Select(f => $"{path}: {f}"));
            if (width == 390 && await page.EvaluateAsync<int>("document.documentElement.scrollWidth") > 390)
                found.Add($"{path}: stands out beside the page");
        }

        await page.CloseAsync();
        Assert.Empty(found);
    }

    [AxeTheory, InlineData(1280)]
    public async Task WhatIsWrongIsFound(int width)
    {
        IPage page = await walk.Open("/begin", width);
        await page.EvaluateAsync("() => { document.querySelector('label[for=q-bore]').remove(); document.querySelector('.place').setAttribute('role', 'nonsense'); }");

        string[] found = await Axe.Findings(page);

        Assert.Contains(found, f => f.StartsWith("label", StringComparison.Ordinal));
        Assert.Contains(found, f => f.StartsWith("aria-roles:", StringComparison.Ordinal));
        await page.CloseAsync();
    }
}
