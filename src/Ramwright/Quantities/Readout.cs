namespace Ramwright.Quantities;

/// <summary>Writes SI values in the units a person reads.</summary>
public static class Readout
{
    /// <summary>The unit in which a dimension is shown.</summary>
    public static Unit UnitFor(Dimension dimension, UnitSystem system) =>
        throw new NotImplementedException();

    /// <summary>A value with its unit: <c>32 mm</c>, <c>1.26 in</c>.</summary>
    /// <param name="si">The SI value; must be finite.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="system">Which units.</param>
    /// <param name="digits">Significant digits.</param>
    public static string Text(double si, Dimension dimension, UnitSystem system = UnitSystem.Metric, int digits = 3) =>
        throw new NotImplementedException();
}
