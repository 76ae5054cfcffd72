namespace Ramwright.Fabrication.Welding;

/// <summary>What to do about a seam.</summary>
public enum WeldAdvice
{
    /// <summary>Weld it, dry and not below 5 °C.</summary>
    Weld,
    /// <summary>Warm it first.</summary>
    Preheat,
    /// <summary>Find out what the steel is before an arc is struck on it.</summary>
    TestFirst,
    /// <summary>Do not weld it: bolt it, or take another steel.</summary>
    DoNotWeld,
}
