using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>What hangs on the ram.</summary>
[Says("what hangs on the ram")]
public sealed record RamEnd
{
    /// <summary>Force that strips the upper die off the work, as a share of the ram force.</summary>
    [Says("force that strips a stuck die off the work, as a share of the ram force"), Measure(Dimension.Ratio, "10 %", From = 0, UpTo = 1)]
    public double? StripOff { get; init; }

    /// <summary>Holder of the upper die.</summary>
    [Says("holder of the upper die")]
    public DieHolder? DieHolder { get; init; }

    /// <summary>Arm that keeps the ram from turning.</summary>
    [Says("arm that keeps the ram from turning")]
    public AntiTwist? AntiTwist { get; init; }

    /// <summary>Loose cap between ram and work.</summary>
    [Says("loose cap between ram and work")]
    public Saddle? Saddle { get; init; }
}

/// <summary>Holder of the upper die.</summary>
[Says("holder of the upper die")]
public sealed record DieHolder
{
    /// <summary>Thread of the screws, or of the one screw, that hold it to the ram.</summary>
    [Says("thread of what screws it to the ram"), StockName(StockKind.Thread, "M16")]
    public string? Thread { get; init; }

    /// <summary>Class.</summary>
    [Says("strength class of the screws"), StockName(StockKind.PropertyClass, "8.8")]
    public string? Class { get; init; }

    /// <summary>How many of them.</summary>
    [Says("how many screws there are"), Measure(Dimension.Count, "1", From = 1, UpTo = 32)]
    public double? Count { get; init; }

    /// <summary>Length of thread in mesh, m.</summary>
    [Says("length of thread in mesh"), Measure(Dimension.Length, "24 mm", UpTo = 0.5)]
    public double? Engagement { get; init; }

    /// <summary>Width of the face that bears on the ram, m.</summary>
    [Says("width of the face by which it bears on the ram"), Measure(Dimension.Length, "60 mm", UpTo = 2)]
    public double? Face { get; init; }

    /// <summary>Thread of set screws that grip a shank.</summary>
    [Says("thread of set screws that grip it crosswise"), StockName(StockKind.Thread, "M12")]
    public string? SetScrew { get; init; }

    /// <summary>How many set screws.</summary>
    [Says("how many set screws there are"), Measure(Dimension.Count, "2", From = 1, UpTo = 16)]
    public double? SetScrews { get; init; }
}

/// <summary>Arm of flat bar that runs with a pad or roller on a guide and keeps the ram from turning.</summary>
[Says("arm that keeps the ram from turning")]
public sealed record AntiTwist
{
    /// <summary>From the ram's centre to the pad or roller, m.</summary>
    [Needed, Says("from the ram's centre to the pad or roller"), Measure(Dimension.Length, "160 mm", UpTo = 3)]
    public double? Length { get; init; }

    /// <summary>Depth of the arm in the direction of its push, m.</summary>
    [Needed, Says("depth of the arm in the direction it pushes"), Measure(Dimension.Length, "12 mm", UpTo = 1)]
    public double? Depth { get; init; }

    /// <summary>Height of the arm, along the ram, m.</summary>
    [Needed, Says("height of the arm, along the ram"), Measure(Dimension.Length, "40 mm", UpTo = 1)]
    public double? Height { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S235")]
    public string? Steel { get; init; }

    /// <summary>Torque over ram force, m.</summary>
    [Says("torque about the ram over the ram force"), Measure(Dimension.Length, "2 mm", From = 0, UpTo = 1)]
    public double? Twist { get; init; }

    /// <summary>Weld of the arm to its collar or clamp.</summary>
    [Says("weld of the arm to the collar that is clamped on the ram")]
    public Weld? Weld { get; init; }

    /// <summary>Depth of the guide bar in the direction of the push, m.</summary>
    [Says("depth of the guide bar in the direction it is pushed"), Measure(Dimension.Length, "15 mm", UpTo = 1)]
    public double? GuideDepth { get; init; }

    /// <summary>Width of the guide bar, m.</summary>
    [Says("width of the guide bar"), Measure(Dimension.Length, "40 mm", UpTo = 1)]
    public double? GuideWidth { get; init; }

    /// <summary>Free length of the guide bar between its fixings, m.</summary>
    [Says("free length of the guide bar between its fixings"), Measure(Dimension.Length, "500 mm", UpTo = 10)]
    public double? GuideSpan { get; init; }
}

/// <summary>Loose cap between ram and work.</summary>
[Says("loose cap between ram and work")]
public sealed record Saddle
{
    /// <summary>Diameter of the face that bears on the ram, m.</summary>
    [Needed, Says("diameter of the face by which it bears on the ram"), Measure(Dimension.Length, "45 mm", UpTo = 1)]
    public double? Diameter { get; init; }

    /// <summary>Hole in that face, m.</summary>
    [Says("diameter of a hole in that face"), Measure(Dimension.Length, "20 mm", From = 0, UpTo = 1)]
    public double? Hole { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "C45+QT")]
    public string? Steel { get; init; }
}
