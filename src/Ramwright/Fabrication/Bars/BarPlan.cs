using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Fabrication.Bars;

/// <summary>Which bars are sawn into which parts, what is left of them, and what has to be bought.</summary>
/// <param name="Groups">One for each section and steel.</param>
public sealed record BarPlan(IReadOnlyList<BarGroup> Groups)
{
    /// <summary>Commercial length that is taken where the file lists no bar of a section, m; common practice.</summary>
    /// <param name="units">Whose trade.</param>
    public static double UsualLength(UnitSystem units) => TradeSizes.Of(units).Bar;

    private const double PerMetre = 1e6;        // whole micrometres

    /// <summary>A bought metre against one that lies in the rack: what has to be bought counts first.</summary>
    private const long Bought = 1000;

    /// <summary>Plans the sawing of a press's lengths.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="rig">The press, with its bars and saw.</param>
    /// <param name="units">Whose trade sells what the file does not list.</param>
    public static BarPlan Of(PartList parts, Rig rig, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(rig);
        var left = rig.Bars.Select(b => b.Count).ToArray();
        return new BarPlan([.. parts.Lengths.GroupBy(l => (Name: SoldAs(l.Section), Steel: l.Steel?.Name ?? "")).Select(g => Group([.. g], rig, left, units))]);
    }

    // flat and round bar by its sizes, whichever tape named them
    private static string SoldAs(Shape section) => section switch
    {
        Flat f => $"FLAT {SectionSizes.Named([f.H, f.T], inches: false)}",
        Round r => $"ROUND {SectionSizes.Named([r.D], inches: false)}",
        _ => section.Name.ToUpperInvariant(),
    };

    /// <summary>A bar's steel will do for a part: the same, or the part's is not known.</summary>
    internal static bool Suits(Steel? part, Steel stock) => part is null || part.Name == "unknown" || part.Name == stock.Name;

    // parts of one section and steel; what they use up is no longer there for the next
    private static BarGroup Group(LengthPart[] wanted, Rig rig, int[] left, UnitSystem units)
    {
        (double kerf, double rough) = (rig.Cutting.SawKerf, rig.Cutting.RoughEnd);
        var stock = new List<(RigBarInStock Bar, int Index)>();
        for (int i = 0; i < rig.Bars.Count; i++)
        {
            RigBarInStock bar = rig.Bars[i];
            if (SoldAs(bar.Section) == SoldAs(wanted[0].Section) && Suits(wanted[0].Steel, bar.Steel) && (bar.Count == 0 || left[i] > 0))
                stock.Add((bar, i));
        }

        bool assumed = stock.Count == 0;
        if (assumed)
            stock.Add((new RigBarInStock(wanted[0].Section, wanted[0].Steel ?? Unknown, UsualLength(units), 0, true), -1));
        double longest = stock.Max(s => s.Bar.Length) - rough;
        LengthPart[] tooLong = [.. wanted.Where(w => w.Length > longest + 1e-9)], fit = [.. wanted.Except(tooLong).OrderByDescending(w => w.Length).ThenBy(w => w.Mark, StringComparer.Ordinal)];
        if (fit.Length == 0)
            return new BarGroup(wanted[0].Section, wanted[0].Steel, [], [.. tooLong.Select(t => (t, t.Count))], assumed, 0, 0, true);

        int all = fit.Sum(f => f.Count);
        int[] have = [.. stock.Select(s => s.Index < 0 || s.Bar.Count == 0 ? all : left[s.Index])];
        long Cost(RigBarInStock bar) => (bar.Buy ? Bought : 1) * Whole(bar.Length);
        var task = new CutTask([.. fit.Select(f => new CutLength(Whole(f.Length + kerf), f.Count))], [.. stock.Select((s, j) => new CutBar(Math.Max(1, Whole(s.Bar.Length - rough + kerf)), Cost(s.Bar), have[j]))]);
        List<(LengthPart, int)> without = [.. tooLong.Select(t => (t, t.Count))];
        CutSolution? solved = CuttingStock.Solve(task);
        if (solved is null)
            (task, solved) = AsFarAsItGoes(task, fit, without);
        var bars = new List<SawnBar>();
        foreach (CutPattern pattern in solved?.Patterns ?? [])
        {
            (RigBarInStock bar, int index) = stock[pattern.Bar];
            LengthPart[] pieces = [.. pattern.Counts.SelectMany((n, i) => Enumerable.Repeat(fit[i], n))];
            double used = rough + pieces.Sum(p => p.Length) + kerf * pieces.Length;
            bars.Add(new SawnBar(bar, pieces, Math.Max(0, bar.Length - used)));
            if (index >= 0 && bar.Count > 0)
                left[index]--;
        }

        return new BarGroup(wanted[0].Section, wanted[0].Steel, [.. bars.OrderBy(b => b.Bar.Buy).ThenByDescending(b => b.Bar.Length).ThenByDescending(b => b.Pieces[0].Length)], without, assumed,
            bars.Where(b => b.Bar.Buy).Sum(b => b.Bar.Length), bars.Where(b => !b.Bar.Buy).Sum(b => b.Bar.Length), solved?.IsProven ?? true);
    }

