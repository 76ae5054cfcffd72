namespace Ramwright.Files;

/// <summary>One kind of stock table: its columns, and how a row goes onto the shelf.</summary>
/// <param name="name">The word after <c># table:</c>.</param>
/// <param name="needed">Columns that must be there.</param>
/// <param name="optional">Columns that may be.</param>
/// <param name="put">Puts a row onto the shelf.</param>
internal sealed class TableKind(string name, TableColumn[] needed, TableColumn[] optional, Action<TableRow, ShelfFiller> put)
{
    private static readonly TableColumn[] Always = [new("source", Measured.Text), new("standing", Measured.Text)];

    private readonly TableColumn[] _columns = [.. needed, .. optional, .. Always];

    /// <summary>The word after <c># table:</c>.</summary>
    public string Name { get; } = name;

    /// <summary>Columns that must be there.</summary>
    public TableColumn[] Needed { get; } = needed;

    /// <summary>Puts a row onto the shelf.</summary>
    public Action<TableRow, ShelfFiller> Put { get; } = put;

    /// <summary>The line of column names to begin a table with.</summary>
    public string Header => string.Join(',', _columns.Select(ColumnUnits.Example));

    /// <summary>Finds the column that was written at a place, or null.</summary>
    public FoundColumn? Find(string written, int at)
    {
        foreach (TableColumn column in _columns)
        {
            if (!written.StartsWith(column.Name, StringComparison.OrdinalIgnoreCase))
                continue;
            int end = column.Name.Length;
            if (written.Length == end)
                return new FoundColumn(column, at, written, ColumnUnits.Needed(column.Measured) ? double.NaN : 1);
            if (written[end] == '_' && ColumnUnits.TryFind(column.Measured, written[(end + 1)..], out double si))
                return new FoundColumn(column, at, written, si);
        }

        return null;
    }
}
