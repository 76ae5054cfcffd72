using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>Plate bent in a V-die.</summary>
[Says("plate bent cold in a V-die"), Kind("v-bend")]
public sealed record VBend : Job
{
    /// <summary>Thickness, m.</summary>
    [Needed, Says("thickness of the plate"), Measure(Dimension.Length, "6 mm", UpTo = 0.1)]
    public double? Thickness { get; init; }

    /// <summary>Length of the bend, m.</summary>
    [Needed, Says("length of the bend line"), Measure(Dimension.Length, "300 mm", UpTo = 10)]
    public double? Length { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S235")]
    public string? Steel { get; init; }

    /// <summary>Angle between the legs after the bend, rad.</summary>
    [Says("angle between the two legs when done"), Measure(Dimension.Angle, "90°", From = 0.2, UpTo = 3.1)]
    public double? Angle { get; init; }

    /// <summary>Opening of the V used, m.</summary>
    [Says("opening of the V that is used"), Measure(Dimension.Length, "50 mm", UpTo = 1)]
    public double? Opening { get; init; }

    /// <summary>The V-dies there are.</summary>
    [Says("the V-dies you have")]
    public IReadOnlyList<VeeDie>? Dies { get; init; }

    /// <summary>Radius of the punch's nose, m.</summary>
    [Says("radius of the punch's nose"), Measure(Dimension.Length, "3 mm", UpTo = 0.2)]
    public double? PunchRadius { get; init; }

    /// <summary>Shorter leg, outside, m.</summary>
    [Says("shorter leg of the bent part, measured outside"), Measure(Dimension.Length, "50 mm", UpTo = 5)]
    public double? Leg { get; init; }

    /// <summary>Longer leg, outside, m.</summary>
    [Says("longer leg of the bent part, measured outside"), Measure(Dimension.Length, "80 mm", UpTo = 5)]
    public double? OtherLeg { get; init; }
}

/// <summary>A V-die.</summary>
[Says("a V-die")]
public sealed record VeeDie
{
    /// <summary>Opening, m.</summary>
    [Needed, Says("its opening"), Measure(Dimension.Length, "50 mm", UpTo = 1)]
    public double? Opening { get; init; }

    /// <summary>Length, m.</summary>
    [Says("its length"), Measure(Dimension.Length, "400 mm", UpTo = 10)]
    public double? Length { get; init; }
}
