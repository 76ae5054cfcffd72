using System.Reflection;
using System.Text;
using Ramwright.Quantities;

namespace Ramwright.Files;

/// <summary>Press files to begin with, one for each kind of frame: a first one with what must be said, and a full one with every key, used or in a comment.</summary>
public static class Starter
{
    private const string DefaultSchema = "press.schema.json";

    /// <summary>Sizes of about the same in inch stock, for those in the starters' first files.</summary>
    private static readonly Dictionary<string, string> InInches = new(StringComparer.Ordinal)
    {
        ["10 t"] = "10 US ton",
        ["20 t"] = "20 US ton",
        ["25 t"] = "25 US ton",
        ["50 mm"] = "2 in",
        ["60 mm"] = "2-3/8 in",
        ["65 mm"] = "2-1/2 in",
        ["70 mm"] = "2-3/4 in",
        ["75 mm"] = "3 in",
        ["80 mm"] = "3-1/4 in",
        ["100 mm"] = "4 in",
        ["125 mm"] = "5 in",
        ["150 mm"] = "6 in",
        ["180 mm"] = "7 in",
        ["200 mm"] = "8 in",
        ["250 mm"] = "10 in",
        ["280 mm"] = "11 in",
        ["350 mm"] = "14 in",
        ["500 mm"] = "20 in",
        ["600 mm"] = "24 in",
        ["700 mm"] = "28 in",
        ["900 mm"] = "36 in",
        ["6.3 bar"] = "90 psi",
        ["7 bar"] = "100 psi",
        ["210 bar"] = "3,000 psi",
        ["500 bar"] = "7,500 psi",
        ["700 bar"] = "10,000 psi",
        ["2.5 mL"] = "0.15 in3",
        ["100 L"] = "26 US gal",
        ["250 L/min"] = "9 cfm",
    };

    /// <summary>The kinds there is a starter for, as <c>frame: kind</c> names them.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["closed", "open-front", "tie-rod", "free"];

    /// <summary>That a first file is no press to be built as it stands.</summary>
    public const string NotYet = "As it stands it is not safe to what it is wanted for, and is meant so: check says what gives first, lift what to change.";

    /// <summary>The first file: what must be said, and no more. Everything else is assumed until it is said.</summary>
    /// <param name="kind">A kind of frame, one of <see cref="Kinds"/>.</param>
    /// <param name="units">What the person measures in.</param>
    /// <exception cref="ArgumentException">There is no starter of that kind.</exception>
    public static string First(string kind, UnitSystem units = UnitSystem.Metric)
    {
        string[] lines = Text(kind).Split('\n');
        var text = new StringBuilder();
        text.Append(lines[2]).Append('\n');
        text.Append("# " + NotYet + "\n");
        text.Append("# Any unit of the trade will do: 100 mm, 4 in, 1-1/4\", 210 bar, 3,000 psi, 25 t, 25 US ton.\n");
        text.Append("# What is left out is assumed, and every check lists it. All the keys there are: ramwright new --full\n\n");
        foreach (string line in lines)
        {
            bool used = line.Length > 0 && line.TrimStart()[0] != '#';
            if (used)
            {
                if (!line.StartsWith(' ') && Said(line).Length == 0)
                    text.Append('\n');
                text.Append(units == UnitSystem.Imperial ? Inched(line) : line).Append('\n');
            }
        }

        return text.ToString();
    }

    /// <summary>The text of a full starter.</summary>
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

    private static string Inched(string line)
    {
        int from = line.IndexOf(": ", StringComparison.Ordinal) + 2, comment = line.IndexOf('#', StringComparison.Ordinal);
        string said = Said(line), inches = InInches.GetValueOrDefault(said, InchStock.Of(said));
        return inches == said ? line : (line[..from] + inches).PadRight(comment) + line[comment..];
    }

    /// <summary>The value on a line of a starter; empty where keys of its own stand below.</summary>
    private static string Said(string line) =>
        line[(line.IndexOf(": ", StringComparison.Ordinal) + 2)..line.IndexOf('#', StringComparison.Ordinal)].Trim();
}
