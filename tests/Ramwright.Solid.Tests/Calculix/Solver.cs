using System.Diagnostics;
using System.Globalization;

namespace Ramwright.Solid.Tests.Calculix;

/// <summary>Runs CalculiX where it is installed.</summary>
public static class Solver
{
    private const string Program = "ccx";

    /// <summary>Version, or null where it is not installed.</summary>
    public static string? Version { get; } = FindVersion();

    /// <summary>Solves a model.</summary>
    /// <exception cref="InvalidOperationException">CalculiX did not finish.</exception>
    public static SolidAnswer Solve(SolidModel model)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("solid");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "press.inp"), Deck.Of(model));
            string said = Run(folder.FullName, "press") ?? throw new InvalidOperationException("CalculiX is not installed (Debian package calculix-ccx)");
            string results = Path.Combine(folder.FullName, "press.dat");
            if (!said.Contains("Job finished", StringComparison.Ordinal) || !File.Exists(results))
                throw new InvalidOperationException("CalculiX did not finish: " + said[^Math.Min(said.Length, 2000)..]);
            return SolidAnswer.Read(model, File.ReadLines(results));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string? Run(string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo(Program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder };
        start.Environment["OMP_NUM_THREADS"] = Math.Min(4, Environment.ProcessorCount).ToString(CultureInfo.InvariantCulture);
        try
        {
            using Process process = Process.Start(start)!;
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string said = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return said + errors.Result;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    private static string? FindVersion() =>
        Run(Path.GetTempPath(), "-v") is { } said && said.IndexOf("Version", StringComparison.Ordinal) is var at and >= 0 ? said[(at + 7)..].Trim() : null;
}
