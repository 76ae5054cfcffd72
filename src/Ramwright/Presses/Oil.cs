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

    /// <summary>Bulk modulus, Pa.</summary>
    [Says("its stiffness under pressure; air in it makes it softer"), Measure(Dimension.Stress, "1.5 GPa", UpTo = 5e9)]
    public double? BulkModulus { get; init; }

    /// <summary>Temperature of the workshop, °C.</summary>
    [Says("temperature of the workshop, from which the oil warms up"), Measure(Dimension.Temperature, "20 °C", From = -30, UpTo = 60)]
    public double? Surroundings { get; init; }
}
