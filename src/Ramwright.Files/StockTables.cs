using System.Reflection;
using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>Reads the stock tables that ship with the program, and a person's own beside them.</summary>
public static class StockTables
{
    /// <summary>In the order in which sections are listed.</summary>
    private static readonly string[] Shipped =
    [
        "i-sections", "ub-uc-sections", "w-sections", "channels", "c-sections", "angles", "tees", "hollow-sections", "tubes",
        "steels", "inch-classes", "classes", "unified-threads", "threads", "hoses", "oils", "port-threads",
    ];

    private static readonly Lazy<Shelf> Shelf = new(Build);

    /// <summary>The tables that ship with the program; read once, at first use. Properties of sections are computed when asked for.</summary>
    public static Shelf Built => Shelf.Value;

    /// <summary>The kinds of table there are, each with the line of column names to begin one with.</summary>
    public static IReadOnlyList<(string Kind, string Header)> Kinds =>
        [.. TableKinds.All.Select(k => (k.Name, k.Header))];

    /// <summary>Reads one table and puts its rows onto a shelf, in front of the old ones.</summary>
    /// <param name="table">
    /// Comma-separated text: a comment <c># table: KIND</c> where the columns alone do not tell the kind, a line of column
    /// names that end in their units (<c>h_mm</c>, <c>fy_MPa</c>), rows.
    /// </param>
    /// <param name="fileName">How faults name the table.</param>
    /// <param name="onto">The shelf to add to; it is left as it was.</param>
    /// <returns>The new shelf, and a fault for each row that could not be used; never throws for what stands in the table.</returns>
    public static StockReading Read(TextReader table, string fileName, Shelf onto)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(onto);
        return Read(table, fileName, onto, ownTable: true);
    }

    private static StockReading Read(TextReader table, string fileName, Shelf onto, bool ownTable)
    {
        CsvLines lines = CsvLines.Read(table);
        var faults = new List<TableFault>();
        void Fault(int line, string found, string wanted) => faults.Add(new TableFault(fileName, line, found, wanted));

        if (!TableHeader.TryRead(lines, Fault, out TableKind? kind, out Dictionary<string, FoundColumn>? columns))
            return new StockReading(onto, faults);

        var filler = new ShelfFiller();
        foreach (CsvRow csv in lines.Rows)
        {
            int line = csv.Line;
            string[] fields = csv.Fields;
            if (fields.Length > lines.Columns.Length)
            {
                Fault(line, $"the row has {fields.Length} fields under {lines.Columns.Length} columns", "quotes around a text with a comma in it");
                continue;
            }

            var row = new TableRow(fileName, line, fields, columns, lines.Separator == ';', ownTable);
            try
            {
                if (ownTable)
                    RefuseUnknown(kind, row);
                kind.Put(row, filler);
            }
            catch (BadRowException e)
            {
                Fault(line, e.Message, e.Wanted);
                if (kind.Name == "steels")
                    filler.Spoil(row.Text("name"));
            }
            catch (ArgumentOutOfRangeException e)       // a shape that its dimensions do not make
            {
                int bracket = e.Message.IndexOf(" (Parameter", StringComparison.Ordinal);
                Fault(line, (bracket < 0 ? e.Message : e.Message[..bracket]).TrimEnd('.'), "dimensions that fit together");
            }
        }

        return new StockReading(filler.Onto(onto), faults);
    }

    /// <summary>Steel without papers keeps the lowest strength, whatever a table says.</summary>
    private static void RefuseUnknown(TableKind kind, TableRow row)
    {
        if (kind.Name == "steels" && Ramwright.Stock.Shelf.SameName(row.Text("name"), "unknown"))
        {
            throw new BadRowException(
                "\"unknown\" is kept for steel without papers", "a name of its own for tested steel, and in source how it was tested");
        }
    }

    private static Shelf Build()
    {
        Shelf shelf = Ramwright.Stock.Shelf.Empty;
        var sections = new List<Shape>(700);
        foreach (string name in Shipped)
        {
            string file = $"Tables/{name}.csv";
            using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(file)
                ?? throw new InvalidOperationException($"{file} is missing from the program.");
            using var reader = new StreamReader(stream);
            StockReading reading = Read(reader, file, shelf with { Sections = [] }, ownTable: false);
            if (reading.Faults.Count > 0)
                throw new InvalidOperationException(string.Join('\n', reading.Faults));

            sections.AddRange(reading.Shelf.Sections);      // in the order of the files
            shelf = reading.Shelf;
        }

        return shelf with { Sections = sections };
    }
}
