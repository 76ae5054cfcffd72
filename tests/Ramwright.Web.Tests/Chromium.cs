using Microsoft.Playwright;
using Xunit.Abstractions;

namespace Ramwright.Web.Tests;

/// <summary>A real browser: the one that RAMWRIGHT_CHROMIUM names, or the first that is installed.</summary>
internal static class Chromium
{
    private static readonly string[] Places =
    [
        "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/usr/bin/google-chrome-stable", "/snap/bin/chromium",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome", "/Applications/Chromium.app/Contents/MacOS/Chromium",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe", @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
    ];

    public const string Missing =
        "NO BROWSER: the bench was not tested in one. Install chromium (apt-get install chromium), or name one in RAMWRIGHT_CHROMIUM.";

    /// <summary>Where it is; null where there is none.</summary>
    public static string? Place =>
        Environment.GetEnvironmentVariable("RAMWRIGHT_CHROMIUM") is { Length: > 0 } named ? named : Places.FirstOrDefault(File.Exists);

    public static Task<IBrowser> Start(IPlaywright playwright) => playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
    {
        ExecutablePath = Place,
        Headless = true,
        // drawn by the processor: solids need WebGL, and a test machine has no card
        Args = ["--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"],
    });
}

/// <summary>A test in a real browser; where there is none it is skipped, and the log says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute()
    {
        if (Chromium.Place is null)
            Skip = Chromium.Missing;
    }
}
