using System.Diagnostics.CodeAnalysis;

namespace Ramwright.Quantities;

/// <summary>Reads quantities as the trade writes them: <c>10,000 psi</c>, <c>1-1/4 in</c>, <c>1.25"</c>, <c>25 t</c>.</summary>
/// <remarks>
/// The decimal mark is the point; commas part thousands, in groups of exactly three, so that <c>1,500</c> is fifteen
/// hundred and <c>1,5</c> is refused. Case matters only where it tells units apart. What two people could read in two
/// ways is not read: a bare <c>ton</c>, <c>gal</c> or <c>gpm</c>, and air at a reference state (<c>scfm</c>, <c>Nl/min</c>).
/// Zero needs no unit, save as a temperature.
/// </remarks>
public static class QuantityText
{
    // Far outside anything built; keeps squares and cubes of what is read finite.
    private const double Largest = 1e30, Smallest = 1e-40;

    /// <summary>Reads one quantity.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="wanted">What it must measure.</param>
    /// <param name="quantity">The value, when it could be read.</param>
    /// <param name="fault">What is wrong, when it could not.</param>
    /// <param name="tape">What the person measures in, where that is known: the example of a fault is given in it.</param>
    /// <returns>Whether it could be read. The value is always finite.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="wanted"/> is not a dimension.</exception>
    public static bool TryRead(
        string text, Dimension wanted, out Quantity quantity, [NotNullWhen(false)] out ReadingFault? fault, UnitSystem tape = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(text);
        UnitTable units = Units.Table(wanted);
        quantity = default;
        fault = Read(text, wanted, units, out double si, out Unit? unit);
        if (fault is null)
            quantity = new Quantity(si == 0 ? 0 : si, unit!); // never -0
        else if (tape != UnitSystem.Metric)
            fault = ReadingFaults.On(tape, wanted, fault);
        return fault is null;
    }

    private static ReadingFault? Read(string text, Dimension wanted, UnitTable units, out double si, out Unit? unit)
    {
        si = 0;
        unit = null;
        int start = NumberText.SkipBlanks(text, 0);
        if (start == text.Length)
            return ReadingFaults.Empty(text, wanted);

        bool negative = NumberText.IsHyphen(text[start]);
        int at = negative || text[start] == '+' ? NumberText.SkipBlanks(text, start + 1) : start;
        if (NumberText.Read(text, ref at, wanted, out double value, out bool whole) is { } misread)
            return misread;

        int numberEnd = at, unitStart = NumberText.SkipBlanks(text, at);
        if (wanted == Dimension.Length && FeetAndInches.Starts(text, unitStart, out int inches))
        {
            if (FeetAndInches.Read(text, start, unitStart, whole, inches, ref value) is { } brokenFeet)
                return brokenFeet;
            units.Find("in", out unit, out _);
        }
        else if (UnitAfter(text, start, numberEnd, unitStart, value, wanted, units, out unit) is { } noUnit)
        {
            return noUnit;
        }

        si = unit!.ToSi(negative ? -value : value);
        if (!(Math.Abs(si) <= Largest))
            return ReadingFaults.TooLarge(text, start, numberEnd);
        if (value > 0 && (value < Smallest || (unit.Offset == 0 && Math.Abs(si) < Smallest)))
            return ReadingFaults.TooSmall(text, start, numberEnd);
        if (wanted == Dimension.Count && value != Math.Floor(value))
            return ReadingFaults.NotWhole(text, start, numberEnd);
        if (wanted == Dimension.Ratio && unit.Symbol.Length == 0 && !(si is >= 0 and <= 1))
            return ReadingFaults.NotAShare(text, start, numberEnd);
        return null;
    }

    private static ReadingFault? UnitAfter(
        string text, int start, int numberEnd, int unitStart, double value, Dimension wanted, UnitTable units, out Unit? unit)
    {
        int unitEnd = EndOfUnit(text, unitStart);
        int rest = NumberText.SkipBlanks(text, unitEnd);
        if (rest < text.Length)
        {
            unit = null;
            for (int i = rest; i < text.Length; i++)
            {
                if (NumberText.IsDigitOrFraction(text, i))
                    return ReadingFaults.TwoNumbers(text, start, Math.Max(numberEnd, unitEnd), i, wanted);
            }
            return ReadingFaults.Stray(text, rest, wanted);
        }

        if (unitEnd > unitStart)
            return UnitReading.Read(text, start, numberEnd, unitStart, unitEnd, wanted, units, out unit);
        if (units.Find("", out unit, out _) == UnitMatch.Found)
            return null;
        if (value == 0 && wanted != Dimension.Temperature)
        {
            unit = units.Units[0];
            return null;
        }
        return ReadingFaults.MissingUnit(text, start, numberEnd, wanted);
    }

    /// <summary>Behind the unit: letters and marks, and digits that belong to them as in <c>in3</c> or <c>min-1</c>.</summary>
    private static int EndOfUnit(string text, int start)
    {
        int i = NumberText.IsPerUnit(text, start) ? start + 1 : start, end = i;
        if (i < text.Length && text[i] is 'x' or 'X' or '×' && NumberText.IsDigitOrFraction(text, NumberText.SkipBlanks(text, i + 1)))
            return start; // 600 x 400 mm
        for (; i < text.Length; i++)
        {
            char c = text[i];
            bool belongs = char.IsLetter(c) || char.IsWhiteSpace(c) || IsUnitMark(c)
                || (i > start && char.IsAsciiDigit(c) && IsPowerAfter(text[i - 1]))
                || (i > start && c is '-' or '‑' or '⁻' && JoinsUnit(text, i));
            if (!belongs)
                break;
            if (!char.IsWhiteSpace(c))
                end = i + 1;
        }
        return end;
    }

    private static bool IsUnitMark(char c) => c is '/' or '·' or '⋅' or '•' or '*' or '×' or '.' or '^' or ':' or '_' or '%' or '‰'
        or '°' or 'º' or '˚' or '¹' or '²' or '³' or '⁴' or '⁶' or '(' or ')' or '[' or ']'
        or '\'' or '"' or '‘' or '’' or '′' or '´' or '“' or '”' or '″';

    private static bool IsPowerAfter(char before) =>
        char.IsLetter(before) || char.IsAsciiDigit(before) || before is '^' or '-' or '‑' or ':';

    /// <summary>A hyphen between letters, or before a lone power: <c>ft-lb</c>, <c>min-1</c>, <c>min^-1</c>.</summary>
    private static bool JoinsUnit(string text, int at)
    {
        if (at + 1 >= text.Length || !(char.IsLetter(text[at - 1]) || text[at - 1] == '^'))
            return false;
        return char.IsLetter(text[at + 1])
            || (text[at + 1] is '1' or '2' or '¹' or '²' && (at + 2 == text.Length || char.IsWhiteSpace(text[at + 2])));
    }
}
