using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A concrete cube or cylinder pressed until it breaks.</summary>
[Says("a concrete cube or cylinder pressed until it breaks"), Kind("crush-concrete")]
public sealed record CrushConcrete : Job
{
    /// <summary>Strength class.</summary>
    [Says("its strength class, such as C30/37")]
    public string? Class { get; init; }

    /// <summary>Strength, Pa.</summary>
    [Says("its strength on such a piece, where that is known"), Measure(Dimension.Stress, "37 MPa", UpTo = 200e6)]
    public double? Strength { get; init; }

    /// <summary>Side of a cube, m.</summary>
    [Says("side of a cube"), Measure(Dimension.Length, "150 mm", UpTo = 1)]
    public double? Cube { get; init; }

    /// <summary>Diameter of a cylinder, m.</summary>
    [Says("diameter of a cylinder"), Measure(Dimension.Length, "150 mm", UpTo = 1)]
    public double? Cylinder { get; init; }

    /// <summary>Length of a cylinder, m.</summary>
    [Says("length of a cylinder"), Measure(Dimension.Length, "300 mm", UpTo = 2)]
    public double? Length { get; init; }

    /// <summary>A cylinder lying, split along its length.</summary>
    [Says("a cylinder lies and is split along its length")]
    public bool? Split { get; init; }
}
