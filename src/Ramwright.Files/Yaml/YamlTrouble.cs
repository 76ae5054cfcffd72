namespace Ramwright.Files.Yaml;

/// <summary>
/// Says in plain words why a text is not YAML. The parser knows that something is wrong but seldom what a person did;
/// this looks for the slips people make, from the top: tabs, open quotes and brackets, colons, indentation.
/// </summary>
internal sealed class YamlTrouble
{
    private readonly record struct Level(int Indent, string Key, int Line, bool HasValue);

    private readonly record struct Bracket(char Opening, int Offset, int Indent);

    private readonly FaultList _faults;
    private readonly SourceText _source;
    private readonly List<Level> _levels = [];
    private readonly List<Bracket> _open = [];
    private int _blockIndent = -1;

    private YamlTrouble(FaultList faults)
    {
        _faults = faults;
        _source = faults.Source;
    }

    /// <summary>Adds the one fault that explains the trouble.</summary>
    /// <param name="faults">Takes the fault.</param>
    /// <param name="message">What the parser said; shown only when nothing better is found.</param>
    /// <param name="at">Where the parser gave up; negative if it does not know.</param>
    /// <returns>The line of the fault.</returns>
    public static int Report(FaultList faults, string message, int at)
    {
        var trouble = new YamlTrouble(faults);
        for (int line = 1; line <= faults.Source.LineCount; line++)
        {
            if (trouble.Explain(line) is { } place)
                return place.Line;
        }

        if (trouble._open.Count > 0)
            return trouble.Unclosed(trouble._open[^1]).Line;
        Place generic = faults.Source.At(Math.Max(0, at), 1);
        string plain = message.Contains(", ", StringComparison.Ordinal)
            ? message[(message.IndexOf(", ", StringComparison.Ordinal) + 2)..]
            : message;
        faults.Add(generic, "", "this cannot be read as YAML: " + plain.TrimEnd('.'),
            "a key, a colon, a space and the value, such as bore: 100 mm");
        return generic.Line;
    }

    private Place? Explain(int number)
    {
        string line = _source.Line(number);
        int indent = 0;
        while (indent < line.Length && (line[indent] is ' ' or '\t' || line[indent] == '\u00A0'))
            indent++;
        if (indent == line.Length || line[indent] == '#' || line.StartsWith("---", StringComparison.Ordinal))
            return null;
        if (_blockIndent >= 0)
        {
            if (indent > _blockIndent)
                return null;
            _blockIndent = -1;
        }

        if (_open.Count == 0)
        {
            if (Indentation(number, line, indent) is { } crooked)
                return crooked;
            if (Layout(number, line, indent) is { } place)
                return place;
        }
        else if (indent <= _open[0].Indent && KeyEnd(line, indent) > 0)
        {
            return Unclosed(_open[^1]);
        }

        return Characters(number, line, indent);
    }

    private Place? Indentation(int number, string line, int indent)
    {
        for (int i = 0; i < indent; i++)
        {
            if (line[i] == ' ')
                continue;
            bool tab = line[i] == '\t';
            int more = tab ? CountTabbed(number + 1) : 0;
            string others = more switch { 0 => "", 1 => "; one more line has a tab too", _ => $"; {more} more lines have tabs too" };
            return Add(number, i, indent - i,
                tab ? "this line is indented with a tab" : "this line is indented with a non-breaking space, as copied from a web page",
                "plain spaces in front of the key" + others);
        }

        return null;
    }

