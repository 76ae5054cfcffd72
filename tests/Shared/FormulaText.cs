using System.Globalization;
using Ramwright.Workings;

namespace Ramwright.Tests;

/// <summary>Computes a formula from its own text, so that the text a person reads cannot drift from the code beside it.</summary>
/// <remarks>
/// Sums of terms; terms of factors joined by a space, by brackets standing side by side, by <c>· × *</c> or by <c>/</c>,
/// left to right. What two readers could read in two ways is refused: a product by space straight after a division
/// (<c>a / b c</c>), two numbers side by side, a power on a root or on a power, a sign straight after another.
/// </remarks>
public static class FormulaText
{
    /// <summary>The value of a formula.</summary>
    /// <param name="formula">Its text, without the <c>=</c> and what stands left of it.</param>
    /// <param name="givens">The numbers that its symbols stand for.</param>
    /// <exception cref="FormatException">The text does not follow the grammar, or names a symbol that is not given.</exception>
    /// <exception cref="ArithmeticException">The value is not a finite number.</exception>
    public static double Evaluate(string formula, params IReadOnlyList<Given> givens) => Evaluate(formula, givens, new HashSet<string>());

    /// <summary>As above, and adds the symbols that the formula really uses to <paramref name="used"/>.</summary>
    public static double Evaluate(string formula, IReadOnlyList<Given> givens, ISet<string> used)
    {
        var values = new Dictionary<string, double>();
        foreach (Given given in givens)
        {
            if (!IsSymbol(given.Symbol) || given.Symbol == "π" || Functions.ContainsKey(given.Symbol))
                throw new FormatException($"«{given.Symbol}» cannot be the symbol of a given");
            if (!values.TryAdd(given.Symbol, given.Si))
                throw new FormatException($"«{given.Symbol}» is given twice");
        }

        double value = new Reader(formula, values, used).Whole();
        return double.IsFinite(value) ? value : throw new ArithmeticException($"«{formula}» comes to {value}");
    }

    private static readonly Dictionary<string, Func<double, double>?> Functions = new()
    {
        ["min"] = null,
        ["max"] = null, // of two or more
        ["abs"] = Math.Abs,
        ["sqrt"] = Math.Sqrt,
        ["cbrt"] = Math.Cbrt,
        ["sin"] = Math.Sin,
        ["cos"] = Math.Cos,
        ["tan"] = Math.Tan,
        ["asin"] = Math.Asin,
        ["acos"] = Math.Acos,
        ["atan"] = Math.Atan,
        ["sinh"] = Math.Sinh,
        ["cosh"] = Math.Cosh,
        ["tanh"] = Math.Tanh,
        ["ln"] = Math.Log,
        ["log10"] = Math.Log10,
        ["exp"] = Math.Exp,
    };

    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private static bool StartsSymbol(char c) => char.IsLetter(c) || c == '_';

    private static bool InSymbol(string s, int at) =>
        StartsSymbol(s[at]) || char.IsAsciiDigit(s[at]) || s[at] is '\'' or '′' or '″' or (>= '₀' and <= '₉')
        || (s[at] == '.' && at > 0 && at + 1 < s.Length && char.IsAsciiDigit(s[at - 1]) && char.IsAsciiDigit(s[at + 1])); // R_p0.2

    private static bool IsSymbol(string s)
    {
        if (s.Length == 0 || !StartsSymbol(s[0]))
            return false;
        for (int i = 1; i < s.Length; i++)
        {
            if (!InSymbol(s, i))
                return false;
        }
        return true;
    }

    private sealed class Reader(string text, Dictionary<string, double> values, ISet<string> used)
    {
        private int _at;

        public double Whole()
        {
            double value = Sum();
            return Next == '\0' ? value : throw Wrong($"did not expect «{Next}»");
        }

        /// <summary>The next character that is not blank; NUL at the end.</summary>
        private char Next
        {
            get
            {
                while (_at < text.Length && char.IsWhiteSpace(text[_at]))
                    _at++;
                return _at < text.Length ? text[_at] : '\0';
            }
        }

        private char Here => _at < text.Length ? text[_at] : '\0';

        private FormatException Wrong(string what) => new($"{what}, at {_at} of «{text}»");

        private static bool IsMinus(char c) => c is '-' or '−';

        // sum = ["−"] term { ("+" | "−") term }
        private double Sum()
        {
            bool negative = IsMinus(Next);
            if (negative)
                _at++;
            double sum = negative ? -Term() : Term();
            while (Next == '+' || IsMinus(Next))
            {
                bool minus = text[_at++] != '+';
                double term = Term();
                sum = minus ? sum - term : sum + term;
            }
            return sum;
        }

