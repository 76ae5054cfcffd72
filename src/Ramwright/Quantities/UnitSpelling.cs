using System.Text;

namespace Ramwright.Quantities;

/// <summary>How near what is written comes to one spelling of a unit.</summary>
internal enum Likeness
{
    /// <summary>Something else.</summary>
    None,
    /// <summary>The same but for a small or capital m as SI prefix, which makes it another unit: <c>mPa</c>, <c>MPa</c>.</summary>
    OtherPrefix,
    /// <summary>The same but for case.</summary>
    CaseAside,
    /// <summary>The same.</summary>
    Same,
}

/// <summary>Brings the many ways of writing one unit to one key.</summary>
internal static class UnitSpelling
{
    private const char Gap = '·';

    /// <summary>
    /// The unit with plain digits for raised ones, plain quotes for primes, <c>/</c> for the word <c>per</c>, and one
    /// <c>·</c> for blanks, dots, hyphens and brackets inside it: <c>N·m</c>, <c>N m</c> and <c>N-m</c> are all <c>N·m</c>.
    /// Case is kept.
    /// </summary>
    public static string Key(ReadOnlySpan<char> written)
    {
        var key = new StringBuilder(written.Length);
        bool gap = false;
        for (int i = 0; i < written.Length; i++)
        {
            char c = Plain(written[i]);
            if (c is 'p' or 'P' && IsPer(written, i))
            {
                c = '/';
                i += 2;
            }

            char last = key.Length > 0 ? key[^1] : '/';
            if (c == Gap)
            {
                gap = true;
            }
            else if (c == '\'' && last == '\'')
            {
                key[^1] = '"';
            }
            else if (c != '^' || i + 1 == written.Length || !IsPower(written[i + 1])) // cm^3 is cm3
            {
                if (gap && c != '/' && last is not ('/' or '°'))
                    key.Append(Gap);
                key.Append(c);
                gap = false;
            }
        }

        // 1440 1/min
        if (key.Length > 2 && key[0] == '1' && key[1] == '/')
            key.Remove(0, 1);
        return key.ToString();
    }

    /// <summary>Compares two keys. A gap in the known one may be left out of the other: <c>Nm</c>, <c>barg</c>; none may be added.</summary>
    public static Likeness Compare(string known, string written)
    {
        bool same = true, prefixOnly = true;
        int j = 0;
        for (int i = 0; i < known.Length; i++)
        {
            if (known[i] == Gap)
            {
                if (j < written.Length && written[j] == Gap)
                    j++;
                continue;
            }
            if (j == written.Length)
                return Likeness.None;
            if (known[i] != written[j])
            {
                if (char.ToLowerInvariant(known[i]) != char.ToLowerInvariant(written[j]))
                    return Likeness.None;
                same = false;
                prefixOnly &= IsPrefix(known, i);
            }
            j++;
        }
        return j < written.Length ? Likeness.None : same ? Likeness.Same : prefixOnly ? Likeness.OtherPrefix : Likeness.CaseAside;
    }

    private static bool IsPrefix(string key, int at)
    {
        if (key[at] is not ('m' or 'M') || (at > 0 && char.IsLetter(key[at - 1])))
            return false;
        int end = at;
        while (end < key.Length && char.IsLetter(key[end]))
            end++;
        return end - at <= 3 && key[at..end] is not ("min" or "mil");
    }

    private static bool IsPower(char c) => char.IsAsciiDigit(c) || c == '-';

    private static bool IsPer(ReadOnlySpan<char> s, int at) =>
        at + 3 < s.Length && (at == 0 || char.IsWhiteSpace(s[at - 1])) && char.IsWhiteSpace(s[at + 3])
        && s.Slice(at, 3).Equals("per", StringComparison.OrdinalIgnoreCase)
        && !s[(at + 4)..].TrimStart().StartsWith("cent", StringComparison.OrdinalIgnoreCase);

    /// <summary>The character that stands for this one in a key.</summary>
    private static char Plain(char c) => c switch
    {
        '.' or '·' or '⋅' or '•' or '*' or '-' or '‑' or '(' or ')' or '[' or ']' or '_' or '⁻' => Gap,
        '¹' => '1',
        '²' => '2',
        '³' => '3',
        '⁴' => '4',
        '⁶' => '6',
        '‘' or '’' or '′' or '´' => '\'',
        '“' or '”' or '″' => '"',
        'º' or '˚' => '°',
        'μ' => 'µ', // the Greek letter; the table uses the micro sign
        '×' => 'x',
        _ => char.IsWhiteSpace(c) ? Gap : c,
    };
}
