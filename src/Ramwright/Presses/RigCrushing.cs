using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A tube or box to be crushed, with every number settled. SI.</summary>
public sealed record RigCrush : RigJob
{
    /// <summary>Section: round tube or square or rectangular hollow.</summary>
    public required Shape Bar { get; init; }
    /// <summary>Length, m.</summary>
    public required double Length { get; init; }
    /// <summary>Whether it stands on its end.</summary>
    public required bool OnEnd { get; init; }
    /// <summary>Its steel.</summary>
    public required WorkSteel Steel { get; init; }
    /// <summary>How far, m.</summary>
    public required double Travel { get; init; }
}

/// <summary>Timber to be crushed, with every number settled. SI.</summary>
/// <param name="Wood">The wood.</param>
/// <param name="Area">Face pressed on, m².</param>
/// <param name="Height">Height under the ram, m.</param>
/// <param name="AcrossGrain">Across the grain.</param>
/// <param name="Green">Green; else dry.</param>
public sealed record RigCrushTimber(Wood Wood, double Area, double Height, bool AcrossGrain, bool Green) : RigJob;

/// <summary>A log to be split, with every number settled. SI.</summary>
/// <param name="Diameter">m.</param>
/// <param name="Length">m.</param>
/// <param name="Knotty">Knots or twisted grain.</param>
/// <param name="Green">Green.</param>
/// <param name="Wedge">Angle of the wedge, rad.</param>
public sealed record RigSplitTimber(double Diameter, double Length, bool Knotty, bool Green, double Wedge) : RigJob;

/// <summary>Concrete to be crushed, with every number settled. SI.</summary>
/// <param name="Strength">On such a piece, or in tension where it is split, Pa.</param>
/// <param name="Area">What the strength acts over, m².</param>
/// <param name="Height">Height under the ram, m.</param>
/// <param name="Split">Whether a lying cylinder is split.</param>
/// <param name="Characteristic">Whether the strength is one that 19 in 20 pieces reach, as a class says.</param>
public sealed record RigCrushConcrete(double Strength, double Area, double Height, bool Split, bool Characteristic) : RigJob;

/// <summary>A closed impression with every number settled. SI, temperatures in °C.</summary>
/// <param name="Area">From above, m².</param>
/// <param name="Shape">How hard to fill.</param>
/// <param name="Outline">Round the part, m.</param>
/// <param name="FlashLand">m.</param>
/// <param name="Height">Mean height when done, m.</param>
/// <param name="Blank">Height before, m.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="Heat">°C.</param>
public sealed record RigClosedDie(
    double Area, ImpressionShape Shape, double Outline, double FlashLand, double Height, double Blank, ForgingSteel Steel, double Heat) : RigJob;
