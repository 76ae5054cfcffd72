using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A bend in a V-die with every number settled. SI.</summary>
public sealed record RigVBend : RigJob
{
    /// <summary>Thickness, m.</summary>
    public required double Thickness { get; init; }
    /// <summary>Length of the bend, m.</summary>
    public required double Length { get; init; }
    /// <summary>Its steel.</summary>
    public required WorkSteel Steel { get; init; }
    /// <summary>Angle between the legs when done, rad.</summary>
    public required double Angle { get; init; }
    /// <summary>Opening of the V, m; null leaves it to the rule.</summary>
    public required double? Opening { get; init; }
    /// <summary>The V-dies there are; empty where none were named.</summary>
    public required IReadOnlyList<RigVeeDie> Dies { get; init; }
    /// <summary>Radius of the punch's nose, m.</summary>
    public required double PunchRadius { get; init; }
    /// <summary>Shorter leg outside, m; null where not said.</summary>
    public double? Leg { get; init; }
    /// <summary>Longer leg outside, m; null where not said.</summary>
    public double? OtherLeg { get; init; }
}

/// <summary>A V-die.</summary>
/// <param name="Opening">m.</param>
/// <param name="Length">m; null where not said.</param>
public sealed record RigVeeDie(double Opening, double? Length);

/// <summary>A bend over two supports with every number settled. SI.</summary>
public sealed record RigBarBend : RigJob
{
    /// <summary>Section as it is bent, about its y axis.</summary>
    public required Shape Bar { get; init; }
    /// <summary>Its steel, cold.</summary>
    public required WorkSteel Steel { get; init; }
    /// <summary>Between the supports, m.</summary>
    public required double Span { get; init; }
    /// <summary>Radius to the centre line, m.</summary>
    public required double Radius { get; init; }
    /// <summary>Bent through, rad.</summary>
    public required double Angle { get; init; }
    /// <summary>Temperature, °C; null for cold.</summary>
    public double? Heat { get; init; }
    /// <summary>Carbon, share of one.</summary>
    public double Carbon { get; init; }
}

/// <summary>A straightening with every number settled. SI.</summary>
public sealed record RigStraighten : RigJob
{
    /// <summary>Section as it is bent, about its y axis.</summary>
    public required Shape Bar { get; init; }
    /// <summary>Its steel.</summary>
    public required WorkSteel Steel { get; init; }
    /// <summary>Between the supports, m.</summary>
    public required double Span { get; init; }
    /// <summary>Out of straight at the middle, m.</summary>
    public required double Bow { get; init; }
}
