using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>The gauge that the pressure is read from.</summary>
[Says("the gauge that the oil's pressure is read from")]
public sealed record Gauge
{
    /// <summary>Greatest pressure on its dial, Pa.</summary>
    [Needed, Says("greatest pressure on its dial"), Measure(Dimension.Pressure, "400 bar", UpTo = 400e6)]
    public double? Range { get; init; }

    /// <summary>Accuracy class: greatest error in per cent of the range.</summary>
    [Says("accuracy class on its dial: greatest error in per cent of the range"), Measure(Dimension.Number, "1.6", UpTo = 10)]
    public double? Class { get; init; }
}
