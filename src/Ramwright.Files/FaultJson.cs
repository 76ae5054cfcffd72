namespace Ramwright.Files;

/// <summary>The faults of a file as one JSON object.</summary>
public static class FaultJson
{
    /// <summary>Writes one fault that has no place in a file.</summary>
    /// <param name="found">What is wrong.</param>
    /// <param name="wanted">What to write instead.</param>
    public static string Text(string found, string wanted) => JsonText.Object(all => all.List("faults", new[] { (Found: found, Wanted: wanted) }, (json, fault) =>
    {
        json.WriteString("found", fault.Found);
        json.WriteString("wanted", fault.Wanted);
    }));

    /// <summary>Writes faults.</summary>
    public static string Text(IReadOnlyList<PlacedFault> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        return JsonText.Object(all => all.List("faults", faults, (json, fault) =>
        {
            json.WriteString("file", fault.File);
            json.WriteNumber("line", fault.Line);
            json.WriteNumber("column", fault.Column);
            json.WriteNumber("length", fault.Length);
            json.WriteString("path", fault.Path);
            json.WriteString("found", fault.Found);
            json.WriteString("wanted", fault.Wanted);
            json.WriteString("nearest", fault.Nearest);
        }));
    }
}
