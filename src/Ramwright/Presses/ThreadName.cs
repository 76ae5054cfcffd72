using System.Globalization;

namespace Ramwright.Presses;

/// <summary>What can be told of a metric thread from its name alone.</summary>
internal static class ThreadName
{
    /// <summary>Major diameter, m, of <c>M24</c> or <c>M24x2</c>; null for any other name.</summary>
    public static double? Diameter(string name)
    {
        ReadOnlySpan<char> text = name.AsSpan().Trim();
        if (text.Length < 2 || text[0] is not ('M' or 'm'))
            return null;
        text = text[1..];
        int end = text.IndexOfAny('x', 'X', '×');
        if (end >= 0)
            text = text[..end];
        return double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite,
            CultureInfo.InvariantCulture, out double mm) && mm is > 0 and < 1000
            ? mm / 1000
            : null;
    }
}
