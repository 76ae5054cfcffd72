namespace Ramwright.Frame;

/// <summary>
/// How far an end spring gives under one newton (or newton metre): the ratio Num/Den, so that a joint that is let go
/// (Den = 0) and one that is rigid (Num = 0) go through the same formulas as a spring, without a limit to take.
/// </summary>
internal readonly record struct Give(double Num, double Den)
{
    public static Give Of(double stiffness) =>
        double.IsPositiveInfinity(stiffness) ? new Give(0, 1)
        : stiffness > 1 ? new Give(1 / stiffness, 1)
        : new Give(1, stiffness);

    /// <summary>Stiffer than another, or as stiff.</summary>
    public bool IsStifferThan(Give other) => Num * other.Den <= other.Num * Den;

    /// <summary>Movement under a force; the spring must hold.</summary>
    public double Under(double force) => force * Num / Den;
}
