namespace Ramwright.Quantities;

/// <summary>Which units a person wants to read.</summary>
public enum UnitSystem
{
    /// <summary>Millimetres, kilonewtons, bar, litres.</summary>
    Metric,
    /// <summary>Inches, US tons, psi, US gallons.</summary>
    Imperial,
}
