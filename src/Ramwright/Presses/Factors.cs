using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>The factors between the force at which a part gives and the force it is safe to.</summary>
[Says("factors of safety; leave them out unless you know why")]
public sealed record Factors
{
    /// <summary>On the load, for every part of the frame.</summary>
    [Says("on the load, for every part of the frame"), Measure(Dimension.Number, "1.5", From = 1, UpTo = 10)]
    public double? Load { get; init; }

    /// <summary>On Euler's load of the rod.</summary>
    [Says("on the buckling load of the rod"), Measure(Dimension.Number, "3.5", From = 1, UpTo = 10)]
    public double? RodBuckling { get; init; }

    /// <summary>On the yield of the barrel.</summary>
    [Says("on the yield of the barrel"), Measure(Dimension.Number, "2", From = 1, UpTo = 10)]
    public double? Barrel { get; init; }

    /// <summary>On the fatigue strength, γ_Mf.</summary>
    [Says("on the fatigue strength; 1.15 if you look for cracks by a plan"), Measure(Dimension.Number, "1.35", From = 1, UpTo = 10)]
    public double? Fatigue { get; init; }

    /// <summary>On the stress range of a squeeze, γ_Ff.</summary>
    [Says("on the stress of each squeeze, for fatigue"), Measure(Dimension.Number, "1", From = 1, UpTo = 10)]
    public double? FatigueLoad { get; init; }
}
