using System.Runtime.CompilerServices;

namespace Ramwright.Files.Tests;

/// <summary>Files beside the tests' sources.</summary>
internal static class TestFiles
{
    private static readonly string Folder = Path.GetDirectoryName(Here())!;

    /// <summary>A path below this project's folder.</summary>
    public static string Of(params string[] parts) => Path.Combine([Folder, .. parts]);

    /// <summary>A path below the repository's folder.</summary>
    public static string InHouse(params string[] parts) => Path.GetFullPath(Path.Combine([Folder, "..", "..", .. parts]));

    private static string Here([CallerFilePath] string path = "") => path;
}
