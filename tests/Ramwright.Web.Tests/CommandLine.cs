using System.Diagnostics;

namespace Ramwright.Web.Tests;

/// <summary>The command line as a person runs it.</summary>
internal static class CommandLine
{
    /// <summary>What <c>check FILE --json</c> prints.</summary>
    public static Task<string> Check(string path) => Run("check", path, "--json");

    /// <summary>What a command prints.</summary>
    public static async Task<string> Run(params string[] words)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "Ramwright.Cli.dll");
        using Process process = Process.Start(new ProcessStartInfo("dotnet", [program, .. words]) { RedirectStandardOutput = true })!;
        string text = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return text;
    }
}
