using System.Text;
using System.Text.Unicode;
using Ramwright.Files;

namespace Ramwright.Web.Opened;

/// <summary>What a press file holds on disk: its bytes, and the text in them where they are text.</summary>
public sealed record DiskText(byte[] Bytes, string? Text, bool HasMark)
{
    private static readonly byte[] Mark = [0xEF, 0xBB, 0xBF];

    /// <summary>Reads the file; one that is too long is read no further than shows that it is.</summary>
    /// <exception cref="IOException">It is not there, or cannot be read.</exception>
    public static DiskText Read(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var all = new byte[(int)Math.Min(stream.Length, PressFile.LongestFile + 1L)];
        int n = stream.ReadAtLeast(all, all.Length, throwOnEndOfStream: false);
        return Of(all[..n]);
    }

    public static DiskText Of(byte[] bytes)
    {
        bool mark = bytes.AsSpan().StartsWith(Mark);
        string? text = bytes.Length <= PressFile.LongestFile && Utf8.IsValid(bytes) ? Encoding.UTF8.GetString(bytes, mark ? 3 : 0, bytes.Length - (mark ? 3 : 0)) : null;
        return new DiskText(bytes, text, mark);
    }

    /// <summary>The bytes of a changed text, with the mark at the front where there was one.</summary>
    public byte[] With(string text) => HasMark ? [.. Mark, .. Encoding.UTF8.GetBytes(text)] : Encoding.UTF8.GetBytes(text);

    public bool Same(DiskText other) => Bytes.AsSpan().SequenceEqual(other.Bytes);
}
