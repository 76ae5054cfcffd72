using Ramwright.Stock;

namespace Ramwright.Files.Tests;

/// <summary>The shelf that ships with the program.</summary>
internal static class TestShelf
{
    public static Shelf Shelf => StockTables.Built;
}
