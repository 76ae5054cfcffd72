namespace Ramwright.Files;

/// <summary>A drawing as one JSON object.</summary>
public static class DrawingJson
{
    /// <summary>Writes it.</summary>
    /// <param name="press">Name of the press.</param>
    /// <param name="file">Where the drawing was written; null where nowhere.</param>
    /// <param name="svg">The drawing itself; null where it went into a file.</param>
    public static string Text(string press, string? file, string? svg) => JsonText.Object(json =>
    {
        json.WriteString("press", press);
        json.WriteString("file", file);
        json.WriteString("svg", svg);
    });
}
