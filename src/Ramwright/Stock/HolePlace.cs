namespace Ramwright.Stock;

/// <summary>Which wall of a section a hole goes through.</summary>
public enum HolePlace
{
    /// <summary>Every web, at mid-depth unless said otherwise.</summary>
    Web,
    /// <summary>The bottom flange. Turn the loads round where the top one is in tension: the lesser modulus is the same.</summary>
    TensionFlange,
    /// <summary>Both flanges, one above the other.</summary>
    BothFlanges,
}
