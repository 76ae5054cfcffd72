using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>The oil in the press.</summary>
[Says("the oil in the press")]
public sealed record Oil
{
    /// <summary>Viscosity grade.</summary>
    [Says("viscosity grade"), StockName(StockKind.Oil, "VG 46")]
    public string? Grade { get; init; }

    /// <summary>Oil temperature, °C.</summary>
    [Says("temperature of the oil while pressing"), Measure(Dimension.Temperature, "40 °C", From = -30, UpTo = 120)]
    public double? Temperature { get; init; }
}
