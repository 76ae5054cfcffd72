using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>One hose or pipe.</summary>
[Says("one hose or pipe")]
public sealed record Line
{
    /// <summary>Which way the oil goes in it.</summary>
    [Says("what the line does")]
    public LineDuty? Duty { get; init; }

    /// <summary>Inside diameter, m.</summary>
    [Needed, Says("inside diameter"), Measure(Dimension.Length, "9.5 mm", UpTo = 0.2)]
    public double? Bore { get; init; }

    /// <summary>Length, m.</summary>
    [Says("length"), Measure(Dimension.Length, "3 m", UpTo = 100)]
    public double? Length { get; init; }

    /// <summary>Rated working pressure, Pa.</summary>
    [Says("working pressure printed on the hose"), Measure(Dimension.Pressure, "330 bar", UpTo = 400e6)]
    public double? Rating { get; init; }

    /// <summary>The hose's type, from stock.</summary>
    [Says("type of hose, where the rating is not printed on it"), StockName(StockKind.Hose, "EN 853 2SN")]
    public string? Type { get; init; }

    /// <summary>What the oil meets in it.</summary>
    [Says("elbows, tees, valves and couplers on it, besides its two ends")]
    public Fittings? Fittings { get; init; }

    /// <summary>Tightest bend it is laid in, m.</summary>
    [Says("radius of its tightest bend as laid, at the inside"), Measure(Dimension.Length, "180 mm", UpTo = 10)]
    public double? BendRadius { get; init; }

    /// <summary>How the end where the oil comes in is screwed on.</summary>
    [Says("how the end where the oil comes in is screwed on")]
    public LineEnd? Inlet { get; init; }

    /// <summary>How the end where the oil goes out is screwed on.</summary>
    [Says("how the end where the oil goes out is screwed on")]
    public LineEnd? Outlet { get; init; }
}

/// <summary>What a line does.</summary>
public enum LineDuty
{
    /// <summary>Pump to cylinder.</summary>
    [Says("pump to cylinder")]
    Pressure,
    /// <summary>Cylinder back to tank.</summary>
    [Says("cylinder back to tank")]
    Return,
    /// <summary>Tank to pump.</summary>
    [Says("tank to pump")]
    Suction,
}
