namespace Ramwright.Quantities;

/// <summary>The second half of <c>5' 3-1/2"</c>, <c>5 ft 3 in</c> and <c>5'-3"</c>.</summary>
internal static class FeetAndInches
{
    private static readonly string[] Feet = ["feet", "foot", "ft", "'", "’", "′"];

    /// <summary>Whether feet stand there with a further number behind them.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where the unit starts.</param>
    /// <param name="inches">Where the further number starts.</param>
    public static bool Starts(string text, int at, out int inches)
    {
        inches = 0;
        if (at >= text.Length || text[at] is not ('f' or 'F' or '\'' or '’' or '′'))
            return false;
        foreach (string mark in Feet)
        {
            if (string.Compare(text, at, mark, 0, mark.Length, StringComparison.OrdinalIgnoreCase) != 0)
                continue;
            int i = at + mark.Length;
            if (i < text.Length && text[i] == '.')
                i++;
            i = NumberText.SkipBlanks(text, i);
            if (i < text.Length && NumberText.IsHyphen(text[i]))
                i = NumberText.SkipBlanks(text, i + 1);
            inches = i;
            // ft3 and ft2 are units of their own; so is 5''.
            bool power = i == at + mark.Length && mark[0] == 'f' && i + 1 == text.Length;
            return NumberText.IsDigitOrFraction(text, i) && !power;
        }
        return false;
    }

    /// <summary>Adds the inches and turns the value to inches.</summary>
    public static ReadingFault? Read(string text, int start, int unitStart, bool whole, int inches, ref double value)
    {
        if (!whole)
            return ReadingFaults.BrokenFeet(text, start, unitStart);
        int at = inches;
        if (NumberText.Read(text, ref at, Dimension.Length, out double more, out _) is { } misread)
            return misread;

        int markStart = NumberText.SkipBlanks(text, at);
        ReadOnlySpan<char> mark = text.AsSpan(markStart).TrimEnd();
        if (mark.IsEmpty)
            return ReadingFaults.MissingInchMark(text, inches, at);
        if (Units.Table(Dimension.Length).Find(UnitSpelling.Key(mark), out Unit? unit, out _) != UnitMatch.Found || unit!.Symbol != "in")
            return ReadingFaults.TwoNumbers(text, start, inches, inches, Dimension.Length);
        if (!(more < 12))
            return ReadingFaults.TooManyInches(text, inches, at);
        value = 12 * value + more;
        return null;
    }
}
