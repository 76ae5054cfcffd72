using Ramwright.Solids;

namespace Ramwright.Files;

/// <summary>The joints that lie beside one press file, read again only where their file has another length or time. May be asked from many threads.</summary>
public sealed class KeptJoints
{
    private Reading? _last;

    /// <summary>The joints of a file; null where there is none, or it cannot be read.</summary>
    /// <param name="path">The file.</param>
    /// <param name="unread">Why a file that is there is not used, in words; empty otherwise.</param>
    public JointBook? Read(string path, out string unread)
    {
        // looked at before it is read: what is written meanwhile is then seen the next time
        var file = new FileInfo(path);
        (string Path, long Length, DateTime Written) stamp = file.Exists ? (path, file.Length, file.LastWriteTimeUtc) : (path, -1, default);
        if (Volatile.Read(ref _last) is not { } last || last.Stamp != stamp)
        {
            JointBook? book = JointsFile.Read(path, out string why);
            last = new Reading(stamp, book, why);
            Volatile.Write(ref _last, last);
        }

        unread = last.Unread;
        return last.Book;
    }

    /// <summary>Has the file read again the next time, whatever its stamp.</summary>
    public void Forget() => Volatile.Write(ref _last, null);

    private sealed record Reading((string Path, long Length, DateTime Written) Stamp, JointBook? Book, string Unread);
}
