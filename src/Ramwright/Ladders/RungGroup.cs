namespace Ramwright.Ladders;

/// <summary>Which side of the press a rung belongs to.</summary>
public enum RungGroup
{
    /// <summary>What the pump can do; reaching it harms nothing.</summary>
    Power,
    /// <summary>Hoses and pipes.</summary>
    Lines,
    /// <summary>Barrel, rod and rating of the cylinder.</summary>
    Cylinder,
    /// <summary>Crown, bed, uprights, column, arms.</summary>
    Frame,
    /// <summary>Welds, bolts, pins.</summary>
    Joints,
    /// <summary>How far things move; reaching it spoils work, not the press.</summary>
    Stiffness,
}
