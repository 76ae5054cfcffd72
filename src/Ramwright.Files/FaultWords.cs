using System.Text;

namespace Ramwright.Files;

/// <summary>Small pieces of wording that faults share.</summary>
internal static class FaultWords
{
    private const int LongestQuote = 60;

    /// <summary>What a person wrote, in quotes, short, and without characters that would disturb a terminal.</summary>
    public static string Quote(string text) => $"\"{Clip(Clean(text), LongestQuote)}\"";

    /// <summary>A text without control and direction characters.</summary>
    public static string Clean(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
            return text;
        var clean = new StringBuilder(text.Length);
        foreach (char c in text)
            clean.Append(c is '\t' or '\n' or '\r' ? ' ' : IsDisturbing(c) ? '\uFFFD' : c);
        return clean.ToString();
    }

    /// <summary>A text cut to a length, with an ellipsis.</summary>
    public static string Clip(string text, int length) => text.Length <= length ? text : text[..(length - 1)] + "…";

    /// <summary>Words with commas, and a joining word before the last.</summary>
    public static string List(IReadOnlyList<string> words, string joining = "or")
    {
        var text = new StringBuilder();
        for (int i = 0; i < words.Count; i++)
        {
            if (i > 0)
                text.Append(i < words.Count - 1 ? ", " : words.Count == 2 ? $" {joining} " : $", {joining} ");
            text.Append(words[i]);
        }

        return text.ToString();
    }

    /// <summary>What a path is called in a sentence: <c>lines.0</c> is <c>item 1 of lines</c>.</summary>
    public static string Owner(string path)
    {
        if (path.Length == 0)
            return "a press file";
        int dot = path.LastIndexOf('.');
        return dot > 0 && int.TryParse(path.AsSpan(dot + 1), out int item) ? $"item {item + 1} of {path[..dot]}" : path;
    }

    private static bool IsDisturbing(char c) =>
        char.IsControl(c) || c is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069' or '\u200E' or '\u200F'
            or '\u2028' or '\u2029' or '\uFEFF';
}
