namespace Ramwright.Stock;

/// <summary>Finds the names a person may have meant.</summary>
public static class NearestNames
{
    /// <summary>The names nearest to what was written, nearest first; case, spaces and signs of multiplication do not count.</summary>
    /// <param name="written">What was written.</param>
    /// <param name="names">The names there are.</param>
    /// <param name="count">How many to offer at most.</param>
    public static IReadOnlyList<string> To(string written, IEnumerable<string> names, int count = 3)
    {
        ArgumentNullException.ThrowIfNull(written);
        string key = Shelf.Key(written);
        return [.. names
            .Distinct()
            .Select((name, order) => (name, order, distance: Distance(key, Shelf.Key(name))))
            .OrderBy(n => n.distance)
            .ThenBy(n => n.order)
            .Take(count)
            .Select(n => n.name)];
    }

    /// <summary>
    /// How many letters must be put in, left out, changed or swapped with their neighbour to make one text of the other.
    /// A changed digit counts less than a changed letter: HEB 165 is nearer to HEB 160 than to HEA 165.
    /// </summary>
    /// <remarks>Optimal string alignment, after Damerau (1964) and Levenshtein (1966).</remarks>
    public static double Distance(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        // Three rows of the table of distances are all that is ever looked at.
        int n = b.Length;
        Span<double> before = n < 100 ? stackalloc double[n + 1] : new double[n + 1];
        Span<double> above = n < 100 ? stackalloc double[n + 1] : new double[n + 1];
        Span<double> row = n < 100 ? stackalloc double[n + 1] : new double[n + 1];
        for (int j = 1; j <= n; j++)
            above[j] = above[j - 1] + Weight(b[j - 1]);

        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = above[0] + Weight(a[i - 1]);
            for (int j = 1; j <= n; j++)
            {
                double change = a[i - 1] == b[j - 1] ? 0 : Change(a[i - 1], b[j - 1]);
                row[j] = Math.Min(above[j - 1] + change, Math.Min(above[j] + Weight(a[i - 1]), row[j - 1] + Weight(b[j - 1])));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }

            Span<double> free = before;
            before = above;
            above = row;
            row = free;
        }

        return above[n];
    }

    // Digits are near one another, and 4 is nearer to 5 than to 9.
    private static double Change(char a, char b) =>
        char.IsAsciiDigit(a) && char.IsAsciiDigit(b) ? 0.4 + 0.04 * Math.Abs(a - b) : 1;

    private static double Weight(char c) => char.IsAsciiDigit(c) || c == '.' ? 0.8 : 1;
}
