using System.Globalization;

namespace Ramwright.Quantities;

/// <summary>Reads the number that a quantity begins with: <c>10,000</c>, <c>1.25</c>, <c>3/4</c>, <c>1-1/4</c>, <c>1½</c>.</summary>
internal static class NumberText
{
    /// <summary>Reads a number without sign.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where the number starts; moved behind it.</param>
    /// <param name="wanted">What the whole text must measure, for the words of a fault.</param>
    /// <param name="value">The number, finite and not below zero.</param>
    /// <param name="whole">Whether it was written as a whole number.</param>
    /// <returns>What is wrong, or null.</returns>
    public static ReadingFault? Read(string text, ref int at, Dimension wanted, out double value, out bool whole)
    {
        value = 0;
        whole = false;
        int start = at;
        if (Vulgar(text, at) is double alone)
        {
            value = alone;
            at++;
            return null;
        }

        int end = EndOfDecimal(text, start, out bool commas, out int points, out bool exponent);
        if (end == start)
            return ReadingFaults.NoNumber(text, start, wanted);
        if (points > 1)
            return ReadingFaults.TwoPoints(text, start, end);
        if (commas && !GroupsOfThree(text.AsSpan(start, end - start)))
            return ReadingFaults.DecimalComma(text, start, end);

        bool digitsOnly = points == 0 && !exponent;
        ReadOnlySpan<char> digits = text.AsSpan(start, end - start);
        if (!double.TryParse(commas ? WithoutGroups(digits) : digits,
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value)
            || !double.IsFinite(value))
        {
            return ReadingFaults.TooLarge(text, start, end);
        }
        if (value == 0 && HoldsMoreThanZeros(digits))
            return ReadingFaults.TooSmall(text, start, end);

        at = end;
        return ReadFraction(text, ref at, start, digitsOnly, digitsOnly && !commas, ref value, out whole);
    }

    /// <summary>What may follow: a fraction bar, or a fraction after the whole number.</summary>
    private static ReadingFault? ReadFraction(
        string text, ref int at, int start, bool digitsOnly, bool plain, ref double value, out bool whole)
    {
        whole = digitsOnly;
        int bar = SkipBlanks(text, at);
        if (bar < text.Length && IsBar(text[bar]) && IsDigit(text, SkipBlanks(text, bar + 1)))
        {
            int low = SkipBlanks(text, bar + 1), end = EndOfDigits(text, low);
            whole = false;
            if (!plain || IsDecimalMark(text, end))
                return ReadingFaults.FractionOfDecimals(text, start, IsDecimalMark(text, end) ? EndOfDecimal(text, low) : end);
            double under = Digits(text, low, end);
            if (under == 0)
                return ReadingFaults.DividedByZero(text, start, end);
            if (!double.IsFinite(under))
                return ReadingFaults.TooLarge(text, low, end);
            value /= under;
            at = end;
            return null;
        }

        // 1 1/4, 1-1/4, 1½, 1 ½, 1-½
        int second = SkipBlanks(text, at);
        if (second == at && at < text.Length && IsHyphen(text[at]))
            second++;
        if (Vulgar(text, second) is double part)
        {
            whole = false;
            if (!digitsOnly)
                return ReadingFaults.FractionOfDecimals(text, start, second + 1);
            value += part;
            at = second + 1;
            return null;
        }

        int over = EndOfDigits(text, second);
        if (second == at || over == second || over >= text.Length || !IsBar(text[over]) || !IsDigit(text, over + 1))
            return null;

        int last = EndOfDigits(text, over + 1);
        whole = false;
        if (!digitsOnly || IsDecimalMark(text, last))
            return ReadingFaults.FractionOfDecimals(text, start, IsDecimalMark(text, last) ? EndOfDecimal(text, over + 1) : last);
        double upper = Digits(text, second, over), lower = Digits(text, over + 1, last);
        if (lower == 0)
            return ReadingFaults.DividedByZero(text, second, last);
        if (!(upper < lower))
            return ReadingFaults.TopHeavy(text, second, last);
        value += upper / lower;
        at = last;
        return null;
    }

