namespace Ramwright.Presses;

/// <summary>The valves that decide what a raised ram does when power fails. What is not said is named as missing, never guessed.</summary>
[Says("the valves that decide what a raised ram does when power fails")]
public sealed record Valves
{
    /// <summary>What the spool joins in its middle.</summary>
    [Says("what the control valve's spool joins in its middle")]
    public SpoolCentre? Centre { get; init; }

    /// <summary>What the lever or solenoid does when it is let go.</summary>
    [Says("what the spool does when lever or solenoid lets go")]
    public SpoolHandle? Handle { get; init; }

    /// <summary>The valve that holds the load.</summary>
    [Says("the valve that holds the ram's load")]
    public HoldingValve? Holding { get; init; }

    /// <summary>Whether it is screwed into the cylinder's own port.</summary>
    [Says("the holding valve is screwed to the cylinder's own port, no hose between")]
    public bool? HoldingAtCylinder { get; init; }

    /// <summary>Whether a hose-burst valve stands in the cylinder's port.</summary>
    [Says("a hose-burst valve (velocity fuse) in the cylinder's port")]
    public bool? HoseBurst { get; init; }

    /// <summary>Whether a check valve at the pump keeps oil from running back through it.</summary>
    [Says("a check valve at the pump keeps oil from running back through it")]
    public bool? PumpCheck { get; init; }
}

/// <summary>What a spool joins in its middle.</summary>
public enum SpoolCentre
{
    /// <summary>Nothing.</summary>
    [Says("nothing: all ports blocked")]
    Closed,
    /// <summary>Both cylinder ports and the tank; the pump blocked.</summary>
    [Says("both cylinder ports to the tank, the pump blocked")]
    Float,
    /// <summary>Pump to tank; both cylinder ports blocked.</summary>
    [Says("pump to tank, both cylinder ports blocked")]
    Tandem,
    /// <summary>Everything.</summary>
    [Says("everything to the tank")]
    Open,
}

/// <summary>What a spool does when it is let go.</summary>
public enum SpoolHandle
{
    /// <summary>It goes back to its middle.</summary>
    [Says("springs bring it to its middle")]
    SpringCentred,
    /// <summary>It stays where it was.</summary>
    [Says("it stays where it was")]
    Detent,
}

/// <summary>A valve that holds the load.</summary>
public enum HoldingValve
{
    /// <summary>There is none.</summary>
    [Says("none")]
    None,
    /// <summary>A check valve that the other side's pressure opens.</summary>
    [Says("a pilot-operated check valve")]
    PilotCheck,
    /// <summary>A valve that opens only when the other side pushes.</summary>
    [Says("a counterbalance (overcentre) valve")]
    Counterbalance,
}
