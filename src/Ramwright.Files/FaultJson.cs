using System.Text;
using System.Text.Json;

namespace Ramwright.Files;

/// <summary>The faults of a file as one JSON object.</summary>
public static class FaultJson
{
    /// <summary>Writes faults.</summary>
    public static string Text(IReadOnlyList<PlacedFault> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, CheckJson.Options))
        {
            json.WriteStartObject();
            json.WriteStartArray("faults");
            foreach (PlacedFault fault in faults)
            {
                json.WriteStartObject();
                json.WriteString("file", fault.File);
                json.WriteNumber("line", fault.Line);
                json.WriteNumber("column", fault.Column);
                json.WriteNumber("length", fault.Length);
                json.WriteString("path", fault.Path);
                json.WriteString("found", fault.Found);
                json.WriteString("wanted", fault.Wanted);
                json.WriteString("nearest", fault.Nearest);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
