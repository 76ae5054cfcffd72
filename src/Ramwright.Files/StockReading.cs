using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>A shelf with a table's rows added, and the rows that could not be.</summary>
/// <param name="Shelf">The shelf: new rows stand in the stead of old ones of the same name.</param>
/// <param name="Faults">What could not be used, in the order of the file.</param>
public sealed record StockReading(Shelf Shelf, IReadOnlyList<TableFault> Faults);
