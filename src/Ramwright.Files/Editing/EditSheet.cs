using System.Globalization;

namespace Ramwright.Files.Editing;

/// <summary>A press file's text with the places of its values, and where lines, brackets and children end.</summary>
internal sealed class EditSheet
{
    public EditSheet(string text)
    {
        PressReading reading = PressFile.Read(text, "", shelf: null);
        Text = reading.Text;
        Map = reading.Map;
        NewLine = Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
    }

    public string Text { get; }

    public SourceMap Map { get; }

    public string NewLine { get; }

    /// <summary>The paths one step below, in the order of the file.</summary>
    public IReadOnlyList<string> Children(string path)
    {
        string prefix = path.Length == 0 ? "" : path + ".";
        return
        [
            .. Map.Spots
                .Where(s => s.Key.Length > prefix.Length && s.Key.StartsWith(prefix, StringComparison.Ordinal) && s.Key.IndexOf('.', prefix.Length) < 0)
                .OrderBy(s => s.Value.Value.Offset)
                .Select(s => s.Key),
        ];
    }

    /// <summary>Where what stands at a path ends: past its last bracket, or past its last child.</summary>
    public int End(string path)
    {
        SourceMap.Spot spot = Map.Spots[path];
        if (spot.IsText)
            return spot.Value.Length > 0 ? spot.Value.Offset + spot.Value.Length : AfterColon(spot.Key!.Value);
        if (Text[spot.Value.Offset] is '{' or '[')
            return ClosingBracket(spot.Value.Offset) + 1;
        IReadOnlyList<string> children = Children(path);
        return children.Count == 0 ? AfterColon(spot.Key!.Value) : End(children[^1]);
    }

    /// <summary>Whether a value stands inside brackets.</summary>
    public bool IsInFlow(string path)
    {
        for (int dot = path.LastIndexOf('.'); dot >= 0; dot = path.LastIndexOf('.', dot - 1))
        {
            if (Map.TryFind(path[..dot], out SourceMap.Spot? above) && !above.IsText && above.Value.Length > 0 && Text[above.Value.Offset] is '{' or '[')
                return true;
            if (dot == 0)
                break;
        }

        return Map.TryFind("", out SourceMap.Spot? top) && Text.AsSpan(top.Value.Offset).TrimStart() is ['{', ..];
    }

    public int AfterColon(Place key)
    {
        int at = Text.IndexOf(':', key.Offset + key.Length);
        return at < 0 ? key.Offset + key.Length : at + 1;
    }

    /// <summary>The end of the line, before its line break.</summary>
    public int LineEnd(int offset)
    {
        int at = Text.IndexOf('\n', offset);
        if (at < 0)
            return Text.Length;
        return at > 0 && Text[at - 1] == '\r' ? at - 1 : at;
    }

    /// <summary>How far in the line of a key begins.</summary>
    public int IndentOf(Place key)
    {
        int start = Text.LastIndexOf('\n', Math.Max(0, key.Offset - 1)) + 1;
        return key.Offset < start ? 0 : key.Offset - start;
    }

    /// <summary>How far in a new neighbour of this child belongs: as its key, or its dash.</summary>
    public int IndentOfChild(string path)
    {
        SourceMap.Spot spot = Map.Spots[path];
        if (spot.Key is { } key)
            return IndentOf(key);
        int dash = Text.LastIndexOf('-', Math.Max(0, spot.Value.Offset - 1));
        return IndentOf(spot.Value with { Offset = dash });
    }

    /// <summary>The bracket that closes the one at an offset; quotes and comments are stepped over.</summary>
    public int ClosingBracket(int open)
    {
        int depth = 0;
        for (int i = open; i < Text.Length; i++)
        {
            switch (Text[i])
            {
                case '{' or '[':
                    depth++;
                    break;
                case '}' or ']' when --depth == 0:
                    return i;
                case '"' or '\'' when i > 0 && Text[i - 1] is ' ' or ',' or ':' or '{' or '[' or '\n':
                    i = Text.IndexOf(Text[i], i + 1) is var close and >= 0 ? close : i;
                    break;
                case '#' when char.IsWhiteSpace(Text[i - 1]):
                    i = LineEnd(i);
                    break;
            }
        }

        throw new FormatException(string.Create(CultureInfo.InvariantCulture, $"the bracket at {open} is not closed"));
    }
}
