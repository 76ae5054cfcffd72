namespace Ramwright.Files.Tests;

/// <summary>Compares a whole output with the text that was approved for it.</summary>
internal static class Approved
{
    private static readonly bool Rewrite = Environment.GetEnvironmentVariable("RAMWRIGHT_APPROVE") == "1";

    public static void Matches(string text, string file)
    {
        if (Rewrite)
            File.WriteAllText(file, text);
        Assert.True(File.Exists(file), $"no approved text {file}; RAMWRIGHT_APPROVE=1 writes it");
        Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n"), text);
    }
}
