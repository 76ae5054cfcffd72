using Ramwright.Fabrication.Costs;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>What is needed, what it costs, and whether it is worth building.</summary>
public static class CostChapter
{
    internal static Chapter Of(Papers p)
    {
        CostSheet sheet = p.Costs;
        var rows = new List<IReadOnlyList<string>>();
        var heavy = new HashSet<int>();
        foreach (CostGroup group in Enum.GetValues<CostGroup>())
        {
            CostLine[] lines = [.. sheet.Lines.Where(l => l.Group == group)];
            if (lines.Length == 0)
                continue;
            heavy.Add(rows.Count);
            rows.Add([Name(group), "", "", lines.Any(l => l.Each is not null) ? Figure(sheet.Of(group)) : ""]);
            rows.AddRange(lines.Select(l => (IReadOnlyList<string>)[l.What + (l.Note.Length > 0 ? $" ({l.Note})" : ""), Quantity(p, l), l.Each is { } each ? Figure(each) : "", l.Total is { } total ? Figure(total) : "no price"]));
        }

        var blocks = new List<Block> { new Grid([new("what", 6.2), new("how much", 1.3, true), new("each", 1, true), new(sheet.Currency.Length > 0 ? $"in {sheet.Currency}" : "cost", 1.2, true)], rows) { Heavy = heavy } };
        var facts = new List<(string, string, string)>();
        if (sheet.Lines.Any(l => l.Each is not null))
        {
            facts.Add(("to pay", Money(sheet, sheet.Outlay), "hours not counted"));
            if (sheet.OutlayWhole is { } whole)
                facts.Add(("in whole bars", Money(sheet, whole), $"the same where the merchant does not cut to size: {p.T(sheet.OverIfWhole, Dimension.Mass)} more of steel, left over and yours"));
            facts.Add(("with your hours", Money(sheet, sheet.Total), sheet.Hours > 0 ? $"{sheet.Hours:0.0} h{(p.Rig.Costs.AnHour is null ? ", which have no price" : "")}" : "no hours are counted"));
        }

        if (sheet.Instead is { } bought && sheet.Saved is { } saved)
        {
            facts.Add((bought.Name ?? "a finished press", Money(sheet, bought.Price ?? 0), "bought"));
            facts.Add((saved >= 0 ? "building saves" : "building costs more by", Money(sheet, Math.Abs(saved)), (sheet.SavedAnHour is { } hour ? $"{Money(sheet, hour)} for each hour of your work" : "hours not counted") + Short(sheet)));
        }

        if (facts.Count > 0)
            blocks.Add(new Facts(facts));
        if (sheet.WithoutPrice.Count > 0)
            blocks.Add(new Prose($"{sheet.WithoutPrice.Count} lines have no price: the sums are short by them. Say it under costs, where it is known.", Tone.Warn));
        return new Chapter("Bill of materials and cost", blocks);
    }

    /// <summary>A quantity with its unit, in the reader's units.</summary>
    public static string Quantity(Papers p, CostLine line) => line.Unit switch
    {
        "kg" => p.T(line.Quantity, Dimension.Mass),
        "L" => p.T(line.Quantity / 1000, Dimension.Volume),
        "m3" => p.T(line.Quantity, Dimension.Volume),
        "h" => WeldChapter.Hours(line.Quantity * 3600),
        "" => Readout.Number(line.Quantity),
        _ => $"{Readout.Number(line.Quantity)} {line.Unit}",
    };

    /// <summary>A sum of money, in the words of the file.</summary>
    public static string Money(CostSheet sheet, double sum) => sheet.Currency.Length > 0 ? $"{Figure(sum)} {sheet.Currency}" : Figure(sum);

    /// <summary>That a sum is short, where it is.</summary>
    public static string Short(CostSheet sheet) => sheet.WithoutPrice.Count > 0 ? $"; {sheet.WithoutPrice.Count} lines have no price yet" : "";

    private static string Figure(double sum) => sum.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);

    private static string Name(CostGroup group) => group switch
    {
        CostGroup.Steel => "Steel",
        CostGroup.Bought => "Bought",
        CostGroup.Welding => "Welding",
        _ => "Work",
    };
}
