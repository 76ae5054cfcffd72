using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>An ISO metric thread, by its major diameter and pitch.</summary>
/// <param name="D">Major diameter, m.</param>
/// <param name="P">Pitch, m.</param>
public sealed record MetricThread(double D, double P)
{
    /// <summary>ISO 898-1, 9.1.6: nominal stress area.</summary>
    public static readonly Citation StressAreaSource = new("ISO 898-1:2013", "9.1.6.1");

    /// <summary>EN 1090-2, table 11: clearance of normal round holes.</summary>
    public static readonly Citation HoleSource = new("EN 1090-2:2018", "table 11", Standing.FromMemory);

    /// <summary>Hole of the usual clearance for a bolt, m: 1 mm over up to M14, 2 mm up to M24, 3 mm above.</summary>
    /// <param name="d">Diameter of the bolt, m.</param>
    public static double UsualHole(double d) => d + (d < 0.0155 ? 0.001 : d < 0.0255 ? 0.002 : 0.003);

    /// <summary>Stress area A_s, m²: of the mean of pitch and minor diameter.</summary>
    public double As => Math.PI / 4 * Math.Pow(D - 0.9382 * P, 2);

    /// <summary>Pitch diameter d₂, m.</summary>
    public double D2 => D - 0.649519 * P;

    /// <summary>Basic minor diameter d₁, m.</summary>
    public double D1 => D - 1.082532 * P;

    /// <summary><c>M24</c>, or <c>M24x2</c> where the pitch is a fine one.</summary>
    public required string Name { get; init; }
}
