using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>Hot steel pressed into a closed impression.</summary>
[Says("hot steel pressed into a die with an impression, or stamped with a mark"), Kind("closed-die")]
public sealed record ClosedDie : Job
{
    /// <summary>Area seen from above, m².</summary>
    [Needed, Says("area of the part as seen from above, flash not counted"), Measure(Dimension.Area, "12 cm2", UpTo = 4)]
    public double? Area { get; init; }

    /// <summary>How hard the shape is to fill.</summary>
    [Says("how hard the shape is to fill")]
    public ImpressionShape? Shape { get; init; }

    /// <summary>Length of the flash's inner edge, m.</summary>
    [Says("length round the part, where flash comes out"), Measure(Dimension.Length, "140 mm", UpTo = 10)]
    public double? Outline { get; init; }

    /// <summary>Width of the flash land, m.</summary>
    [Says("width of the land that the flash is squeezed on"), Measure(Dimension.Length, "6 mm", From = 0, UpTo = 0.2)]
    public double? FlashLand { get; init; }

    /// <summary>Mean height of the finished part, m.</summary>
    [Says("height of the finished part on the average"), Measure(Dimension.Length, "12 mm", UpTo = 1)]
    public double? Height { get; init; }

    /// <summary>Height of the blank before, m.</summary>
    [Says("height of the blank before"), Measure(Dimension.Length, "25 mm", UpTo = 2)]
    public double? Blank { get; init; }

    /// <summary>Its steel by name.</summary>
    [Says("its steel: mild, C45, 42CrMo4 and the like")]
    public string? Steel { get; init; }

    /// <summary>Carbon, share of one.</summary>
    [Says("its carbon, where the steel has no name here"), Measure(Dimension.Ratio, "0.45 %", From = 0, UpTo = 0.05)]
    public double? Carbon { get; init; }

    /// <summary>Temperature at the squeeze, °C.</summary>
    [Says("how hot it is when the dies close"), Measure(Dimension.Temperature, "1100 °C", From = 0, UpTo = 1500)]
    public double? Heat { get; init; }
}

/// <summary>How hard an impression is to fill.</summary>
public enum ImpressionShape
{
    /// <summary>No flash.</summary>
    [Says("simple, no flash")]
    Open,
    /// <summary>Simple with flash.</summary>
    [Says("simple, with flash")]
    Simple,
    /// <summary>Complex with flash.</summary>
    [Says("thin webs or tall ribs, with flash")]
    Complex,
    /// <summary>A mark or medal.</summary>
    [Says("a mark or relief struck into a face")]
    Coin,
}
