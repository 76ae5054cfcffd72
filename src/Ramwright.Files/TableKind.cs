namespace Ramwright.Files;

/// <summary>One kind of stock table: its columns, and how a row goes onto the shelf.</summary>
/// <param name="Name">The word after <c># table:</c>.</param>
/// <param name="Needed">Columns that must be there.</param>
/// <param name="Optional">Columns that may be.</param>
/// <param name="Put">Puts a row onto the shelf.</param>
internal sealed record TableKind(
    string Name,
    (string Column, Measured Measured)[] Needed,
    (string Column, Measured Measured)[] Optional,
    Action<TableRow, ShelfFiller> Put)
{
    private static readonly (string, Measured)[] Always = [("source", Measured.Text), ("standing", Measured.Text)];

    /// <summary>All columns.</summary>
    public IEnumerable<(string Column, Measured Measured)> Columns => [.. Needed, .. Optional, .. Always];

    /// <summary>The line of column names to begin a table with.</summary>
    public string Header => string.Join(',', Columns.Select(c => ColumnUnits.Example(c.Column, c.Measured)));

    /// <summary>Finds a written column, <c>h_mm</c>: its plain name, what it measures and its unit's worth.</summary>
    public (string Column, Measured Measured, double Si)? Find(string written)
    {
        foreach ((string column, Measured measured) in Columns)
        {
            if (!written.StartsWith(column, StringComparison.OrdinalIgnoreCase))
                continue;
            if (written.Length == column.Length)
                return (column, measured, ColumnUnits.Needed(measured) ? double.NaN : 1);
            if (written[column.Length] == '_' && ColumnUnits.TryFind(measured, written[(column.Length + 1)..], out double si))
                return (column, measured, si);
        }

        return null;
    }
}
