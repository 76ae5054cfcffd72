using System.Globalization;
using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Ladders;
using Ramwright.Proving;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>Adds readings to the log from the command line: written out, or counted from a logger's file.</summary>
internal static class ReadingsAdd
{
    /// <summary>Adds all that is asked for; says why and stops at the first that cannot be read.</summary>
    public static bool All(ProveSettings settings, string path, PressCheck check, UnitSystem units, DateTime now, IAnsiConsole screen)
    {
        ReadingLog log = ReadingLog.Load(path, units);
        string who = settings.Who ?? Environment.UserName;
        var lines = new List<string>();
        foreach (string words in settings.Add ?? [])
        {
            // a whole line, day and name included, stands as it is
            string line = words.Length > 10 && DateOnly.TryParseExact(words[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
                ? words : ReadingLine.Text(now, who, words);
            if (ReadingGate.Refuses(check, log, line, "--add", units) is { } fault)
            {
                FaultView.Show([fault], settings.Json, screen);
                return false;
            }

            lines.Add(line);
        }

        if (settings.Count is { } csv)
        {
            if (PressureTrace.Read(csv, out string why) is not { } course)
            {
                screen.Refuse(settings.Json, $"--count {csv}: {why}");
                return false;
            }

            foreach (SqueezeBlock block in SqueezeLog.Count(course, DateOnly.FromDateTime(now), 0.05 * course.DefaultIfEmpty(0).Max()))
            {
                string low = block.Low > 0 ? $" low={Readout.Text(block.Low, Dimension.Pressure, units)}" : "";
                string line = ReadingLine.Text(now, who, $"squeezes {Readout.Number(block.Count, 9)} pressure={Readout.Text(block.Peak, Dimension.Pressure, units, 4)}{low} note={ReadingLine.Quoted("counted from " + Path.GetFileName(csv))}");
                if (ReadingGate.Refuses(check, log, line, "--count", units) is { } fault)
                {
                    FaultView.Show([fault], settings.Json, screen);
                    return false;
                }

                lines.Add(line);
            }
        }

        try
        {
            foreach (string line in lines)
            {
                ReadingLog.Append(path, line);
                if (!settings.Json)
                    screen.WriteLine($"added to {Path.GetFileName(path)} as line {File.ReadLines(path).Count()}: {line}");
            }
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException)
        {
            screen.Refuse(settings.Json, Refusal.NotWritten(path, refused));
            return false;
        }

        return true;
    }
}
