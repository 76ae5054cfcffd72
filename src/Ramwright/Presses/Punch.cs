using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A hole or blank punched.</summary>
[Says("a hole punched, or a blank cut out"), Kind("punch")]
public sealed record Punch : Job
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("thickness of the plate or bar"), Measure(Dimension.Length, "8 mm", UpTo = 0.2)]
    public double? Thickness { get; init; }

    /// <summary>Diameter of a round hole, m.</summary>
    [Says("diameter of a round hole"), Measure(Dimension.Length, "14 mm", UpTo = 1)]
    public double? Hole { get; init; }

    /// <summary>Length of the edge that is cut, m.</summary>
    [Says("length of the whole edge that is cut, where it is not round"), Measure(Dimension.Length, "120 mm", UpTo = 10)]
    public double? Outline { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel, punched cold"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }

    /// <summary>Shear ground on the tool, m.</summary>
    [Says("height of the slope ground on punch or die"), Measure(Dimension.Length, "8 mm", From = 0, UpTo = 0.2)]
    public double? Slope { get; init; }

    /// <summary>Temperature, °C, where it is punched hot.</summary>
    [Says("how hot it is, where it is punched hot"), Measure(Dimension.Temperature, "1100 °C", From = 0, UpTo = 1500)]
    public double? Heat { get; init; }

    /// <summary>Carbon, share of one, where it is punched hot.</summary>
    [Says("its carbon, where it is punched hot"), Measure(Dimension.Ratio, "0.2 %", From = 0, UpTo = 0.05)]
    public double? Carbon { get; init; }
}
