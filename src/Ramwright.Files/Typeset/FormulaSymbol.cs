using System.Text;

namespace Ramwright.Files.Typeset;

/// <summary>One symbol of a formula: <c>F_gives</c>, <c>A_vz</c>, <c>λ′_LT</c>.</summary>
internal static class FormulaSymbol
{
    private const string Lowered = "₀₁₂₃₄₅₆₇₈₉";

    private static readonly HashSet<string> Functions =
        ["min", "max", "abs", "sqrt", "cbrt", "sin", "cos", "tan", "asin", "acos", "atan", "sinh", "cosh", "tanh", "ln", "log10", "exp"];

    public static bool IsFunction(string name) => Functions.Contains(name);

    /// <summary>Whether the character at a place belongs to a symbol that began before it.</summary>
    public static bool Holds(string text, int at) =>
        char.IsLetterOrDigit(text[at]) && !"⁰¹²³⁴⁵⁶⁷⁸⁹".Contains(text[at]) || text[at] is '_' or '\'' or '′' or '″' || Lowered.Contains(text[at])
        || (text[at] == '.' && at > 0 && at + 1 < text.Length && char.IsAsciiDigit(text[at - 1]) && char.IsAsciiDigit(text[at + 1]));

    /// <summary>As MathML: the letter, its primes, its subscript upright.</summary>
    public static string Set(string symbol)
    {
        int under = symbol.IndexOf('_', 1 < symbol.Length ? 1 : 0);
        string head = under < 0 ? symbol : symbol[..under], foot = under < 0 ? "" : symbol[(under + 1)..];
        var letters = new StringBuilder();
        var primes = new StringBuilder();
        var low = new StringBuilder();
        foreach (char c in head)
        {
            if (c is '\'' or '′')
                primes.Append('′');
            else if (c == '″')
                primes.Append('″');
            else if (Lowered.IndexOf(c) is var digit and >= 0)
                low.Append(digit);
            else if (char.IsAsciiDigit(c) && letters.Length > 0)
                low.Append(c);
            else
                letters.Append(c);
        }

        low.Append(foot.Replace("_", " ", StringComparison.Ordinal));
        string set = $"<mi{(letters.Length > 1 ? "" : letters.Length == 1 && letters[0] is 'Δ' or 'π' ? " mathvariant=\"normal\"" : "")}>{letters}</mi>";
        string sub = low.Length == 0 ? "" : $"<mtext>{low}</mtext>", sup = primes.Length == 0 ? "" : $"<mo>{primes}</mo>";
        return (sub.Length > 0, sup.Length > 0) switch
        {
            (true, true) => $"<msubsup>{set}{sub}{sup}</msubsup>",
            (true, false) => $"<msub>{set}{sub}</msub>",
            (false, true) => $"<msup>{set}{sup}</msup>",
            _ => set,
        };
    }
}
