using System.Text;
using System.Text.Json;
using Ramwright.Quantities;

namespace Ramwright.Files;

/// <summary>Things in stock as a JSON object, values in SI and as they are read.</summary>
public static class StockJson
{
    /// <summary>Writes what was found.</summary>
    public static string Text(IReadOnlyList<StockItem> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, CheckJson.Options))
        {
            json.WriteStartObject();
            json.WriteStartArray("stock");
            foreach (StockItem item in items)
            {
                json.WriteStartObject();
                json.WriteString("kind", item.Kind);
                json.WriteString("name", item.Name);
                json.WriteStartArray("facts");
                foreach ((string symbol, string meaning, double si, Dimension dimension) in item.Facts)
                {
                    json.WriteStartObject();
                    json.WriteString("symbol", symbol);
                    json.WriteString("meaning", meaning);
                    json.WriteNumber("si", CheckJson.Round(si));
                    json.WriteString("text", Readout.Text(si, dimension));
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteString("source", item.Source.ToString());
                if (item.Caution.Length > 0)
                    json.WriteString("caution", item.Caution);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
