namespace Ramwright.Tests;

/// <summary>Finds folders of the repository from wherever the tests run.</summary>
public static class Repository
{
    /// <summary>A folder at the root.</summary>
    public static string Folder(string name)
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "Ramwright.slnx")))
                return Path.Combine(at.FullName, name);
        }

        throw new DirectoryNotFoundException("the tests do not run inside the repository");
    }
}
