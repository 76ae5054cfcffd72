namespace Ramwright.Workings;

/// <summary>How far a source can be leaned on.</summary>
public enum Standing
{
    /// <summary>A published standard, handbook or data sheet.</summary>
    Published,
    /// <summary>Statics, geometry or conservation: follows from the inputs alone.</summary>
    Mechanics,
    /// <summary>Published, but quoted from memory: confirm before leaning on it.</summary>
    FromMemory,
    /// <summary>Common practice of the trade; no published source.</summary>
    Practice,
}
