using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>How the cylinder is held in the frame.</summary>
[Says("how the cylinder is held in the frame")]
[Kinds(typeof(FlangeMount), typeof(FootMount), typeof(CradleMount), typeof(BracketMount), typeof(CollarMount))]
public abstract record Mounting
{
    /// <summary>Steel of the mount's own plates.</summary>
    [Says("steel of the mount's own plates"), StockName(StockKind.Steel, "S355")]
    public string? Steel { get; init; }
}

/// <summary>What a mount's bolts carry.</summary>
public enum MountCarries
{
    /// <summary>The cylinder pushes away from what it is bolted to.</summary>
    [Says("the full thrust: the cylinder hangs through and pulls on its bolts")]
    Thrust,
    /// <summary>The cylinder pushes against what it is bolted to.</summary>
    [Says("the return pull only: the thrust presses the mount on")]
    Pull,
}

/// <summary>A flange on the cylinder with a ring of bolts.</summary>
[Kind("flange"), Says("a flange on the cylinder with a ring of bolts")]
public sealed record FlangeMount : Mounting
{
    /// <summary>What the bolts carry.</summary>
    [Says("what the bolts carry")]
    public MountCarries? Carries { get; init; }

    /// <summary>Thread.</summary>
    [Needed, Says("thread of the bolts"), StockName(StockKind.Thread, "M20")]
    public string? Thread { get; init; }

    /// <summary>Class.</summary>
    [Says("strength class of the bolts"), StockName(StockKind.PropertyClass, "8.8")]
    public string? Class { get; init; }

    /// <summary>How many bolts stand on the circle.</summary>
    [Needed, Says("how many bolts stand on the circle"), Measure(Dimension.Count, "6", From = 2, UpTo = 64)]
    public double? Count { get; init; }

    /// <summary>Diameter of the bolt circle, m.</summary>
    [Needed, Says("diameter of the bolt circle"), Measure(Dimension.Length, "190 mm", UpTo = 3)]
    public double? Circle { get; init; }

    /// <summary>Thickness of the flange, m.</summary>
    [Needed, Says("thickness of the flange"), Measure(Dimension.Length, "30 mm", UpTo = 0.5)]
    public double? Plate { get; init; }

    /// <summary>Outside diameter of the flange, m.</summary>
    [Says("outside diameter of the flange"), Measure(Dimension.Length, "240 mm", UpTo = 3)]
    public double? Outside { get; init; }

    /// <summary>Length of thread in mesh where the bolts go into tapped holes, m.</summary>
    [Says("length of thread in mesh, where the bolts go into tapped holes or thin nuts"), Measure(Dimension.Length, "25 mm", UpTo = 0.5)]
    public double? Engagement { get; init; }
}

/// <summary>The cylinder's end stands against the crown or a plate under it.</summary>
[Kind("foot"), Says("the cylinder's end stands against the crown, or against a plate under it")]
public sealed record FootMount : Mounting
{
    /// <summary>Outside diameter of the face that bears, m.</summary>
    [Says("outside diameter of the face that bears"), Measure(Dimension.Length, "150 mm", UpTo = 3)]
    public double? Outside { get; init; }

    /// <summary>Diameter of a recess in the middle of that face, m.</summary>
    [Says("diameter of a recess in the middle of that face"), Measure(Dimension.Length, "60 mm", From = 0, UpTo = 3)]
    public double? Hole { get; init; }

    /// <summary>Thickness of the plate between cylinder and crown, m.</summary>
    [Says("thickness of the plate between cylinder and crown"), Measure(Dimension.Length, "40 mm", UpTo = 0.5)]
    public double? Plate { get; init; }

    /// <summary>Width of that plate along the crown, m.</summary>
    [Says("width of that plate, along the crown"), Measure(Dimension.Length, "220 mm", UpTo = 3)]
    public double? Width { get; init; }

    /// <summary>What that plate spans, m.</summary>
    [Says("how far that plate spans, between the middles of the webs it lies across"), Measure(Dimension.Length, "180 mm", UpTo = 3)]
    public double? Span { get; init; }
}

/// <summary>A box of two cheek plates with a cross plate that the cylinder pushes on.</summary>
[Kind("cradle"), Says("two cheek plates with a cross plate that the cylinder pushes on")]
public sealed record CradleMount : Mounting
{
    /// <summary>Thickness of each cheek plate, m.</summary>
    [Needed, Says("thickness of each cheek plate"), Measure(Dimension.Length, "20 mm", UpTo = 0.5)]
    public double? Cheek { get; init; }

    /// <summary>Width of each cheek plate, m.</summary>
    [Needed, Says("width of each cheek plate"), Measure(Dimension.Length, "180 mm", UpTo = 3)]
    public double? CheekWidth { get; init; }

    /// <summary>Diameter of a hole in each cheek plate, m.</summary>
    [Says("diameter of a hole in each cheek plate"), Measure(Dimension.Length, "40 mm", From = 0, UpTo = 3)]
    public double? CheekHole { get; init; }

    /// <summary>Clear gap between the cheek plates, m.</summary>
    [Needed, Says("clear gap between the cheek plates"), Measure(Dimension.Length, "160 mm", UpTo = 3)]
    public double? Apart { get; init; }

    /// <summary>Thickness of the cross plate, m.</summary>
    [Needed, Says("thickness of the cross plate"), Measure(Dimension.Length, "40 mm", UpTo = 0.5)]
    public double? Cross { get; init; }

