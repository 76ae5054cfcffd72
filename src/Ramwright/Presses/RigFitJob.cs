namespace Ramwright.Presses;

/// <summary>A joint held by its size with every number settled. SI.</summary>
public sealed record RigFitJoint
{
    /// <summary>Diameter of the joint, m.</summary>
    public required double D { get; init; }
    /// <summary>Its length, m.</summary>
    public required double Length { get; init; }
    /// <summary>Outside of the hub, m.</summary>
    public required double HubOutside { get; init; }
    /// <summary>Bore of the shaft, m; 0 for a solid one.</summary>
    public required double ShaftBore { get; init; }
    /// <summary>Least interference, m on the diameter, roughness already taken off; 0 or more.</summary>
    public required double Least { get; init; }
    /// <summary>Greatest interference, m, roughness already taken off.</summary>
    public required double Most { get; init; }
    /// <summary>What the hub is made of.</summary>
    public required FitMetal Hub { get; init; }
    /// <summary>What the shaft is made of.</summary>
    public required FitMetal Shaft { get; init; }
    /// <summary>Whether the hub is a bearing's inner ring.</summary>
    public required bool IsBearing { get; init; }
    /// <summary>Coefficient of friction.</summary>
    public required double Friction { get; init; }
}

/// <summary>A press fit with every number settled. SI.</summary>
public sealed record RigPressFit : RigJob
{
    /// <summary>The joint.</summary>
    public required RigFitJoint Joint { get; init; }
    /// <summary>The hub's steel; null where not said.</summary>
    public WorkSteel? HubSteel { get; init; }
}

/// <summary>A pull or push off with every number settled. SI.</summary>
public sealed record RigPull : RigJob
{
    /// <summary>The joint; null where the force is known.</summary>
    public RigFitJoint? Joint { get; init; }
    /// <summary>How many times harder than new.</summary>
    public required double Seized { get; init; }
    /// <summary>Known force, N; 0 with a joint.</summary>
    public required double Force { get; init; }
    /// <summary>How far, m.</summary>
    public required double Travel { get; init; }
    /// <summary>Whether a rod through the hollow plunger pulls it.</summary>
    public required bool ByRod { get; init; }
}
