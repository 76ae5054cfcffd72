using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A job that the press is to do.</summary>
[Says("a job the press is to do")]
[Kinds(typeof(HotSqueeze), typeof(ClosedDie), typeof(VBend), typeof(BarBend), typeof(Straighten), typeof(Punch), typeof(Shear), typeof(PressFit), typeof(Pull),
    typeof(Crush), typeof(CrushTimber), typeof(SplitTimber), typeof(CrushConcrete))]
public abstract record Job
{
    /// <summary>What the job is called.</summary>
    [Says("what you call the job")]
    public string? Name { get; init; }

    /// <summary>Height of all tooling in the opening, m.</summary>
    [Says("height of all that stands in the opening with the work: dies, blocks, chair"), Measure(Dimension.Length, "120 mm", From = 0, UpTo = 5)]
    public double? Tools { get; init; }
}
