using Ramwright.Quantities;

namespace Ramwright.Files;

/// <summary>Things in stock as a JSON object, values in SI and as they are read.</summary>
public static class StockJson
{
    /// <summary>Writes what was found.</summary>
    public static string Text(IReadOnlyList<StockItem> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        return JsonText.Object(all => all.List("stock", items, (json, item) =>
        {
            json.WriteString("kind", item.Kind);
            json.WriteString("name", item.Name);
            json.List("facts", item.Facts, (inner, fact) =>
            {
                inner.WriteString("symbol", fact.Symbol);
                inner.WriteString("meaning", fact.Meaning);
                inner.WriteNumber("si", JsonText.Round(fact.Si));
                inner.WriteString("text", Readout.Text(fact.Si, fact.Dimension));
            });
            json.WriteString("source", item.Source.ToString());
            if (item.Caution.Length > 0)
                json.WriteString("caution", item.Caution);
        }));
    }
}
