using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>A line of a log that a later one strikes out, as a pen does on paper: it can still be read, and is not counted.</summary>
/// <param name="Line">Its number.</param>
/// <param name="Text">The line as it stands.</param>
/// <param name="By">The line that strikes it.</param>
public sealed record StruckLine(int Line, string Text, Reading By)
{
    /// <summary>In a sentence: which line, what stands on it, who struck it and when.</summary>
    public override string ToString() => FormattableString.Invariant($"line {Line}, \"{Text}\", struck out by {By.Who} on {By.Day:yyyy-MM-dd}{(By.Note.Length > 0 ? ": " + By.Note : "")}");

    /// <summary>Why a line cannot be struck out; null where it can.</summary>
    /// <param name="log">The log, its struck lines taken out.</param>
    /// <param name="strike">The line that strikes.</param>
    public static string? Refused(ReadingLog log, Reading strike)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(strike);
        if (log.Struck.Any(s => s.Line == strike.Value))
            return $"line {Readout.Number(strike.Value)} is struck out already";
        if (log.Struck.Any(s => s.By.Line == strike.Value))
            return $"line {Readout.Number(strike.Value)} strikes out another: write the reading down anew instead";
        return log.Readings.Any(r => r.Line == strike.Value && r.Kind != ReadingKind.Strike) || log.Faults.Any(f => f.Line == strike.Value)
            ? null : $"no reading stands on line {Readout.Number(strike.Value)}";
    }

    /// <summary>The log with its struck lines taken out of what counts.</summary>
    internal static ReadingLog Out(ReadingLog log, IReadOnlyList<string> lines)
    {
        foreach (Reading strike in log.Readings.Where(r => r.Kind == ReadingKind.Strike).ToArray())
        {
            string text = lines[strike.Line - 1].TrimEnd('\r');
            string? why = strike.Value < strike.Line ? Refused(log, strike) : "only an earlier line can be struck out";
            log = why is null
                ? log with
                {
                    Readings = [.. log.Readings.Where(r => r.Line != strike.Value && r != strike)],
                    Faults = [.. log.Faults.Where(f => f.Line != strike.Value)],
                    Struck = [.. log.Struck, new StruckLine((int)strike.Value, lines[(int)strike.Value - 1].Trim(), strike)],
                }
                : log with
                {
                    Readings = [.. log.Readings.Where(r => r != strike)],
                    Faults = [.. log.Faults, new PlacedFault(log.Path, strike.Line, 1, text.Length, "", why, "the number of the line that is wrong, as it is named", null, text)],
                };
        }

        return log;
    }
}
