using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Ramwright.Web.Tests;

/// <summary>The bench as a process of its own, as <c>ramwright open</c> starts it.</summary>
internal sealed partial class BenchProcess : IDisposable
{
    private readonly Process _process;

    private BenchProcess(Process process, string address) => (_process, Address) = (process, address);

    public string Address { get; }

    /// <summary>Starts it and waits until it says where it is.</summary>
    public static async Task<BenchProcess> Start(string folder)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(BenchServer).Assembly.Location, folder, "--port", "0", "--no-browser"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        Process process = Process.Start(start)!;
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(40));
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (Said().Match(line) is { Success: true } said)
                return new BenchProcess(process, said.Groups[1].Value.TrimEnd('/'));
        }

        throw new InvalidOperationException("the bench did not start: " + await process.StandardError.ReadToEndAsync(patience.Token));
    }

    /// <summary>Ends it at once, without a word to it.</summary>
    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    public void Dispose()
    {
        if (!_process.HasExited)
            Kill();
        _process.Dispose();
    }

    [GeneratedRegex("The bench is at (http://\\S+)")]
    private static partial Regex Said();
}
