using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>The frame that holds the force.</summary>
[Says("the frame that holds the force")]
[Kinds(typeof(ClosedFrame), typeof(OpenFrontFrame), typeof(TieRodFrame), typeof(FreeFrame))]
public abstract record PressFrame
{
    /// <summary>Largest opening between the ram, fully up, and the bed, without tooling, m.</summary>
    [Needed, Says("largest opening, ram fully up, no tooling"), Measure(Dimension.Length, "600 mm", UpTo = 10)]
    public double? Daylight { get; init; }

    /// <summary>Section of every member that does not name its own.</summary>
    [Says("section of every member that does not name its own"), StockName(StockKind.Section, "2 x UPN 200")]
    public string? Section { get; init; }

    /// <summary>Steel of every member that does not name its own.</summary>
    [Says("steel of every member that does not name its own"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }

    /// <summary>Width of the dies across the press, m: the load is spread over it.</summary>
    [Says("width of the dies; the load is spread over it"), Measure(Dimension.Length, "80 mm", UpTo = 5)]
    public double? DieWidth { get; init; }

    /// <summary>Depth of the dies from front to back, m.</summary>
    [Says("depth of the dies from front to back"), Measure(Dimension.Length, "80 mm", UpTo = 5)]
    public double? DieDepth { get; init; }

    /// <summary>The plate between the lower die and the frame.</summary>
    [Says("the plate between the lower die and the frame")]
    public Bolster? Bolster { get; init; }

    /// <summary>How much of the ram and cylinder stands between crown and daylight, m.</summary>
    [Says("from the crown's face down to the ram's face, ram fully up"), Measure(Dimension.Length, "150 mm", From = 0, UpTo = 10)]
    public double? RamDrop { get; init; }

    /// <summary>It lies on its back, and the ram pushes level.</summary>
    [Says("the press lies on its back and the ram pushes level")]
    public bool? Horizontal { get; init; }
}

/// <summary>Crown and bed between two uprights.</summary>
[Kind("closed"), Says("crown and bed between two uprights")]
public sealed record ClosedFrame : PressFrame
{
    /// <summary>Clear width between the uprights, m.</summary>
    [Needed, Says("clear width between the uprights"), Measure(Dimension.Length, "500 mm", UpTo = 10)]
    public double? Width { get; init; }

    /// <summary>The top beam.</summary>
    [Says("the top beam")]
    public Member? Crown { get; init; }

    /// <summary>The bottom beam.</summary>
    [Says("the bottom beam")]
    public Member? Bed { get; init; }

    /// <summary>Each of the two side members.</summary>
    [Says("each of the two side members")]
    public Member? Upright { get; init; }

    /// <summary>How crown and uprights are joined.</summary>
    [Says("how crown and uprights are joined")]
    public Joint? CrownJoint { get; init; }

    /// <summary>How bed and uprights are joined.</summary>
    [Says("how bed and uprights are joined")]
    public Joint? BedJoint { get; init; }

    /// <summary>Pins that the bed rests on, in place of a joint.</summary>
    [Says("pins the bed rests on at several heights, in place of bed-joint")]
    public BedPins? BedPins { get; init; }
}

/// <summary>A column with two arms; open at front and sides.</summary>
[Kind("open-front"), Says("a column with an upper and a lower arm, open to the front")]
public sealed record OpenFrontFrame : PressFrame
{
    /// <summary>From the ram's centre line to the column's front face, m.</summary>
    [Needed, Says("from the ram's centre line to the front face of the column"), Measure(Dimension.Length, "200 mm", UpTo = 5)]
    public double? Throat { get; init; }

    /// <summary>The column.</summary>
    [Says("the column")]
    public Member? Column { get; init; }

    /// <summary>The arm that carries the cylinder.</summary>
    [Says("the arm that carries the cylinder")]
    public Member? UpperArm { get; init; }

    /// <summary>The arm that carries the lower die.</summary>
    [Says("the arm that carries the lower die")]
    public Member? LowerArm { get; init; }

    /// <summary>From the column's front face to the arms' tips, m.</summary>
    [Says("from the front face of the column to the tips of the arms"), Measure(Dimension.Length, "300 mm", UpTo = 5)]
    public double? ArmReach { get; init; }

    /// <summary>How the arms are fixed to the column.</summary>
    [Says("how the arms are fixed to the column")]
    public Joint? ArmJoint { get; init; }
}

/// <summary>Any frame, given by its points and the bars between them.</summary>
[Kind("free"), Says("any frame, by its points and the bars between them")]
public sealed record FreeFrame : PressFrame
{
    /// <summary>The points where bars meet or the ram acts.</summary>
    [Needed, Says("the points where bars meet or the ram acts")]
    public IReadOnlyList<FramePoint>? Points { get; init; }

    /// <summary>The bars.</summary>
    [Needed, Says("the bars, each from one point to another")]
    public IReadOnlyList<FrameBar>? Bars { get; init; }

    /// <summary>Name of the point that the cylinder pushes up.</summary>
    [Needed, Says("name of the point that the cylinder pushes up")]
    public string? CylinderAt { get; init; }

    /// <summary>Name of the point that the work pushes down, straight below it.</summary>
    [Needed, Says("name of the point that the work pushes down, straight below")]
    public string? WorkAt { get; init; }
}

/// <summary>One member of the frame.</summary>
[Says("one member of the frame")]
public sealed record Member
{
    /// <summary>Its section.</summary>
    [Says("its section"), StockName(StockKind.Section, "2 x UPN 200")]
    public string? Section { get; init; }

    /// <summary>Clear gap between the two halves of a pair, m.</summary>
    [Says("clear gap between the two halves of a pair"), Measure(Dimension.Length, "60 mm", From = 0, UpTo = 3)]
    public double? Apart { get; init; }

    /// <summary>Turned so that its weak axis carries the bending.</summary>
    [Says("turned on its side, so that its weak way carries the bending")]
    public bool? Turned { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }

    /// <summary>Plates welded in where the ram force acts, or where a beam's flanges meet an upright or column.</summary>
    [Says("plates welded in between its flanges: under the ram, or in line with the flanges of what meets it")]
    public Stiffening? Stiffened { get; init; }

    /// <summary>Holes and slots cut in it.</summary>
    [Says("holes and slots cut in it, where the bending is greatest")]
    public IReadOnlyList<Opening>? Openings { get; init; }
}

/// <summary>A hole or slot through a member.</summary>
[Says("a hole or slot through a member")]
public sealed record Opening
{
    /// <summary>What it goes through.</summary>
    [Needed, Says("what it goes through")]
    public OpeningIn? Through { get; init; }

    /// <summary>Its size across the force, m.</summary>
    [Needed, Says("its width across the member's length"), Measure(Dimension.Length, "22 mm", UpTo = 2)]
    public double? Width { get; init; }

    /// <summary>How many stand side by side in one cross-section.</summary>
    [Says("how many stand side by side in one cross-section"), Measure(Dimension.Count, "2", From = 1, UpTo = 20)]
    public double? Count { get; init; }
}

/// <summary>What a hole or slot goes through.</summary>
public enum OpeningIn
{
    /// <summary>The web, at mid-depth.</summary>
    [Says("the web, at mid-depth")]
    Web,
    /// <summary>The flange that is in tension.</summary>
    [Says("the flange in tension")]
    TensionFlange,
    /// <summary>Both flanges.</summary>
    [Says("both flanges")]
    BothFlanges,
}
