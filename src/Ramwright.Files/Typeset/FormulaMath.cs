using System.Text;

namespace Ramwright.Files.Typeset;

/// <summary>
/// Sets the text of a formula as mathematics: MathML Core, fractions as fractions, roots as roots, what stands behind an
/// underscore as a subscript. The text follows the grammar that <see cref="Workings.Working"/> describes.
/// </summary>
public static class FormulaMath
{
    /// <summary>A formula with what it gives: <c>symbol = formula</c>.</summary>
    /// <exception cref="FormatException">The text does not follow the grammar.</exception>
    public static string Equation(string symbol, string formula) =>
        Math($"{FormulaSymbol.Set(symbol)}<mo>=</mo>{new Reader(formula).Whole()}", block: true);

    /// <summary>A formula alone.</summary>
    /// <exception cref="FormatException">The text does not follow the grammar.</exception>
    public static string Expression(string formula) => Math(new Reader(formula).Whole(), block: false);

    /// <summary>A symbol alone.</summary>
    public static string Symbol(string symbol) => Math(FormulaSymbol.Set(symbol), block: false);

    private static string Math(string inner, bool block) =>
        $"<math xmlns=\"http://www.w3.org/1998/Math/MathML\"{(block ? " display=\"block\"" : "")}><mrow>{inner}</mrow></math>";

    private const string Times = "<mo>\u2062</mo>";
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private sealed class Reader(string text)
    {
        private int _at;

        public string Whole()
        {
            string all = Sum();
            return Next == '\0' ? all : throw Wrong();
        }

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

        private FormatException Wrong() => new($"cannot set «{text}» from «{text[_at..]}» on");

        private string Sum()
        {
            var sum = new StringBuilder();
            if (Next is '-' or '−')
            {
                _at++;
                sum.Append("<mo>−</mo>");
            }

            sum.Append(Term());
            while (Next is '+' or '-' or '−')
            {
                sum.Append(text[_at++] == '+' ? "<mo>+</mo>" : "<mo>−</mo>");
                sum.Append(Term());
            }

            return sum.ToString();
        }

        // what stands before a / goes over the line as a whole, the one factor after it under the line
        private string Term()
        {
            (string product, string bare) = Factor();
            int factors = 1;
            while (true)
            {
                char c = Next;
                if (c == '/')
                {
                    _at++;
                    string under = Factor().Bare;
                    product = bare = $"<mfrac><mrow>{(factors == 1 ? bare : product)}</mrow><mrow>{under}</mrow></mfrac>";
                    factors = 1;
                }
                else if (c is '·' or '⋅' or '×' or '*')
                {
                    _at++;
                    product += "<mo>·</mo>" + Factor().Full;
                    factors++;
                }
                else if (char.IsLetterOrDigit(c) || c is '_' or '(' or '√' or '∛' or '½' or '¼' or '¾' or '.')
                {
                    product += Times + Factor().Full;
                    factors++;
                }
                else
                {
                    return product;
                }
            }
        }

        // Bare: the same without brackets, for where a bar or a root already holds it together
        private (string Full, string Bare) Factor()
        {
            (string full, string bare) = Atom();
            if (Next == '^')
            {
                _at++;
                string sign = "";
                if (Next is '-' or '−')
                {
                    _at++;
                    sign = "<mo>−</mo>";
                }

                string raised = $"<msup><mrow>{full}</mrow><mrow>{sign}{Atom().Bare}</mrow></msup>";
                return (raised, raised);
            }

            if (Here != '⁻' && !(Here != '\0' && Raised.Contains(Here)))
                return (full, bare);
            string power = "";
            if (Here == '⁻')
            {
                _at++;
                power = "<mo>−</mo>";
            }

            var digits = new StringBuilder();
            for (; Here != '\0' && Raised.IndexOf(Here) is var digit and >= 0; _at++)
                digits.Append(digit);
            if (digits.Length == 0)
                throw Wrong();
            string set = $"<msup><mrow>{full}</mrow><mrow>{power}<mn>{digits}</mn></mrow></msup>";
            return (set, set);
        }

        private (string Full, string Bare) Atom()
        {
            char c = Next;
            switch (c)
            {
                case '(':
                    _at++;
                    string inside = Sum();
                    Close();
                    return ($"<mo>(</mo>{inside}<mo>)</mo>", inside);
                case '√' or '∛':
                    _at++;
                    string under = Atom().Bare;
                    return Both(c == '√' ? $"<msqrt><mrow>{under}</mrow></msqrt>" : $"<mroot><mrow>{under}</mrow><mn>3</mn></mroot>");
                case '½' or '¼' or '¾':
                    _at++;
                    return Both($"<mfrac><mn>{(c == '¾' ? 3 : 1)}</mn><mn>{(c == '½' ? 2 : 4)}</mn></mfrac>");
            }

            if (char.IsAsciiDigit(c) || c == '.')
                return Both(Number());
            return char.IsLetter(c) || c == '_' ? Both(Named()) : throw Wrong();
        }

        private static (string, string) Both(string set) => (set, set);

        private string Number()
        {
            int start = _at;
            while (char.IsAsciiDigit(Here) || Here == '.')
                _at++;
            string number = text[start.._at];
            if (Here is 'e' or 'E' && _at + 1 < text.Length && (char.IsAsciiDigit(text[_at + 1]) || text[_at + 1] is '-' or '−' or '+'))
            {
                int e = ++_at;
                if (!char.IsAsciiDigit(Here))
                    _at++;
                while (char.IsAsciiDigit(Here))
                    _at++;
                string power = text[e.._at].Replace('-', '−').TrimStart('+');
                return $"<mn>{number}</mn><mo>·</mo><msup><mn>10</mn><mn>{power}</mn></msup>";
            }

            return $"<mn>{number}</mn>";
        }

        private string Named()
        {
            int start = _at;
            while (_at < text.Length && FormulaSymbol.Holds(text, _at))
                _at++;
            string name = text[start.._at];
            if (Next != '(' || !FormulaSymbol.IsFunction(name))
                return FormulaSymbol.Set(name);
            _at++;
            var inside = new StringBuilder(Sum());
            while (Next == ',')
            {
                _at++;
                inside.Append("<mo separator=\"true\">,</mo>").Append(Sum());
            }

            Close();
            return name switch
            {
                "abs" => $"<mrow><mo>|</mo>{inside}<mo>|</mo></mrow>",
                "sqrt" => $"<msqrt><mrow>{inside}</mrow></msqrt>",
                "cbrt" => $"<mroot><mrow>{inside}</mrow><mn>3</mn></mroot>",
                "exp" => $"<msup><mi mathvariant=\"normal\">e</mi><mrow>{inside}</mrow></msup>",
                _ => $"<mi>{name}</mi><mo>\u2061</mo><mrow><mo>(</mo>{inside}<mo>)</mo></mrow>",
            };
        }

        private void Close()
        {
            if (Next != ')')
                throw Wrong();
            _at++;
        }
    }
}
