using System.Runtime.CompilerServices;
using Ramwright.Files;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Web.Forms;

/// <summary>Names to pick from, and what a loose search finds among them.</summary>
internal static class StockNames
{
    private static readonly ConditionalWeakTable<Shelf, Dictionary<StockKind, IReadOnlyList<string>>> Known = [];

    /// <summary>Everything on a shelf of one kind.</summary>
    public static IReadOnlyList<string> Of(Shelf shelf, StockKind kind)
    {
        Dictionary<StockKind, IReadOnlyList<string>> lists = Known.GetValue(shelf, s => new()
        {
            [StockKind.Steel] = [.. s.Steels.Where(x => x.Refused.Length == 0).Select(x => x.Name)],
            [StockKind.Section] = [.. s.Sections.Where(x => !x.BendsAskew).Select(x => x.Name)],
            [StockKind.PropertyClass] = [.. s.Classes.Select(x => x.Name).Distinct()],
            [StockKind.Thread] = [.. s.Threads.Select(x => x.Name)],
            [StockKind.Oil] = [.. s.Oils.Select(x => x.Name)],
            [StockKind.Hose] = [.. s.Hoses.Select(x => x.Type).Distinct()],
            [StockKind.Port] = [.. s.Ports.Select(x => x.Name)],
        });
        return lists[kind];
    }

    /// <summary>Up to ten names that fit what was typed: a kind and a size will do, <c>100x50 channel</c>.</summary>
    public static IReadOnlyList<string> Fitting(Shelf shelf, StockKind kind, string typed)
    {
        if (typed.Trim().Length == 0)
            return [];
        string key = Shelf.Key(typed), words = typed.Trim();
        // a pair is looked for by the name of its half
        bool pair = words.StartsWith("2x", StringComparison.OrdinalIgnoreCase) || words.StartsWith("2 x", StringComparison.OrdinalIgnoreCase);
        if (pair)
            words = words[(words.IndexOf('x', StringComparison.OrdinalIgnoreCase) + 1)..].Trim();
        IEnumerable<string> found = kind == StockKind.Section
            ? SectionSearch.Find(words, shelf.Sections).Select(s => pair || s.BendsAskew ? $"2 x {s.Name}" : s.Name)
            : Of(shelf, kind).Where(n => Shelf.Key(n).Contains(key, StringComparison.Ordinal));
        return [.. found.Where(n => n != typed.Trim()).Take(10)];
    }
}