    // Follows the levels of indentation, and the first colon of the line.
    private Place? Layout(int number, string line, int indent)
    {
        int at = indent;
        while (_levels.Count > 0 && _levels[^1].Indent > at)
        {
            Level left = _levels[^1];
            _levels.RemoveAt(_levels.Count - 1);
            if (_levels.Count == 0 || _levels[^1].Indent < at)
            {
                return Add(number, at, line.Length - at, "this line does not line up with any line above it",
                    _levels.Count == 0
                        ? $"{Spaces(left.Indent)} in front of it, as of \"{left.Key}\" on line {left.Line}"
                        : $"{Spaces(left.Indent)} in front of it to stand beside \"{left.Key}\" on line {left.Line}, or {Spaces(_levels[^1].Indent)} to stand beside \"{_levels[^1].Key}\"");
            }
        }

        bool item = false;
        while (at < line.Length && line[at] == '-' && (at + 1 == line.Length || line[at + 1] == ' '))
        {
            item = true;
            if (DeeperThanAllowed(number, line, at) is { } deep)
                return deep;
            at++;
            while (at < line.Length && line[at] == ' ')
                at++;
        }

        if (at == line.Length || line[at] is '{' or '[')
            return null;
        int colon = KeyEnd(line, at);
        if (colon < 0)
        {
            if (item || line[at] is '"' or '\'' or '}' or ']')
                return null;
            int tight = TightColon(line, at);
            string said = FaultWords.Quote(Trimmed(line[at..]));
            return tight > 0
                ? Add(number, tight, 1, "there is no space behind the colon",
                    $"{line[at..tight]}: {Trimmed(line[(tight + 1)..])}")
                : Add(number, at, Trimmed(line[at..]).Length, $"{said} has no colon",
                    "a key, a colon, a space and the value, such as bore: 100 mm");
        }

        if (DeeperThanAllowed(number, line, at) is { } deeper)
            return deeper;
        string value = Trimmed(line[Math.Min(line.Length, colon + 1)..]);
        bool hasValue = value.Length > 0 && value[0] != '#';
        if (_levels.Count > 0 && _levels[^1].Indent == at)
            _levels.RemoveAt(_levels.Count - 1);
        _levels.Add(new Level(at, line[at..colon].Trim(), number, hasValue));
        if (hasValue && value[0] is '|' or '>')
            _blockIndent = indent;
        return null;
    }

    private Place? DeeperThanAllowed(int number, string line, int at)
    {
        if (_levels.Count == 0 || _levels[^1].Indent >= at || !_levels[^1].HasValue || _levels[^1].Line == number)
            return null;
        Level above = _levels[^1];
        return Add(number, at, line.Length - at,
            $"this line stands deeper than \"{above.Key}\" on line {above.Line}, which already has a value",
            $"{Spaces(above.Indent)} in front of it, if it stands beside \"{above.Key}\"");
    }

    // Quotes, brackets and colons inside the line.
    private Place? Characters(int number, string line, int from)
    {
        bool begin = true;              // a value or key may begin here
        int colons = 0;
        for (int i = from; i < line.Length; i++)
        {
            char c = line[i];
            if (c == '#' && (i == 0 || char.IsWhiteSpace(line[i - 1])))
                return null;
            if (char.IsWhiteSpace(c))
                continue;
            if (begin && c is '"' or '\'')
            {
                int end = ClosingQuote(line, i);
                if (end < 0)
                {
                    return Add(number, i, line.Length - i, "the quote opened here is not closed on its line",
                        $"a {c} behind the value, or no quotes at all");
                }

                int next = end + 1;
                while (next < line.Length && line[next] == ' ')
                    next++;
                if (next < line.Length && !(line[next] is ',' or '}' or ']' or ':' || (line[next] == '#' && next > end + 1)))
                {
                    return Add(number, next, Trimmed(line[next..]).Length, "something stands behind the closing quote",
                        "the whole value inside the quotes, or no quotes at all");
                }

                i = end;
                begin = false;
                continue;
            }

            if (begin && c is '@' or '`' or '%' or '|' or '>' && (_open.Count > 0 || c is not ('|' or '>')))
                return Add(number, i, 1, $"a value cannot begin with {c}", "the value in quotes");
            if (begin && c is '&' or '*' && i + 1 < line.Length && line[i + 1] != ' ')
            {
                return Add(number, i, 1, $"a value that begins with {c} stands for something written elsewhere; a press file does not use that",
                    "the value itself; in quotes if it really begins so");
            }

            if ((begin && c is '{' or '[') || (_open.Count > 0 && c is '{' or '['))
            {
                int indent = 0;
                while (indent < line.Length && line[indent] == ' ')
                    indent++;
                _open.Add(new Bracket(c, _source.Start(number) + i, indent));
                begin = true;
                continue;
            }

            if (c is '}' or ']' && (_open.Count > 0 || begin))
            {
                char opening = c == '}' ? '{' : '[';
                if (_open.Count == 0 || _open[^1].Opening != opening)
                {
                    return Add(number, i, 1, $"this {c} closes nothing",
                        _open.Count == 0 ? $"no {c} here, or a {opening} where it opens" : $"a {Closing(_open[^1].Opening)} first");
                }

                _open.RemoveAt(_open.Count - 1);
                begin = false;
                continue;
            }

            bool spaced = i + 1 == line.Length || line[i + 1] == ' ';
            if (_open.Count > 0 && c == ',')
                begin = true;
            else if (c == '-' && begin && spaced)
                begin = true;
            else if (c == ':' && spaced)
            {
                if (_open.Count == 0 && ++colons > 1)
                {
                    return Add(number, i, 1, "a second colon in one line",
                        "one key in a line; a text that has a colon in it stands in quotes");
                }

                begin = true;
            }
            else
                begin = false;
        }

        return null;
    }

