namespace Ramwright.Quantities;

/// <summary>One unit of the trade and what it is worth in SI.</summary>
/// <param name="Symbol">As it is written back: <c>mm</c>, <c>psi</c>, <c>US ton</c>.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">SI value of one unit, above zero.</param>
/// <param name="Offset">SI value of zero units: 273.15 K-type shifts and absolute pressure; zero for nearly all.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>Other ways people write it, compared without regard to case unless case tells units apart.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>SI value of <paramref name="value"/> of this unit.</summary>
    public double ToSi(double value) => value * Factor + Offset;

    /// <summary>How many of this unit an SI value is.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
