namespace Ramwright.Solids;

/// <summary>Stress at a point, Pa, along the press's axes.</summary>
/// <param name="XX">Across.</param>
/// <param name="YY">From front to back.</param>
/// <param name="ZZ">Up.</param>
/// <param name="XY">Shear.</param>
/// <param name="XZ">Shear.</param>
/// <param name="YZ">Shear.</param>
public readonly record struct StressState(double XX, double YY, double ZZ, double XY, double XZ, double YZ)
{
    /// <summary>Equivalent stress of von Mises.</summary>
    public double Equivalent => Math.Sqrt(0.5 * ((XX - YY) * (XX - YY) + (YY - ZZ) * (YY - ZZ) + (ZZ - XX) * (ZZ - XX)) + 3 * (XY * XY + XZ * XZ + YZ * YZ));

    /// <summary>Normal stress along an axis, 0 to 2.</summary>
    public double Along(int axis) => axis switch { 0 => XX, 1 => YY, _ => ZZ };

    /// <summary>The principal stress of greatest size, with its sign.</summary>
    public double Principal => SmallEigen.Of([XX, XY, XZ, XY, YY, YZ, XZ, YZ, ZZ], 3).Values.MaxBy(Math.Abs);

    /// <summary>Sum.</summary>
    public static StressState operator +(StressState a, StressState b) =>
        new(a.XX + b.XX, a.YY + b.YY, a.ZZ + b.ZZ, a.XY + b.XY, a.XZ + b.XZ, a.YZ + b.YZ);

    /// <summary>Multiple.</summary>
    public static StressState operator *(double s, StressState a) => new(s * a.XX, s * a.YY, s * a.ZZ, s * a.XY, s * a.XZ, s * a.YZ);
}
