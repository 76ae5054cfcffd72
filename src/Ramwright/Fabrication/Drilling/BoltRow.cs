using Ramwright.Stock;

namespace Ramwright.Fabrication.Drilling;

/// <summary>One kind of bolt, screw or rod of the press: what to drill, how deep, how tight.</summary>
public sealed record BoltRow
{
    /// <summary>Where it sits.</summary>
    public required string Where { get; init; }
    /// <summary>Its path in the press file.</summary>
    public required string Key { get; init; }
    /// <summary>How many in the whole press.</summary>
    public required int Count { get; init; }
    /// <summary>Thread.</summary>
    public required ScrewThread Thread { get; init; }
    /// <summary>Strength class, or the steel of the bar.</summary>
    public required string Grade { get; init; }
    /// <summary>Hole to drill where it passes through, m; null where it passes through nothing.</summary>
    public double? Hole { get; init; }
    /// <summary>Drill before the tap, m; null where full nuts hold it.</summary>
    public double? TapDrill { get; init; }
    /// <summary>Full thread to be cut, m; null where full nuts hold it.</summary>
    public double? ThreadDepth { get; init; }
    /// <summary>Depth of a blind hole by its cylinder, m.</summary>
    public double? HoleDepth => ThreadDepth + BlindHole.RunOut(Thread.P);
    /// <summary>Thread at which it would strip no sooner than the bolt breaks, m; null where full nuts hold it, or where the steel is not known.</summary>
    public double? FullStrengthDepth { get; init; }
    /// <summary>Yield strength that tightening counts with, Pa; zero for what is not tightened by torque.</summary>
    public double Yield { get; init; }
    /// <summary>Torque and preload; null for what is not tightened by torque.</summary>
    public TorqueSetting? Setting => Yield > 0 ? Tightening.Set(Thread, Yield) : null;
    /// <summary>What to look to.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
