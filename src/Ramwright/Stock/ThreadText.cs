using System.Globalization;
using System.Text.RegularExpressions;

namespace Ramwright.Stock;

/// <summary>What the name of a thread says by itself.</summary>
/// <param name="Form">Its family.</param>
/// <param name="D">Major diameter, m.</param>
/// <param name="P">Pitch, m; null where the name leaves it to the series.</param>
/// <param name="Series"><c>UNC</c>, <c>UNF</c>, <c>UN</c>, or empty.</param>
/// <param name="Size">The size as it is written in names: <c>1-1/4</c>, <c>M24</c>.</param>
public readonly record struct ThreadCall(ThreadForm Form, double D, double? P, string Series, string Size);

/// <summary>
/// Reads how the trade calls threads: <c>M24</c>, <c>M36x2</c>, <c>3/4-10 UNC</c>, <c>3/4 UNC</c>, <c>1 in UNF</c>, <c>1-1/4-8 UN</c>.
/// </summary>
/// <remarks>An inch size needs its threads per inch or its series; numbered screws, #10 and the like, are not read.</remarks>
public static partial class ThreadText
{
    private const double Inch = 0.0254, ThickestInches = 6, FinestShare = 1.0 / 50;

    /// <summary>Reads a thread's name; false where it is none.</summary>
    public static bool TryRead(string name, out ThreadCall call)
    {
        ArgumentNullException.ThrowIfNull(name);
        Match m = MetricName().Match(name);
        if (m.Success)
        {
            double d = Number(m.Groups["d"].Value) / 1000;
            double? p = m.Groups["p"].Success ? Number(m.Groups["p"].Value) / 1000 : null;
            call = new ThreadCall(ThreadForm.Metric, Math.Round(d, 9), p is { } pitch ? Math.Round(pitch, 9) : null, "", $"M{m.Groups["d"].Value}");
            return d is > 0 and < 1;
        }

        m = InchName().Match(name);
        Group perInch = m.Groups["tpi"], series = m.Groups["series"];
        call = default;
        if (!m.Success || !(perInch.Success || series.Success) || !TryInches(m, out double inches) || !(inches is > 0 and <= ThickestInches))
            return false;
        double? turn = perInch.Success ? Inch / Number(perInch.Value) : null;
        // 6-32 is a number six screw, not one of six inches
        if (turn is { } one && !(one > FinestShare * inches * Inch && double.IsFinite(one)))
            return false;
        string size = $"{m.Groups["whole"].Value}-{m.Groups["part"].Value}".Trim('-');
        call = new ThreadCall(ThreadForm.Unified, Math.Round(inches * Inch, 9), turn, series.Value.ToUpperInvariant(), size);
        return true;
    }

    private static bool TryInches(Match m, out double inches)
    {
        string whole = m.Groups["whole"].Value, part = m.Groups["part"].Value;
        inches = whole.Length > 0 ? Number(whole) : 0;
        if (part.Length == 0)
            return true;
        string[] over = part.Split('/');
        double below = Number(over[1]);
        inches += Number(over[0]) / below;
        return below > 0;
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s*M\s*(?<d>[0-9]+(\.[0-9]+)?)\s*([x×*]\s*(?<p>[0-9]+(\.[0-9]+)?))?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex MetricName();

    [GeneratedRegex(
        @"^\s*((?<whole>[0-9]+)[\s-]+(?<part>[0-9]+/[0-9]+)|(?<part>[0-9]+/[0-9]+)|(?<whole>[0-9]+(\.[0-9]+)?))"
        + @"\s*(""|″|in\.?|inch(es)?)?[\s-]*((?<tpi>[0-9]+(\.[0-9]+)?)\s*(tpi)?)?[\s-]*(?<series>UNC|UNF|UN)?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex InchName();
}
