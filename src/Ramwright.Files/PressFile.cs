using System.Buffers;
using System.Text;
using System.Text.Unicode;
using Ramwright.Files.Binding;
using Ramwright.Files.Yaml;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>
/// Reads press files. Whatever the text, reading ends with a press or with faults, never with an exception, and reports
/// everything that is wrong at once. Safe to call from many threads.
/// </summary>
public static class PressFile
{
    /// <summary>Longest file that is read, bytes or characters.</summary>
    public const int LongestFile = 1_000_000;

    /// <summary>Ending of the name of a press file.</summary>
    public const string Ending = ".press.yaml";

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">What the file is called in messages.</param>
    /// <param name="shelf">Where stock names are looked up; null leaves them unchecked.</param>
    public static PressReading Read(string text, string fileName, Shelf? shelf) => Read(text, fileName, _ => shelf);

    /// <summary>Reads a text that may name stock tables of its own.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">What the file is called in messages.</param>
    /// <param name="shelfWith">Gives the shelf, with the tables that the file names under <c>stock:</c>.</param>
    public static PressReading Read(string text, string fileName, Func<IReadOnlyList<string>, Shelf?> shelfWith)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(shelfWith);
        if (text.Length > LongestFile)
            return Refused(fileName, "the file is too long for a press file", "a file of less than 1 MB");
        var source = new SourceText(text.StartsWith('\uFEFF') ? text[1..] : text);
        var faults = new FaultList(fileName, source);
        var map = new SourceMap();
        if (RefuseControlCharacters(faults))
            return new PressReading(fileName, source, null, faults.InOrder(), map);

        Node? top = YamlTree.Read(faults, out int brokenLine);
        bool whole = brokenLine == 0;
        if (top is null or TextNode { IsVoid: true })
        {
            if (whole && faults.Count == 0)
                faults.Add(new Place(1, 1, 0, 0), "", "the file says nothing", "a press: wanted, cylinder, pump and frame");
            return new PressReading(fileName, source, null, faults.InOrder(), map);
        }

        var bound = new FaultList(fileName, source);
        Shelf? shelf = shelfWith(StockNamed(top));
        UnitSystem tape = Tape.Of(top);
        var binder = new Binder(bound, map, shelf, whole, tape);
        Press? press = binder.Bind(top);
        if (!whole)
            bound.DropFrom(brokenLine);         // may be echoes of what broke there
        faults.Add(bound);
        if (press is not null && whole)
        {
            int read = faults.Count;            // a value that could not be read is not unsaid
            foreach (Fault fault in PressRules.Of(press, shelf))
            {
                if (!faults.Touches(fault.Path, read) && !(fault.Against is { } other && faults.Touches(other, read)))
                    faults.Add(fault, map, tape);
            }
        }

        return new PressReading(fileName, source, faults.Count == 0 ? press : null, faults.InOrder(), map) { Units = tape };
    }

    /// <summary>Reads the bytes of a file, which must be UTF-8.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="fileName">What the file is called in messages.</param>
    /// <param name="shelfWith">Gives the shelf, with the tables that the file names under <c>stock:</c>.</param>
    public static PressReading Read(ReadOnlySpan<byte> bytes, string fileName, Func<IReadOnlyList<string>, Shelf?> shelfWith)
    {
        if (bytes.Length > LongestFile)
            return Refused(fileName, "the file is too long for a press file", "a file of less than 1 MB");
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
            return Refused(fileName, "the file is stored as UTF-16 (\"Unicode\")", "the same text saved as UTF-8");
        if (Utf8.IsValid(bytes))
            return Read(Encoding.UTF8.GetString(bytes), fileName, shelfWith);

        var good = new char[bytes.Length];
        Utf8.ToUtf16(bytes, good, out int read, out int written, replaceInvalidSequences: false);
        var source = new SourceText(new string(good, 0, written) + "\uFFFD");
        var faults = new FaultList(fileName, source);
        faults.Add(source.At(written, 1), "",
            $"the file is not UTF-8: the byte {bytes[read]:X2} stands here, as old editors write ° or ²",
            "the same text saved as UTF-8");
        return new PressReading(fileName, source, null, faults.InOrder(), new SourceMap());
    }

    /// <summary>Reads a file from disk.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="shelfWith">Gives the shelf, with the tables that the file names under <c>stock:</c>.</param>
    /// <returns>The reading; a file that is not there or cannot be opened is a fault like any other.</returns>
    public static PressReading Load(string path, Func<IReadOnlyList<string>, Shelf?> shelfWith)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        byte[] buffer = ArrayPool<byte>.Shared.Rent(64 * 1024);
        try
        {
            if (Directory.Exists(path))
                return Refused(path, "this is a folder", $"a press file, NAME{Ending}");
            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, 1);
            using var all = new MemoryStream();
            int n;
            while (all.Length <= LongestFile && (n = stream.Read(buffer, 0, buffer.Length)) > 0)
                all.Write(buffer, 0, n);
            return Read(all.GetBuffer().AsSpan(0, (int)all.Length), path, shelfWith);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refused(path, "there is no such file", $"the path of a press file, NAME{Ending}");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return Refused(path, "the file cannot be opened: " + e.Message, "a file that you may read");
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private static PressReading Refused(string fileName, string found, string wanted) =>
        new(fileName, new SourceText(""), null, [new PlacedFault(fileName, 0, 0, 0, "", found, wanted, null, "")], new SourceMap());

    private static bool RefuseControlCharacters(FaultList faults)
    {
        string text = faults.Source.Text;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (c is >= ' ' and < '\u007F' or '\n' or '\r' or '\t' or '\u0085' or >= '\u00A0')
                continue;
            faults.Add(faults.Source.At(i, 1), "", $"there is a control character here (code {(int)c:X2})",
                "the line typed anew: this is not plain text");
            return true;
        }

        return false;
    }

    private static List<string> StockNamed(Node top)
    {
        var names = new List<string>();
        if (top is not KeysNode keys)
            return names;
        foreach (Entry entry in keys.Entries)
        {
            if (entry.Key.Text != "stock" || entry.Value is not ListNode list)
                continue;
            foreach (Node item in list.Items)
            {
                if (item is TextNode { IsVoid: false } name)
                    names.Add(name.Text);
            }
        }

        return names;
    }
}