    /// <summary>Width of the cross plate, m.</summary>
    [Says("width of the cross plate"), Measure(Dimension.Length, "180 mm", UpTo = 3)]
    public double? CrossWidth { get; init; }

    /// <summary>Diameter of the hole that the barrel passes through, m.</summary>
    [Says("diameter of the hole in the cross plate"), Measure(Dimension.Length, "80 mm", From = 0, UpTo = 3)]
    public double? Hole { get; init; }

    /// <summary>Outside diameter of what presses on the cross plate, m.</summary>
    [Says("outside diameter of the shoulder that presses on the cross plate"), Measure(Dimension.Length, "150 mm", UpTo = 3)]
    public double? Seat { get; init; }

    /// <summary>Welds of the cross plate and of the cheeks.</summary>
    [Says("weld along both faces of cross plate and cheeks")]
    public Weld? Weld { get; init; }
}

/// <summary>Brackets of bent plate or angle, bolted to the crown.</summary>
[Kind("bracket"), Says("brackets of bent plate or angle, bolted under the crown")]
public sealed record BracketMount : Mounting
{
    /// <summary>What the brackets carry.</summary>
    [Says("what the brackets carry")]
    public MountCarries? Carries { get; init; }

    /// <summary>How many brackets there are.</summary>
    [Says("how many brackets there are"), Measure(Dimension.Count, "2", From = 2, UpTo = 16)]
    public double? Brackets { get; init; }

    /// <summary>Thickness of the plate, m.</summary>
    [Needed, Says("thickness of the bracket's plate"), Measure(Dimension.Length, "20 mm", UpTo = 0.2)]
    public double? Plate { get; init; }

    /// <summary>Length of a bracket along its bend, m.</summary>
    [Needed, Says("length of a bracket along its bend"), Measure(Dimension.Length, "150 mm", UpTo = 3)]
    public double? Width { get; init; }

    /// <summary>Inside radius of the bend, m.</summary>
    [Says("inside radius of the bend"), Measure(Dimension.Length, "20 mm", UpTo = 0.5)]
    public double? BendRadius { get; init; }

    /// <summary>From the bolts to the middle of the pulled leg, m.</summary>
    [Needed, Says("from the bolts to the middle of the leg that is pulled"), Measure(Dimension.Length, "55 mm", UpTo = 1)]
    public double? Reach { get; init; }

    /// <summary>From the bolts to the free edge, m.</summary>
    [Says("from the bolts to the free edge"), Measure(Dimension.Length, "40 mm", UpTo = 1)]
    public double? Edge { get; init; }

    /// <summary>Between the pulled legs, across the cylinder, m.</summary>
    [Says("between the pulled legs, across the cylinder"), Measure(Dimension.Length, "170 mm", UpTo = 3)]
    public double? Apart { get; init; }

    /// <summary>Thread.</summary>
    [Needed, Says("thread of the bolts"), StockName(StockKind.Thread, "M20")]
    public string? Thread { get; init; }

    /// <summary>Class.</summary>
    [Says("strength class of the bolts"), StockName(StockKind.PropertyClass, "8.8")]
    public string? Class { get; init; }

    /// <summary>Bolts of each bracket, in one row along its bend.</summary>
    [Needed, Says("bolts of each bracket, in one row along its bend"), Measure(Dimension.Count, "2", From = 1, UpTo = 32)]
    public double? Count { get; init; }

    /// <summary>Length of thread in mesh where the bolts go into tapped holes, m.</summary>
    [Says("length of thread in mesh, where the bolts go into tapped holes or thin nuts"), Measure(Dimension.Length, "20 mm", UpTo = 0.5)]
    public double? Engagement { get; init; }
}

/// <summary>The cylinder is screwed into a plate by the thread on its collar.</summary>
[Kind("threaded-collar"), Says("screwed into a plate by the thread on the cylinder's collar")]
public sealed record CollarMount : Mounting
{
    /// <summary>Collar's thread.</summary>
    [Says("thread of the collar, where it is metric"), StockName(StockKind.Thread, "M120x3")]
    public string? Thread { get; init; }

    /// <summary>Outside diameter of a collar's thread that is not metric, m.</summary>
    [Says("outside diameter of a collar's thread that is not metric"), Measure(Dimension.Length, "3-5/16 in", UpTo = 1)]
    public double? Diameter { get; init; }

    /// <summary>Its pitch, m.</summary>
    [Says("pitch of that thread: one inch over the threads per inch"), Measure(Dimension.Length, "2.117 mm", UpTo = 0.02)]
    public double? Pitch { get; init; }

    /// <summary>Length of thread in mesh, m.</summary>
    [Says("length of thread in mesh"), Measure(Dimension.Length, "35 mm", UpTo = 0.5)]
    public double? Engagement { get; init; }

    /// <summary>Thickness of the plate, m.</summary>
    [Needed, Says("thickness of the plate it is screwed into"), Measure(Dimension.Length, "40 mm", UpTo = 0.5)]
    public double? Plate { get; init; }

    /// <summary>Width of the plate along the crown, m.</summary>
    [Says("width of that plate, along the crown"), Measure(Dimension.Length, "240 mm", UpTo = 3)]
    public double? Width { get; init; }

    /// <summary>What the plate spans, m.</summary>
    [Says("how far that plate spans, between the middles of the webs it lies across"), Measure(Dimension.Length, "200 mm", UpTo = 3)]
    public double? Span { get; init; }
}
