using Microsoft.Playwright;
using Ramwright.Files;
using Ramwright.Quantities;
using Ramwright.Solids;
using Ramwright.Web.Solid;
using static Microsoft.Playwright.Assertions;

namespace Ramwright.Web.Tests;

/// <summary>The frame as a solid in a real browser.</summary>
[Collection("one browser at a time")]
public sealed class SolidInBrowserTest(BenchWalk walk) : IClassFixture<BenchWalk>
{
    [BrowserFact]
    public async Task ItIsSolvedAndTurnsAndIsReadAtATouch()
    {
        string text = Example.Text("railing-shop");
        await File.WriteAllTextAsync(walk.Folder.Path("solid"), text);
        CheckedPress press = CheckedPress.Of(PressOnDisk.Read(text, "x" + PressFile.Ending, "x"));
        SolidCheck solid = SolidCheck.Of(press.Check!.Rig);
        IPage page = await walk.Open("/press/solid/solid", 390, 844);
        page.SetDefaultTimeout(120_000);

        await page.Locator("#solid-figures").WaitForAsync();
        await Expect(page.Locator(".told").First).ToContainTextAsync(Readout.Text(solid.Centred.Opening * press.Check.Rig.Wanted, Dimension.Length, UnitSystem.Metric));
        if (!Viewer.IsBuiltIn)
            return;        // npm was missing when this was built; the page says so and the figures stand
        await page.Locator(".solid-frame.ready").WaitForAsync();
        await Expect(page.Locator(".tag.weakest b")).ToContainTextAsync(solid.Centred.Weakest!.Part);

        // at what it is safe to less is used
        string wanted = await page.Locator(".tag.weakest span").TextContentAsync() ?? "";
        await page.GetByRole(AriaRole.Button, new() { Name = "safe to" }).ClickAsync();
        await Expect(page.Locator(".tag.weakest span")).Not.ToHaveTextAsync(wanted);

        // a touch on the steel says what is there; one beside it says nothing
        LocatorBoundingBoxResult canvas = (await page.Locator(".solid-frame canvas").BoundingBoxAsync())!;
        await page.GetByRole(AriaRole.Button, new() { Name = "side", Exact = true }).ClickAsync();
        for (int i = 1; i < 20 && await page.Locator(".tag.touched").IsHiddenAsync(); i++)
            await page.Locator(".solid-frame canvas").ClickAsync(new LocatorClickOptions { Position = new Position { X = canvas.Width * i / 20, Y = canvas.Height / 2 } });
        await Expect(page.Locator(".tag.touched span")).ToContainTextAsync("% of its yield");
        await page.Locator(".solid-frame canvas").ClickAsync(new LocatorClickOptions { Position = new Position { X = 3, Y = 3 } });
        await Expect(page.Locator(".tag.touched")).ToBeHiddenAsync();

        // keys turn it: the marked place moves on the page
        string? before = await page.Locator(".tag.weakest").EvaluateAsync<string>("e => e.style.left");
        await page.Locator(".solid-frame canvas").FocusAsync();
        for (int i = 0; i < 5; i++)
            await page.Keyboard.PressAsync("ArrowLeft");
        await Expect(page.Locator(".tag.weakest")).Not.ToHaveJSPropertyAsync("style.left", before);
        Assert.NotEqual(before, await page.Locator(".tag.weakest").EvaluateAsync<string>("e => e.style.left"));

        // work off to one side is solved when it is asked for
        await page.GetByRole(AriaRole.Button, new() { Name = "off to one side" }).ClickAsync();
        await Expect(page.Locator(".told").First).ToContainTextAsync("dies open out of parallel");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "off to one side" })).ToHaveAttributeAsync("aria-pressed", "true");
        await page.CloseAsync();
    }

    [Fact]
    public void TheSkinIsClosedAndLooksOutward()
    {
        CheckedPress press = CheckedPress.Of(PressOnDisk.Read(Example.Text("railing-shop"), "x" + PressFile.Ending, "x"));
        SolidCheck solid = SolidCheck.Of(press.Check!.Rig, cell: 0.03);
        SolidSkin skin = SolidSkin.Of(solid);

        // the volume that the triangles enclose is the steel's
        double volume = 0;
        for (int t = 0; t < skin.Triangles.Length; t += 3)
        {
            (double x, double y, double z) a = At(skin.Triangles[t]), b = At(skin.Triangles[t + 1]), c = At(skin.Triangles[t + 2]);
            volume += (a.x * (b.y * c.z - b.z * c.y) + a.y * (b.z * c.x - b.x * c.z) + a.z * (b.x * c.y - b.y * c.x)) / 6;
        }

        SolidMesh mesh = solid.Centred.Solution.Mesh;
        double steel = Enumerable.Range(0, mesh.CellCount).Sum(c => mesh.CellBox(c).Volume);
        Assert.Equal(steel, volume, 1e-4 * steel);
        Assert.All(skin.Stress, s => Assert.True(float.IsFinite(s) && s >= 0));
        Assert.InRange(skin.Weakest, 0, skin.Stress.Length - 1);
        Assert.Equal(16 + 28 * skin.Stress.Length + 14 * skin.PartOf.Length, SkinBytes.Of(skin).Length);

        (double, double, double) At(int v) => (skin.Positions[3 * v], skin.Positions[3 * v + 1], skin.Positions[3 * v + 2]);
    }
}
