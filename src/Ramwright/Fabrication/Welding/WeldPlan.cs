using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Fabrication.Welding;

/// <summary>The welding of a whole press: every seam, what it takes, and in which order.</summary>
public sealed record WeldPlan
{
    /// <summary>How it is welded.</summary>
    public required RigWelder Welder { get; init; }
    /// <summary>The seams, in the order of the frame.</summary>
    public required IReadOnlyList<WeldLine> Lines { get; init; }
    /// <summary>Welds the file gives no size for: the builder decides.</summary>
    public required IReadOnlyList<string> Open { get; init; }
    /// <summary>What to weld first and what last.</summary>
    public required IReadOnlyList<string> Sequence { get; init; }

    /// <summary>The seams that may be welded, be it after a test: what the sums below count.</summary>
    public IEnumerable<WeldLine> Counted => Lines.Where(l => l.Preheating.Advice != WeldAdvice.DoNotWeld);

    /// <summary>Weld laid down, kg.</summary>
    public double Deposit => Counted.Sum(l => l.Deposit);
    /// <summary>Filler used up, kg.</summary>
    public double Filler => Counted.Sum(l => l.Filler);
    /// <summary>Time the arc burns, s.</summary>
    public double ArcTime => Counted.Sum(l => l.ArcTime);
    /// <summary>Time with everything about it, s.</summary>
    public double WorkTime => Counted.Sum(l => l.WorkTime);
    /// <summary>Gas, m³.</summary>
    public double Gas => Counted.Sum(l => l.Gas);
    /// <summary>Heat of the torch gas for preheating, J.</summary>
    public double Fuel => Lines.Sum(l => (l.HeatUp?.Fuel ?? 0) * l.Seam.Count);
    /// <summary>Time with the torch, s.</summary>
    public double HeatingTime => Lines.Sum(l => (l.HeatUp?.Time ?? 0) * l.Seam.Count);
    /// <summary>Whether a steel must be tested before anything is welded.</summary>
    public bool AsksForTests => Lines.Any(l => l.Preheating.Advice is WeldAdvice.TestFirst or WeldAdvice.DoNotWeld);

    /// <summary>Plans the welding of a press.</summary>
    /// <param name="check">The press.</param>
    /// <param name="units">Units of what it says.</param>
    /// <exception cref="PressFaultsException">A joint whose weld cannot be laid out.</exception>
    public static WeldPlan Of(PressCheck check, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        Seams seams = Seams.Of(check);
        WeldLine[] lines = [.. seams.Given.Select(s => WeldLine.Of(s, check.Rig.Welding, units))];
        return new WeldPlan { Welder = check.Rig.Welding, Lines = lines, Open = seams.Open, Sequence = WeldSequence.Of(check, [.. lines.Where(l => l.Preheating.Advice != WeldAdvice.DoNotWeld)], units) };
    }
}
