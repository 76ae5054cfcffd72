namespace Ramwright.Bench;

/// <summary>Finds folders of the clone from wherever the bench runs.</summary>
internal static class Repository
{
    /// <summary>A folder of the clone.</summary>
    public static string Find(string folder)
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string there = Path.Combine(at.FullName, folder);
            if (File.Exists(Path.Combine(at.FullName, "Ramwright.slnx")) && Directory.Exists(there))
                return there;
        }

        throw new DirectoryNotFoundException($"no {folder} above {AppContext.BaseDirectory}");
    }
}
