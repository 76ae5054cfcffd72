using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using Ramwright.Files.Readings;
using Ramwright.Proving;
using static Microsoft.Playwright.Assertions;

namespace Ramwright.Web.Tests;

/// <summary>A press proved on a phone, in a real browser.</summary>
[Collection("one browser at a time")]
public sealed class ProveInBrowserTest(BenchWalk walk) : IClassFixture<BenchWalk>
{
    [BrowserFact]
    public async Task ReadingsAreFilledInOnAPhoneAndGiveTheForceOfTheCommandLine()
    {
        string press = walk.Folder.Path("phone-proof");
        await File.WriteAllTextAsync(press, Example.Text("wherry-yard"));
        IPage page = await walk.Open("/press/phone-proof/prove", 390, 844);
        await page.Locator("#who").FillAsync("Ines");
        await page.Locator("#task-block button").First.ClickAsync();
        await Expect(page.Locator("#task-block button").First).ToHaveAttributeAsync("aria-pressed", "true");

        // three steps, with a thumb
        await page.Locator("#held").ClickAsync();
        await Expect(page.Locator("#step h2")).ToContainTextAsync("Step 2 of 13");
        await page.Locator("#dial-opening").FillAsync("0");
        await page.Locator("#held").ClickAsync();
        await Expect(page.Locator("#step h2")).ToContainTextAsync("Step 3 of 13");
        await page.Locator("#dial-opening").FillAsync("0.19");
        await page.Locator("#dial-crown").FillAsync("0.06");
        await page.Locator("#held").ClickAsync();
        await Expect(page.Locator("#step h2")).ToContainTextAsync("Step 4 of 13");
        await Expect(page.Locator("#closed")).ToHaveTextAsync("3 of 13");

        foreach (string bar in new[] { "212", "213 bar", "212.5", "3085 psi", "212" })
        {
            await page.Locator("#entry-value").FillAsync(bar);
            await page.Locator("#entry-save").ClickAsync();
            await Expect(page.Locator("#entry-said")).ToContainTextAsync("Written");
            await Expect(page.Locator("#entry-value")).ToHaveValueAsync("");
        }

        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        int small = await page.EvaluateAsync<int>("[...document.querySelectorAll('main button, main input, main select')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 44).length");
        Assert.Equal(0, small);

        await walk.Go(page, "/press/phone-proof/measured");
        string shown = (await page.Locator("#true-force").TextContentAsync())!;
        using var said = JsonDocument.Parse(await CommandLine.Run("prove", press, "--json"));
        double kN = said.RootElement.GetProperty("trueForce").GetProperty("kN").GetDouble();
        Assert.StartsWith((kN / 9.80665).ToString("0.0", CultureInfo.InvariantCulture), shown, StringComparison.Ordinal);
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await page.CloseAsync();
        ReadingLog log = ReadingLog.Load(ReadingLog.PathFor(press));
        Assert.Empty(log.Faults);
        Assert.All(log.Readings, r => Assert.Equal("Ines", r.Who));
    }

    [BrowserFact]
    public async Task TheCommandLineAndTwoPhonesAddAtOnceAndNothingIsLost()
    {
        string press = walk.Folder.Path("crowd"), log = ReadingLog.PathFor(press);
        await File.WriteAllTextAsync(press, Example.Text("wherry-yard"));
        IPage[] phones = [await walk.Open("/press/crowd/prove", 390, 844), await walk.Open("/press/crowd/prove", 390, 844)];
        for (int i = 0; i < phones.Length; i++)
            await phones[i].Locator("#who").FillAsync("phone" + i.ToString(CultureInfo.InvariantCulture));
        Task lines = Task.Run(async () =>
        {
            for (int i = 0; i < 6; i++)
                await CommandLine.Run("prove", press, "--who", "line", "--add", "bore 125.0" + i.ToString(CultureInfo.InvariantCulture) + " mm");
        });
        Task[] typed = [.. phones.Select(async phone =>
        {
            for (int i = 0; i < 10; i++)
            {
                string value = (200 + i).ToString(CultureInfo.InvariantCulture);
                await phone.Locator("#entry-value").FillAsync(value);
                await phone.Locator("#entry-save").ClickAsync();
                await Expect(phone.Locator("#entry-said")).ToContainTextAsync($"top-pressure {value}");
            }
        })];
        await Task.WhenAll([lines, .. typed]);
        ReadingLog read = ReadingLog.Load(log);
        Assert.Empty(read.Faults);
        Assert.Equal(6, read.Readings.Count(r => r.Who == "line" && r.Kind == ReadingKind.Bore));
        for (int i = 0; i < phones.Length; i++)
            Assert.Equal(Enumerable.Range(200, 10), read.Readings.Where(r => r.Who == "phone" + i.ToString(CultureInfo.InvariantCulture)).Select(r => (int)Math.Round(r.Value / 1e5)));
        foreach (IPage phone in phones)
            await phone.CloseAsync();
    }

    [BrowserFact]
    public async Task AFaultIsFoundByAnswering()
    {
        await File.WriteAllTextAsync(walk.Folder.Path("sick"), Example.Text("railing-shop"));
        IPage page = await walk.Open("/press/sick/upkeep", 390, 844);
        await page.GetByRole(AriaRole.Button, new() { Name = "it does not reach its pressure or force" }).ClickAsync();
        await Expect(page.Locator("#suspects")).ToContainTextAsync("air pressure at the pump is too low");
        string asked = (await page.Locator("#next-test .ask").TextContentAsync())!;
        await page.GetByRole(AriaRole.Button, new() { Name = "no", Exact = true }).ClickAsync();
        await Expect(page.Locator("#next-test .ask")).Not.ToHaveTextAsync(asked);
        await Expect(page.Locator("#before-opening")).ToContainTextAsync("Shut the air off");
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await page.CloseAsync();
    }
}
