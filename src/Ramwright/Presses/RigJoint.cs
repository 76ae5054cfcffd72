using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A joint with every number settled. SI.</summary>
/// <param name="Fit">How a beam's end meets an upright.</param>
public abstract record RigJoint(BeamFit Fit)
{
    /// <summary>Plates in the inner corner; only welded joints have them.</summary>
    public RigGusset? Gusset { get; init; }
}

/// <summary>Welded all round where the members touch.</summary>
/// <param name="Fit">How a beam's end meets an upright.</param>
/// <param name="Weld">The weld.</param>
public sealed record RigWeldedJoint(BeamFit Fit, RigWeld Weld) : RigJoint(Fit);

/// <summary>Passed through a slot and welded all round on both faces.</summary>
/// <param name="Fit">How a beam's end meets an upright.</param>
/// <param name="Weld">The weld.</param>
/// <param name="Play">Play of the bar in its slot before welding, m.</param>
public sealed record RigSlottedJoint(BeamFit Fit, RigWeld Weld, double Play) : RigJoint(Fit);

/// <summary>Cut from one plate, or bent from one bar.</summary>
/// <param name="Fit">How a beam's end meets an upright.</param>
/// <param name="Radius">Radius of the inner corner, m; 0 is sharp.</param>
public sealed record RigOnePieceJoint(BeamFit Fit, double Radius) : RigJoint(Fit);

/// <summary>Bolted.</summary>
public sealed record RigBoltedJoint(BeamFit Fit) : RigJoint(Fit)
{
    /// <summary>Thread.</summary>
    public required ScrewThread Thread { get; init; }
    /// <summary>Class.</summary>
    public required PropertyClass Class { get; init; }
    /// <summary>Bolts at each end of a beam.</summary>
    public required int Count { get; init; }
    /// <summary>Between bolts along the beam, m.</summary>
    public required double Pitch { get; init; }
    /// <summary>Between bolts along the upright, m.</summary>
    public required double Gauge { get; init; }
    /// <summary>Last hole to edge along the force, m.</summary>
    public required double Edge { get; init; }
    /// <summary>Thinnest plate the bolts bear on, m.</summary>
    public required double Plate { get; init; }
    /// <summary>Length of thread in mesh, m; null where full nuts hold the bolts.</summary>
    public double? Engagement { get; init; }
    /// <summary>Sheared planes of each bolt.</summary>
    public required int ShearPlanes { get; init; }
    /// <summary>The plate on the beam's end; null where the beam laps, or has none.</summary>
    public RigBoltedEnd? EndPlate { get; init; }
    /// <summary>Slip factor μ of faces held by the code's preload; null for ordinary bolts.</summary>
    public double? Friction { get; init; }

    /// <summary>Bolts along the beam and along the upright: two columns where four or more are even in number, else one.</summary>
    public (int Along, int Up) Columns => Count >= 4 && Count % 2 == 0 ? (2, Count / 2) : (1, Count);

    /// <summary>Hole of the usual clearance, m.</summary>
    public double Hole => ScrewThread.UsualHole(Thread.D);
}

/// <summary>The plate on a beam's end that bolts go through. SI.</summary>
/// <param name="Thickness">m.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="Weld">Its weld to the beam, all round.</param>
public sealed record RigBoltedEnd(double Thickness, Steel Steel, RigWeld Weld);

/// <summary>One pin at each end.</summary>
public sealed record RigPinnedJoint(BeamFit Fit) : RigJoint(Fit)
{
    /// <summary>Diameter, m.</summary>
    public required double Diameter { get; init; }
    /// <summary>Steel of the pin.</summary>
    public required Steel Steel { get; init; }
    /// <summary>Thickness of the middle part, m.</summary>
    public required double Middle { get; init; }
    /// <summary>Thickness of each outer part, m.</summary>
    public required double Outer { get; init; }
    /// <summary>Gap between middle and outer, m.</summary>
    public required double Gap { get; init; }
}

/// <summary>A weld by its throat.</summary>
/// <param name="Kind">Fillet or butt.</param>
/// <param name="Throat">Throat thickness a, m; of a butt weld the thickness of the part it joins.</param>
public sealed record RigWeld(WeldKind Kind, double Throat);
