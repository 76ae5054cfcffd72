using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Tests.Proving;

/// <summary>Presses of the examples, and logs for them.</summary>
internal static class ProvedPress
{
    private static readonly Dictionary<string, PressCheck> Checked = [];
    private static readonly Lock Gate = new();

    public static string PathOf(string example) => System.IO.Path.Combine(Repository.Folder("examples"), example + PressFile.Ending);

    public static PressCheck Press(string example)
    {
        lock (Gate)
        {
            if (!Checked.TryGetValue(example, out PressCheck? check))
                Checked[example] = check = CheckedPress.Of(PressOnDisk.Open(PathOf(example))).Check!;
            return check;
        }
    }

    /// <summary>A press of the examples with its text changed.</summary>
    public static PressCheck Press(string example, string old, string now)
    {
        string text = File.ReadAllText(PathOf(example));
        Assert.Contains(old, text, StringComparison.Ordinal);
        var press = CheckedPress.Of(PressOnDisk.Read(text.Replace(old, now, StringComparison.Ordinal), PathOf(example), example));
        Assert.Empty(press.Faults);
        return press.Check!;
    }

    /// <summary>A log of lines without day and name.</summary>
    public static ReadingLog Log(params IEnumerable<string> readings)
    {
        ReadingLog log = ReadingLog.Read(string.Concat(readings.Select(r => $"2026-05-09 Ines {r}\n")), "test.readings");
        Assert.Empty(log.Faults);
        return log;
    }

    public static ReadingBook Book(PressCheck check, params IEnumerable<string> readings) => new(check, Log(readings).Readings);

    public static Proof Proof(PressCheck check, params IEnumerable<string> readings) => new(check, Log(readings), UnitSystem.Metric, new DateOnly(2026, 9, 1));

    public static string Bar(double p) => FormattableString.Invariant($"{p / 1e5:0.######} bar");

    public static string Mm(double x) => FormattableString.Invariant($"{x * 1e3:0.########} mm");
}
