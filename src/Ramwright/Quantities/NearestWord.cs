namespace Ramwright.Quantities;

/// <summary>Finds the word that somebody most likely meant.</summary>
public static class NearestWord
{
    /// <summary>The nearest of <paramref name="words"/>, or null where none is near enough to be meant.</summary>
    /// <remarks>Case does not count. One slip is allowed in a word of up to five letters, two up to nine, else three.</remarks>
    public static string? Among(string written, IEnumerable<string> words)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(words);
        string? nearest = null;
        int least = Allowed(written) + 1;
        foreach (string word in words)
        {
            int slips = Slips(written, word);
            if (slips < least && slips < word.Length)
                (nearest, least) = (word, slips);
        }
        return nearest;
    }

    private static int Allowed(string written) =>
        Math.Min(written.Length - 1, written.Length <= 5 ? 1 : written.Length <= 9 ? 2 : 3);

    /// <summary>How many letters to change, add, drop or swap with their neighbour to get from one word to the other.</summary>
    /// <remarks>Optimal string alignment distance (Damerau–Levenshtein with each pair swapped once).</remarks>
    public static int Slips(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        int[] beforeLast = new int[b.Length + 1], last = new int[b.Length + 1], row = new int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++)
            row[j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            (beforeLast, last, row) = (last, row, beforeLast);
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int change = last[j - 1] + (Same(a[i - 1], b[j - 1]) ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1]))
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
            }
        }
        return row[b.Length];
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
