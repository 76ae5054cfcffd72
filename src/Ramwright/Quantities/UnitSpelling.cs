using System.Text;

namespace Ramwright.Quantities;

/// <summary>Brings the many ways of writing one unit to one key.</summary>
internal static class UnitSpelling
{
    /// <summary>
    /// The unit without blanks, dots, hyphens and brackets, with plain digits for raised ones, plain quotes for primes and
    /// <c>/</c> for the word <c>per</c>: <c>N·m</c>, <c>N m</c> and <c>N-m</c> all give <c>Nm</c>. Case is kept.
    /// </summary>
    public static string Key(ReadOnlySpan<char> written)
    {
        var key = new StringBuilder(written.Length);
        for (int i = 0; i < written.Length; i++)
        {
            if (IsPer(written, i))
            {
                key.Append('/');
                i += 2;
                continue;
            }

            char c = Plain(written[i]);
            if (c == '\'' && key.Length > 0 && key[^1] == '\'')
                key[^1] = '"';
            else if (c != '\0')
                key.Append(c);
        }

        // 1440 1/min
        if (key.Length > 2 && key[0] == '1' && key[1] == '/')
            key.Remove(0, 1);
        return key.ToString();
    }

    /// <summary>Whether two keys, equal but for case, are the same but for an SI prefix m or M.</summary>
    public static bool OnlyPrefixDiffers(string known, string written)
    {
        for (int i = 0; i < known.Length; i++)
        {
            if (known[i] != written[i] && !IsPrefix(known, i))
                return false;
        }
        return true;
    }

    private static bool IsPrefix(string key, int at)
    {
        if (key[at] is not ('m' or 'M') || (at > 0 && char.IsLetter(key[at - 1])))
            return false;
        int end = at;
        while (end < key.Length && char.IsLetter(key[end]))
            end++;
        ReadOnlySpan<char> word = key.AsSpan(at, end - at);
        return word.Length <= 3 && !word.SequenceEqual("min") && !word.SequenceEqual("mil");
    }

    private static bool IsPer(ReadOnlySpan<char> s, int at) =>
        at + 3 < s.Length && (at == 0 || char.IsWhiteSpace(s[at - 1])) && char.IsWhiteSpace(s[at + 3])
        && s.Slice(at, 3).Equals("per", StringComparison.OrdinalIgnoreCase)
        && !s[(at + 4)..].TrimStart().StartsWith("cent", StringComparison.OrdinalIgnoreCase);

    /// <summary>The character that stands for this one in a key; NUL for one that does not count.</summary>
    private static char Plain(char c) => c switch
    {
        '.' or '·' or '⋅' or '•' or '*' or '-' or '‑' or '^' or '(' or ')' or '[' or ']' or '_' or '⁻' => '\0',
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
        _ => char.IsWhiteSpace(c) ? '\0' : c,
    };
}
