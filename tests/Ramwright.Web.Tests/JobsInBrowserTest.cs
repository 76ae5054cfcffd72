using Microsoft.Playwright;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Squeeze;
using static Microsoft.Playwright.Assertions;

namespace Ramwright.Web.Tests;

/// <summary>The jobs of a press in a real browser.</summary>
[Collection("one browser at a time")]
public sealed class JobsInBrowserTest(BenchWalk walk) : IClassFixture<BenchWalk>
{
    private static JobAnswer Answer(string text, string job)
    {
        PressCheck check = CheckedPress.Of(PressOnDisk.Read(text, "x" + PressFile.Ending, "x")).Check!;
        return JobAnswer.Of(check, check.Rig.Jobs.First(j => j.Name == job));
    }

    [BrowserFact]
    public async Task AColderBarIsAnsweredAsOnTheCommandLine()
    {
        string text = Example.Text("railing-shop");
        await File.WriteAllTextAsync(walk.Folder.Path("jobs"), text);
        IPage page = await walk.Open("/press/jobs/jobs?job=leaf%20blank");

        ILocator sheet = page.Locator("#job");
        await Expect(sheet).ToContainTextAsync(Answer(text, "leaf blank").Saying(UnitSystem.Metric));
        string heat = await page.Locator("[id='in-jobs.0.heat']").InputValueAsync();
        await page.Locator("[id='in-jobs.0.heat']").FillAsync("1000 °C");

        string colder = text.Replace($"heat: {heat}", "heat: 1000 °C", StringComparison.Ordinal);
        Assert.NotEqual(text, colder);
        await Expect(sheet).ToContainTextAsync(Answer(colder, "leaf blank").Saying(UnitSystem.Metric));
        await page.CloseAsync();
    }

    [BrowserFact]
    public async Task AJobIsAddedAndWorkedAndSwept()
    {
        await File.WriteAllTextAsync(walk.Folder.Path("more"), Example.Text("railing-shop"));
        IPage page = await walk.Open("/press/more/jobs", 390, 844);

        await page.GetByLabel("add a job").SelectOptionAsync("punch");
        await Expect(page.Locator("#job .stamp")).Not.ToHaveTextAsync("wait");
        await Expect(page.Locator("#job-title")).ToContainTextAsync("punch");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show how the force comes about" }).ClickAsync();
        await Expect(page.Locator("#job .steps > li").Nth(1)).ToBeVisibleAsync();

        await page.Locator(".joblist button").First.ClickAsync();
        await page.Locator("#sweep-fine").SelectOptionAsync("12");
        await page.Locator("#sweep-up-to").FillAsync("some");
        await page.Locator("#sweep-go").ClickAsync();
        await Expect(page.Locator("#sweep-fault")).ToContainTextAsync("bar");
        await page.Locator("#sweep-up-to").FillAsync("40 mm");
        await page.Locator("#sweep-go").ClickAsync();
        await Expect(page.Locator(".sweep .sheet svg")).ToBeVisibleAsync();
        await Expect(page.Locator(".sweep .sheet")).ToContainTextAsync("DONE");
        await page.CloseAsync();
    }
}
