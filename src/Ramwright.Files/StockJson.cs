using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>Things in stock as a JSON object, values in SI and as they are read.</summary>
public static class StockJson
{
    /// <summary>Writes what there is, by name.</summary>
    public static string Text(Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return JsonText.Object(json =>
        {
            json.List("sections", shelf.Sections.Select(s => s.Name));
            json.List("steels", shelf.Steels.Select(s => s.Name));
            json.List("boltClasses", shelf.Classes.Select(c => c.Name).Distinct());
            json.List("threads", shelf.Threads.Select(t => t.Name));
            json.List("portThreads", shelf.Ports.Select(p => p.Name));
            json.List("hoses", shelf.Hoses.Select(h => h.Type).Distinct());
            json.List("oils", shelf.Oils.Select(o => o.Name));
        });
    }

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
