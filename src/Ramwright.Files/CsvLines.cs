using System.Text;

namespace Ramwright.Files;

/// <summary>One row and its line.</summary>
internal sealed record CsvRow(int Line, string[] Fields);

/// <summary>A table in comma-separated text: comments that start with #, a line of column names, rows.</summary>
/// <remarks>
/// Fields may stand in double quotes, a quote inside them doubled; a field does not run over a line's end. Where the
/// column names are parted by semicolons, as some spreadsheets write them, so are the rows, and decimal commas are read.
/// </remarks>
internal sealed class CsvLines
{
    private CsvLines()
    {
    }

    /// <summary>The kind named by a comment <c># table: KIND</c>, or null.</summary>
    public string? Kind { get; private set; }
    /// <summary>Line of that comment.</summary>
    public int KindLine { get; private set; }
    /// <summary>Column names, empty where the text has none.</summary>
    public string[] Columns { get; private set; } = [];
    /// <summary>Line of the column names.</summary>
    public int ColumnsLine { get; private set; } = 1;
    /// <summary>Fields are parted by this.</summary>
    public char Separator { get; private set; } = ',';
    /// <summary>The rows.</summary>
    public List<CsvRow> Rows { get; } = [];

    public static CsvLines Read(TextReader reader)
    {
        var lines = new CsvLines();
        int at = 0;
        while (reader.ReadLine() is { } text)
        {
            at++;
            ReadOnlySpan<char> line = text.AsSpan().Trim().TrimStart('\uFEFF');
            if (line.IsEmpty)
                continue;
            if (line[0] == '#')
                lines.Comment(line[1..].Trim(), at);
            else if (lines.Columns.Length == 0)
                lines.Header(line, at);
            else
                lines.Rows.Add(new CsvRow(at, Split(line, lines.Separator, lines.Columns.Length)));
        }

        return lines;
    }

    private void Comment(ReadOnlySpan<char> comment, int at)
    {
        const string Word = "table:";
        if (Kind is null && comment.StartsWith(Word, StringComparison.OrdinalIgnoreCase))
        {
            Kind = comment[Word.Length..].Trim().ToString();
            KindLine = at;
        }
    }

    private void Header(ReadOnlySpan<char> line, int at)
    {
        Separator = line.Contains(';') && !line.Contains(',') ? ';' : ',';
        Columns = Split(line, Separator, 8);
        ColumnsLine = at;
    }

    private static string[] Split(ReadOnlySpan<char> line, char separator, int expected)
    {
        var fields = new List<string>(expected);
        while (true)
        {
            line = line.TrimStart(' ');
            if (line.StartsWith("\"", StringComparison.Ordinal))
            {
                fields.Add(Quoted(ref line));
                int next = line.IndexOf(separator);
                if (next < 0)
                    return [.. fields];
                line = line[(next + 1)..];
                continue;
            }

            int end = line.IndexOf(separator);
            fields.Add((end < 0 ? line : line[..end]).Trim().ToString());
            if (end < 0)
                return [.. fields];
            line = line[(end + 1)..];
        }
    }

    private static string Quoted(ref ReadOnlySpan<char> line)
    {
        var field = new StringBuilder();
        int i = 1;
        for (; i < line.Length; i++)
        {
            if (line[i] != '"')
            {
                field.Append(line[i]);
            }
            else if (i + 1 < line.Length && line[i + 1] == '"')
            {
                field.Append('"');
                i++;
            }
            else
            {
                break;
            }
        }

        line = line[Math.Min(i + 1, line.Length)..];
        return field.ToString();
    }
}
