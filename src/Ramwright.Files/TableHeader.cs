using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>Tells from a table's head what kind it is and where its columns are.</summary>
internal static class TableHeader
{
    /// <summary>The kind and its columns by plain name, or null after reporting what is wrong.</summary>
    public static (TableKind Kind, Dictionary<string, TableColumn> Columns)? Read(CsvLines lines, Action<int, string, string> fault)
    {
        if (lines.Columns.Length == 0)
        {
            fault(1, "the table has no line of column names", $"for steels, say: {TableKinds.All[0].Header}");
            return null;
        }

        TableKind? kind = lines.Named is var (name, line) ? ByName(name, line, fault) : ByColumns(lines, fault);
        return kind is null || Columns(kind, lines, fault) is not { } columns ? null : (kind, columns);
    }

    private static TableKind? ByName(string name, int line, Action<int, string, string> fault)
    {
        TableKind? kind = TableKinds.All.FirstOrDefault(k => Shelf.SameName(k.Name, name));
        if (kind is null)
        {
            IReadOnlyList<string> nearest = NearestNames.To(name, TableKinds.All.Select(k => k.Name), 1);
            fault(line, $"no kind of table is called \"{name}\"", $"nearest: {nearest[0]}; there are {AllKinds}");
        }

        return kind;
    }

    private static TableKind? ByColumns(CsvLines lines, Action<int, string, string> fault)
    {
        TableKind[] fits = [.. TableKinds.All.Where(kind =>
            Array.TrueForAll(lines.Columns, c => kind.Find(c) is not null)
            && Array.TrueForAll(kind.Needed, n => Array.Exists(lines.Columns, c => kind.Find(c)?.Column == n.Column)))];
        if (fits.Length == 1)
            return fits[0];

        fault(lines.ColumnsLine, "the column names do not tell what kind of table this is",
            $"a line \"# table: KIND\" above them, KIND being one of {AllKinds}");
        return null;
    }

    private static Dictionary<string, TableColumn>? Columns(TableKind kind, CsvLines lines, Action<int, string, string> fault)
    {
        var columns = new Dictionary<string, TableColumn>();
        bool sound = true;
        void Refuse(string found, string wanted)
        {
            fault(lines.ColumnsLine, found, wanted);
            sound = false;
        }

        for (int i = 0; i < lines.Columns.Length; i++)
        {
            string written = lines.Columns[i];
            if (kind.Find(written) is not var (column, measured, si))
                Refuse($"{kind.Name} have no column \"{written}\"", $"the columns {kind.Header}");
            else if (double.IsNaN(si))
                Refuse($"column {written} has no unit", ColumnUnits.Choices(column, measured));
            else if (!columns.TryAdd(column, new TableColumn(i, written, si)))
                Refuse($"column {column} stands there twice", "each column once");
        }

        foreach ((string column, Measured measured) in kind.Needed)
        {
            if (sound && !columns.ContainsKey(column))
                Refuse($"the column {ColumnUnits.Example(column, measured)} is missing", $"the columns {kind.Header}");
        }

        return sound ? columns : null;
    }

    private static string AllKinds => string.Join(", ", TableKinds.All.Select(k => k.Name));
}
