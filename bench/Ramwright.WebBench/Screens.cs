using Microsoft.Playwright;
using Ramwright.Bench;

namespace Ramwright.WebBench;

/// <summary>Pictures of the main pages: on a desk light and dark, on a phone, and on paper.</summary>
internal static class Screens
{
    private static readonly (string Name, string Path, Func<IPage, Task>? First)[] Pages =
    [
        ("presses", "/", null),
        ("begin", "/begin", async p =>
        {
            await p.GetByLabel("bore").FillAsync("4 in");
            await p.Locator("#safe-to").WaitForAsync();
        }),
        ("press", "/press/wherry-yard", null),
        ("bends", "/press/wherry-yard", async p =>
        {
            await p.Locator("#bent").ClickAsync();
            await p.Locator("#bent-case").WaitForAsync();
            await p.Locator("#drawing").EvaluateAsync("e => { e.scrollIntoView(); scrollBy(0, -130); }");
        }),
        ("ladder", "/press/railing-shop", async p =>
        {
            await p.Locator("button.rung").Nth(1).ClickAsync();
            await p.Locator(".working").WaitForAsync();
            await p.Locator("#ladder").EvaluateAsync("e => { e.scrollIntoView(); scrollBy(0, -130); }");
        }),
        ("off-centre", "/press/wherry-yard/off-centre", null),
        ("power", "/press/railing-shop/power", null),
        ("solid", "/press/railing-shop/solid", async p =>
        {
            if (await p.Locator("[data-solid]").CountAsync() == 0)
                await p.Locator("#solid-start").ClickAsync();
            await p.Locator("[data-solid] canvas").WaitForAsync(new LocatorWaitForOptions { Timeout = 60_000 });
            await p.Locator("#solid").EvaluateAsync("e => { e.scrollIntoView(); scrollBy(0, -130); }");
        }),
        ("compare", "/press/wherry-yard/compare", async p =>
        {
            await p.SelectOptionAsync("#against", "railing-shop");
            await p.Locator("#moves").WaitForAsync();
        }),
    ];

    public static async Task Take()
    {
        string folder = Path.Combine(Repository.Find("docs"), "screens");
        Directory.CreateDirectory(folder);
        await using Served served = await Served.Start();
        foreach ((string name, string path, Func<IPage, Task>? first) in Pages)
        {
            await Shot("light", 1280, 900, ColorScheme.Light);
            await Shot("dark", 1280, 900, ColorScheme.Dark);
            await Shot("phone", 390, 844, ColorScheme.Light);

            async Task Shot(string kind, int width, int height, ColorScheme scheme)
            {
                IPage page = await served.Open(path, width, height, scheme);
                if (first is not null)
                    await first(page);
                // no caret, no half-way colours
                await page.WaitForTimeoutAsync(400);
                await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, $"{name}-{kind}.png"), Animations = ScreenshotAnimations.Disabled });
                await page.CloseAsync();
            }
        }

        // an A4 page as it comes out of a printer, at 96 dots an inch
        IPage paper = await served.Open("/press/wherry-yard", 794 - 2 * 45, 1123 - 2 * 45);
        await paper.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await paper.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, "press-paper.png") });
        Console.WriteLine($"pictures are in {folder}");
    }
}
