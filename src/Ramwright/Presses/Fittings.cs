using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>What the oil meets in a line besides its two ends: so many of each, and the rest as a loss coefficient.</summary>
[Says("elbows, tees, valves and couplers on a line, so many of each")]
public sealed record Fittings
{
    /// <summary>Elbows of 90°.</summary>
    [Says("elbows of 90 degrees"), Measure(Dimension.Count, "2", From = 0, UpTo = 100)]
    public double? Elbows { get; init; }

    /// <summary>Elbows of 45°.</summary>
    [Says("elbows of 45 degrees"), Measure(Dimension.Count, "1", From = 0, UpTo = 100)]
    public double? HalfElbows { get; init; }

    /// <summary>Tees, the oil turning into or out of the branch.</summary>
    [Says("tees where the oil turns off"), Measure(Dimension.Count, "1", From = 0, UpTo = 100)]
    public double? Tees { get; init; }

    /// <summary>Return bends.</summary>
    [Says("bends of 180 degrees"), Measure(Dimension.Count, "1", From = 0, UpTo = 100)]
    public double? ReturnBends { get; init; }

    /// <summary>Gate valves, fully open.</summary>
    [Says("gate valves, fully open"), Measure(Dimension.Count, "1", From = 0, UpTo = 100)]
    public double? GateValves { get; init; }

    /// <summary>Angle valves, fully open.</summary>
    [Says("angle valves, fully open"), Measure(Dimension.Count, "1", From = 0, UpTo = 100)]
    public double? AngleValves { get; init; }

    /// <summary>Globe valves, fully open.</summary>
    [Says("globe valves, fully open"), Measure(Dimension.Count, "1", From = 0, UpTo = 100)]
    public double? GlobeValves { get; init; }

    /// <summary>Loss coefficients of everything else, added up.</summary>
    [Says("loss coefficients K of the rest, added up: couplers, control valve"), Measure(Dimension.Number, "8", From = 0, UpTo = 10000)]
    public double? LossCoefficient { get; init; }
}
