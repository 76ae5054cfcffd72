using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>Pins that carry a bed which can be set at several heights.</summary>
[Says("pins that carry a bed which can be set at several heights")]
public sealed record BedPins
{
    /// <summary>Diameter, m.</summary>
    [Needed, Says("diameter of the pins, one at each end of the bed"), Measure(Dimension.Length, "40 mm", UpTo = 0.5)]
    public double? Diameter { get; init; }

    /// <summary>Between the rows of holes, m.</summary>
    [Needed, Says("between one height and the next, hole to hole"), Measure(Dimension.Length, "120 mm", UpTo = 3)]
    public double? Pitch { get; init; }

    /// <summary>How many heights.</summary>
    [Needed, Says("how many heights there are; daylight is that of the lowest"), Measure(Dimension.Count, "4", From = 1, UpTo = 50)]
    public double? Count { get; init; }

    /// <summary>From the lowest hole to the upright's lower end, m.</summary>
    [Says("from the centre of the lowest hole to the lower end of the upright"), Measure(Dimension.Length, "150 mm", UpTo = 3)]
    public double? Edge { get; init; }

    /// <summary>Steel of the pins.</summary>
    [Says("steel of the pins"), StockName(StockKind.Steel, "C45+QT")]
    public string? Steel { get; init; }

    /// <summary>Thickness of upright that a pin bears on, m.</summary>
    [Says("thickness of upright that a pin bears on, its walls added"), Measure(Dimension.Length, "15 mm", UpTo = 1)]
    public double? Middle { get; init; }

    /// <summary>Thickness of each outer part, m.</summary>
    [Says("thickness of each half of the bed that a pin carries"), Measure(Dimension.Length, "9 mm", UpTo = 1)]
    public double? Outer { get; init; }

    /// <summary>Gap between the two, m.</summary>
    [Says("gap between upright and bed on the pin"), Measure(Dimension.Length, "3 mm", From = 0, UpTo = 0.2)]
    public double? Gap { get; init; }
}

/// <summary>The rows of holes that a bed's pins go through. SI.</summary>
/// <param name="Pitch">Between one height and the next, m.</param>
/// <param name="Count">How many heights.</param>
/// <param name="Edge">From the centre of the lowest hole to the upright's end, m.</param>
public sealed record RigBedPins(double Pitch, int Count, double Edge);
