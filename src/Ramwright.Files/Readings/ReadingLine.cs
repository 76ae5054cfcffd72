using System.Globalization;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>
/// One reading as a line: the day (and time), who, what, the value with its unit, then keys with values.
/// <para><c>2026-03-14T10:12 Mara dial 0.62 mm at=opening pressure=105 bar way=up instrument=D1</c></para>
/// </summary>
public static class ReadingLine
{
    private const string Wanted = "day, who, what, value, then key=value: 2026-03-14 Mara bore {0} instrument=M1";

    /// <summary>A line from what was filled in.</summary>
    /// <param name="day">When.</param>
    /// <param name="who">Who.</param>
    /// <param name="what">Everything from the word for what was read on.</param>
    public static string Text(DateTime day, string who, string what)
    {
        ArgumentNullException.ThrowIfNull(who);
        ArgumentNullException.ThrowIfNull(what);
        return $"{day.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture)} {Quoted(who.Trim())} {what.Trim()}";
    }

    /// <summary>A word as it stands in a line: in quotes where it has blanks.</summary>
    /// <param name="word">The word.</param>
    public static string Quoted(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        string clean = word.Replace('"', '\'');
        bool plain = clean.Length > 0 && !clean.Any(c => char.IsWhiteSpace(c) || c is '=' or '#');
        return plain ? clean : $"\"{clean}\"";
    }

    /// <summary>Reads a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="file">What the log is called in messages.</param>
    /// <param name="fault">What is wrong, where it cannot be read.</param>
    /// <param name="tape">What the person measures in: examples of a fault are given in it.</param>
    public static Reading? Read(string line, int number, string file, out PlacedFault? fault, UnitSystem tape = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(line);
        var at = new Reader(line, number, tape);
        try
        {
            fault = null;
            return at.Whole();
        }
        catch (BadReading bad)
        {
            fault = new PlacedFault(file, number, bad.Column + 1, Math.Max(1, bad.Length), "", bad.Message, bad.Wanted, bad.Nearest, line);
            return null;
        }
    }

    private sealed class BadReading(int column, int length, string found, string wanted, string? nearest = null) : Exception(found)
    {
        public int Column => column;
        public int Length => length;
        public string Wanted => wanted;
        public string? Nearest => nearest;
    }

    /// <summary>A stretch of the line.</summary>
    private readonly record struct Part(int At, string Text);

    private sealed class Reader(string line, int number, UnitSystem tape)
    {
        private int _at;

