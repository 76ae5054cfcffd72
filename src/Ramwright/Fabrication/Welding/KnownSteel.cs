using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>What is known of the steel of one part at a weld.</summary>
/// <param name="Part">The part.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="Thickness">Its thickness at the weld, m.</param>
/// <param name="Composition">What it is made of, or the worst its standard allows; null where nobody knows.</param>
/// <param name="From">Where that comes from; null where nobody knows.</param>
/// <param name="Analysed">Whether it was analysed rather than read from a standard.</param>
public sealed record KnownSteel(string Part, Steel Steel, double Thickness, Composition? Composition, Citation? From, bool Analysed)
{
    /// <summary>What is known of a part's steel.</summary>
    public static KnownSteel Of(string part, Steel steel, double thickness, RigWelder welder)
    {
        ArgumentNullException.ThrowIfNull(steel);
        ArgumentNullException.ThrowIfNull(welder);
        if (welder.Analyses.TryGetValue(steel.Name, out Composition? analysed))
            return new KnownSteel(part, steel, thickness, analysed, new Citation("the analysis in the press file"), true);
        return GradeLimits.Of(steel.Name, thickness) is { } limits
            ? new KnownSteel(part, steel, thickness, limits.Worst(), limits.Source, false)
            : new KnownSteel(part, steel, thickness, null, null, false);
    }

    /// <summary>Whether it is a steel for welding: its standard names a weld factor, or it was analysed, and carbon is little enough.</summary>
    public bool Weldable => Composition is { } s && s.C <= MethodB.MostCarbon && (Analysed || Steel.BetaW is not null);

    /// <summary>Whether an analysis may be asked for to find out: steel without papers, not steel that is known to harden.</summary>
    public bool MayTurnOutWell => Composition is null && Steel.BetaW is not null;
}
