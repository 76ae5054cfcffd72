using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A family of screw threads of 60°: what their standards reckon differently.</summary>
/// <param name="Name">As it is called.</param>
/// <param name="StressDrop">How many pitches the diameter of the stress area lies under the major diameter.</param>
/// <param name="StressArea">Where that comes from.</param>
public sealed record ThreadForm(string Name, double StressDrop, Citation StressArea)
{
    /// <summary>ISO metric threads: A_s = π/4 (d − 0.9382 P)².</summary>
    public static readonly ThreadForm Metric = new("metric", 0.9382, new("ISO 898-1:2013", "9.1.6.1"));

    /// <summary>Unified inch threads, UNC, UNF and UN: A_s = π/4 (d − 0.9743 P)².</summary>
    public static readonly ThreadForm Unified = new("unified", 0.9743, new("ASME B1.1-2003", "appendix B, tensile stress area", Standing.FromMemory));
}
