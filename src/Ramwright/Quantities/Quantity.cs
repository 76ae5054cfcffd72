namespace Ramwright.Quantities;

/// <summary>A value as a person wrote it: the SI number, and the unit they chose.</summary>
/// <param name="Si">The value in the SI unit of its dimension.</param>
/// <param name="Unit">The unit it was written in.</param>
public readonly record struct Quantity(double Si, Unit Unit)
{
    /// <summary>What it measures.</summary>
    public Dimension Dimension => Unit.Dimension;
}
