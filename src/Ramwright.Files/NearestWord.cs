using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>Finds the word a person probably meant.</summary>
internal static class NearestWord
{
    private const int LongestWord = 60;

    /// <summary>The candidate that needs the fewest typing slips to become the word; null when none is near.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="candidates">The valid words.</param>
    public static string? Of(string word, IEnumerable<string> candidates)
    {
        string key = Key(word);
        if (key.Length is 0 or > LongestWord)
            return null;
        string? nearest = null;
        double least = double.PositiveInfinity;
        foreach (string candidate in candidates)
        {
            string other = Key(candidate);
            // A part of the name is often all that is written: 46 for VG 46, 2SN for EN 853 2SN.
            double distance = key.Length > 1 && other.Length > key.Length && other.EndsWith(key, StringComparison.Ordinal)
                ? 1
                : NearestNames.Distance(key, other);
            int allowed = Math.Max(1, Math.Min(key.Length, other.Length) / 3);
            if (distance <= allowed && distance < least)
            {
                least = distance;
                nearest = candidate;
            }
        }

        return nearest;
    }

    // Case, spaces, dashes and underscores do not make another word.
    private static string Key(string word)
    {
        Span<char> key = stackalloc char[LongestWord + 1];
        int n = 0;
        foreach (char c in word)
        {
            if (c is ' ' or '-' or '_')
                continue;
            if (n > LongestWord)
                break;
            key[n++] = char.ToLowerInvariant(c);
        }

        return new string(key[..n]);
    }
}
