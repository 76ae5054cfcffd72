using Ramwright.Ladders;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>What is let into the reckoning: a line that can be read, and that can be so on this press.</summary>
public static class ReadingGate
{
    /// <summary>Why a line may not be added; null where it may.</summary>
    /// <param name="check">The press.</param>
    /// <param name="log">Its log.</param>
    /// <param name="line">The line.</param>
    /// <param name="file">What it is called in messages.</param>
    /// <param name="units">Units of the words.</param>
    public static PlacedFault? Refuses(PressCheck check, ReadingLog log, string line, string file, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(line);
        if (ReadingLine.Read(line, 1, file, out PlacedFault? fault, units) is not { } reading)
            return fault;
        if (reading.Kind == ReadingKind.Strike)
        {
            return StruckLine.Refused(log, reading) is { } why
                ? new PlacedFault(file, 1, 1, line.Length, "", why, "the number of the line that is wrong, as it is named", null, line) : null;
        }

        var book = new ReadingBook(check, [.. log.Readings, reading], units);
        return Doubt(check, book, Signs(check, log), reading, line, file, units) ?? Look(check, reading, line, file, units);
    }

    /// <summary>The log with what cannot be so on this press taken for faults, and the pressures among it.</summary>
    internal static (ReadingLog Sound, IReadOnlyList<PlacedFault> Pressures) Sift(PressCheck check, ReadingLog log, UnitSystem units)
    {
        var book = new ReadingBook(check, log.Readings, units);
        var sound = new List<Reading>();
        var faults = new List<PlacedFault>();
        var pressures = new List<PlacedFault>();
        string name = Path.GetFileName(log.Path);
        Lazy<string[]> signs = Signs(check, log);
        foreach (Reading reading in log.Readings)
        {
            if (Doubt(check, book, signs, reading, "", name, units) is not { } fault)
            {
                sound.Add(reading);
                continue;
            }

            fault = fault with { Column = 1, Length = 0, Wanted = $"{fault.Wanted.TrimEnd('?')}{(fault.Wanted.EndsWith('?') ? "?" : ".")} {TrueForce.Strike(reading.Line)}" };
            faults.Add(fault);
            if (ReadingSense.Of(check, book, reading, units) is { IsPressure: true })
                pressures.Add(fault);
        }

        return faults.Count == 0 ? (log, []) : (log with { Readings = sound, Faults = [.. log.Faults.Concat(faults).OrderBy(f => f.Line)] }, pressures);
    }

    private static PlacedFault? Doubt(PressCheck check, ReadingBook book, Lazy<string[]> signs, Reading reading, string line, string file, UnitSystem units)
    {
        Nonsense? cannot = ReadingSense.Of(check, book, reading, units);
        if (cannot is null && reading.Kind == ReadingKind.Sign && !signs.Value.Contains(reading.At))
            cannot = new Nonsense($"this press has no sign called \"{reading.At}\"", "at= one of those that --fault \"?\" lists", "at", signs.Value);
        return cannot is null ? null : Placed(cannot, reading, line, file);
    }

    /// <summary>What was found in order must be a thing of the plan, or it would still stand there as not looked at; what was not in order is heard whatever it is.</summary>
    private static PlacedFault? Look(PressCheck check, Reading reading, string line, string file, UnitSystem units)
    {
        if (reading.Kind != ReadingKind.Look || reading.Word == "not-ok")
            return null;
        var plan = TestPlan.Of(check, units);
        string[] names = [.. plan.Looks.Concat(plan.Unloaded).Concat(plan.Measures).Concat(plan.After).Select(t => t.Name)];
        return names.Contains(reading.At) ? null
            : Placed(new Nonsense($"the plan has nothing to look at called \"{reading.At}\"", "at= one of " + string.Join(", ", names), "at", names), reading, line, file);
    }

    private static PlacedFault Placed(Nonsense cannot, Reading reading, string line, string file)
    {
        int key = cannot.Word.Length > 0 ? line.IndexOf($"{cannot.Word}=", StringComparison.OrdinalIgnoreCase) : -1;
        (int at, int length) = key < 0 ? (0, line.Length) : (key + cannot.Word.Length + 1, Math.Max(1, (line.IndexOf(' ', key) is var end and > 0 ? end : line.Length) - key - cannot.Word.Length - 1));
        return new PlacedFault(file, reading.Line, at + 1, length, "", cannot.Found, cannot.Wanted, NearestWord.Among(reading.At, cannot.Words), line);
    }

    private static Lazy<string[]> Signs(PressCheck check, ReadingLog log)
    {
        string stem = log.Path.EndsWith(ReadingLog.Ending, StringComparison.Ordinal) ? log.Path[..^ReadingLog.Ending.Length] : log.Path;
        return new(() => [.. FaultFinding.FaultNetwork.Of(check.Rig, FaultFiles.For(stem + PressFile.Ending).Tables).Signs.Select(s => s.Id)]);
    }
}
