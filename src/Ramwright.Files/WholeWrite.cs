namespace Ramwright.Files;

/// <summary>
/// Replaces a file in one stroke: the new bytes go into a file beside it, are forced to the disk, and that file takes the old one's
/// name. Whoever reads, and whatever dies at whatever moment, finds either the old file whole or the new one whole.
/// </summary>
public static class WholeWrite
{
    /// <summary>What is about to happen, for tests that break off between the steps.</summary>
    public enum Before
    {
        /// <summary>The new bytes go beside the file.</summary>
        Writing,
        /// <summary>They are forced to the disk.</summary>
        Flushing,
        /// <summary>It is asked whether they are still wanted.</summary>
        Looking,
        /// <summary>They take the file's name.</summary>
        Renaming,
    }

    /// <summary>Writes the file.</summary>
    /// <param name="path">The file; where it is a link, the file it leads to.</param>
    /// <param name="bytes">All it shall hold.</param>
    /// <param name="stillGood">Asked last, just before the rename: false leaves the old file as it is; null for always.</param>
    /// <param name="step">Told of every step; null for none.</param>
    /// <returns>Whether the file was replaced.</returns>
    public static bool Replace(string path, byte[] bytes, Func<bool>? stillGood = null, Action<Before>? step = null)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        return Replace(path, stream => stream.Write(bytes), stillGood, step);
    }

    /// <summary>Writes the file piece by piece; where that fails half way, the old file stays, or none.</summary>
    /// <param name="path">The file; where it is a link, the file it leads to.</param>
    /// <param name="write">Writes all it shall hold.</param>
    /// <param name="stillGood">Asked last, just before the rename: false leaves the old file as it is; null for always.</param>
    /// <param name="step">Told of every step; null for none.</param>
    /// <returns>Whether the file was replaced.</returns>
    public static bool Replace(string path, Action<Stream> write, Func<bool>? stillGood = null, Action<Before>? step = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(write);
        var file = new FileInfo(path);
        // what is not there yet cannot be asked where it leads
        string target = (file.LinkTarget is null ? null : file.ResolveLinkTarget(returnFinalTarget: true)?.FullName) ?? path;
        string beside = $"{target}.{Guid.NewGuid():N}.saving";
        try
        {
            step?.Invoke(Before.Writing);
            using (FileStream stream = New(beside, target))
            {
                write(stream);
                step?.Invoke(Before.Flushing);
                stream.Flush(flushToDisk: true);
            }

            step?.Invoke(Before.Looking);
            if (stillGood?.Invoke() == false)
                return false;
            step?.Invoke(Before.Renaming);
            File.Move(beside, target, overwrite: true);
            return true;
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private static FileStream New(string beside, string target)
    {
        var how = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows() && File.Exists(target))
            how.UnixCreateMode = File.GetUnixFileMode(target);
        return new FileStream(beside, how);
    }
}
