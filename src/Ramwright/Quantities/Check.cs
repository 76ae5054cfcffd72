using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace Ramwright.Quantities;

/// <summary>Checks at the door of a room: after them a number is finite and has the sign it needs.</summary>
internal static class Check
{
    public static double Positive(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x > 0) || double.IsInfinity(x))
            Refuse(name, x, "above zero");
        return x;
    }

    public static double NotNegative(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x >= 0) || double.IsInfinity(x))
            Refuse(name, x, "zero or more");
        return x;
    }

    public static double AtLeast(double x, double least, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x >= least) || double.IsInfinity(x))
            Refuse(name, x, $"{least} or more");
        return x;
    }

    public static double Above(double x, double least, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x > least) || double.IsInfinity(x))
            Refuse(name, x, $"above {least}");
        return x;
    }

    /// <summary>A share of one that something is divided by: above 0, at most 1.</summary>
    public static double Efficiency(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x > 0 && x <= 1))
            Refuse(name, x, "a share above 0, at most 1");
        return x;
    }

    /// <summary>A share of one that is lost: 0 or more, below 1.</summary>
    public static double Loss(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x >= 0 && x < 1))
            Refuse(name, x, "a share from 0, below 1");
        return x;
    }

    public static double Finite(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!double.IsFinite(x))
            Refuse(name, x, "a finite number");
        return x;
    }

    [DoesNotReturn]
    public static void Refuse(string name, double x, string must) =>
        throw new ArgumentOutOfRangeException(name, x, $"{name} must be {must}.");
}
