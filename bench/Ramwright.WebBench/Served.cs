using System.Diagnostics;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Ramwright.Bench;

namespace Ramwright.WebBench;

/// <summary>The bench as <c>./ramwright open</c> starts it, on a folder with the examples, and a browser.</summary>
internal sealed partial class Served : IAsyncDisposable
{
    private readonly Process _process;
    private readonly IPlaywright _playwright;

    private Served(Process process, string address, string folder, IPlaywright playwright, IBrowser browser)
    {
        (_process, Address, Folder, _playwright, Browser) = (process, address, folder, playwright, browser);
    }

    public string Address { get; }

    public string Folder { get; }

    public IBrowser Browser { get; }

    /// <summary>Memory of the server that is its own and in use, bytes.</summary>
    public long Memory
    {
        get
        {
            _process.Refresh();
            return _process.WorkingSet64;
        }
    }

    public static async Task<Served> Start(int copies = 0)
    {
        string folder = Directory.CreateDirectory(Path.Combine(Directory.CreateTempSubdirectory("ramwright-bench-").FullName, "presses")).FullName, examples = Repository.Find("examples");
        foreach (string name in (string[])["wherry-yard", "railing-shop", "drainage-mill-puller"])
            File.Copy(Path.Combine(examples, name + ".press.yaml"), Path.Combine(folder, name + ".press.yaml"));
        foreach (string readings in Directory.GetFiles(examples, "*.readings"))
            File.Copy(readings, Path.Combine(folder, Path.GetFileName(readings)));
        for (int i = 0; i < copies; i++)
            File.Copy(Path.Combine(examples, "wherry-yard.press.yaml"), Path.Combine(folder, $"press {i}.press.yaml"));

        string script = Path.Combine(Path.GetDirectoryName(examples)!, OperatingSystem.IsWindows() ? "ramwright.cmd" : "ramwright");
        Process process = Process.Start(new ProcessStartInfo(script, ["open", folder, "--port", "0", "--no-browser"]) { RedirectStandardOutput = true })!;
        string? line;
        Match said = Match.Empty;
        while (!said.Success && (line = await process.StandardOutput.ReadLineAsync()) is not null)
            said = Said().Match(line);
        if (!said.Success)
            throw new InvalidOperationException("the bench did not start");
        IPlaywright playwright = await Playwright.CreateAsync();
        string? named = Environment.GetEnvironmentVariable("RAMWRIGHT_CHROMIUM");
        IBrowser browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = named is { Length: > 0 } ? named : "/usr/bin/chromium",
            Args = ["--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--disable-gpu-compositing"],
        });
        return new Served(process, said.Groups[1].Value.TrimEnd('/'), folder, playwright, browser);
    }

    public async Task<IPage> Open(string path, int width = 1280, int height = 900, ColorScheme scheme = ColorScheme.Light, float sharp = 1)
    {
        IPage page = await Browser.NewPageAsync(new BrowserNewPageOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
            DeviceScaleFactor = sharp,
        });
        await page.GotoAsync(Address + path);
        await page.Locator("[data-live]").First.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Attached });
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        _playwright.Dispose();
        _process.Kill(entireProcessTree: true);
        _process.Dispose();
        Directory.Delete(Path.GetDirectoryName(Folder)!, recursive: true);
    }

    [GeneratedRegex("The bench is at (http://\\S+)")]
    private static partial Regex Said();
}