    private Place Unclosed(Bracket bracket)
    {
        Place place = _source.At(bracket.Offset, 1);
        _faults.Add(place, "", $"the {bracket.Opening} opened here is never closed",
            $"a {Closing(bracket.Opening)} behind its last value");
        return place;
    }

    private Place Add(int line, int from, int length, string found, string wanted)
    {
        Place place = _source.At(_source.Start(line) + from, length);
        _faults.Add(place, "", found, wanted);
        return place;
    }

    private int CountTabbed(int from)
    {
        int count = 0;
        for (int n = from; n <= _source.LineCount; n++)
        {
            string line = _source.Line(n);
            string text = line.TrimStart();
            if (text.Length > 0 && text[0] != '#' && line[..^text.Length].Contains('\t'))
                count++;
        }

        return count;
    }

    // Where the colon behind a key stands; negative if there is none.
    private static int KeyEnd(string line, int from)
    {
        if (from < line.Length && line[from] is '"' or '\'')
        {
            int end = ClosingQuote(line, from);
            return end > 0 && end + 1 < line.Length && line[end + 1] == ':' ? end + 1 : -1;
        }

        for (int i = from; i < line.Length; i++)
        {
            if (line[i] == '#' && i > from && line[i - 1] == ' ')
                return -1;
            if (line[i] == ':' && (i + 1 == line.Length || line[i + 1] is ' ' or '\t'))
                return i;
        }

        return -1;
    }

    private static int TightColon(string line, int from)
    {
        for (int i = from; i < line.Length; i++)
        {
            if (line[i] == ':')
                return i > from ? i : -1;
            if (!char.IsLetterOrDigit(line[i]) && line[i] is not ('-' or '_'))
                return -1;
        }

        return -1;
    }

    private static int ClosingQuote(string line, int opening)
    {
        char quote = line[opening];
        for (int i = opening + 1; i < line.Length; i++)
        {
            if (quote == '"' && line[i] == '\\')
                i++;
            else if (line[i] == quote && quote == '\'' && i + 1 < line.Length && line[i + 1] == quote)
                i++;
            else if (line[i] == quote)
                return i;
        }

        return -1;
    }

    private static string Trimmed(string text)
    {
        int comment = text.IndexOf(" #", StringComparison.Ordinal);
        return (comment >= 0 ? text[..comment] : text).Trim();
    }

    private static char Closing(char opening) => opening == '{' ? '}' : ']';

    private static string Spaces(int count) => count switch { 0 => "no spaces", 1 => "1 space", _ => $"{count} spaces" };
}