        // term = factor { ["·" | "/"] factor }
        private double Term()
        {
            double product = Factor(out bool number);
            bool divided = false;
            while (true)
            {
                char c = Next;
                if (c is '·' or '⋅' or '×' or '*' or '/')
                {
                    _at++;
                    divided = c == '/';
                    double factor = Factor(out number);
                    product = divided ? product / factor : product * factor;
                }
                else if (StartsFactor(c))
                {
                    if (divided)
                        throw Wrong("a product by space after a division reads in two ways: put brackets, or write ·");
                    bool wasNumber = number;
                    double factor = Factor(out number);
                    if (wasNumber && number)
                        throw Wrong("two numbers side by side");
                    product *= factor;
                }
                else
                {
                    return product;
                }
            }
        }

        private static bool StartsFactor(char c) =>
            StartsSymbol(c) || char.IsAsciiDigit(c) || c is '(' or '√' or '∛' or '½' or '¼' or '¾' or '.';

        // factor = atom [ "^" exponent | superscripts ]
        private double Factor(out bool number)
        {
            char first = Next;
            double value = Atom();
            number = char.IsAsciiDigit(first) || first is '.' or '½' or '¼' or '¾';
            if (Next == '^' || Raised.Contains(Here) || Here == '⁻')
            {
                if (first is '√' or '∛')
                    throw Wrong("a power on a root reads in two ways: put brackets");
                value = Math.Pow(value, Exponent());
                if (Next == '^' || Raised.Contains(Here) || Here == '⁻')
                    throw Wrong("a power on a power reads in two ways: put brackets");
            }
            return value;
        }

        private double Exponent()
        {
            bool negative;
            if (Here == '^')
            {
                _at++;
                negative = IsMinus(Next);
                if (negative)
                    _at++;
                double power = Atom();
                return negative ? -power : power;
            }

            negative = Here == '⁻';
            if (negative)
                _at++;
            int start = _at, whole = 0;
            for (int digit; Here != '\0' && (digit = Raised.IndexOf(Here)) >= 0; _at++)
                whole = whole * 10 + digit;
            if (_at == start)
                throw Wrong("a raised minus without a raised number");
            return negative ? -whole : whole;
        }

        private double Atom()
        {
            char c = Next;
            switch (c)
            {
                case '(':
                    return Bracketed(out _)[0];
                case '√' or '∛':
                    _at++;
                    double under = Here is '√' or '∛' ? throw Wrong("a root on a root: put brackets") : Atom();
                    return c == '√' ? Math.Sqrt(under) : Math.Cbrt(under);
                case '½' or '¼' or '¾':
                    _at++;
                    return c == '½' ? 0.5 : c == '¼' ? 0.25 : 0.75;
                case '\0':
                    throw Wrong("a number or symbol is missing");
            }
            if (char.IsAsciiDigit(c) || c == '.')
                return Number();
            if (StartsSymbol(c))
                return Named();
            throw Wrong(c == '=' ? "only what stands right of the = belongs here" : $"did not expect «{c}»");
        }

        private double Number()
        {
            int start = _at;
            while (char.IsAsciiDigit(Here) || Here == '.')
                _at++;
            if (Here is 'e' or 'E')
            {
                int e = _at + 1;
                if (e < text.Length && (text[e] == '+' || IsMinus(text[e])))
                    e++;
                if (e < text.Length && char.IsAsciiDigit(text[e]))
                {
                    for (_at = e; char.IsAsciiDigit(Here);)
                        _at++;
                }
            }
            string number = text[start.._at].Replace('−', '-');
            return double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
                ? value : throw Wrong($"«{number}» is no number");
        }

        private double Named()
        {
            int start = _at;
            while (_at < text.Length && InSymbol(text, _at))
                _at++;
            string name = text[start.._at];
            if (values.TryGetValue(name, out double value))
            {
                used.Add(name);
                return value;
            }
            if (name == "π")
                return Math.PI;
            if (!Functions.TryGetValue(name, out Func<double, double>? function))
                throw Wrong($"«{name}» is not given");

            if (Next != '(')
                throw Wrong($"{name} wants its argument in brackets");
            List<double> arguments = Bracketed(out bool several, list: true);
            if (function is null)
                return !several ? throw Wrong($"{name} wants two or more") : name == "min" ? arguments.Min() : arguments.Max();
            return several ? throw Wrong($"{name} wants one argument") : function(arguments[0]);
        }

        private List<double> Bracketed(out bool several, bool list = false)
        {
            _at++; // the opening bracket
            List<double> inside = [Sum()];
            while (list && Next == ',')
            {
                _at++;
                inside.Add(Sum());
            }
            if (Next != ')')
                throw Wrong(Next == '\0' ? "a closing bracket is missing" : $"did not expect «{Next}»");
            _at++;
            several = inside.Count > 1;
            return inside;
        }
    }
}
