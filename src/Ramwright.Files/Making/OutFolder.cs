namespace Ramwright.Files.Making;

/// <summary>
/// Writes files into a folder, all or none. They are written whole into a folder within it first and then take their names; what
/// goes wrong on the way is undone, so that a full disk or a locked file leaves everything as it was.
/// </summary>
public static class OutFolder
{
    /// <summary>Writes the files.</summary>
    /// <param name="folder">The folder; it is made where it is not there. Nothing is written outside it.</param>
    /// <param name="files">The files.</param>
    /// <param name="replace">Whether files that are there already may be replaced.</param>
    /// <param name="step">Told the name of each file before it takes its place, for tests that break off there.</param>
    /// <returns>What stands in the way, in words; null where everything is written.</returns>
    public static string? Write(string folder, IReadOnlyList<OutFile> files, bool replace, Action<string>? step = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        ArgumentNullException.ThrowIfNull(files);
        if (files.FirstOrDefault(f => !IsWithin(f.Name)) is { } astray)
            throw new ArgumentException($"{astray.Name} is no name within a folder", nameof(files));
        var undo = new Stack<Action>();
        try
        {
            string root = Path.GetFullPath(folder);
            if (File.Exists(root))
                return $"{folder} is a file; name a folder";
            if (InTheWay(root, files, replace) is { } there)
                return there;
            MakeFolder(root, undo);
            Place(root, files, undo, step);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or System.Security.SecurityException)
        {
            string left = Undo(undo);
            return $"{folder} could not be written: {Words(e)}. {(left.Length == 0 ? "Nothing was left behind." : left)}";
        }
    }

    private static void Place(string root, IReadOnlyList<OutFile> files, Stack<Action> undo, Action<string>? step)
    {
        string staged = Path.Combine(root, $".making-{Guid.NewGuid():N}");
        MakeFolder(staged, undo, withAll: true);
        for (int i = 0; i < files.Count; i++)
        {
            using var stream = new FileStream(Path.Combine(staged, $"{i}"), FileMode.CreateNew, FileAccess.Write);
            stream.Write(files[i].Bytes);
            stream.Flush(flushToDisk: true);
        }

        for (int i = 0; i < files.Count; i++)
        {
            string target = Path.Combine(root, files[i].Name), old = Path.Combine(staged, $"{i}.old"), fresh = Path.Combine(staged, $"{i}");
            step?.Invoke(files[i].Name);
            MakeFolder(Path.GetDirectoryName(target)!, undo);
            if (Exists(target))
            {
                File.Move(target, old);
                undo.Push(() => File.Move(old, target, overwrite: true));
            }

            File.Move(fresh, target);
            undo.Push(() => File.Delete(target));
        }

        undo.Clear();
        try
        {
            Directory.Delete(staged, recursive: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // every file stands in its place; an emptied folder that something holds open is no fault
        }
    }

    private static string? InTheWay(string root, IReadOnlyList<OutFile> files, bool replace)
    {
        var there = new List<string>();
        foreach (OutFile file in files)
        {
            string target = Path.Combine(root, file.Name);
            // a link to another folder would lead the file out of this one
            for (string? at = Path.GetDirectoryName(target); at is not null && at.Length > root.Length; at = Path.GetDirectoryName(at))
            {
                if (File.Exists(at))
                    return $"{at} is a file where a folder is needed; move it away";
                if (Directory.Exists(at) && new DirectoryInfo(at).LinkTarget is not null)
                    return $"{at} is a link that leads out of the folder; take the link away";
            }

            if (Directory.Exists(target) && new DirectoryInfo(target).LinkTarget is null)
                return $"{target} is a folder where a file is to go; move it away";
            if (Exists(target))
                there.Add(file.Name);
        }

        if (replace || there.Count == 0)
            return null;
        string names = string.Join(", ", there.Take(4)) + (there.Count > 4 ? $" and {there.Count - 4} more" : "");
        return $"{names} {(there.Count == 1 ? "is" : "are")} in {root} already; nothing was written. Name another folder, or say --force to replace {(there.Count == 1 ? "it" : "them")}";
    }

    // a link that leads nowhere is there, too
    private static bool Exists(string path) => File.Exists(path) || new FileInfo(path).LinkTarget is not null;

    private static void MakeFolder(string path, Stack<Action> undo, bool withAll = false)
    {
        if (Directory.Exists(path))
            return;
        MakeFolder(Path.GetDirectoryName(path)!, undo);
        Directory.CreateDirectory(path);
        undo.Push(() => Directory.Delete(path, recursive: withAll));
    }

    private static string Undo(Stack<Action> undo)
    {
        string left = "";
        while (undo.TryPop(out Action? back))
        {
            try
            {
                back();
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                left = $"It could not all be undone: {e.Message}";
            }
        }

        return left;
    }

    private static string Words(Exception e) => e switch
    {
        UnauthorizedAccessException => "you may not write there",
        // ERROR_DISK_FULL, ERROR_HANDLE_DISK_FULL, ENOSPC
        IOException { HResult: unchecked((int)0x80070070) or unchecked((int)0x80070027) or 28 } => "the disk is full",
        _ => e.Message.TrimEnd('.'),
    };

    private static bool IsWithin(string name) =>
        name.Length > 0 && !Path.IsPathRooted(name) && !name.Contains('\\', StringComparison.Ordinal)
        && name.Split('/').All(p => p.Length > 0 && p is not ("." or "..") && p.AsSpan().IndexOfAny(Path.GetInvalidFileNameChars()) < 0);
}
