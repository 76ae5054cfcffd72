using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A log split with a wedge.</summary>
[Says("a log split along its grain with a wedge on the ram"), Kind("split-timber")]
public sealed record SplitTimber : Job
{
    /// <summary>Diameter, m.</summary>
    [Needed, Says("diameter of the log"), Measure(Dimension.Length, "250 mm", UpTo = 2)]
    public double? Diameter { get; init; }

    /// <summary>Length, m.</summary>
    [Needed, Says("length of the log"), Measure(Dimension.Length, "330 mm", UpTo = 3)]
    public double? Length { get; init; }

    /// <summary>Knots or twisted grain.</summary>
    [Says("knots or twisted grain")]
    public bool? Knotty { get; init; }

    /// <summary>Green.</summary>
    [Says("the wood is green")]
    public bool? Green { get; init; }

    /// <summary>Angle of the wedge, rad.</summary>
    [Says("angle of the wedge"), Measure(Dimension.Angle, "35°", From = 0.17, UpTo = 1.6)]
    public double? Wedge { get; init; }
}
