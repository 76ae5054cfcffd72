namespace Ramwright.Solids;

/// <summary>A box along the axes, m.</summary>
/// <param name="X0">Left.</param>
/// <param name="X1">Right.</param>
/// <param name="Y0">Front.</param>
/// <param name="Y1">Back.</param>
/// <param name="Z0">Bottom.</param>
/// <param name="Z1">Top.</param>
public readonly record struct Cuboid(double X0, double X1, double Y0, double Y1, double Z0, double Z1)
{
    private const double Inf = double.PositiveInfinity;

    /// <summary>All of space.</summary>
    public static readonly Cuboid Everywhere = new(-Inf, Inf, -Inf, Inf, -Inf, Inf);

    /// <summary>Lower edge along an axis, 0 to 2.</summary>
    public double From(int axis) => axis switch { 0 => X0, 1 => Y0, _ => Z0 };

    /// <summary>Upper edge along an axis, 0 to 2.</summary>
    public double To(int axis) => axis switch { 0 => X1, 1 => Y1, _ => Z1 };

    /// <summary>Length along an axis, 0 to 2.</summary>
    public double Along(int axis) => To(axis) - From(axis);

    /// <summary>Middle along an axis, 0 to 2.</summary>
    public double Middle(int axis) => (From(axis) + To(axis)) / 2;

    /// <summary>m³.</summary>
    public double Volume => (X1 - X0) * (Y1 - Y0) * (Z1 - Z0);

    /// <summary>Whether a point lies in it or on its edge.</summary>
    public bool Holds(double x, double y, double z, double slack = 1e-7) =>
        x >= X0 - slack && x <= X1 + slack && y >= Y0 - slack && y <= Y1 + slack && z >= Z0 - slack && z <= Z1 + slack;

    /// <summary>What two boxes share; empty where an edge comes out turned round.</summary>
    public Cuboid And(Cuboid b) => new(
        Math.Max(X0, b.X0), Math.Min(X1, b.X1), Math.Max(Y0, b.Y0), Math.Min(Y1, b.Y1), Math.Max(Z0, b.Z0), Math.Min(Z1, b.Z1));

    /// <summary>Whether it has a volume.</summary>
    public bool IsSolid => X1 > X0 + 1e-7 && Y1 > Y0 + 1e-7 && Z1 > Z0 + 1e-7;

    /// <summary>The same with other edges along one axis.</summary>
    public Cuboid With(int axis, double from, double to) => axis switch
    {
        0 => this with { X0 = from, X1 = to },
        1 => this with { Y0 = from, Y1 = to },
        _ => this with { Z0 = from, Z1 = to },
    };

    /// <summary>Moved.</summary>
    public Cuboid Moved(double x, double y, double z) => new(X0 + x, X1 + x, Y0 + y, Y1 + y, Z0 + z, Z1 + z);

    /// <summary>Mirrored left for right.</summary>
    public Cuboid MirroredX() => this with { X0 = -X1, X1 = -X0 };
}
