using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A hot squeeze with every number settled. SI, temperatures in °C.</summary>
public sealed record RigHotSqueeze : RigJob
{
    /// <summary>Height between the dies before, m: the length of a piece that stands on its end.</summary>
    public required double Height { get; init; }
    /// <summary>Across the bar before, m; the thickness one way of a piece that stands on its end.</summary>
    public required double Width { get; init; }
    /// <summary>Along the bar, m; the thickness the other way of a piece that stands on its end.</summary>
    public required double Length { get; init; }
    /// <summary>Whether its section is round.</summary>
    public required bool IsRound { get; init; }
    /// <summary>Whether it stands on its end.</summary>
    public required bool OnEnd { get; init; }
    /// <summary>Its steel.</summary>
    public required ForgingSteel Steel { get; init; }
    /// <summary>Out of the fire, °C.</summary>
    public required double Heat { get; init; }
    /// <summary>From the fire to the first squeeze, s.</summary>
    public required double Transfer { get; init; }
    /// <summary>Width of the dies along the bar, m.</summary>
    public required double DieWidth { get; init; }
    /// <summary>Length of the dies across the bar, m.</summary>
    public required double DieLength { get; init; }
    /// <summary>Of the dies, °C.</summary>
    public required double DieHeat { get; init; }
    /// <summary>Coefficient of friction; from 1/√3 on it sticks.</summary>
    public required double Friction { get; init; }
    /// <summary>How far the ram is lifted off the work between squeezes, m.</summary>
    public required double Lift { get; init; }
    /// <summary>In the fire before each further heat, s.</summary>
    public required double InTheFire { get; init; }
    /// <summary>Height after the first squeeze, m.</summary>
    public required double TargetHeight { get; init; }
    /// <summary>How it is drawn out; null for a single squeeze.</summary>
    public RigDrawingOut? DrawingOut { get; init; }
}

/// <summary>Drawing out from one section to another.</summary>
/// <param name="Height">Height at the end, m.</param>
/// <param name="Width">Width at the end, m.</param>
/// <param name="Over">How much of the bar, measured before, m.</param>
/// <param name="Bite">How far the bar moves on between squeezes, m.</param>
/// <param name="Reduction">Share of the height taken by each squeeze.</param>
/// <param name="QuarterTurns">Whether it is turned after each pass.</param>
/// <param name="Between">From one squeeze to the next, s.</param>
public sealed record RigDrawingOut(double Height, double Width, double Over, double Bite, double Reduction, bool QuarterTurns, double Between);
