using Microsoft.Playwright;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Quantities;
using static Microsoft.Playwright.Assertions;

namespace Ramwright.Web.Tests;

/// <summary>The main path through the bench in a real browser.</summary>
public sealed class BenchInBrowserTest(BenchWalk walk) : IClassFixture<BenchWalk>
{
    private static PressCheck CheckOf(string text) => CheckedPress.Of(PressOnDisk.Read(text, "x" + PressFile.Ending, "x")).Check!;

    private static string SafeTo(string text) => ForceText.Of(CheckOf(text).Ladder.SafeRating, UnitSystem.Metric);

    [BrowserFact]
    public async Task FromAnExampleToASavedChangeAndBack()
    {
        string first = Example.Text("wherry-yard");
        IPage page = await walk.Open("/");
        await page.GetByLabel("Call it").FillAsync("my first");
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy and open" }).ClickAsync();
        await Expect(page.Locator("#safe-to")).ToHaveTextAsync(SafeTo(first));

        // a change shows the answer that the command line gives for the same file
        string changed = first.Replace("relief: 215 bar", "relief: 150 bar", StringComparison.Ordinal);
        ILocator relief = page.Locator("[id='in-pump.relief']");
        await relief.FillAsync("150 bar");
        await Expect(page.Locator("#safe-to")).ToHaveTextAsync(SafeTo(changed));
        await Expect(page.Locator("#most-possible")).ToHaveTextAsync(ForceText.Of(CheckOf(changed).Power.MostPossibleForce, UnitSystem.Metric));
        Assert.NotEqual(SafeTo(first), SafeTo(changed));

        // a slip of the keyboard is told at the field in the command line's words, and the last good answer stays, marked
        await relief.FillAsync("150 bat");
        PlacedFault fault = PressFile.Read(first.Replace("relief: 215 bar", "relief: 150 bat", StringComparison.Ordinal), "x", StockTables.Built).Faults.Single();
        await Expect(page.Locator("[id='at-pump.relief'] .fault")).ToContainTextAsync(fault.Found);
        await Expect(page.Locator(".answer.stale #safe-to")).ToHaveTextAsync(SafeTo(changed));
        await relief.FillAsync("150 bar");
        await Expect(page.Locator(".stale")).ToHaveCountAsync(0);

        await page.Keyboard.PressAsync("Control+s");
        await Expect(page.Locator("#save")).ToHaveTextAsync("Saved");
        Assert.Equal(changed, await File.ReadAllTextAsync(walk.Folder.Path("my first")));

        await page.Keyboard.PressAsync("Control+z");
        await Expect(page.Locator("#safe-to")).ToHaveTextAsync(SafeTo(first));
        await Expect(relief).ToHaveValueAsync("215 bar");
        await page.Keyboard.PressAsync("Control+y");
        await Expect(page.Locator("#safe-to")).ToHaveTextAsync(SafeTo(changed));
        await page.CloseAsync();
    }

    [BrowserFact]
    public async Task TwoTabsShareOnePressAndAFileChangedOutsideIsOffered()
    {
        string path = walk.Folder.Path("shared");
        await File.WriteAllTextAsync(path, Example.Text("wherry-yard"));
        IPage one = await walk.Open("/press/shared"), two = await walk.Open("/press/shared");

        await one.Locator("[id='in-wanted']").FillAsync("21 t");
        await Expect(two.Locator("[id='in-wanted']")).ToHaveValueAsync("21 t");
        await two.Locator("[id='in-pump.relief']").FillAsync("205 bar");
        await Expect(one.Locator("[id='in-pump.relief']")).ToHaveValueAsync("205 bar");

        await File.AppendAllTextAsync(path, "# from outside\n");
        await one.Locator("#save").ClickAsync();
        await Expect(one.Locator(".conflict")).ToBeVisibleAsync();
        await Expect(two.Locator(".conflict")).ToBeVisibleAsync();
        Assert.EndsWith("# from outside\n", await File.ReadAllTextAsync(path), StringComparison.Ordinal);
        await two.GetByRole(AriaRole.Button, new() { Name = "Save what is here over it" }).ClickAsync();
        await Expect(one.Locator(".conflict")).ToHaveCountAsync(0);
        string saved = await File.ReadAllTextAsync(path);
        Assert.Contains("wanted: 21 t", saved, StringComparison.Ordinal);
        Assert.Contains("relief: 205 bar", saved, StringComparison.Ordinal);
        await one.CloseAsync();
        await two.CloseAsync();
    }

    [BrowserFact]
    public async Task ARungOpensItsWorkingAndAPartItsRungs()
    {
        await File.WriteAllTextAsync(walk.Folder.Path("read"), Example.Text("wherry-yard"));
        IPage page = await walk.Open("/press/read");

        await page.Locator("#rung-crown-bending").ClickAsync();
        await Expect(page.Locator("#work-crown-bending math[display='block']").First).ToBeVisibleAsync();
        await page.Locator(".sheet path[data-part='crown']").First.ClickAsync(new() { Force = true });
        await Expect(page.Locator(".rungs > li.chosen #rung-crown-bending")).ToBeVisibleAsync();
        await page.Locator(".picked [data-goto]").ClickAsync();
        await Expect(page.Locator("[id='in-frame.crown.section']")).ToBeVisibleAsync();
        await page.CloseAsync();
    }

    [BrowserFact]
    public async Task OnAPhoneNothingStandsBesideThePageAndTargetsAreLargeEnough()
    {
        await File.WriteAllTextAsync(walk.Folder.Path("phone"), Example.Text("railing-shop"));
        IPage page = await walk.Open("/press/phone", 390, 844);

        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        string[] small = await page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll('button, select, input, summary')].filter(e => e.checkVisibility())
              .filter(e => { const r = e.getBoundingClientRect(); return r.width > 0 && r.height > 0 && r.height < 43.5; })
              .map(e => e.outerHTML.slice(0, 80))
            """);
        Assert.Empty(small);
        await page.CloseAsync();
    }

    [BrowserFact]
    public async Task WordsOfAFileNeverBecomeMarkup()
    {
        await File.WriteAllTextAsync(walk.Folder.Path("sly"),
            Example.Text("wherry-yard").Replace("name: Wherry Yard 25 t", "name: '<img src=x onerror=document.title=1><script>document.title=2</script>'", StringComparison.Ordinal));
        IPage page = await walk.Open("/press/sly");

        await Expect(page.Locator("h1")).ToContainTextAsync("<img src=x");
        Assert.Equal(0, await page.Locator("img, h1 script, .sheet script").CountAsync());
        await page.CloseAsync();
    }
}
