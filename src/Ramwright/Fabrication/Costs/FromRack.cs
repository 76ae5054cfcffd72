using Ramwright.Fabrication.Bars;
using Ramwright.Fabrication.Nesting;

namespace Ramwright.Fabrication.Costs;

/// <summary>How much of each part comes from what lies in the workshop.</summary>
public static class FromRack
{
    /// <summary>Mass by the part's mark, kg: pieces sawn from bars and cut from sheets that need not be bought.</summary>
    /// <param name="bars">The sawing plan.</param>
    /// <param name="nests">The nests.</param>
    public static IReadOnlyDictionary<string, double> Of(BarPlan bars, NestPlan nests)
    {
        ArgumentNullException.ThrowIfNull(bars);
        ArgumentNullException.ThrowIfNull(nests);
        IEnumerable<Part> sawn = bars.Groups.SelectMany(g => g.Bars).Where(b => !b.Bar.Buy).SelectMany(b => b.Pieces);
        IEnumerable<Part> cut = nests.Groups.SelectMany(g => g.Nests).Where(n => !n.Sheet.Buy).SelectMany(n => n.Parts).Select(p => p.Part);
        return sawn.Concat(cut).GroupBy(p => p.Mark).ToDictionary(g => g.Key, g => g.Sum(p => p.Mass ?? 0));
    }
}
