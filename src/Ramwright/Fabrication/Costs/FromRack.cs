using Ramwright.Fabrication.Bars;
using Ramwright.Fabrication.Nesting;
using Ramwright.Quantities;

namespace Ramwright.Fabrication.Costs;

/// <summary>What of the steel lies in the workshop already, and what is bought and left over.</summary>
/// <param name="Own">Mass of each part that is cut from what lies there, kg, by the part's mark.</param>
/// <param name="Over">Left over of whole bars and sheets that are bought: what it is, and its mass, kg.</param>
public sealed record FromRack(IReadOnlyDictionary<string, double> Own, IReadOnlyList<(string What, double Mass)> Over)
{
    /// <summary>Left over where a bar that the file does not list is not cut to size but bought whole: what it is, and its mass, kg.</summary>
    public IReadOnlyList<(string What, double Mass)> OverIfWhole { get; init; } = [];

    /// <summary>Nothing lies there, and everything is bought cut to size.</summary>
    public static readonly FromRack Nothing = new(new Dictionary<string, double>(), []);

    /// <summary>By the plans of sawing and cutting. Where the file lists no bar or sheet for a part, the merchant is taken to cut it to size.</summary>
    /// <param name="bars">The sawing plan.</param>
    /// <param name="nests">The nests.</param>
    /// <param name="units">Units of what is said in words.</param>
    public static FromRack Of(BarPlan bars, NestPlan nests, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(bars);
        ArgumentNullException.ThrowIfNull(nests);
        IEnumerable<Part> sawn = bars.Groups.SelectMany(g => g.Bars).Where(b => !b.Bar.Buy).SelectMany(b => b.Pieces);
        IEnumerable<Part> cut = nests.Groups.SelectMany(g => g.Nests).Where(n => !n.Sheet.Buy).SelectMany(n => n.Parts).Select(p => p.Part);
        var over = new List<(string, double)>();
        foreach (BarGroup group in bars.Groups.Where(g => !g.Assumed))
            Add($"{group.Section.Name}, {Run(group.Bought, units)} in whole bars", LeftOver(group));
        foreach (NestGroup group in nests.Groups)
        {
            Nest[] bought = [.. group.Nests.Where(n => n.Sheet.Buy)];
            Add($"plate {Readout.Text(group.Thickness, Dimension.Length, units)}, {bought.Length} whole {(bought.Length == 1 ? "sheet" : "sheets")}",
                bought.Sum(n => n.SheetArea * group.Thickness * Stock.Steel.Density - n.Parts.Sum(p => p.Part.Mass ?? 0)));
        }

        return new FromRack(sawn.Concat(cut).GroupBy(p => p.Mark).ToDictionary(g => g.Key, g => g.Sum(p => p.Mass ?? 0)), over)
        {
            OverIfWhole = [.. bars.Groups.Where(g => g.Assumed).Select(g => ($"{g.Section.Name}, {Run(g.Bought, units)} in whole bars", LeftOver(g))).Where(o => o.Item2 > 1e-6)],
        };

        void Add(string what, double mass)
        {
            if (mass > 1e-6)
                over.Add((what, mass));
        }
    }

    private static double LeftOver(BarGroup group) => group.Bars.Where(b => b.Bar.Buy).Sum(b => b.Bar.Length * group.Section.Mass - b.Pieces.Sum(p => p.Mass ?? 0));

    // metres or feet, as bars are sold
    private static string Run(double length, UnitSystem units) =>
        Readout.Text(length, Units.Of(Dimension.Length).First(u => u.Symbol == (units == UnitSystem.Imperial ? "ft" : "m")), 4);
}
