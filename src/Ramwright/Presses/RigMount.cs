using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Screws or bolts with every number settled.</summary>
/// <param name="Thread">Thread.</param>
/// <param name="Class">Class.</param>
/// <param name="Count">How many.</param>
/// <param name="Engagement">Length in mesh, m; null where full nuts hold them.</param>
public sealed record RigScrews(ScrewThread Thread, PropertyClass Class, int Count, double? Engagement);

/// <summary>A mount with every number settled. SI.</summary>
public abstract record RigMount
{
    /// <summary>Steel of its plates.</summary>
    public required Steel Steel { get; init; }
}

/// <summary>A flange with a ring of bolts.</summary>
public sealed record RigFlangeMount : RigMount
{
    /// <summary>What the bolts carry.</summary>
    public required MountCarries Carries { get; init; }
    /// <summary>The bolts.</summary>
    public required RigScrews Bolts { get; init; }
    /// <summary>Bolt circle, m.</summary>
    public required double Circle { get; init; }
    /// <summary>Thickness, m.</summary>
    public required double Plate { get; init; }
    /// <summary>Outside diameter, m.</summary>
    public required double Outside { get; init; }
    /// <summary>Outside diameter of the barrel that the flange sits on, m.</summary>
    public required double Barrel { get; init; }
}

/// <summary>The cylinder's end bears on the crown or a plate.</summary>
public sealed record RigFootMount : RigMount
{
    /// <summary>Outside diameter of the bearing face, m.</summary>
    public required double Outside { get; init; }
    /// <summary>Recess in it, m.</summary>
    public required double Hole { get; init; }
    /// <summary>Plate, m; null where it bears on the crown itself.</summary>
    public double? Plate { get; init; }
    /// <summary>Width of the plate, m.</summary>
    public double Width { get; init; }
    /// <summary>What the plate spans, m; 0 where it lies flat on the crown.</summary>
    public double Span { get; init; }
}

/// <summary>Two cheeks and a cross plate.</summary>
public sealed record RigCradleMount : RigMount
{
    /// <summary>Thickness of each cheek, m.</summary>
    public required double Cheek { get; init; }
    /// <summary>Width of each cheek, m.</summary>
    public required double CheekWidth { get; init; }
    /// <summary>Hole in each cheek, m.</summary>
    public required double CheekHole { get; init; }
    /// <summary>Clear gap between the cheeks, m.</summary>
    public required double Apart { get; init; }
    /// <summary>Thickness of the cross plate, m.</summary>
    public required double Cross { get; init; }
    /// <summary>Width of the cross plate, m.</summary>
    public required double CrossWidth { get; init; }
    /// <summary>Hole in the cross plate, m.</summary>
    public required double Hole { get; init; }
    /// <summary>Diameter of the shoulder, m.</summary>
    public required double Seat { get; init; }
    /// <summary>The weld.</summary>
    public required RigWeld Weld { get; init; }
}

/// <summary>Brackets bolted under the crown.</summary>
public sealed record RigBracketMount : RigMount
{
    /// <summary>What they carry.</summary>
    public required MountCarries Carries { get; init; }
    /// <summary>How many.</summary>
    public required int Brackets { get; init; }
    /// <summary>Thickness, m.</summary>
    public required double Plate { get; init; }
    /// <summary>Length along the bend, m.</summary>
    public required double Width { get; init; }
    /// <summary>Inside radius of the bend, m.</summary>
    public required double BendRadius { get; init; }
    /// <summary>Bolts to the middle of the pulled leg, m.</summary>
    public required double Reach { get; init; }
    /// <summary>Bolts to the free edge, m.</summary>
    public required double Edge { get; init; }
    /// <summary>Between the pulled legs, m.</summary>
    public required double Apart { get; init; }
    /// <summary>Bolts of each bracket.</summary>
    public required RigScrews Bolts { get; init; }
}

/// <summary>Screwed into a plate by its collar.</summary>
public sealed record RigCollarMount : RigMount
{
    /// <summary>The collar's thread.</summary>
    public required ScrewThread Thread { get; init; }
    /// <summary>Length in mesh, m.</summary>
    public required double Engagement { get; init; }
    /// <summary>Thickness of the plate, m.</summary>
    public required double Plate { get; init; }
    /// <summary>Width of the plate, m.</summary>
    public required double Width { get; init; }
    /// <summary>What the plate spans, m; 0 where that is not said.</summary>
    public required double Span { get; init; }
}
