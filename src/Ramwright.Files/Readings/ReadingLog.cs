using System.Text;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>The readings of a press: a text file beside its press file, one reading a line, only ever added to.</summary>
/// <param name="Path">Where it lies.</param>
/// <param name="Readings">What could be read, in the order of the file.</param>
/// <param name="Faults">Lines that could not, with their numbers; they stay in the file.</param>
public sealed record ReadingLog(string Path, IReadOnlyList<Reading> Readings, IReadOnlyList<PlacedFault> Faults)
{
    /// <summary>Lines that were struck out; they stay in the file and are not counted.</summary>
    public IReadOnlyList<StruckLine> Struck { get; init; } = [];

    /// <summary>Ending of the name.</summary>
    public const string Ending = ".readings";

    /// <summary>Longest log that is read, bytes: some eighty thousand readings.</summary>
    public const int Longest = 8_000_000;

    /// <summary>Mark behind a line that was cut off as it was written.</summary>
    internal const string CutOff = "# cut off";

    /// <summary>How long an append waits for another that is writing.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Where the readings of a press lie.</summary>
    /// <param name="pressPath">Path of its press file.</param>
    public static string PathFor(string pressPath)
    {
        ArgumentNullException.ThrowIfNull(pressPath);
        return (pressPath.EndsWith(PressFile.Ending, StringComparison.Ordinal) ? pressPath[..^PressFile.Ending.Length] : pressPath) + Ending;
    }

    /// <summary>Reads a log. Never throws for what stands in it; where there is none, it is empty.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="tape">What the person measures in.</param>
    public static ReadingLog Load(string path, UnitSystem tape = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(path);
        string name = System.IO.Path.GetFileName(path);
        try
        {
            if (!File.Exists(path))
                return new ReadingLog(path, [], []);
            byte[] bytes = Patiently(() => Whole(path));
            return bytes.Length > Longest
                ? new ReadingLog(path, [], [new PlacedFault(name, 0, 0, 0, "", "the log is too long", "a log of less than 8 MB: begin a new one and keep the old one beside it", null, "")])
                : Read(Utf8.GetString(bytes), name, tape) with { Path = path };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return new ReadingLog(path, [], [new PlacedFault(name, 0, 0, 0, "", "the log cannot be opened: " + e.Message, "a file that you may read", null, "")]);
        }
    }

    /// <summary>Reads the text of a log.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">What it is called in messages.</param>
    /// <param name="tape">What the person measures in.</param>
    public static ReadingLog Read(string text, string name, UnitSystem tape = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(text);
        var readings = new List<Reading>();
        var faults = new List<PlacedFault>();
        string[] lines = text.TrimStart('\uFEFF').Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            string line = lines[i].TrimEnd('\r');
            if (line.AsSpan().Trim().IsEmpty)
                continue;
            bool last = i == lines.Length - 1;      // a whole line ends with a line's end
            if (last || line.EndsWith(CutOff, StringComparison.Ordinal))
            {
                faults.Add(new PlacedFault(name, i + 1, 1, line.Length, "", "this line was cut off as it was written, so it is not counted",
                    last ? "the reading written anew; or a line's end behind it, if it is whole" : $"the reading written anew; or \"{CutOff}\" taken away, if it is whole", null, line));
                continue;
            }

            if (line.AsSpan().TrimStart()[0] == '#')
                continue;
            if (ReadingLine.Read(line, i + 1, name, out PlacedFault? fault, tape) is { } reading)
                readings.Add(reading);
            else
                faults.Add(fault!);
        }

        return StruckLine.Out(new ReadingLog(name, readings, faults), lines);
    }

    /// <summary>Adds one line and waits until it is on the disk. Several programs may add at once; whatever kills one of them leaves all whole lines whole.</summary>
    /// <param name="path">Path of the log; it is made if it is not there.</param>
    /// <param name="line">One reading as <see cref="ReadingLine"/> writes it, without its line's end.</param>
    /// <exception cref="ArgumentException">A text of more than one line, or with control characters.</exception>
    /// <exception cref="IOException">The disk refuses, or another program keeps the log open.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static void Append(string path, string line)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(line);
        foreach (char c in line)
        {
            if (char.IsControl(c) && c != '\t')
                throw new ArgumentException("a reading is one line of plain text", nameof(line));
        }

        Patiently(() =>
        {
            // nobody else writes while it is open like this
            using var log = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1);
            string before = "";
            if (log.Length > 0)
            {
                log.Seek(-1, SeekOrigin.End);
                // what does not end was cut off: it is marked, so that it is never taken for whole
                if (log.ReadByte() != '\n')
                    before = "  " + CutOff + "\n";
            }

            log.Seek(0, SeekOrigin.End);
            byte[] bytes = Utf8.GetBytes(before + line + "\n");
            log.Write(bytes, 0, bytes.Length);
            log.Flush(flushToDisk: true);
            return true;
        });
    }

    private static byte[] Whole(string path)
    {
        using var log = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var all = new MemoryStream();
        byte[] buffer = new byte[16 * 1024];
        for (int n; all.Length <= Longest && (n = log.Read(buffer)) > 0;)
            all.Write(buffer, 0, n);
        return all.ToArray();
    }

    /// <summary>Tries until the file is free.</summary>
    private static T Patiently<T>(Func<T> act)
    {
        DateTime until = DateTime.UtcNow + Patience;
        for (int wait = 1; ; wait = Math.Min(50, wait * 2))
        {
            try
            {
                return act();
            }
            catch (IOException busy) when (busy is not (FileNotFoundException or DirectoryNotFoundException or PathTooLongException) && DateTime.UtcNow < until)
            {
                Thread.Sleep(wait);
            }
        }
    }
}
