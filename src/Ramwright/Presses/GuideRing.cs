namespace Ramwright.Presses;

/// <summary>What guides the ram in gland and on piston.</summary>
public enum GuideRing
{
    /// <summary>Cloth laminated with phenolic resin.</summary>
    [Says("laminate of cloth and resin")]
    Phenolic,
    /// <summary>PTFE strip filled with bronze.</summary>
    [Says("soft PTFE strip filled with bronze")]
    Ptfe,
    /// <summary>Acetal.</summary>
    [Says("hard white or black plastic, acetal")]
    Acetal,
    /// <summary>A bush of cast bronze.</summary>
    [Says("a bush of cast bronze")]
    Bronze,
}