    /// <summary>Behind digits, points, commas before digits, and blanks of a typesetter between groups of three.</summary>
    private static int EndOfDecimal(string text, int start, out bool commas, out int points, out bool exponent)
    {
        commas = exponent = false;
        points = 0;
        bool any = false;
        int i = start;
        for (; i < text.Length; i++)
        {
            char c = text[i];
            if (char.IsAsciiDigit(c))
            {
                any = true;
            }
            else if (c == ',' && IsDigit(text, i + 1))
            {
                commas = true;
            }
            else if (c is '\u00A0' or '\u2009' or '\u202F' && any && IsGroup(text, i + 1))
            {
                commas = true;
            }
            else if (c == '.' && (any || IsDigit(text, i + 1)) && !(points > 0 && !IsDigit(text, i + 1)))
            {
                points++;
            }
            else
            {
                break;
            }
        }

        if (any && i < text.Length && text[i] is 'e' or 'E')
        {
            int e = i + 1;
            if (e < text.Length && text[e] is '+' or '-')
                e++;
            if (IsDigit(text, e))
            {
                exponent = true;
                i = EndOfDigits(text, e);
            }
        }
        return i;
    }

    private static int EndOfDecimal(string text, int start) => EndOfDecimal(text, start, out _, out _, out _);

    private static bool IsGroup(string text, int at) => EndOfDigits(text, at) == at + 3;

    /// <summary>1,500 and 10,000.5 but not 1,5 or 0,500 or 1,50,000: what is not surely thousands is not read.</summary>
    private static bool GroupsOfThree(ReadOnlySpan<char> number)
    {
        int i = 0;
        while (i < number.Length && char.IsAsciiDigit(number[i]))
            i++;
        if (i is 0 or > 3 || number[0] == '0')
            return false;

        char mark = i < number.Length ? number[i] : '.';
        while (i < number.Length && number[i] == mark && mark is not ('.' or 'e' or 'E'))
        {
            if (i + 3 >= number.Length
                || !char.IsAsciiDigit(number[i + 1]) || !char.IsAsciiDigit(number[i + 2]) || !char.IsAsciiDigit(number[i + 3]))
            {
                return false;
            }
            i += 4;
        }
        if (i < number.Length && number[i] is not ('.' or 'e' or 'E'))
            return false;
        for (; i < number.Length; i++)
        {
            if (number[i] == ',')
                return false;
        }
        return true;
    }

    private static string WithoutGroups(ReadOnlySpan<char> number)
    {
        char[] kept = new char[number.Length];
        int n = 0;
        foreach (char c in number)
        {
            if (c is not (',' or '\u00A0' or '\u2009' or '\u202F'))
                kept[n++] = c;
        }
        return new string(kept, 0, n);
    }

    private static bool HoldsMoreThanZeros(ReadOnlySpan<char> number)
    {
        int end = number.IndexOfAny('e', 'E');
        return (end < 0 ? number : number[..end]).IndexOfAnyInRange('1', '9') >= 0;
    }

    private static double? Vulgar(string text, int at) => at >= text.Length ? null : text[at] switch
    {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅓' => 1.0 / 3,
        '⅔' => 2.0 / 3,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => null,
    };

    /// <summary>Whether a digit or fraction sign stands there.</summary>
    public static bool IsDigitOrFraction(string text, int at) => IsDigit(text, at) || Vulgar(text, at) is not null;

    /// <summary>Whether <c>1/min</c> and the like stand there: a unit, though it begins with a digit.</summary>
    public static bool IsPerUnit(string text, int at) =>
        at + 2 < text.Length && text[at] == '1' && text[at + 1] == '/' && char.IsLetter(text[at + 2]);

    public static bool IsHyphen(char c) => c is '-' or '‑' or '–' or '−';

    private static bool IsBar(char c) => c is '/' or '⁄' or '∕';

    private static bool IsDigit(string text, int at) => at < text.Length && char.IsAsciiDigit(text[at]);

    private static bool IsDecimalMark(string text, int at) => at < text.Length && text[at] is '.' or ',' && IsDigit(text, at + 1);

    private static int EndOfDigits(string text, int at)
    {
        while (IsDigit(text, at))
            at++;
        return at;
    }

    public static int SkipBlanks(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
            at++;
        return at;
    }

    private static double Digits(string text, int start, int end) =>
        double.Parse(text.AsSpan(start, end - start), NumberStyles.None, CultureInfo.InvariantCulture);
}
