using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

namespace Ramwright.Web.Tests;

/// <summary>A served folder and a browser to walk through it.</summary>
public sealed class BenchWalk : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private WebApplication? _app;

    internal TestFolder Folder { get; } = new();

    public string Address { get; private set; } = "";

    public async Task InitializeAsync()
    {
        if (Chromium.Place is null)
            return;
        Assertions.SetDefaultExpectTimeout(30_000);       // patience for a machine that does much else
        await Serve();
        _playwright = await Playwright.CreateAsync();
        _browser = await Chromium.Start(_playwright);
    }

    /// <summary>Starts the server, or a new one in place of the old, which knows nothing of what was not saved.</summary>
    public async Task Serve()
    {
        if (_app is not null)
            await _app.DisposeAsync();
        _app = BenchServer.Build(Folder.Folder, 0);
        await _app.StartAsync();
        Address = BenchServer.Address(_app);
    }

    /// <summary>A page that has finished loading and answers to typing.</summary>
    public Task<IPage> Open(string path, int width = 1440, int height = 1000, ColorScheme scheme = ColorScheme.Light) =>
        OpenAt(Address + path, width, height, scheme);

    /// <summary>The same on any server.</summary>
    public async Task<IPage> OpenAt(string address, int width = 1440, int height = 1000, ColorScheme scheme = ColorScheme.Light)
    {
        IPage page = await _browser!.NewPageAsync(new BrowserNewPageOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
        });
        page.SetDefaultTimeout(45_000);
        await Load(page, address);
        return page;
    }

    /// <summary>Leads an open page on.</summary>
    public Task Go(IPage page, string path) => Load(page, Address + path);

    private static async Task Load(IPage page, string address)
    {
        await page.GotoAsync(address, new PageGotoOptions { WaitUntil = WaitUntilState.DOMContentLoaded });
        await page.Locator("[data-live]").First.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Attached });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_app is not null)
            await _app.DisposeAsync();
        Folder.Dispose();
    }
}
