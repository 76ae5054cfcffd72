using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Ramwright.Files;

/// <summary>One JSON object as text: readable, with × and ² as they are.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>An object; what is written goes into it.</summary>
    public static string Object(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
            json.Object(write);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>An object in a list.</summary>
    public static void Object(this Utf8JsonWriter json, Action<Utf8JsonWriter> write)
    {
        json.WriteStartObject();
        write(json);
        json.WriteEndObject();
    }

    /// <summary>An object under a name.</summary>
    public static void Object(this Utf8JsonWriter json, string name, Action<Utf8JsonWriter> write)
    {
        json.WritePropertyName(name);
        json.Object(write);
    }

    /// <summary>A list under a name, an object for each item.</summary>
    public static void List<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
            json.Object(inner => write(inner, item));
        json.WriteEndArray();
    }

    /// <summary>A list of words under a name.</summary>
    public static void List(this Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (string word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }

    /// <summary>A number to six figures, which are more than any input has.</summary>
    public static double Round(double value)
    {
        if (value == 0)
            return 0;
        double scale = Math.Pow(10, 5 - Math.Floor(Math.Log10(Math.Abs(value))));
        return double.IsFinite(scale) ? Math.Round(value * scale) / scale : value;
    }
}
