using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>The thick washer under each outer nut.</summary>
[Says("the washer under each outer nut; over a pair it spans the gap")]
public sealed record RodWasher
{
    /// <summary>Diameter or side, m.</summary>
    [Needed, Says("its diameter, or its side"), Measure(Dimension.Length, "110 mm", UpTo = 1)]
    public double? Outside { get; init; }

    /// <summary>Thickness, m.</summary>
    [Needed, Says("its thickness"), Measure(Dimension.Length, "30 mm", UpTo = 0.3)]
    public double? Thickness { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S355")]
    public string? Steel { get; init; }
}

/// <summary>The washer under a tie rod's nut. SI.</summary>
/// <param name="Outside">Diameter or side, m.</param>
/// <param name="Thickness">m.</param>
/// <param name="Steel">Its steel.</param>
public sealed record RigRodWasher(double Outside, double Thickness, Steel Steel);

/// <summary>By what a nut, or the washer under it, bears on a plate. SI.</summary>
/// <param name="Outside">Diameter that bears, m.</param>
/// <param name="Mean">Mean width for pulling through, m.</param>
/// <param name="Hole">Hole for the rod, m.</param>
public readonly record struct RodSupport(double Outside, double Mean, double Hole)
{
    /// <summary>Width across flats of a plain nut over the thread's diameter; ISO 4032 has 1.5 to 1.6.</summary>
    public const double Flats = 1.5;

    /// <summary>Diameter of the face of a nut, m: its width across flats.</summary>
    public static double Face(RigTieRod rod)
    {
        ArgumentNullException.ThrowIfNull(rod);
        return Flats * rod.Thread.D;
    }

    /// <summary>Of a rod's nut: a washer spreads the force at 45° through its thickness.</summary>
    public static RodSupport Of(RigTieRod rod)
    {
        double face = Face(rod), mean = face * (1 + 2 / Math.Sqrt(3)) / 2, hole = ScrewThread.UsualHole(rod.Thread.D);
        return rod.Washer is { } washer
            ? new RodSupport(Math.Min(washer.Outside, face + 2 * washer.Thickness), Math.Min(washer.Outside, mean + 2 * washer.Thickness), hole)
            : new RodSupport(face, mean, hole);
    }
}
