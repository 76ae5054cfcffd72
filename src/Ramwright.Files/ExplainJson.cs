using System.Text;
using System.Text.Json;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Files;

/// <summary>The working of one rung as a JSON object; every value both in SI and as it is read.</summary>
public static class ExplainJson
{
    /// <summary>Writes a working.</summary>
    public static string Text(Rung rung, Working working)
    {
        ArgumentNullException.ThrowIfNull(rung);
        ArgumentNullException.ThrowIfNull(working);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, CheckJson.Options))
        {
            json.WriteStartObject();
            json.WritePropertyName("rung");
            CheckJson.Write(json, rung);
            json.WriteStartArray("steps");
            foreach (Step step in working.Steps)
                Write(json, step);
            json.WriteEndArray();
            json.WriteStartArray("notes");
            foreach (string note in working.Notes)
                json.WriteStringValue(note);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Write(Utf8JsonWriter json, Step step)
    {
        json.WriteStartObject();
        json.WriteString("symbol", step.Symbol);
        json.WriteString("meaning", step.Meaning);
        json.WriteString("formula", step.Formula);
        json.WriteStartArray("givens");
        foreach (Given given in step.Givens)
        {
            json.WriteStartObject();
            json.WriteString("symbol", given.Symbol);
            json.WriteNumber("si", given.Si);
            json.WriteString("text", Readout.Text(given.Si, given.Dimension, digits: 4));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("si", step.Si);
        json.WriteString("text", Readout.Text(step.Si, step.Dimension, digits: 4));
        json.WriteString("source", step.Source.ToString());
        json.WriteEndObject();
    }
}
