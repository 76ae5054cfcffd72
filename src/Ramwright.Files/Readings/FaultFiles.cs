using System.Globalization;
using System.Reflection;
using Ramwright.FaultFinding;

namespace Ramwright.Files.Readings;

/// <summary>Tables of causes, signs and links: those that ship with the program, and a person's own beside the press file.</summary>
public static class FaultFiles
{
    private static readonly Lazy<FaultTables> Shipped = new(Build);

    /// <summary>The tables that ship with the program.</summary>
    public static FaultTables Built => Shipped.Value;

    /// <summary>The tables for a press: rows of <c>NAME.fault-causes.csv</c>, <c>NAME.fault-signs.csv</c> and <c>NAME.fault-links.csv</c> beside its file replace those of the same name.</summary>
    /// <param name="pressPath">Path of the press file.</param>
    public static (FaultTables Tables, IReadOnlyList<TableFault> Faults) For(string pressPath)
    {
        ArgumentNullException.ThrowIfNull(pressPath);
        string stem = ReadingLog.PathFor(pressPath)[..^ReadingLog.Ending.Length];
        var faults = new List<TableFault>();
        var own = new FaultTables(
            Rows(stem, "fault-causes", faults, Cause), Rows(stem, "fault-signs", faults, Sign), Rows(stem, "fault-links", faults, Link));
        return (Over(Built, own), faults);
    }

    private static FaultTables Over(FaultTables below, FaultTables above) => new(
        [.. above.Causes.DistinctBy(c => c.Id), .. below.Causes.ExceptBy(above.Causes.Select(c => c.Id), c => c.Id)],
        [.. above.Signs.DistinctBy(s => s.Id), .. below.Signs.ExceptBy(above.Signs.Select(s => s.Id), s => s.Id)],
        [.. above.Links.DistinctBy(l => (l.Cause, l.Sign)), .. below.Links.ExceptBy(above.Links.Select(l => (l.Cause, l.Sign)), l => (l.Cause, l.Sign))]);

    private static IReadOnlyList<T> Rows<T>(string stem, string kind, List<TableFault> faults, Func<Row, T> read)
    {
        string path = $"{stem}.{kind}.csv";
        if (!File.Exists(path))
            return [];
        try
        {
            using TextReader? text = TableFile.Open(path);
            if (text is not null)
                return Read(text, Path.GetFileName(path), faults, read);
            faults.Add(new TableFault(Path.GetFileName(path), 0, "the table is too long", "a table of less than 4 MB"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(new TableFault(Path.GetFileName(path), 0, "the table cannot be opened: " + e.Message, "a file that you may read"));
        }

        return [];
    }

    private static List<T> Read<T>(TextReader text, string name, List<TableFault> faults, Func<Row, T> read)
    {
        CsvLines lines = CsvLines.Read(text);
        var rows = new List<T>();
        foreach (CsvRow csv in lines.Rows)
        {
            try
            {
                rows.Add(read(new Row(lines.Columns, csv.Fields)));
            }
            catch (FormatException bad)
            {
                faults.Add(new TableFault(name, csv.Line, bad.Message, "a row under the column names " + string.Join(", ", lines.Columns)));
            }
        }

        return rows;
    }

    private static Cause Cause(Row row) => new(row.Name("id"), row.Text("says"), row.Parts("needs"), row.Share("prior"), row.Text("do"), row.Flag("opens"), row.Text("standing"));

    private static Sign Sign(Row row) => new(row.Name("id"), row.Text("question"), row.Parts("needs"), row.Number("minutes"), row.Flag("opens"), row.Share("leak"));

    private static Link Link(Row row) => new(row.Name("cause"), row.Name("sign"), row.Share("chance", one: true));

    private static FaultTables Build()
    {
        var faults = new List<TableFault>();
        var tables = new FaultTables(Own("fault-causes", Cause), Own("fault-signs", Sign), Own("fault-links", Link));
        return faults.Count == 0 ? tables : throw new InvalidOperationException(string.Join('\n', faults));

        List<T> Own<T>(string kind, Func<Row, T> read)
        {
            using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"Tables/{kind}.csv")
                ?? throw new InvalidOperationException($"{kind}.csv is missing from the program.");
            using var reader = new StreamReader(stream);
            return Read(reader, kind + ".csv", faults, read);
        }
    }

    private sealed class Row(string[] columns, string[] fields)
    {
        public string Text(string column)
        {
            int at = Array.IndexOf(columns, column);
            return at < 0 ? throw new FormatException($"there is no column {column}") : at < fields.Length ? fields[at] : "";
        }

        public string Name(string column) => Text(column) is { Length: > 0 } name ? name : throw new FormatException($"{column} is empty");

        public double Number(string column) =>
            double.TryParse(Text(column), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) && value >= 0
                ? value : throw new FormatException($"{column} is \"{Text(column)}\", no number");

        public double Share(string column, bool one = false) =>
            Number(column) is var p && (p < 1 || one && p == 1) ? p : throw new FormatException($"{column} is {Text(column)}: a chance from 0, below 1");

        public bool Flag(string column) => Text(column) switch
        {
            "yes" => true,
            "no" or "" => false,
            var other => throw new FormatException($"{column} is \"{other}\": yes or no"),
        };

        public string[] Parts(string column)
        {
            string[] parts = Text(column).Split(' ', StringSplitOptions.RemoveEmptyEntries);
            string? strange = parts.FirstOrDefault(p => !PressParts.Words.Contains(p));
            return strange is null ? parts : throw new FormatException($"no part is called {strange}; there are " + string.Join(", ", PressParts.Words));
        }
    }
}
