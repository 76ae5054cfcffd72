using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A point of a free frame.</summary>
[Says("a point of the frame")]
public sealed record FramePoint
{
    /// <summary>Its name.</summary>
    [Needed, Says("its name, as the bars call it")]
    public string? Name { get; init; }

    /// <summary>To the right, m.</summary>
    [Says("how far to the right"), Measure(Dimension.Length, "250 mm", From = 0, UpTo = 20)]
    public double? Right { get; init; }

    /// <summary>To the back, m.</summary>
    [Says("how far to the back"), Measure(Dimension.Length, "100 mm", From = 0, UpTo = 20)]
    public double? Back { get; init; }

    /// <summary>Up, m.</summary>
    [Says("how far up"), Measure(Dimension.Length, "900 mm", From = 0, UpTo = 20)]
    public double? Up { get; init; }

    /// <summary>Bolted down so that it cannot move.</summary>
    [Says("bolted to the ground so that it cannot move; without one the work's point is held")]
    public bool? Held { get; init; }
}

/// <summary>A bar of a free frame.</summary>
[Says("a bar of the frame")]
public sealed record FrameBar
{
    /// <summary>Its name.</summary>
    [Needed, Says("its name, as the ladder calls it")]
    public string? Name { get; init; }

    /// <summary>Name of the point at its first end.</summary>
    [Needed, Says("name of the point at its first end")]
    public string? From { get; init; }

    /// <summary>Name of the point at its second end.</summary>
    [Needed, Says("name of the point at its second end")]
    public string? To { get; init; }

    /// <summary>Section, steel, holes.</summary>
    [Says("its section and steel")]
    public Member? Member { get; init; }

    /// <summary>Which way its web stands.</summary>
    [Says("which way the depth of its section points")]
    public BarDepth? Depth { get; init; }

    /// <summary>How its first end is joined.</summary>
    [Says("how its first end is joined; taken as rigid where nothing is said")]
    public Joint? FromJoint { get; init; }

    /// <summary>How its second end is joined.</summary>
    [Says("how its second end is joined; taken as rigid where nothing is said")]
    public Joint? ToJoint { get; init; }
}

/// <summary>Which way the depth of a bar's section points.</summary>
public enum BarDepth
{
    /// <summary>Up and down.</summary>
    [Says("up and down")]
    Up,
    /// <summary>Left and right.</summary>
    [Says("left and right")]
    Right,
    /// <summary>Front and back.</summary>
    [Says("front and back")]
    Back,
}
