using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Ramwright.Files.Binding;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files;

/// <summary>
/// The JSON Schema (draft 2020-12) of a press file, made from the records of a press, for editors that complete and
/// check YAML. It knows keys, kinds and words; units, stock and what fits together are for <see cref="PressFile"/>.
/// </summary>
public static class PressSchema
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,      // a file, not a web page: ° and " stay as they are
    };

    /// <summary>The schema's text, ended by LF.</summary>
    public static string Generate()
    {
        var definitions = new SortedDictionary<string, JsonObject>(StringComparer.Ordinal);
        JsonObject top = Record(RecordShape.Of(typeof(Press)), definitions);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Press file",
        };
        foreach ((string key, JsonNode? value) in top)
            schema[key] = value?.DeepClone();
        var all = new JsonObject();
        foreach ((string name, JsonObject definition) in definitions)
            all[name] = definition;
        schema["$defs"] = all;
        return schema.ToJsonString(Readable).ReplaceLineEndings("\n") + "\n";
    }

    private static JsonObject Reference(Type type, SortedDictionary<string, JsonObject> definitions)
    {
        string name = KeyNames.Written(type.Name);
        if (!definitions.ContainsKey(name))
        {
            definitions[name] = [];                 // holds the place while the record refers to itself
            RecordShape shape = RecordShape.Of(type);
            definitions[name] = shape.Kinds.Count > 0 ? Kinds(shape, definitions) : Record(shape, definitions);
        }

        return new JsonObject { ["$ref"] = "#/$defs/" + name };
    }

    private static JsonObject Kinds(RecordShape shape, SortedDictionary<string, JsonObject> definitions)
    {
        var kinds = new JsonArray();
        foreach (RecordShape kind in shape.Kinds)
            kinds.Add((JsonNode)Reference(kind.Type, definitions));
        return new JsonObject
        {
            ["description"] = shape.Says,
            ["type"] = "object",
            ["required"] = new JsonArray("kind"),
            ["oneOf"] = kinds,
        };
    }

    private static JsonObject Record(RecordShape shape, SortedDictionary<string, JsonObject> definitions)
    {
        var properties = new JsonObject();
        var needed = new JsonArray();
        if (shape.Kind is not null)
        {
            properties["kind"] = new JsonObject { ["description"] = shape.Says, ["const"] = shape.Kind };
            needed.Add("kind");
        }

        foreach (KeyShape key in shape.Keys)
        {
            properties[key.Key] = Value(key, definitions);
            if (key.IsNeeded)
                needed.Add(key.Key);
        }

        var record = new JsonObject
        {
            ["description"] = shape.Says,
            ["type"] = "object",
            ["properties"] = properties,
        };
        if (needed.Count > 0)
            record["required"] = needed;
        record["additionalProperties"] = false;
        return record;
    }

    private static JsonObject Value(KeyShape key, SortedDictionary<string, JsonObject> definitions)
    {
        JsonObject value = key.Form switch
        {
            KeyForm.Measure => Measure(key.Measure!),
            // A class such as 8.8 is a number to YAML.
            KeyForm.StockName => new JsonObject { ["type"] = new JsonArray("string", "number"), ["examples"] = new JsonArray(key.Stock!.Example) },
            KeyForm.Text => new JsonObject { ["type"] = new JsonArray("string", "number") },
            KeyForm.Flag => new JsonObject { ["enum"] = new JsonArray(true, false, "yes", "no") },
            KeyForm.Word => Words(key),
            KeyForm.Record => Reference(key.Element, definitions),
            KeyForm.Records => new JsonObject { ["type"] = "array", ["items"] = Reference(key.Element, definitions) },
            _ => new JsonObject { ["type"] = "array", ["items"] = new JsonObject { ["type"] = "string" } },
        };
        string says = key.Form == KeyForm.Word ? $"{key.Says}: {WordsWithMeaning(key)}" : key.Says;
        value.Insert(0, "description", says);
        return value;
    }

    private static JsonObject Measure(MeasureAttribute measure)
    {
        var text = new JsonObject { ["type"] = "string", ["pattern"] = "\\p{N}" };
        var examples = new JsonArray(measure.Example);
        if (measure.Dimension is not (Dimension.Number or Dimension.Count or Dimension.Ratio))
        {
            if (measure.From is 0)
                return new JsonObject { ["anyOf"] = new JsonArray(text, new JsonObject { ["const"] = 0 }), ["examples"] = examples };
            text["examples"] = examples;
            return text;
        }

        text["type"] = new JsonArray("string", measure.Dimension == Dimension.Count ? "integer" : "number");
        if (double.IsNaN(measure.From))
            text["exclusiveMinimum"] = measure.Above;
        else
            text["minimum"] = measure.From;
        if (double.IsFinite(measure.UpTo))
            text["maximum"] = measure.UpTo;
        text["examples"] = examples;
        return text;
    }

    private static JsonObject Words(KeyShape key)
    {
        var words = new JsonArray();
        foreach (WordShape word in key.Words)
            words.Add(word.Word);
        return new JsonObject { ["enum"] = words };
    }

    private static string WordsWithMeaning(KeyShape key)
    {
        var words = new List<string>();
        foreach (WordShape word in key.Words)
            words.Add(word.Says.Length > 0 ? $"{word.Word} ({word.Says})" : word.Word);
        return FaultWords.List(words);
    }
}
