using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>One end of a line: its thread and what that is screwed into.</summary>
[Says("one end of a line")]
public sealed record LineEnd
{
    /// <summary>Thread at the line's end.</summary>
    [Needed, Says("thread at the line's end"), StockName(StockKind.Port, "G 3/8")]
    public string? Thread { get; init; }

    /// <summary>Thread it is screwed into.</summary>
    [Needed, Says("thread it is screwed into: of pump, valve, cylinder or adaptor"), StockName(StockKind.Port, "G 3/8")]
    public string? Port { get; init; }

    /// <summary>What keeps the oil in.</summary>
    [Says("what keeps the oil in there")]
    public SealedBy? Seal { get; init; }
}

/// <summary>What keeps the oil in where two threads meet, as a press file says it.</summary>
public enum SealedBy
{
    /// <summary>Tape or sealant on the thread.</summary>
    [Says("tape or sealant on the thread")]
    Sealant = PortSeal.Sealant,
    /// <summary>Crests that crush.</summary>
    [Says("crests of the thread that crush")]
    Crests = PortSeal.Crests,
    /// <summary>A bonded washer.</summary>
    [Says("a washer with a bonded rubber lip")]
    BondedWasher = PortSeal.BondedWasher,
    /// <summary>An O-ring.</summary>
    [Says("an O-ring")]
    ORing = PortSeal.ORing,
    /// <summary>Metal on metal.</summary>
    [Says("metal on metal: flare or cone")]
    Cone = PortSeal.Cone,
}
