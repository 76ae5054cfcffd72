using System.Text;

namespace Ramwright.Quantities;

/// <summary>Finds the words that somebody most likely meant: units, keys, names of stock.</summary>
/// <remarks>Case, spaces, dashes and underscores do not count, and × and * are x.</remarks>
public static class NearestWord
{
    private const int LongestWord = 60;

    /// <summary>The nearest of <paramref name="words"/>, or null where none is near enough to be meant.</summary>
    /// <remarks>
    /// One slip is allowed in a word of up to five letters, and one more for each further three. A part of the name is often
    /// all that is written, 46 for VG 46, 2SN for EN 853 2SN, stall for stall-pressure: an ending, or whole words at the
    /// beginning, count as one slip. Ranked holds a word against each word of a name as well.
    /// </remarks>
    public static string? Among(string written, IEnumerable<string> words)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(words);
        string key = Key(written);
        if (key.Length is 0 or > LongestWord)
            return null;

        string? nearest = null;
        double least = double.PositiveInfinity;
        foreach (string word in words)
        {
            string other = Key(word);
            bool ending = key.Length > 1 && other.Length > key.Length && other.EndsWith(key, StringComparison.Ordinal);
            double slips = ending || Begins(key, word) ? 1 : Between(key, other);
            int shorter = Math.Min(key.Length, other.Length);
            if (slips < least && slips < shorter && slips <= Math.Max(1, shorter / 3))
                (nearest, least) = (word, slips);
        }

        return nearest;
    }

    /// <summary>The nearest of <paramref name="words"/>, nearest first, however far they are.</summary>
    /// <param name="written">What was written.</param>
    /// <param name="words">The words there are.</param>
    /// <param name="count">How many to offer at most.</param>
    public static IReadOnlyList<string> Ranked(string written, IEnumerable<string> words, int count = 3)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(words);
        string key = Key(written);
        return [.. words
            .Distinct()
            .Select((word, order) => (word, order, slips: Closest(key, word)))
            .OrderBy(w => w.slips)
            .ThenBy(w => w.order)
            .Take(count)
            .Select(w => w.word)];
    }

    /// <summary>Whether the first words of a name are what was written.</summary>
    private static bool Begins(string key, string word)
    {
        for (int i = 1; key.Length > 2 && i < word.Length; i++)
        {
            if (word[i] is ' ' or '-' or '_' && Key(word[..i]) == key)
                return true;
        }

        return false;
    }

    /// <summary>Slips to a name, or to one of its words where that is nearer.</summary>
    private static double Closest(string key, string word)
    {
        double whole = Between(key, Key(word));
        string[] parts = word.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return parts.Length < 2 ? whole : Math.Min(whole, 0.5 + parts.Min(p => Between(key, Key(p))));
    }

    /// <summary>
    /// How many letters to change, add, drop or swap with their neighbour to get from one word to the other. A changed
    /// digit counts less than a changed letter: HEB 165 is nearer to HEB 160 than to HEA 165.
    /// </summary>
    /// <remarks>Optimal string alignment distance (Damerau–Levenshtein with each pair swapped once).</remarks>
    public static double Slips(string a, string b) => Between(Key(a), Key(b));

    private static double Between(string a, string b)
    {
        // Three rows of the table of distances are all that is ever looked at.
        int n = b.Length;
        Span<double> beforeLast = n < 100 ? stackalloc double[n + 1] : new double[n + 1];
        Span<double> last = n < 100 ? stackalloc double[n + 1] : new double[n + 1];
        Span<double> row = n < 100 ? stackalloc double[n + 1] : new double[n + 1];
        for (int j = 1; j <= n; j++)
            last[j] = last[j - 1] + Weight(b[j - 1]);

        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = last[0] + Weight(a[i - 1]);
            for (int j = 1; j <= n; j++)
            {
                double change = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : Change(a[i - 1], b[j - 1]));
                row[j] = Math.Min(change, Math.Min(last[j] + Weight(a[i - 1]), row[j - 1] + Weight(b[j - 1])));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
            }

            Span<double> free = beforeLast;
            beforeLast = last;
            last = row;
            row = free;
        }

        return last[n];
    }

    // Digits are near one another, and 4 is nearer to 5 than to 9.
    private static double Change(char a, char b) =>
        char.IsAsciiDigit(a) && char.IsAsciiDigit(b) ? 0.4 + 0.04 * Math.Abs(a - b) : 1;

    private static double Weight(char c) => char.IsAsciiDigit(c) || c == '.' ? 0.8 : 1;

    private static string Key(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var key = new StringBuilder(word.Length);
        foreach (char c in word)
        {
            if (!char.IsWhiteSpace(c) && c is not ('-' or '_'))
                key.Append(c is '×' or '*' ? 'x' : char.ToLowerInvariant(c));
        }

        return key.ToString();
    }
}
