using Ramwright.Files;
using Ramwright.Tests;

namespace Ramwright.Web.Tests;

/// <summary>A folder of one test's own.</summary>
internal sealed class TestFolder : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("ramwright-bench-").FullName;

    public string Path(string name) => System.IO.Path.Combine(Folder, name + PressFile.Ending);

    /// <summary>Copies an example into it.</summary>
    public string Copy(string example)
    {
        File.WriteAllText(Path(example), Example.Text(example));
        return Path(example);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

internal static class Example
{
    public static string Text(string name) => File.ReadAllText(System.IO.Path.Combine(Repository.Folder("examples"), name + PressFile.Ending));
}
