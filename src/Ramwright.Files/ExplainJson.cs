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
        return JsonText.Object(json =>
        {
            json.Object("rung", inner => CheckJson.Write(inner, rung));
            json.List("steps", working.Steps, Write);
            json.List("notes", working.Notes.Select(n => n.Text()));
        });
    }

    private static void Write(Utf8JsonWriter json, Step step)
    {
        json.WriteString("symbol", step.Symbol);
        json.WriteString("meaning", step.Meaning);
        json.WriteString("formula", step.Formula);
        json.List("givens", step.Givens, (inner, given) =>
        {
            inner.WriteString("symbol", given.Symbol);
            inner.WriteNumber("si", given.Si);
            inner.WriteString("text", Readout.Text(given.Si, given.Dimension, digits: 4));
        });
        json.WriteNumber("si", step.Si);
        json.WriteString("text", Readout.Text(step.Si, step.Dimension, digits: 4));
        json.WriteString("source", step.Source.ToString());
    }
}
