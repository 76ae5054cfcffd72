namespace Ramwright.Presses;

/// <summary>Punching or shearing with every number settled. SI.</summary>
public sealed record RigCut : RigJob
{
    /// <summary>Thickness, m.</summary>
    public required double Thickness { get; init; }
    /// <summary>Length of the edge that is cut, m.</summary>
    public required double Edge { get; init; }
    /// <summary>Diameter of a round hole, m; null for any other cut.</summary>
    public double? Hole { get; init; }
    /// <summary>Whether it is a closed cut that has to be stripped off the punch.</summary>
    public required bool IsPunch { get; init; }
    /// <summary>Its steel, cold.</summary>
    public required WorkSteel Steel { get; init; }
    /// <summary>Slope over the edge, m.</summary>
    public required double Slope { get; init; }
    /// <summary>Temperature, °C; null for cold.</summary>
    public double? Heat { get; init; }
    /// <summary>Carbon, share of one.</summary>
    public double Carbon { get; init; }
}
