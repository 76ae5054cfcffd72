namespace Ramwright.Files;

/// <summary>A starter as one JSON object.</summary>
public static class NewJson
{
    /// <summary>Writes it.</summary>
    /// <param name="frame">Kind of frame.</param>
    /// <param name="file">Where it was written; null where nowhere.</param>
    /// <param name="text">The starter.</param>
    public static string Text(string frame, string? file, string text) => JsonText.Object(json =>
    {
        json.WriteString("frame", frame);
        json.WriteString("file", file);
        json.WriteString("text", text);
    });
}
