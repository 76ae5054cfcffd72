using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace Ramwright.Stock;

/// <summary>Refuses dimensions that no section can have; NaN and infinity among them.</summary>
internal static class DimensionCheck
{
    /// <summary>The value, which must lie above a bound.</summary>
    public static double Above(double bound, double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > bound) || !double.IsFinite(value))
            Refuse(name, value, $"more than {Mm(bound)}");
        return value;
    }

    /// <summary>The value, which must lie above one bound and below another.</summary>
    public static double Between(double above, double value, double below, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > above && value < below))
            Refuse(name, value, $"more than {Mm(above)} and less than {Mm(below)}");
        return value;
    }

    /// <summary>The value, which may be as small as one bound and must lie below another.</summary>
    public static double From(double bound, double value, double below, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value >= bound && value < below))
            Refuse(name, value, $"{Mm(bound)} or more and less than {Mm(below)}");
        return value;
    }

    /// <summary>The value, which may be as small as one bound and as great as another.</summary>
    public static double UpTo(double bound, double value, double most, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value >= bound && value <= most))
            Refuse(name, value, $"{Mm(bound)} or more and no more than {Mm(most)}");
        return value;
    }

    [DoesNotReturn]
    private static void Refuse(string name, double value, string wanted) =>
        throw new ArgumentOutOfRangeException(name, value, $"{name} is {Mm(value)}; it must be {wanted}.");

    private static string Mm(double m) => (m * 1000).ToString("0.###", CultureInfo.InvariantCulture) + " mm";
}