        public Reading Whole()
        {
            Part day = Word("the day");
            (DateOnly date, TimeOnly? time) = When(day);
            Part who = Word("who read it");
            if (time is null && TimeOnly.TryParseExact(who.Text, ["HH:mm", "HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly clock))
            {
                time = clock;
                who = Word("who read it");
            }

            Part what = Word("what was read");
            ReadingForm? form = ReadingForm.All.FirstOrDefault(f => string.Equals(f.Name, what.Text, StringComparison.OrdinalIgnoreCase));
            if (form is null)
            {
                string[] names = [.. ReadingForm.All.Select(f => f.Name)];
                string? joined = names.FirstOrDefault(n => n.Contains('-', StringComparison.Ordinal) && line[what.At..].StartsWith(n.Replace('-', ' ') + " ", StringComparison.OrdinalIgnoreCase));
                throw new BadReading(what.At, joined?.Length ?? what.Text.Length, $"nothing that is read is called \"{joined?.Replace('-', ' ') ?? what.Text}\"",
                    "one of " + string.Join(", ", names), joined ?? NearestWord.Among(what.Text, names));
            }

            (Part value, Dictionary<string, Part> keys) = Rest();
            Reading reading = new(number, date, time, who.Text, form.Kind);
            reading = Value(reading, form, value);
            foreach ((string key, Part part) in keys)
                reading = Key(reading, form, key, part, keys);
            foreach (string need in form.Needs)
            {
                if (!keys.ContainsKey(need))
                    throw new BadReading(what.At, what.Text.Length, $"{form.Name} needs {need}=", $"{need}= behind the value, as {Example(need)}");
            }

            if (form.Kind == ReadingKind.Instrument && reading.Limit is null && (reading.Class is null || reading.Range is null))
                throw new BadReading(what.At, what.Text.Length, "nothing says how far this instrument may be off", $"limit={In("0.02 mm", Dimension.Length)}, or of a gauge range={In("400 bar", Dimension.Pressure)} class=1.6");
            return reading;
        }

        private Part Word(string what)
        {
            while (_at < line.Length && char.IsWhiteSpace(line[_at]))
                _at++;
            if (_at >= line.Length || line[_at] == '#')
                throw new BadReading(0, line.Length, $"the line ends before {what}", Wanted.Replace("{0}", In("125.04 mm", Dimension.Length), StringComparison.Ordinal));
            int start = _at;
            if (line[_at] == '"')
                return new Part(start, QuotedFrom(start));
            while (_at < line.Length && !char.IsWhiteSpace(line[_at]))
                _at++;
            return new Part(start, line[start.._at]);
        }

        private string QuotedFrom(int start)
        {
            int end = line.IndexOf('"', start + 1);
            if (end < 0)
                throw new BadReading(start, line.Length - start, "a quote is opened and not closed", "a second \" behind the words");
            _at = end + 1;
            return line[(start + 1)..end];
        }

        private static (DateOnly, TimeOnly?) When(Part day)
        {
            string text = day.Text;
            if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
                return (date, null);
            if (DateTime.TryParseExact(text, ["yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime both))
                return (DateOnly.FromDateTime(both), TimeOnly.FromDateTime(both));
            throw new BadReading(day.At, text.Length, $"\"{text}\" is no day", "the day first, as 2026-03-14 or 2026-03-14T10:12");
        }

        /// <summary>The value, up to the first key, and all keys.</summary>
        private (Part, Dictionary<string, Part>) Rest()
        {
            var starts = new List<(int At, string Key, int Value)>();
            int end = line.Length;
            bool quoted = false;
            for (int i = _at; i < line.Length; i++)
            {
                char c = line[i];
                // behind a figure it is inches, not a quote
                if (c == '"' && (quoted || char.IsWhiteSpace(line[i - 1]) || line[i - 1] == '='))
                {
                    quoted = !quoted;
                }
                else if (!quoted && c == '#')
                {
                    end = i;
                    break;
                }
                else if (!quoted && c == '=')
                {
                    int k = i;
                    while (k > _at && (char.IsAsciiLetter(line[k - 1]) || line[k - 1] == '-'))
                        k--;
                    if (k < i && (k == 0 || char.IsWhiteSpace(line[k - 1])))
                        starts.Add((k, line[k..i].ToLowerInvariant(), i + 1));
                }
            }

            if (quoted)
                throw new BadReading(_at, line.Length - _at, "a quote is opened and not closed", "a second \" behind the words");
            Part value = Trimmed(_at, starts.Count > 0 ? starts[0].At : end);
            var keys = new Dictionary<string, Part>(StringComparer.Ordinal);
            for (int i = 0; i < starts.Count; i++)
            {
                (int at, string key, int from) = starts[i];
                if (!keys.TryAdd(key, Trimmed(from, i + 1 < starts.Count ? starts[i + 1].At : end)))
                    throw new BadReading(at, key.Length, $"{key}= stands twice", "each key once");
            }

            return (value, keys);
        }

        private Part Trimmed(int from, int to)
        {
            while (from < to && char.IsWhiteSpace(line[from]))
                from++;
            while (to > from && char.IsWhiteSpace(line[to - 1]))
                to--;
            if (to - from >= 2 && line[from] == '"' && line[to - 1] == '"')
                return new Part(from + 1, line[(from + 1)..(to - 1)]);
            return new Part(from, line[from..to]);
        }

        private Reading Value(Reading reading, ReadingForm form, Part value)
        {
            if (value.Text.Length == 0)
                throw new BadReading(Math.Max(0, value.At - 1), 1, $"{form.Name} has no value", $"a value, as {Example(form)}");
            if (form.Measures is { } measures)
            {
                double si = Measure(value, measures);
                if (form.Kind == ReadingKind.Strike && (si < 1 || si != Math.Floor(si)))
                    throw new BadReading(value.At, value.Text.Length, $"\"{value.Text}\" is no line of the log", $"the number of the line to strike out, as {form.Example}");
                bool signed = form.Kind is ReadingKind.Dial or ReadingKind.OilTemperature or ReadingKind.LeakDown or ReadingKind.ReceiverFall;
                if (si < 0 && !signed)
                    throw new BadReading(value.At, value.Text.Length, $"{form.Name} is below zero", $"a value of zero or more, as {Example(form)}");
                if (si == 0 && form.Kind is ReadingKind.Bore or ReadingKind.Rod or ReadingKind.CentreTube or ReadingKind.TimeOut or ReadingKind.TimeBack or ReadingKind.Groove && si == 0)
                    throw new BadReading(value.At, value.Text.Length, $"{form.Name} is zero", $"a value above zero, as {Example(form)}");
                return reading with { Value = si };
            }

            if (form.Words.Count > 0 && !form.Words.Contains(value.Text.ToLowerInvariant()))
                throw new BadReading(value.At, value.Text.Length, $"{form.Name} cannot be \"{value.Text}\"", "one of " + string.Join(", ", form.Words), NearestWord.Among(value.Text, form.Words));
            return reading with { Word = form.Words.Count > 0 ? value.Text.ToLowerInvariant() : value.Text };
        }

        private double Measure(Part part, Dimension measures)
        {
            if (!QuantityText.TryRead(part.Text, measures, out Quantity quantity, out ReadingFault? why, tape))
                throw new BadReading(part.At + why.Offset, why.Length, why.Found, why.Wanted);
            return quantity.Si;
        }

        private Reading Key(Reading reading, ReadingForm form, string key, Part part, Dictionary<string, Part> keys)
        {
            string[] may = [.. form.Needs, .. form.Takes, .. ReadingForm.Common];
            if (!may.Contains(key))
                throw new BadReading(part.At, part.Text.Length, $"{form.Name} takes no {key}=", "one of " + string.Join(", ", may.Select(k => k + "=")), NearestWord.Among(key, may));
            if (part.Text.Length == 0)
                throw new BadReading(Math.Max(0, part.At - 1), 1, $"{key}= has no value", $"as {Example(key)}");
            double Si(Dimension d) => Measure(part, d);
            double Positive(Dimension d) => Si(d) is > 0 and var si ? si : throw new BadReading(part.At, part.Text.Length, $"{key}= must be above zero", $"as {Example(key)}");
            double NotNegative(Dimension d) => Si(d) is >= 0 and var si ? si : throw new BadReading(part.At, part.Text.Length, $"{key}= is below zero", $"as {Example(key)}");
            return key switch
            {
                "instrument" => reading with { Instrument = part.Text },
                "note" => reading with { Note = part.Text },
                "at" => reading with { At = part.Text.ToLowerInvariant() },
                "step" => reading with { Step = (int)Math.Min(1e6, NotNegative(Dimension.Count)) },
                "ambient" => reading with { Ambient = Si(Dimension.Temperature) },
                "oil" => reading with { Oil = Si(Dimension.Temperature) },
                "oil-after" => reading with { OilAfter = Si(Dimension.Temperature) },
                "pressure" => reading with { Pressure = NotNegative(Dimension.Pressure) },
                "low" => reading with { Low = NotNegative(Dimension.Pressure) },
                "air" => reading with { Air = NotNegative(Dimension.Pressure) },
                "load" => reading with { OnRam = NotNegative(Dimension.Force) },
                "travel" => reading with { Travel = Positive(Dimension.Length) },
                "over" => reading with { Over = Positive(Dimension.Time) },
                "volume" => reading with { Volume = Positive(Dimension.Volume) },
                "width" => reading with { Width = Positive(Dimension.Length) },
                "bore" => reading with { Bore = Positive(Dimension.Length) },
                "class" => reading with { Class = Positive(Dimension.Number) },
                "way" => reading with { Way = Choice(part, key, ("up", Way.Up), ("down", Way.Down)) },
                "measures" => reading with { Measures = Measures(part) },
                "range" => reading with { Range = Positive(Measures(keys, part)) },
                "limit" => reading with { Limit = Positive(Measures(keys, part)) },
                "resolution" => reading with { Resolution = Positive(Measures(keys, part)) },
                "calibrated" => reading with { Calibrated = When(part).Item1 },
                _ => throw new BadReading(part.At, part.Text.Length, $"{key}= is not known", ""),
            };
        }

        private static readonly (string Word, Dimension Means)[] Measurable =
        [
            ("pressure", Dimension.Pressure), ("length", Dimension.Length), ("force", Dimension.Force), ("time", Dimension.Time), ("temperature", Dimension.Temperature),
        ];

        private static Dimension Measures(Part part) => Choice(part, "measures", Measurable);

        private static Dimension Measures(Dictionary<string, Part> keys, Part asked) =>
            keys.TryGetValue("measures", out Part part) ? Measures(part)
            : throw new BadReading(asked.At, asked.Text.Length, "it is not said what this instrument measures", "measures=pressure, length, force, time or temperature");

        private static T Choice<T>(Part part, string key, params (string Word, T Means)[] words)
        {
            foreach ((string word, T means) in words)
            {
                if (string.Equals(word, part.Text, StringComparison.OrdinalIgnoreCase))
                    return means;
            }

            throw new BadReading(part.At, part.Text.Length, $"{key}= cannot be \"{part.Text}\"", "one of " + string.Join(", ", words.Select(w => w.Word)), NearestWord.Among(part.Text, words.Select(w => w.Word)));
        }

        private string In(string example, Dimension of) => ExampleSize.In(example, of, tape);

        private string Example(ReadingForm form) => form.Measures is { } of ? In(form.Example, of) : form.Example;

        private string Example(string key) => key switch
        {
            "at" => "at=opening",
            "pressure" => $"pressure={In("105 bar", Dimension.Pressure)}",
            "travel" => $"travel={In("200 mm", Dimension.Length)}",
            "over" => "over=10 min",
            "width" => $"width={In("4.8 mm", Dimension.Length)}",
            "bore" => $"bore={In("125 mm", Dimension.Length)}",
            "measures" => "measures=pressure",
            _ => $"{key}=...",
        };
    }
}
