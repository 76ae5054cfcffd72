using Ramwright.Quantities;

namespace Ramwright.Stock;

/// <summary>What a steel is made of, in per cent of its mass; what is not named counts as nothing.</summary>
/// <param name="C">Carbon, %.</param>
/// <param name="Si">Silicon, %.</param>
/// <param name="Mn">Manganese, %.</param>
/// <param name="Cr">Chromium, %.</param>
/// <param name="Mo">Molybdenum, %.</param>
/// <param name="Ni">Nickel, %.</param>
/// <param name="Cu">Copper, %.</param>
/// <param name="V">Vanadium, %.</param>
/// <param name="B">Boron, %.</param>
/// <exception cref="ArgumentOutOfRangeException">A share below zero, or so much that it is no longer steel.</exception>
public sealed record Composition(
    double C, double Si = 0, double Mn = 0, double Cr = 0, double Mo = 0, double Ni = 0, double Cu = 0, double V = 0, double B = 0)
{
    /// <summary>Carbon, %.</summary>
    public double C { get; } = Share(C, 2.1);
    /// <summary>Silicon, %.</summary>
    public double Si { get; } = Share(Si, 5);
    /// <summary>Manganese, %.</summary>
    public double Mn { get; } = Share(Mn, 30);
    /// <summary>Chromium, %.</summary>
    public double Cr { get; } = Share(Cr, 30);
    /// <summary>Molybdenum, %.</summary>
    public double Mo { get; } = Share(Mo, 10);
    /// <summary>Nickel, %.</summary>
    public double Ni { get; } = Share(Ni, 40);
    /// <summary>Copper, %.</summary>
    public double Cu { get; } = Share(Cu, 5);
    /// <summary>Vanadium, %.</summary>
    public double V { get; } = Share(V, 5);
    /// <summary>Boron, %.</summary>
    public double B { get; } = Share(B, 1);

    private static double Share(double percent, double most) =>
        Check.NotNegative(percent) <= most ? percent : throw new ArgumentOutOfRangeException(nameof(percent), percent, $"{most} % is the most");
}
