using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A screw thread, metric or Unified, by its major diameter and pitch.</summary>
/// <param name="D">Major diameter, m.</param>
/// <param name="P">Pitch, m.</param>
/// <remarks>Both families have the same 60° profile (ISO 68-1, ASME B1.1), so that d₂ and d₁ follow alike.</remarks>
public sealed record ScrewThread(double D, double P)
{
    /// <summary>EN 1090-2, table 11: clearance of normal round holes; taken for inch bolts too, where it gives the wider hole.</summary>
    public static readonly Citation HoleSource = new("EN 1090-2:2018", "table 11", Standing.FromMemory);

    /// <summary>Hole of the usual clearance for a bolt, m: 1 mm over up to M14, 2 mm up to M24, 3 mm above.</summary>
    /// <param name="d">Diameter of the bolt, m.</param>
    public static double UsualHole(double d) => d + (d < 0.0155 ? 0.001 : d < 0.0255 ? 0.002 : 0.003);

    /// <summary>Its family: metric unless said otherwise.</summary>
    public ThreadForm Form { get; init; } = ThreadForm.Metric;

    /// <summary>Stress area A_s, m²; the families reckon it differently.</summary>
    public double As => Math.PI / 4 * Math.Pow(D - Form.StressDrop * P, 2);

    /// <summary>Pitch diameter d₂, m.</summary>
    public double D2 => D - 0.649519 * P;

    /// <summary>Basic minor diameter d₁, m.</summary>
    public double D1 => D - 1.082532 * P;

    /// <summary><c>M24</c>, <c>M24x2</c> where the pitch is a fine one, <c>3/4-10 UNC</c>.</summary>
    public required string Name { get; init; }
}
