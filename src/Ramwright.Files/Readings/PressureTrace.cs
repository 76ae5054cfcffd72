using System.Globalization;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>A course of pressure from a logger or counter: one value a line, the last of its line where there are more. The head may name its unit: <c>time;pressure_psi</c>.</summary>
public static class PressureTrace
{
    private const int Longest = 50_000_000;

    /// <summary>Reads one from disk.</summary>
    /// <param name="path">Its path; <c>-</c> for standard input, as from a counter on a serial line.</param>
    /// <param name="why">What is wrong, where nothing comes back.</param>
    /// <returns>Pa, in the order of the file.</returns>
    public static IReadOnlyList<double>? Read(string path, out string why)
    {
        try
        {
            // a counter on a serial line is read through the shell
            if (path == "-")
                return Read(Console.In, out why);
            if (new FileInfo(path).Length > Longest)
            {
                why = "the file is too long: 50 MB at most";
                return null;
            }

            using StreamReader text = File.OpenText(path);
            return Read(text, out why);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            why = "it cannot be opened: " + e.Message;
            return null;
        }
    }

    /// <summary>Reads one.</summary>
    /// <param name="text">The text.</param>
    /// <param name="why">What is wrong, where nothing comes back.</param>
    public static IReadOnlyList<double>? Read(TextReader text, out string why)
    {
        ArgumentNullException.ThrowIfNull(text);
        var course = new List<double>();
        Unit? unit = null;
        int number = 0;
        while (text.ReadLine() is { } line)
        {
            number++;
            string[] fields = line.Split([',', ';', '\t'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (fields.Length == 0 || fields[0].StartsWith('#'))
                continue;
            string last = fields[^1];
            if (double.TryParse(last, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value))
            {
                course.Add(Math.Max(0, unit?.ToSi(value) ?? value * 1e5));
                continue;
            }

            // the head, and nothing but the head, may be words
            if (course.Count > 0)
            {
                why = $"line {number}: \"{last}\" is no number";
                return null;
            }

            string named = last[(last.LastIndexOfAny(['_', ' ', '(', '[']) + 1)..].TrimEnd(')', ']');
            if (Units.TryFind(named, Dimension.Pressure, out Unit? found))
                unit = found;
        }

        why = course.Count > 0 ? "" : "there is no number in it";
        return course.Count > 0 ? course : null;
    }
}
