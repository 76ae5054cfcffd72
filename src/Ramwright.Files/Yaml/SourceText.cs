namespace Ramwright.Files.Yaml;

/// <summary>A text with its lines. A line ends at LF, CR, CR LF, NEL, LS or PS, as in YAML 1.1.</summary>
internal sealed class SourceText
{
    private readonly List<int> _starts = [0];

    public SourceText(string text)
    {
        Text = text;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (c == '\r' && i + 1 < text.Length && text[i + 1] == '\n')
                i++;
            if (c is '\n' or '\r' or '\u0085' or '\u2028' or '\u2029')
                _starts.Add(i + 1);
        }
    }

    public string Text { get; }

    public int LineCount => _starts.Count;

    /// <summary>A line without its end; empty beyond the last.</summary>
    public string Line(int number)
    {
        if (number < 1 || number > _starts.Count)
            return "";
        int start = _starts[number - 1];
        int end = number < _starts.Count ? _starts[number] : Text.Length;
        while (end > start && Text[end - 1] is '\n' or '\r' or '\u0085' or '\u2028' or '\u2029')
            end--;
        return Text[start..end];
    }

    /// <summary>Where a line starts.</summary>
    public int Start(int line) => _starts[Math.Clamp(line, 1, _starts.Count) - 1];

    /// <summary>The place of a stretch of the text.</summary>
    public Place At(int offset, int length)
    {
        offset = Math.Clamp(offset, 0, Text.Length);
        int found = _starts.BinarySearch(offset);
        int line = found >= 0 ? found : ~found - 1;
        return new Place(line + 1, offset - _starts[line] + 1, offset, Math.Min(length, Text.Length - offset));
    }
}
