using System.Runtime.CompilerServices;

namespace Ramwright.Tests.Cli;

/// <summary>Compares whole outputs with approved files; RAMWRIGHT_APPROVE=1 rewrites them.</summary>
internal static class Approved
{
    public static void Matches(string text, string name, [CallerFilePath] string here = "")
    {
        string file = Path.Combine(Path.GetDirectoryName(here)!, "Approved", name);
        if (Environment.GetEnvironmentVariable("RAMWRIGHT_APPROVE") == "1")
            File.WriteAllText(file, text);
        Assert.Equal(File.ReadAllText(file), text, ignoreLineEndingDifferences: true);
    }
}
