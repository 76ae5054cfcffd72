namespace Ramwright.Files;

/// <summary>What the numbers in a table's column measure.</summary>
internal enum Measured
{
    /// <summary>Words.</summary>
    Text,
    /// <summary>A plain number.</summary>
    Number,
    /// <summary>m.</summary>
    Length,
    /// <summary>Pa, of steel.</summary>
    Stress,
    /// <summary>Pa, of oil.</summary>
    Pressure,
    /// <summary>m²/s.</summary>
    Viscosity,
    /// <summary>kg/m³.</summary>
    Density,
    /// <summary>m/m.</summary>
    Slope,
    /// <summary>kg/m.</summary>
    MassPerLength,
}
