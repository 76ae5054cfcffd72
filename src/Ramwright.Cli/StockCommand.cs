using Ramwright.Files;
using Ramwright.Quantities;
using Ramwright.Stock;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>Looks things up in stock.</summary>
internal sealed class StockCommand(IAnsiConsole screen) : Command<StockSettings>
{
    private const int Most = 12;

    public override int Execute(CommandContext context, StockSettings settings, CancellationToken cancellationToken)
    {
        if (OwnTable(settings, StockTables.Built) is not { } shelf)
            return ExitCode.WrongInput;
        if (settings.Name is null)
        {
            if (settings.Json)
                JsonOut.Write(screen, StockJson.Text(shelf));
            else
                Overview(shelf);
            return ExitCode.Holds;
        }

        IReadOnlyList<StockItem> found = StockFacts.Find(settings.Name, shelf);
        if (found.Count == 0)
        {
            // a section told by kind and sizes has a better word than the nearest name
            if (!SectionText.TryRead(settings.Name, shelf, null, out _, out ReadingFault? fault) && !fault.Found.StartsWith("no section", StringComparison.Ordinal))
                return screen.Refuse(settings.Json, fault.Found, fault.Wanted);
            IEnumerable<string> names = shelf.Sections.Select(s => s.Name).Concat(shelf.Steels.Select(s => s.Name)).Concat(shelf.Threads.Select(t => t.Name));
            return screen.Refuse(settings.Json, $"nothing in stock is called \"{settings.Name}\"; nearest: {string.Join(", ", NearestWord.Ranked(settings.Name, names))}");
        }

        if (settings.Json)
            JsonOut.Write(screen, StockJson.Text(found));
        else if (found.Count > Most)
            screen.Paragraph($"{found.Count} fit: {string.Join(", ", found.Select(f => f.Name))}");
        else
            Show(found, settings.System);
        return ExitCode.Holds;
    }

    private Shelf? OwnTable(StockSettings settings, Shelf built)
    {
        if (settings.Table is null)
            return built;
        if (!File.Exists(settings.Table))
        {
            screen.Refuse(settings.Json, $"{settings.Table} is not there");
            return null;
        }

        using TextReader? reader = TableFile.Open(settings.Table);
        if (reader is null)
        {
            screen.Refuse(settings.Json, $"{settings.Table} is too long for a stock table");
            return null;
        }

        StockReading reading = StockTables.Read(reader, settings.Table, built);
        if (reading.Faults.Count > 0)
            screen.Refuse(settings.Json, string.Join('\n', reading.Faults));
        return reading.Faults.Count == 0 ? reading.Shelf : null;
    }

    private void Show(IReadOnlyList<StockItem> found, UnitSystem units)
    {
        foreach (StockItem item in found)
        {
            screen.Heading(item.Name, " " + item.Kind);
            int symbols = item.Facts.Max(f => f.Symbol.Length);
            foreach ((string symbol, string meaning, double si, Dimension dimension) in item.Facts)
                screen.Write(new Lines(new Cell(1, symbol, symbols), new Cell(3 + symbols, Readout.Text(si, dimension, units, 4), 16), new Cell(21 + symbols, meaning)));
            screen.WriteLine(" " + item.Source);
            if (item.Caution.Length > 0)
                screen.Bullet("!", item.Caution);
            screen.WriteLine();
        }
    }

    private void Overview(Shelf shelf)
    {
        screen.WriteLine($"{shelf.Sections.Count} sections:");
        foreach (IGrouping<string, Shape> family in shelf.Sections.GroupBy(Family))
            screen.WriteLine($"  {family.Key,-6} {family.Count(),4}   {family.First().Name} to {family.Last().Name}");
        screen.WriteLine("  and by dimensions: flat 200x40, round 60, square 50, box 200x150x12, half IPE 200, 2 x any of them");
        screen.Paragraph($"Steels: {string.Join(", ", shelf.Steels.DistinctBy(s => s.Bands).Select(s => s.Name))}; most go by other names too");
        screen.Paragraph($"Bolt classes: {string.Join(", ", shelf.Classes.DistinctBy(c => (c.Sp, c.Fub, c.Above)).Select(c => c.Name).Distinct())}");
        foreach (IGrouping<string, ScrewThread> family in shelf.Threads.GroupBy(t => t.Form == ThreadForm.Metric ? "M" : t.Name.Split(' ')[^1]))
            screen.WriteLine($"Threads: {family.First().Name} to {family.Last().Name}");
        screen.WriteLine("  and by size and pitch: M36x2, 3/4-12 UN");
        screen.Paragraph($"Hoses: {string.Join(", ", shelf.Hoses.Select(h => h.Type).Distinct())}");
        screen.Paragraph($"Oils: {string.Join(", ", shelf.Oils.Select(o => o.Name))}");
        screen.Paragraph("One of them: ramwright stock \"UPN 200\"; those of a kind: ramwright stock \"100x50 channel\"");
    }

    /// <summary>The letters that a name begins with: <c>HEB</c>, <c>W</c>.</summary>
    private static string Family(Shape section) => string.Concat(section.Name.TakeWhile(char.IsLetter));
}
