using System.Diagnostics;
using System.Formats.Tar;
using System.IO.Compression;
using Microsoft.Playwright;
using Ramwright.Tests;

namespace Ramwright.Web.Tests;

/// <summary>The accessibility rules of axe-core, fetched with npm the first time they are run and kept beside the builds.</summary>
internal static class Axe
{
    private const string Version = "4.14.1";

    public const string Missing =
        "NO AXE-CORE: the bench was not held against accessibility rules. It is fetched by npm (axe-core " + Version + "); install npm, or let it reach its registry.";

    private static readonly Lazy<string?> Fetched = new(Fetch);

    /// <summary>The script; null where it cannot be had.</summary>
    public static string? Script => Fetched.Value;

    /// <summary>What is wrong with a page, serious or worse, one line each.</summary>
    public static async Task<string[]> Findings(IPage page)
    {
        await page.EvaluateAsync(Script!);
        return await page.EvaluateAsync<string[]>("""
            async () => (await axe.run(document, { resultTypes: ['violations'] })).violations
              .filter(v => v.impact === 'serious' || v.impact === 'critical')
              .flatMap(v => v.nodes.map(n => `${v.id}: ${v.help}: ${n.target.join(' ')} ${n.any.concat(n.all, n.none).map(c => c.message).join('; ')}`))
            """);
    }

    private static string? Fetch()
    {
        string folder = Path.Combine(Repository.Folder(""), ".build", "axe-core-" + Version), script = Path.Combine(folder, "axe.min.js");
        if (File.Exists(script))
            return File.ReadAllText(script);
        try
        {
            Directory.CreateDirectory(folder);
            var start = new ProcessStartInfo(OperatingSystem.IsWindows() ? "npm.cmd" : "npm", ["pack", "axe-core@" + Version, "--silent", "--ignore-scripts"])
            {
                WorkingDirectory = folder,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            using Process npm = Process.Start(start)!;
            if (!npm.WaitForExit(TimeSpan.FromSeconds(60)) || npm.ExitCode != 0)
                return null;
            using var packed = new GZipStream(File.OpenRead(Path.Combine(folder, $"axe-core-{Version}.tgz")), CompressionMode.Decompress);
            using var tar = new TarReader(packed);
            while (tar.GetNextEntry() is { } entry)
            {
                if (entry.Name != "package/axe.min.js")
                    continue;
                entry.ExtractToFile(script, overwrite: true);
                return File.ReadAllText(script);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or System.ComponentModel.Win32Exception or InvalidDataException)
        {
            Console.Error.WriteLine(e.Message);
        }

        return null;
    }
}

/// <summary>A test in a real browser that needs axe-core; without either it is skipped, and the log says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class AxeTheoryAttribute : TheoryAttribute
{
    public AxeTheoryAttribute()
    {
        if (Chromium.Place is null)
            Skip = Chromium.Missing;
        else if (Axe.Script is null)
            Skip = Axe.Missing;
    }
}
