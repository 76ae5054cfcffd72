using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace Ramwright.Power;

/// <summary>Checks at the door of this room: after them every number is finite and has the sign it needs.</summary>
internal static class Check
{
    public static void Above(double x, double least = 0, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x > least && double.IsFinite(x)))
            Refuse(name, x, $"a number above {least}");
    }

    public static void AtLeast(double x, double least = 0, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x >= least && double.IsFinite(x)))
            Refuse(name, x, $"a number not below {least}");
    }

    /// <summary>A share of one that something is divided by: above 0, at most 1.</summary>
    public static void Efficiency(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x > 0 && x <= 1))
            Refuse(name, x, "a share above 0, at most 1");
    }

    /// <summary>A share of one that is lost: 0 or more, below 1.</summary>
    public static void Loss(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x >= 0 && x < 1))
            Refuse(name, x, "a share from 0, below 1");
    }

    [DoesNotReturn]
    public static void Refuse(string name, double x, string wanted) =>
        throw new ArgumentOutOfRangeException(name, x, $"{name} must be {wanted}.");
}
