using System.Reflection;

namespace Ramwright.Files;

/// <summary>Press files to begin with: one for each kind of frame, with every key in it, used or in a comment.</summary>
public static class Starter
{
    private const string DefaultSchema = "press.schema.json";

    /// <summary>The kinds there is a starter for, as <c>frame: kind</c> names them.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["closed", "open-front", "tie-rod", "free"];

    /// <summary>The text of a starter.</summary>
    /// <param name="kind">A kind of frame, one of <see cref="Kinds"/>.</param>
    /// <param name="schema">Where an editor finds the schema: a path from the press file, or an address.</param>
    /// <exception cref="ArgumentException">There is no starter of that kind.</exception>
    public static string Text(string kind, string schema = DefaultSchema)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(schema);
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"Starters/{kind}{PressFile.Ending}")
            ?? throw new ArgumentException($"there is no starter of kind '{kind}'; there are {string.Join(", ", Kinds)}", nameof(kind));
        using var reader = new StreamReader(stream);
        string text = reader.ReadToEnd().ReplaceLineEndings("\n");
        return schema == DefaultSchema ? text : text.Replace($"$schema={DefaultSchema}\n", $"$schema={schema}\n");
    }
}
