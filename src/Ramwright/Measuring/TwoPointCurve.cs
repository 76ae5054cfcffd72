namespace Ramwright.Measuring;

/// <summary>A family of curves of which two points choose one.</summary>
/// <param name="Value">Height at a place for the two parameters.</param>
/// <param name="Through">The parameters of the curve through two points; null where none goes through both.</param>
public sealed record TwoPointCurve(Func<double, double, double, double> Value, Func<double, double, double, double, (double P, double Q)?> Through)
{
    /// <summary>A straight line: intercept and slope.</summary>
    public static readonly TwoPointCurve Line = new(
        (x, a, b) => a + b * x,
        (x1, y1, x2, y2) => x1 == x2 ? null : (y1 - x1 * (y2 - y1) / (x2 - x1), (y2 - y1) / (x2 - x1)));

    /// <summary>A curve that falls from its free height to nothing: Q_0 (1 − x/end)^m. Parameters Q_0 and m.</summary>
    /// <param name="end">Where it ends, above zero.</param>
    public static TwoPointCurve Falling(double end) => new(
        (x, q, m) => x >= end ? 0 : q * Math.Pow(1 - x / end, m),
        (x1, y1, x2, y2) =>
        {
            if (!(y1 > 0 && y2 > 0 && x1 < end && x2 < end) || x1 == x2)
                return null;
            double m = Math.Log(y1 / y2) / Math.Log((1 - x1 / end) / (1 - x2 / end));
            return m is > 0 and < 20 ? (y1 / Math.Pow(1 - x1 / end, m), m) : null;
        });
}