    // there is too little: the shortest lengths are left out, one by one, until the rest can be sawn
    private static (CutTask, CutSolution?) AsFarAsItGoes(CutTask task, LengthPart[] fit, List<(LengthPart, int)> without)
    {
        int[] counts = [.. task.Lengths.Select(l => l.Count)];
        for (int i = counts.Length - 1; i >= 0; i--)
        {
            while (counts[i] > 0)
            {
                counts[i]--;
                int at = without.FindIndex(w => w.Item1 == fit[i]);
                if (at < 0)
                    without.Add((fit[i], 1));
                else
                    without[at] = (fit[i], without[at].Item2 + 1);
                int[] kept = [.. Enumerable.Range(0, counts.Length).Where(k => counts[k] > 0)];
                if (kept.Length == 0)
                    return (task, null);
                var less = new CutTask([.. kept.Select(k => new CutLength(task.Lengths[k].Weight, counts[k]))], task.Bars);
                if (CuttingStock.Solve(less, 20_000) is { } solved)
                {
                    CutPattern[] patterns = [.. solved.Patterns.Select(p => new CutPattern(p.Bar, Spread(p.Counts, kept, counts.Length)))];
                    return (task, solved with { Patterns = patterns });
                }
            }
        }

        return (task, null);
    }

    private static int[] Spread(IReadOnlyList<int> counts, int[] kept, int all)
    {
        var spread = new int[all];
        for (int k = 0; k < kept.Length; k++)
            spread[kept[k]] = counts[k];
        return spread;
    }

    private static readonly Steel Unknown = new() { Name = "unknown", Bands = [new StrengthBand(double.MaxValue, 1, 1)], Source = Workings.Citation.Practice("not known") };

    private static long Whole(double metres) => (long)Math.Round(metres * PerMetre);
}

/// <summary>Bars of one section and steel.</summary>
/// <param name="Section">The section.</param>
/// <param name="Steel">The steel of the parts; null where that is not known.</param>
/// <param name="Bars">How each bar is sawn; those that lie in the rack first.</param>
/// <param name="Without">Parts that find no bar, and how many of each.</param>
/// <param name="Assumed">Whether bars of the usual length are taken to be bought, because the file lists none.</param>
/// <param name="Bought">Metres that have to be bought.</param>
/// <param name="Used">Metres that are taken from the rack.</param>
/// <param name="Proven">Whether no plan buys less, and of those none takes less from the rack.</param>
public sealed record BarGroup(
    Shape Section, Steel? Steel, IReadOnlyList<SawnBar> Bars, IReadOnlyList<(LengthPart Part, int Count)> Without, bool Assumed, double Bought, double Used, bool Proven);

/// <summary>One bar and what is sawn from it.</summary>
/// <param name="Bar">The bar.</param>
/// <param name="Pieces">The parts in the order they are sawn, the longest first.</param>
/// <param name="Left">What is left of it, m.</param>
public sealed record SawnBar(RigBarInStock Bar, IReadOnlyList<LengthPart> Pieces, double Left);
