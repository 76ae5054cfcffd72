using Microsoft.Playwright;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Quantities;
using static Microsoft.Playwright.Assertions;

namespace Ramwright.Web.Tests;

/// <summary>The main path through the bench in a real browser.</summary>
[Collection("one browser at a time")]
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
        await Expect(page.Locator(".band.stale #safe-to")).ToHaveTextAsync(SafeTo(changed));
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
    public async Task AChangedBoreGivesTheForceOfTheCommandLine()
    {
        string text = Example.Text("wherry-yard"), changed = text.Replace("bore: 125 mm", "bore: 4-1/2 in", StringComparison.Ordinal);
        await File.WriteAllTextAsync(walk.Folder.Path("bore"), text);
        IPage page = await walk.Open("/press/bore");

        await page.Locator("[id='in-cylinder.bore']").FillAsync("4-1/2 in");
        await Expect(page.Locator("#safe-to")).ToHaveTextAsync(SafeTo(changed));
        await page.Keyboard.PressAsync("Control+s");
        await Expect(page.Locator("#save")).ToHaveTextAsync("Saved");

        Assert.Equal(changed, await File.ReadAllTextAsync(walk.Folder.Path("bore")));
        using var said = System.Text.Json.JsonDocument.Parse(await CommandLine.Check(walk.Folder.Path("bore")));
        double safe = 1000 * said.RootElement.GetProperty("safeRatingKN").GetDouble();
        Assert.Equal(ForceText.Of(safe, UnitSystem.Metric), await page.Locator("#safe-to").TextContentAsync());
        await page.CloseAsync();
    }

    [BrowserFact]
    public async Task WithTheKeyboardAlone()
    {
        await File.WriteAllTextAsync(walk.Folder.Path("keys"), Example.Text("wherry-yard"));
        IPage page = await walk.Open("/press/keys");

        await page.Keyboard.PressAsync("Tab");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Skip to the ladder" })).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        ILocator first = page.Locator("button.rung").First;
        await Expect(first).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(first).ToHaveAttributeAsync("aria-expanded", "true");

        await page.EvaluateAsync("() => { document.activeElement.blur(); document.querySelector('.skips button:last-child').focus(); }");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("[id='in-name']")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("[id='in-wanted']")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("18 t");
        await page.Keyboard.PressAsync("Control+s");
        await Expect(page.Locator("#undo")).ToBeEnabledAsync();       // "Saved" stands there before anything was typed, too
        await Expect(page.Locator("#save")).ToHaveTextAsync("Saved");
        Assert.Contains("wanted: 18 t\n", await File.ReadAllTextAsync(walk.Folder.Path("keys")), StringComparison.Ordinal);

        // whatever is reached shows that it is
        string[] unseen = await page.EvaluateAsync<string[]>("""
            async () => {
              const bad = [];
              for (const e of [...document.querySelectorAll('a[href], button, input, select, summary')].filter(e => e.checkVisibility() && !e.disabled).slice(0, 60)) {
                e.focus();
                if (document.activeElement === e && e.matches(':focus-visible') && getComputedStyle(e).outlineStyle === 'none') bad.push(e.outerHTML.slice(0, 80));
              }
              return bad;
            }
            """);
        Assert.Empty(unseen);
        await page.CloseAsync();
    }

    [BrowserFact]
    public async Task KilledAndStartedAgainTheFileIsWholeAndThePageComesBack()
    {
        string path = walk.Folder.Path("killed"), text = Example.Text("wherry-yard");
        await File.WriteAllTextAsync(path, text);
        using (var bench = await BenchProcess.Start(walk.Folder.Folder))
        {
            IPage page = await walk.OpenAt(bench.Address + "/press/killed");
            await page.Locator("[id='in-wanted']").FillAsync("21 t");
            await Expect(page.Locator("#wanted-force")).ToContainTextAsync("21.0 t");
            await page.Keyboard.PressAsync("Control+s");
            await Expect(page.Locator("#save")).ToHaveTextAsync("Saved");
            await page.Locator("[id='in-wanted']").FillAsync("22 t");
            await Expect(page.Locator("#wanted-force")).ToContainTextAsync("22.0 t");
            bench.Kill();
            await Expect(page.Locator("#components-reconnect-modal")).ToBeVisibleAsync(new() { Timeout = 30_000 });
            await page.CloseAsync();
        }

        Assert.Equal(text.Replace("wanted: 25 t", "wanted: 21 t", StringComparison.Ordinal), await File.ReadAllTextAsync(path));
        Assert.Empty(Directory.GetFiles(walk.Folder.Folder, "*.saving"));
        using (var bench = await BenchProcess.Start(walk.Folder.Folder))
        {
            IPage page = await walk.OpenAt(bench.Address + "/press/killed");
            await Expect(page.Locator("#wanted-force")).ToContainTextAsync("21.0 t");
            await page.CloseAsync();
        }
    }

    [BrowserFact]
    public async Task StockIsSearchedAsItIsTypedAndPickedWithTheMouse()
    {
        await File.WriteAllTextAsync(walk.Folder.Path("stock"), Example.Text("wherry-yard"));
        IPage page = await walk.Open("/press/stock");

        await page.Locator("[id='at-frame.crown'] > summary").ClickAsync();
        await page.Locator("[id='in-frame.crown.section']").FillAsync("2 x UPN 2");
        await page.Locator("[id='list-frame.crown.section']").GetByRole(AriaRole.Option, new() { Name = "2 x UPN 240", Exact = true }).ClickAsync();

        await Expect(page.Locator("[id='in-frame.crown.section']")).ToHaveValueAsync("2 x UPN 240");
        await Expect(page.Locator(".faults")).ToHaveCountAsync(0);
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

        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Show the other") }).ClickAsync();
        await page.Locator("#rung-crown-bending").ClickAsync();
        await Expect(page.Locator("#work-crown-bending math[display='block']").First).ToBeVisibleAsync();
        await page.Locator(".sheet path[data-part='crown']").First.ClickAsync(new() { Force = true });
        await Expect(page.Locator(".rungs > li.chosen #rung-crown-bending")).ToBeVisibleAsync();
        await page.Locator(".picked .small").ClickAsync();
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
              .filter(e => { const r = e.getBoundingClientRect(); return r.width > 0 && !e.closest('.skips') && r.height > 0 && r.height < 43.5; })
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
