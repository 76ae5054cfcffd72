namespace Ramwright.Geometry;

/// <summary>Three numbers along the press's axes: X across to the right, Y from front to back, Z up.</summary>
/// <param name="X">Across, to the right seen from the front.</param>
/// <param name="Y">From front to back.</param>
/// <param name="Z">Up.</param>
public readonly record struct Vector(double X, double Y, double Z)
{
    /// <summary>Nothing.</summary>
    public static readonly Vector Zero;
    /// <summary>One to the right.</summary>
    public static readonly Vector Across = new(1, 0, 0);
    /// <summary>One to the back.</summary>
    public static readonly Vector Deep = new(0, 1, 0);
    /// <summary>One up.</summary>
    public static readonly Vector Up = new(0, 0, 1);

    /// <summary>Length.</summary>
    public double Length => Math.Sqrt(Dot(this));
    /// <summary>The same direction with length one; the vector must not be zero.</summary>
    public Vector Unit => this / Length;

    /// <summary>The three numbers. Written out by hand: the compiler's own would print <see cref="Unit"/> of <see cref="Unit"/> without end.</summary>
    public override string ToString() => $"({X}, {Y}, {Z})";

    /// <summary>Scalar product.</summary>
    public double Dot(Vector b) => X * b.X + Y * b.Y + Z * b.Z;
    /// <summary>Vector product.</summary>
    public Vector Cross(Vector b) => new(Y * b.Z - Z * b.Y, Z * b.X - X * b.Z, X * b.Y - Y * b.X);

    /// <summary>Sum.</summary>
    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);
    /// <summary>Difference.</summary>
    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
    /// <summary>Opposite.</summary>
    public static Vector operator -(Vector a) => new(-a.X, -a.Y, -a.Z);
    /// <summary>Multiple.</summary>
    public static Vector operator *(double s, Vector a) => new(s * a.X, s * a.Y, s * a.Z);
    /// <summary>Multiple.</summary>
    public static Vector operator *(Vector a, double s) => s * a;
    /// <summary>Part.</summary>
    public static Vector operator /(Vector a, double s) => new(a.X / s, a.Y / s, a.Z / s);
}
