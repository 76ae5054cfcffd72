using System.Runtime.CompilerServices;

namespace Ramwright.Strength;

/// <summary>Turns away what a limit cannot be computed from; NaN and infinity included.</summary>
internal static class Check
{
    internal static double Positive(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x > 0) || double.IsInfinity(x))
            Refuse(name, x, "above zero");
        return x;
    }

    internal static double NotNegative(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x >= 0) || double.IsInfinity(x))
            Refuse(name, x, "zero or more");
        return x;
    }

    internal static double AtLeast(double least, double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!(x >= least) || double.IsInfinity(x))
            Refuse(name, x, $"{least} or more");
        return x;
    }

    internal static double Finite(double x, [CallerArgumentExpression(nameof(x))] string name = "")
    {
        if (!double.IsFinite(x))
            Refuse(name, x, "a finite number");
        return x;
    }

    internal static Frame.Actions Finite(Frame.Actions a, [CallerArgumentExpression(nameof(a))] string name = "")
    {
        Finite(a.N + a.Vy + a.Vz + a.T + a.My + a.Mz, name);
        return a;
    }

    internal static Geometry.Vector Finite(Geometry.Vector v, [CallerArgumentExpression(nameof(v))] string name = "")
    {
        Finite(v.X + v.Y + v.Z, name);
        return v;
    }

    private static void Refuse(string name, double x, string must) =>
        throw new ArgumentOutOfRangeException(name, x, $"must be {must}");
}
