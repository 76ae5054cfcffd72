using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A coupling, bearing or bush pulled or pushed off.</summary>
[Says("a coupling, bearing or bush pulled or pushed off"), Kind("pull")]
public sealed record Pull : Job
{
    /// <summary>The joint that is taken apart.</summary>
    [Says("the joint that is taken apart")]
    public FitJoint? Joint { get; init; }

    /// <summary>How much harder it sits than when it was new.</summary>
    [Says("how many times harder than new it sits: 1.5 to 3 with rust or years"), Measure(Dimension.Number, "2", From = 1, UpTo = 10)]
    public double? Seized { get; init; }

    /// <summary>Force, where it is known, N.</summary>
    [Says("force it needs, where that is known and no joint is described"), Measure(Dimension.Force, "80 kN", UpTo = 20e6)]
    public double? Force { get; init; }

    /// <summary>How far it is pulled, m.</summary>
    [Says("how far it is pulled before it is free"), Measure(Dimension.Length, "60 mm", UpTo = 5)]
    public double? Travel { get; init; }

    /// <summary>Through the hollow plunger by a rod.</summary>
    [Says("a rod through the hollow plunger pulls it; no: the ram pushes")]
    public bool? ByRod { get; init; }
}
