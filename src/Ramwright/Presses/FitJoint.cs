using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A shaft held in a hub by its size.</summary>
[Says("a shaft held in a hub by its size")]
public sealed record FitJoint
{
    /// <summary>Diameter of the joint, m.</summary>
    [Needed, Says("diameter where the two touch"), Measure(Dimension.Length, "50 mm", UpTo = 1)]
    public double? Diameter { get; init; }

    /// <summary>Length of the joint, m.</summary>
    [Needed, Says("length over which they touch"), Measure(Dimension.Length, "50 mm", UpTo = 2)]
    public double? Length { get; init; }

    /// <summary>Outside of the hub, m.</summary>
    [Needed, Says("outside diameter of the hub; of a bearing its outer ring"), Measure(Dimension.Length, "100 mm", UpTo = 3)]
    public double? HubOutside { get; init; }

    /// <summary>Bore of the shaft or bush, m.</summary>
    [Says("bore of a hollow shaft or bush"), Measure(Dimension.Length, "30 mm", From = 0, UpTo = 1)]
    public double? ShaftBore { get; init; }

    /// <summary>Interference as measured, on the diameter, m.</summary>
    [Says("interference as measured: shaft less hole, on the diameter"), Measure(Dimension.Length, "0.04 mm", UpTo = 0.005)]
    public double? Interference { get; init; }

    /// <summary>Fit by ISO 286.</summary>
    [Says("fit by ISO 286, where it was not measured: H7/p6 or H7/s6")]
    public string? Fit { get; init; }

    /// <summary>What the hub is made of.</summary>
    [Says("what the hub is made of")]
    public FitMetal? Hub { get; init; }

    /// <summary>What the shaft or bush is made of.</summary>
    [Says("what the shaft or bush is made of")]
    public FitMetal? Shaft { get; init; }

    /// <summary>A rolling bearing's inner ring.</summary>
    [Says("the hub is the inner ring of a rolling bearing")]
    public bool? Bearing { get; init; }

    /// <summary>Roughness of both surfaces, Rz, m.</summary>
    [Says("roughness Rz of each face; what stands proud is rubbed flat"), Measure(Dimension.Length, "4 µm", From = 0, UpTo = 0.0005)]
    public double? Roughness { get; init; }

    /// <summary>Coefficient of friction.</summary>
    [Says("friction of the joint: 0.12 to 0.15 dry or lightly oiled steel"), Measure(Dimension.Number, "0.12", From = 0.02, UpTo = 1)]
    public double? Friction { get; init; }
}

/// <summary>What the parts of a fit are made of.</summary>
public enum FitMetal
{
    /// <summary>Steel.</summary>
    [Says("E 207 GPa")]
    Steel,
    /// <summary>Bronze.</summary>
    [Says("E 110 GPa")]
    Bronze,
    /// <summary>Grey cast iron.</summary>
    [Says("E 100 GPa")]
    CastIron,
    /// <summary>Aluminium.</summary>
    [Says("E 70 GPa")]
    Aluminium,
}
