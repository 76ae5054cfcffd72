using System.Text;

namespace Ramwright.Files;

/// <summary>A stock table on disk, opened with care: it may be of any length and hold anything.</summary>
public static class TableFile
{
    /// <summary>Longest table that is read, bytes; every section of every maker fits into a tenth of it.</summary>
    public const int LongestTable = 4_000_000;

    /// <summary>Opens a table.</summary>
    /// <param name="path">Its path.</param>
    /// <returns>The text; null where it is longer than any table.</returns>
    /// <exception cref="IOException">It is not there, or cannot be opened.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static TextReader? Open(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var all = new MemoryStream();
        Span<byte> buffer = stackalloc byte[16 * 1024];
        // a device has no length to ask for beforehand
        for (int n; (n = stream.Read(buffer)) > 0;)
        {
            all.Write(buffer[..n]);
            if (all.Length > LongestTable)
                return null;
        }

        all.Position = 0;
        return new StreamReader(all, Encoding.UTF8);
    }
}
