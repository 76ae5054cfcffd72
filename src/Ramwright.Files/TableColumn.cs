namespace Ramwright.Files;

/// <summary>A column that a kind of table has.</summary>
/// <param name="Name">Its plain name: <c>h</c>.</param>
/// <param name="Measured">What its numbers measure.</param>
internal sealed record TableColumn(string Name, Measured Measured);

/// <summary>A column that was found in a table.</summary>
/// <param name="Of">The column.</param>
/// <param name="At">Its place in a row, from 0.</param>
/// <param name="Written">Its name as written: <c>h_mm</c>.</param>
/// <param name="Si">Worth of its unit in SI; NaN where a unit is needed and none is written.</param>
internal sealed record FoundColumn(TableColumn Of, int At, string Written, double Si);
