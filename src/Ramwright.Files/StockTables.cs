using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>Reads the stock tables that ship with the program, and a person's own beside them.</summary>
public static class StockTables
{
    /// <summary>The tables that ship with the program; read once.</summary>
    public static Shelf Built => throw new NotImplementedException();
}
