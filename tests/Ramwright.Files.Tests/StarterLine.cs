using Ramwright.Files.Binding;
using Ramwright.Presses;

namespace Ramwright.Files.Tests;

/// <summary>One line of a starter that holds a key, used or behind a #.</summary>
/// <param name="Number">Line, counted from 0.</param>
/// <param name="Indent">Columns in front of the key, or of the dash of a list's item, once it is used.</param>
/// <param name="Key">The key.</param>
/// <param name="Value">The value, empty where further keys follow.</param>
/// <param name="Comment">What stands behind the value.</param>
/// <param name="IsUsed">Whether it is read.</param>
/// <param name="Record">The record it belongs to; null if the starter is wrong.</param>
internal sealed record StarterLine(
    int Number, int Indent, string Key, string Value, string Comment, bool IsUsed, string Text, RecordShape? Record)
{
    public KeyShape? Shape => Record?.Find(Key);

    /// <summary>What the comment must say.</summary>
    public string Meaning => Shape switch
    {
        { Form: KeyForm.Word } word => $"{word.Says}: {FaultWords.List([.. word.Words.Select(w => w.Word)])}",
        { Form: KeyForm.Flag } flag => $"yes or no: {flag.Says}",
        { } shape => shape.Says,
        _ => Record?.Says ?? "",
    };

    /// <summary>The lines of a starter that hold keys.</summary>
    public static List<StarterLine> Of(string text)
    {
        string[] lines = text.Split('\n');
        var plain = new List<StarterLine>();
        for (int n = 0; n < lines.Length; n++)
        {
            if (Plain(n, lines[n]) is { } line)
                plain.Add(line);
        }

        // The record above each line, by indentation; a record of several kinds is settled by its next line, each item of a list by its own.
        var result = new List<StarterLine>();
        var open = new List<(int Indent, RecordShape Shape, RecordShape Any)> { (-1, RecordShape.Of(typeof(Press)), RecordShape.Of(typeof(Press))) };
        for (int i = 0; i < plain.Count; i++)
        {
            StarterLine line = plain[i];
            while (open[^1].Indent >= line.Indent)
                open.RemoveAt(open.Count - 1);
            if (line.Key == "kind" && open[^1].Any.Kinds.Count > 0)
                open[^1] = open[^1] with { Shape = open[^1].Any.Kinds.Single(k => k.Kind == line.Value) };
            StarterLine placed = line with { Record = open[^1].Shape };
            result.Add(placed);
            if (placed.Shape is not { Form: KeyForm.Record or KeyForm.Records } shape)
                continue;
            RecordShape below = RecordShape.Of(shape.Element);
            open.Add((line.Indent, below.Kinds.Count > 0 ? below.Kinds.Single(k => k.Kind == plain[i + 1].Value) : below, below));
        }

        return result;
    }

    private static StarterLine? Plain(int number, string line)
    {
        string text = line;
        int hash = line.Length - line.TrimStart().Length;
        bool used = hash >= line.Length || line[hash] != '#';
        if (!used)
        {
            // One space behind the # is prose.
            if (line.Length < hash + 2 || line[hash + 1] == '#' || (line[hash + 1] == ' ' && line[hash + 2] != ' '))
                return null;
            text = line.Remove(hash, 1);
        }

        int comment = text.IndexOf(" #", StringComparison.Ordinal);
        string bare = (comment < 0 ? text : text[..comment]).TrimEnd();
        int indent = bare.Length - bare.TrimStart().Length;
        if (bare.TrimStart().StartsWith("- ", StringComparison.Ordinal))
            indent += 2;
        int colon = bare.IndexOf(':');
        if (colon < 0)
            return null;
        return new StarterLine(number, indent, bare[indent..colon], bare[(colon + 1)..].Trim(),
            comment < 0 ? "" : text[(comment + 2)..].Trim(), used, bare, null);
    }
}
