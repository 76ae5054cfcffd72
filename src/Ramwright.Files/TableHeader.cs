using System.Diagnostics.CodeAnalysis;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>Tells from a table's head what kind it is and where its columns are.</summary>
internal static class TableHeader
{
    /// <summary>The kind and its columns by plain name; reports what is wrong where they cannot be told.</summary>
    public static bool TryRead(
        CsvLines lines, Action<int, string, string> fault,
        [NotNullWhen(true)] out TableKind? kind, [NotNullWhen(true)] out Dictionary<string, FoundColumn>? columns)
    {
        kind = null;
        columns = null;
        if (lines.Columns.Length == 0)
        {
            fault(1, "the table has no line of column names", $"for steels, say: {TableKinds.All[0].Header}");
            return false;
        }

        kind = lines.Kind is { } name ? ByName(name, lines.KindLine, fault) : ByColumns(lines, fault);
        columns = kind is null ? null : Columns(kind, lines, fault);
        return kind is not null && columns is not null;
    }

    private static TableKind? ByName(string name, int line, Action<int, string, string> fault)
    {
        TableKind? kind = TableKinds.All.FirstOrDefault(k => Shelf.SameName(k.Name, name));
        if (kind is null)
        {
            IReadOnlyList<string> nearest = NearestWord.Ranked(name, TableKinds.All.Select(k => k.Name), 1);
            fault(line, $"no kind of table is called \"{name}\"", $"nearest: {nearest[0]}; there are {AllKinds}");
        }

        return kind;
    }

    private static TableKind? ByColumns(CsvLines lines, Action<int, string, string> fault)
    {
        TableKind[] fits = [.. TableKinds.All.Where(kind =>
            Array.TrueForAll(lines.Columns, c => kind.Find(c, 0) is not null)
            && Array.TrueForAll(kind.Needed, n => Array.Exists(lines.Columns, c => kind.Find(c, 0)?.Of == n)))];
        if (fits.Length == 1)
            return fits[0];

        fault(lines.ColumnsLine, "the column names do not tell what kind of table this is",
            $"a line \"# table: KIND\" above them, KIND being one of {AllKinds}");
        return null;
    }

    private static Dictionary<string, FoundColumn>? Columns(TableKind kind, CsvLines lines, Action<int, string, string> fault)
    {
        var columns = new Dictionary<string, FoundColumn>();
        bool sound = true;
        void Refuse(string found, string wanted)
        {
            fault(lines.ColumnsLine, found, wanted);
            sound = false;
        }

        for (int i = 0; i < lines.Columns.Length; i++)
        {
            string written = lines.Columns[i];
            if (kind.Find(written, i) is not { } found)
                Refuse($"{kind.Name} have no column \"{written}\"", $"the columns {kind.Header}");
            else if (double.IsNaN(found.Si))
                Refuse($"column {written} has no unit", ColumnUnits.Choices(found.Of));
            else if (!columns.TryAdd(found.Of.Name, found))
                Refuse($"column {found.Of.Name} stands there twice", "each column once");
        }

        foreach (TableColumn column in kind.Needed)
        {
            if (sound && !columns.ContainsKey(column.Name))
                Refuse($"the column {ColumnUnits.Example(column)} is missing", $"the columns {kind.Header}");
        }

        return sound ? columns : null;
    }

    private static string AllKinds => string.Join(", ", TableKinds.All.Select(k => k.Name));
}
